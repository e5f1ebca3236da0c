using ColdSim.Files.Quantities;

namespace ColdSim.Files.Scenarios.Keys;

/// <summary>What a quantity measures, with its limits as they are shown.</summary>
internal sealed record QuantityRange
{
    public QuantityRange(Dimension dimension, string low, string high)
    {
        (Dimension, Low, High) = (dimension, low, high);
        (LowSi, HighSi) = (Si(low), Si(high));
    }

    public Dimension Dimension { get; }

    public string Low { get; }

    public string High { get; }

    public double LowSi { get; }

    public double HighSi { get; }

    public string Shown => $"{Low} to {High}";

    public string Accepted => Dimension == Dimension.Ratio ? $"accepted: {Shown}" : $"accepted: \"{Low}\" to \"{High}\"";

    /// <summary>A value of this kind that lies within the limits.</summary>
    public string Example
    {
        get
        {
            string usual = QuantityExample.Of(Dimension);
            double si = Si(usual);
            return si >= LowSi && si <= HighSi ? usual : High;
        }
    }

    /// <summary>What to write instead of a bare number.</summary>
    public string WithUnit(double value) => QuantityExample.WithUnit(Dimension, value, si => si >= LowSi && si <= HighSi, Example);

    /// <summary>A text of this kind in SI units.</summary>
    public double Si(string text)
        => SiText.Read(text, Dimension, out double si) is { } fault ? throw new ArgumentException(fault.ToString(), nameof(text)) : si;
}

/// <summary>A key that holds a quantity; some may be given in more than one way, such as a mass or a volume.</summary>
internal sealed class QuantityKey(string name, IReadOnlyList<QuantityRange> ranges, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public QuantityKey(string name, Dimension dimension, string low, string high, KeyDefault otherwise, string meaning)
        : this(name, [new QuantityRange(dimension, low, high)], otherwise, meaning)
    {
    }

    /// <summary>What it may measure; a value with no unit of any of them is held against the first.</summary>
    public IReadOnlyList<QuantityRange> Ranges => ranges;

    /// <summary>Words that are accepted instead, such as "full".</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    public string Accepted => ranges[0].Accepted;

    public override string Kind => string.Join(" or ", [.. ranges.Select(r => r.Dimension.Name()), .. Words.Select(w => $"`\"{w}\"`")]);

    public override string Limits => string.Join("; ", ranges.Select(r => r.Shown));

    public override string Example => $"\"{(DefaultSi is null || Default.Unit == "-" ? ranges[0].Example : ValueShown)}\"";

    public override string DefaultShown => DefaultSi is null || Default.Unit == "-" ? Default.Words ?? "" : ValueShown + Default.Words;

    /// <summary>The default in SI units; null where there is no single one.</summary>
    public double? DefaultSi { get; } = otherwise.Written is { } text ? ranges[0].Si(text) : otherwise.Si;

    private string ValueShown => Default.Written ?? NumberShown.Of(Default.Si ?? double.NaN, ranges[0].Dimension, Default.Unit);
}
