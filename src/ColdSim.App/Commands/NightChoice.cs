using System.Globalization;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Commands;

/// <summary>Which night is asked for: <c>worst</c>, <c>p99</c> or <c>1-in-10</c>.</summary>
/// <param name="Percent">Of nights that are warmer.</param>
/// <param name="Years">Of which it is the worst.</param>
internal sealed record NightChoice(double? Percent, int? Years)
{
    public const string Accepted = "worst, p99 (from p50 to p99.99) or 1-in-10 (from 1-in-2 to 1-in-100)";

    public static NightChoice? Read(string text)
    {
        text = text.Trim().ToLowerInvariant();
        if (text == "worst")
            return new NightChoice(null, null);
        if (text.StartsWith('p') && double.TryParse(text.AsSpan(1), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent) && percent is >= 50 and <= 99.99)
            return new NightChoice(percent, null);
        return text.StartsWith("1-in-", StringComparison.Ordinal) && int.TryParse(text.AsSpan(5), NumberStyles.None, CultureInfo.InvariantCulture, out int years) && years is >= 2 and <= 100
            ? new NightChoice(null, years) : null;
    }

    /// <summary>The night of a record.</summary>
    public DesignNight Pick(IReadOnlyList<ColdNight> nights)
    {
        if (nights.Count == 0)
            throw CommandFault.Input("coldsim: --night: there is no whole night, noon to noon, in the rows");
        if (Percent is { } percent)
            return DesignNight.Percentile(nights, percent);
        if (Years is not { } years)
            return DesignNight.Worst(nights);
        return DesignNight.OnceIn(nights, years, out int winters) ?? throw CommandFault.Input(string.Create(
            CultureInfo.InvariantCulture, $"coldsim: --night: 1-in-{years} takes a record of at least {years - 1} whole winters, November to March; this one has {winters}"));
    }
}
