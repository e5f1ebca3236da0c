using System.Globalization;
using ColdSim.Planning.Explain;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>The chain of cause as a numbered list.</summary>
internal static class ChainLines
{
    private const double SquareFoot_m2 = 0.09290304;
    private const double Btu_J = 1055.05585262;

    public static IReadOnlyList<string> Of(ChainOfCause chain, UnitStyle units)
        => [.. Steps(chain, units).SelectMany((s, i) => Wrap.Lines(s, first: $"{i + 1}. ", rest: "   "))];

    private static IEnumerable<string> Steps(ChainOfCause chain, UnitStyle units)
    {
        yield return $"From {ClockText.DayClock(chain.From)}, when its liquid was last at its warmest in 12 h, to {ClockText.DayClock(chain.To)} the "
            + $"furnace was lit for {ClockText.Span(Duration.FromSeconds(chain.Burner_s))}, and all appliances took {units.Mass(chain.Given_kg)} of gas.";
        yield return $"Evaporation took {Heat(chain.Evaporation_J, units)} from liquid and shell.";
        yield return $"Air, ground and sky gave back {Heat(chain.Surroundings_J, units)}, the sun {Heat(chain.Sun_J, units)}, a blanket "
            + $"{Heat(chain.Blanket_J, units)}, through a wall of which now {Area(chain.WettedWall_m2, units)} of {Area(chain.WholeWall_m2, units)} is wetted.";
        yield return chain.HasLiquid
            ? $"So the liquid of the {chain.Cylinder} cylinder went from {units.Temperature(chain.LiquidFrom_K)} to {units.Temperature(chain.LiquidTo_K)}, "
                + $"in air of {units.Temperature(chain.Outside_K)}, with {units.Mass(chain.Left_kg)} left in it."
            : $"The {chain.Cylinder} cylinder has no liquid left; vapour and shell stand at {units.Temperature(chain.LiquidTo_K)}, in air of "
                + $"{units.Temperature(chain.Outside_K)}.";
        if (Blend(chain, units) is { } blend)
            yield return blend;
        yield return $"That left {units.Pressure(chain.Pressure_Pa)} before the regulator,";
        yield return $"with which it could pass {units.Power(chain.CanGive_W)} at full delivery pressure;";
        yield return $"{units.Power(chain.Asked_W)} was asked.";
    }

    // What stays behind is the night's figure, so that it is the same as in the run's table.
    private static string? Blend(ChainOfCause chain, UnitStyle units)
    {
        if (chain.Liquid is not { } liquid)
            return null;
        string made = $"That liquid is {Percent(liquid.Propane)} propane, {Percent(liquid.NormalButane)} n-butane and {Percent(liquid.Isobutane)} isobutane by mass";
        return chain.Blend is not { LeftBehind: { } behind } night ? made + "."
            : $"{made}; at the night's coldest air, {units.Temperature(night.LeftBehindAt.Kelvins)}, {units.Mass(behind.Kilograms)} would be left behind.";
    }

    private static string Percent(double part) => $"{UnitStyle.Number(100 * part, 0)} %";

    private static string Heat(double joule, UnitStyle units) => units.IsUs
        ? (Math.Round(joule / Btu_J / 10) * 10 + 0.0).ToString("#,0", CultureInfo.InvariantCulture) + " BTU"
        : (Math.Round(joule / 1e4) * 10 + 0.0).ToString("#,0", CultureInfo.InvariantCulture) + " kJ";

    private static string Area(double m2, UnitStyle units)
        => units.IsUs ? $"{UnitStyle.Number(m2 / SquareFoot_m2, 1)} ft²" : $"{UnitStyle.Number(m2, 2)} m²";
}
