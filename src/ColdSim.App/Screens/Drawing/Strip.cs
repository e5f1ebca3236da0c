using ColdSim.App.Text;

namespace ColdSim.App.Screens.Drawing;

/// <summary>How a curve is drawn, so that those of a strip differ without colour.</summary>
internal enum Stroke
{
    /// <summary>Without a gap.</summary>
    Line,

    /// <summary>A cell on, a cell off.</summary>
    Dashes,

    /// <summary>A dot a cell: the run as it is, beside the one that is tried.</summary>
    Dots,

    /// <summary>Loose dots between two curves.</summary>
    Band,
}

/// <summary>One curve of a strip: samples of the whole run, and how to read and draw them.</summary>
/// <param name="Name">Its label.</param>
/// <param name="Samples">One a minute, in SI.</param>
/// <param name="Read">From SI to what a person reads.</param>
/// <param name="Axis">The axis it is read on.</param>
/// <param name="Stroke">How it is drawn.</param>
/// <param name="Style">Its quantity, and so its colour.</param>
internal sealed record Curve(string Name, double[] Samples, Func<double, double> Read, ValueAxis Axis, Stroke Stroke, CellStyle Style)
{
    /// <summary>The lower edge of a band, as <see cref="Samples"/>, which are its upper one; null for a single curve.</summary>
    public double[]? Lower { get; init; }

    /// <summary>Whether a column of dots shows the mean of its samples and not their range, as befits samples that are means.</summary>
    public bool ShowsMean { get; init; }

    /// <summary>The same of the run as it is, while this one is of a run that is tried; null where nothing is tried.</summary>
    public double[]? AsItIs { get; init; }

    /// <summary>The curve of the run as it is, dotted and without a colour; null where nothing is tried.</summary>
    public Curve? Dotted => AsItIs is null ? null
        : this with { Samples = AsItIs, AsItIs = null, Lower = null, Stroke = Stroke.Dots, Style = CellStyle.Plain };

    /// <summary>Lowest and highest over some samples.</summary>
    public static Extent Over(double[] samples, Func<double, double> read, int from, int to)
    {
        Extent all = Extent.None;
        for (int i = from; i < Math.Min(to, samples.Length); i++)
            all = all.With(read(samples[i]));
        return all;
    }

    /// <summary>The samples of a time span in columns of dots; a column narrower than a minute takes its nearest sample.</summary>
    public Extent[] Columns(MinuteRange span, int columns)
    {
        Extent[] extents = new Extent[columns];
        for (int c = 0; c < columns; c++)
        {
            MinuteRange part = span.Part(c, columns);
            extents[c] = ShowsMean ? Extent.None.With(Read(part.Mean(Samples))) : Over(Samples, Read, part.From, part.To);
            if (Lower is not null)
                extents[c] = new(Over(Lower, Read, part.From, part.To).Low, extents[c].High);
        }

        return extents;
    }

    /// <summary>The last value of a time span; NaN if there is none.</summary>
    public double End(MinuteRange span)
    {
        for (int i = Math.Min(span.To, Samples.Length) - 1; i >= span.From; i--)
        {
            if (!double.IsNaN(Samples[i]))
                return Read(Samples[i]);
        }

        return double.NaN;
    }
}

/// <summary>A ruled line: a value to which a curve is compared.</summary>
/// <param name="Name">What is written on it.</param>
/// <param name="Style">Its quantity.</param>
/// <param name="Glyph">What it is ruled with.</param>
/// <param name="Plain">The same where only plain characters are.</param>
/// <param name="At">The value at a minute, as a person reads it; NaN for none.</param>
internal sealed record Rule(string Name, CellStyle Style, char Glyph, char Plain, Func<int, double> At);

/// <summary>What lies between two curves where the upper one is not met.</summary>
/// <param name="Name">What is written into it where it is a shortage.</param>
/// <param name="Upper">The upper edge, as samples of the strip's first curve.</param>
/// <param name="Lower">The lower edge.</param>
/// <param name="Given">The lower edge while it is a shortage, where that is lower still.</param>
/// <param name="IsShort">Whether it is a shortage at a minute, and not only more than can be kept up.</param>
internal sealed record Gap(string Name, double[] Upper, double[] Lower, double[] Given, Func<int, bool> IsShort);

/// <summary>Something that was measured, as a mark on the curves.</summary>
/// <param name="Minute">When, as a sample of the run.</param>
/// <param name="Value">The value, as a person reads it.</param>
internal readonly record struct MeasuredMark(int Minute, double Value)
{
    /// <summary>What it is drawn with.</summary>
    public const char Glyph = '×';

    /// <summary>The same where only plain characters are.</summary>
    public const char Plain = 'x';

    /// <summary>What is written beside a mark.</summary>
    public const string Name = "measured";
}

/// <summary>One picture on a common axis: curves, ruled lines, and the gap between the curves.</summary>
/// <param name="First">Drawn first.</param>
/// <param name="Second">Drawn over it, on the same axis. Null where there is no such curve.</param>
/// <param name="Missing">Label for a curve that the run does not have.</param>
internal sealed record Strip(Curve First, Curve? Second = null, string Missing = "")
{
    /// <summary>Lines to compare with.</summary>
    public IReadOnlyList<Rule> Rules { get; init; } = [];

    /// <summary>What is filled between the curves; null for nothing.</summary>
    public Gap? Gap { get; init; }

    /// <summary>What was measured, on the same axis, drawn over the curves.</summary>
    public IReadOnlyList<MeasuredMark> Measured { get; init; } = [];

    /// <summary>Curves after the second, on the same axis.</summary>
    public IReadOnlyList<Curve> More { get; init; } = [];

    public IEnumerable<Curve> Curves => Second is null ? [First, .. More] : [First, Second, .. More];
}
