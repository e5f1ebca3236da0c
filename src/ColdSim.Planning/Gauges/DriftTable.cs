using ColdSim.Model.Cylinder;
using ColdSim.Physics.Geometry;
using ColdSim.Physics.Propane;
using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>What every instrument shows at one mass and one temperature.</summary>
public sealed record ExpectedReading
{
    /// <summary>Temperature of liquid, vapour and wall.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>Liquid by volume: what a float shows.</summary>
    public required Ratio Liquid { get; init; }

    /// <summary>Level inside.</summary>
    public required Length Level { get; init; }

    /// <summary>Time of flight from the lowest point to the surface and back.</summary>
    public required Duration Echo { get; init; }

    /// <summary>What a sensor made for one temperature shows, as part of the height inside.</summary>
    public required Ratio EchoShown { get; init; }

    /// <summary>Absolute pressure.</summary>
    public required Pressure Pressure { get; init; }

    /// <summary>Whether the liquid would fill the cylinder; pressure and level then mean nothing.</summary>
    public required bool LiquidFull { get; init; }

    internal double Level_m => Level.Meters;
}

/// <summary>How readings move while the liquid warms or cools and nothing is drawn.</summary>
public static class DriftTable
{
    /// <summary>The temperature that a sensor is assumed to be made for unless stated: 20 °C. [K]</summary>
    public const double Assumed_K = 293.15;

    /// <summary>The readings at a mass over temperatures.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="mass">Propane in it.</param>
    /// <param name="temperatures">At which temperatures.</param>
    /// <param name="assumed_K">The temperature that a sensor is made for. [K]</param>
    public static IReadOnlyList<ExpectedReading> Of(
        GaugedCylinder cylinder, Mass mass, IEnumerable<Temperature> temperatures, double assumed_K = Assumed_K)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        PressureVessel vessel = cylinder.Vessel();
        return [.. temperatures.Select(t => At(vessel, mass.Kilograms, t.Kelvins, assumed_K))];
    }

    /// <summary>The readings at a mass and a temperature.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="mass_kg">Propane in it. [kg]</param>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="assumed_K">The temperature that a sensor is made for. [K]</param>
    public static ExpectedReading At(GaugedCylinder cylinder, double mass_kg, double t_K, double assumed_K = Assumed_K)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return At(cylinder.Vessel(), mass_kg, t_K, assumed_K);
    }

    private static ExpectedReading At(PressureVessel vessel, double mass_kg, double t_K, double assumed_K)
    {
        CylinderContents contents = CylinderContents.Of(Math.Max(0, mass_kg), vessel.Volume_m3, t_K);
        bool full = contents.LiquidVolume_m3 >= vessel.Volume_m3;
        double liquid_m3 = Math.Min(contents.LiquidVolume_m3, vessel.Volume_m3);
        double level_m = vessel.LiquidLevel_m(liquid_m3);
        double echo_s = 2 * level_m / PropaneSaturation.LiquidSpeedOfSound_m_s(t_K);
        return new()
        {
            Temperature = Temperature.FromKelvins(t_K),
            Liquid = Ratio.FromDecimalFractions(liquid_m3 / vessel.Volume_m3),
            Level = Length.FromMeters(level_m),
            Echo = Duration.FromSeconds(echo_s),
            EchoShown = Ratio.FromDecimalFractions(0.5 * echo_s * PropaneSaturation.LiquidSpeedOfSound_m_s(assumed_K) / vessel.FullLevel_m),
            Pressure = Pressure.FromPascals(contents.Pressure_Pa),
            LiquidFull = full,
        };
    }
}
