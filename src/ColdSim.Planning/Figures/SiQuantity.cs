using UnitsNet;

namespace ColdSim.Planning.Figures;

/// <summary>Makes quantities of SI numbers; a number that is not finite, which says that something does not apply, makes none.</summary>
internal static class SiQuantity
{
    /// <summary>Of kelvins.</summary>
    public static IQuantity? Temperature(double? value_K) => Finite(value_K) is { } k ? UnitsNet.Temperature.FromKelvins(k) : null;

    /// <summary>Of kilograms.</summary>
    public static IQuantity? Mass(double? value_kg) => Finite(value_kg) is { } kg ? UnitsNet.Mass.FromKilograms(kg) : null;

    /// <summary>Of joules.</summary>
    public static IQuantity? Energy(double? value_J) => Finite(value_J) is { } j ? UnitsNet.Energy.FromJoules(j) : null;

    /// <summary>Of watts.</summary>
    public static IQuantity? Power(double? value_W) => Finite(value_W) is { } w ? UnitsNet.Power.FromWatts(w) : null;

    /// <summary>Of pascals.</summary>
    public static IQuantity? Pressure(double? value_Pa) => Finite(value_Pa) is { } pa ? UnitsNet.Pressure.FromPascals(pa) : null;

    /// <summary>Of seconds.</summary>
    public static IQuantity? Duration(double? value_s) => Finite(value_s) is { } s ? UnitsNet.Duration.FromSeconds(s) : null;

    /// <summary>Of a part of one.</summary>
    public static IQuantity? Ratio(double? value_frac) => Finite(value_frac) is { } part ? UnitsNet.Ratio.FromDecimalFractions(part) : null;

    private static double? Finite(double? value) => value is { } number && double.IsFinite(number) ? number : null;
}
