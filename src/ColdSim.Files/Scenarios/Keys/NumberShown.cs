using System.Globalization;
using ColdSim.Files.Quantities;

namespace ColdSim.Files.Scenarios.Keys;

/// <summary>Numbers of declarations as the page shows them.</summary>
internal static class NumberShown
{
    /// <summary>Such as 25,000 or 0.92; what a change of units leaves behind the sixth decimal is dropped.</summary>
    public static string Of(double value) => Math.Round(value, 6).ToString("#,0.######", CultureInfo.InvariantCulture);

    /// <summary>Such as "25,000 BTU/h".</summary>
    public static string Of(double si, Dimension dimension, string unit)
    {
        if (unit.Length == 0)
            return Of(si);
        UnitSpelling spelling = SpellingTable.Find(dimension, unit) ?? throw new ArgumentException($"'{unit}' is no unit of {dimension.Name()}.", nameof(unit));
        return $"{Of((si / spelling.Factor) - spelling.Offset)} {unit}";
    }
}
