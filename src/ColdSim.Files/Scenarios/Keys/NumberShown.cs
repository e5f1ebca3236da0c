using System.Globalization;
using ColdSim.Files.Quantities;

namespace ColdSim.Files.Scenarios.Keys;

/// <summary>Numbers of declarations as the page shows them.</summary>
internal static class NumberShown
{
    // What a change of units leaves behind this decimal is dropped.
    private const int Decimals = 6;

    /// <summary>Such as 25,000 or 0.92.</summary>
    public static string Of(double value, int decimals = Decimals) => Math.Round(value, decimals).ToString("#,0.######", CultureInfo.InvariantCulture);

    /// <summary>Such as "25,000 BTU/h".</summary>
    public static string Of(double si, Dimension dimension, string unit, int decimals = Decimals)
    {
        if (unit.Length == 0)
            return Of(si, decimals);
        UnitSpelling spelling = SpellingTable.Find(dimension, unit) ?? throw new ArgumentException($"'{unit}' is no unit of {dimension.Name()}.", nameof(unit));
        return $"{Of((si / spelling.Factor) - spelling.Offset, decimals)} {unit}";
    }
}
