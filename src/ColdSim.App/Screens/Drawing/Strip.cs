using ColdSim.App.Text;

namespace ColdSim.App.Screens.Drawing;

/// <summary>How a curve is drawn, so that two in one strip differ without colour.</summary>
internal enum Stroke
{
    /// <summary>Without a gap.</summary>
    Line,

    /// <summary>A cell on, a cell off.</summary>
    Dashes,

    /// <summary>Loose dots from the value down to the axis.</summary>
    Speckled,

    /// <summary>Loose dots between two curves.</summary>
    Band,
}

/// <summary>Lowest and highest value in one column of dots; NaN where there is none.</summary>
internal readonly record struct Extent(double Low, double High)
{
    public static Extent None { get; } = new(double.NaN, double.NaN);

    public bool IsNone => double.IsNaN(Low);

    public Extent With(double value) => double.IsNaN(value) ? this
        : IsNone ? new(value, value) : new(Math.Min(Low, value), Math.Max(High, value));
}

/// <summary>One curve of a strip: samples of the whole run, and how to read and draw them.</summary>
/// <param name="Name">Its label.</param>
/// <param name="Samples">One a minute, in SI.</param>
/// <param name="Read">From SI to what a person reads.</param>
/// <param name="Axis">The axis it is read on.</param>
/// <param name="Stroke">How it is drawn.</param>
internal sealed record Curve(string Name, double[] Samples, Func<double, double> Read, ValueAxis Axis, Stroke Stroke)
{
    /// <summary>The lower edge of a band, as <see cref="Samples"/>, which are its upper one; null for a single curve.</summary>
    public double[]? Lower { get; init; }

    /// <summary>Three cells that show the stroke.</summary>
    public string Key => Stroke switch
    {
        Stroke.Line => "⠒⠒⠒",
        Stroke.Dashes => "⠒ ⠒",
        _ => "⠡⠡⠡",
    };

    /// <summary>Lowest and highest over some samples.</summary>
    public static Extent Over(double[] samples, Func<double, double> read, int from, int to)
    {
        Extent all = Extent.None;
        for (int i = from; i < to; i++)
            all = all.With(read(samples[i]));
        return all;
    }

    /// <summary>The samples of a time span in columns of dots; a column narrower than a minute takes its nearest sample.</summary>
    public Extent[] Columns(MinuteRange span, int columns)
    {
        Extent[] extents = new Extent[columns];
        for (int c = 0; c < columns; c++)
        {
            int from = span.From + (int)((long)c * span.Length / columns);
            int to = span.From + (int)((long)(c + 1) * span.Length / columns);
            to = Math.Max(from + 1, to);
            extents[c] = Over(Samples, Read, from, to);
            if (Lower is not null)
                extents[c] = new(Over(Lower, Read, from, to).Low, extents[c].High);
        }

        return extents;
    }

    /// <summary>The last value of a time span; NaN if there is none.</summary>
    public double End(MinuteRange span)
    {
        for (int i = span.To - 1; i >= span.From; i--)
        {
            if (!double.IsNaN(Samples[i]))
                return Read(Samples[i]);
        }

        return double.NaN;
    }
}

/// <summary>One picture on the common time axis: one or two curves.</summary>
/// <param name="First">Read on the left axis; drawn first.</param>
/// <param name="Second">Drawn over it; read on the right axis where its axis is another one. Null where the run has no such curve.</param>
/// <param name="Missing">Label for a curve that the run does not have.</param>
internal sealed record Strip(Curve First, Curve? Second = null, string Missing = "")
{
    public bool HasRightAxis => Second is not null && Second.Axis != First.Axis;

    public IEnumerable<Curve> Curves => Second is null ? [First] : [First, Second];
}
