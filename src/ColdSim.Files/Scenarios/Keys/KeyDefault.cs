namespace ColdSim.Files.Scenarios.Keys;

/// <summary>What holds where a key is left out: a value, or words for what it depends on.</summary>
/// <param name="Words">As the page shows it; of a value alone, null.</param>
/// <param name="Si">The value in SI units; null where there is no single one.</param>
/// <param name="Unit">The unit in which the value is shown.</param>
internal sealed record KeyDefault(string? Words, double? Si = null, string Unit = "")
{
    /// <summary>The quantity as somebody would write it; null where <see cref="Si"/> says it or there is none.</summary>
    public string? Written { get; private init; }

    /// <summary>There is no default: the key must be written.</summary>
    public static KeyDefault Needed { get; } = new("needed");

    /// <summary>No value is assumed.</summary>
    public static KeyDefault None { get; } = new("none");

    /// <summary>Words, such as "by size".</summary>
    public static KeyDefault Of(string words) => new(words);

    /// <summary>A plain number.</summary>
    public static KeyDefault Of(double value) => new(null, value);

    /// <summary>A quantity.</summary>
    /// <param name="si">In SI units.</param>
    /// <param name="unit">The unit in which it is shown; empty for a plain ratio.</param>
    /// <param name="note">What it is, shown after it: "paint".</param>
    public static KeyDefault Of(double si, string unit, string? note = null) => new(note is null ? null : ", " + note, si, unit);

    /// <summary>A quantity as somebody would write it.</summary>
    /// <param name="text">Such as "8,800 BTU/h".</param>
    /// <param name="note">What it is, shown after it.</param>
    public static KeyDefault Quantity(string text, string? note = null) => new(note is null ? null : ", " + note) { Written = text };

    /// <summary>A quantity that is shown in words of its own, such as "sea level".</summary>
    public static KeyDefault Called(double si, string words) => new(words, si, "-");
}
