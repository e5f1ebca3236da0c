using ColdSim.Physics.Fluids;
using ColdSim.Physics.Geometry;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Gauges;

/// <summary>What every reading of a level needs besides the reading, and the mass that a level means.</summary>
public sealed record LevelInputs
{
    /// <summary>Temperature of the liquid. [K]</summary>
    public required double Temperature_K { get; init; }

    /// <summary>Its standard uncertainty. [K]</summary>
    public required double TemperatureError_K { get; init; }

    /// <summary>Where that error comes from.</summary>
    public string TemperatureBasis { get; init; } = "given";

    /// <summary>Standard uncertainty of level ground, in a direction that nobody knows. [rad]</summary>
    public double Tilt_rad { get; init; } = Math.PI / 180;

    /// <summary>Where that error comes from.</summary>
    public string TiltBasis { get; init; } = "assumption";

    internal const int Count = 4;

    // In this order, behind the reading's own inputs.
    internal IEnumerable<StatedError> Of(GaugedCylinder c) =>
    [
        new("liquid temperature", InputKind.Temperature, Temperature_K, TemperatureError_K, TemperatureBasis, Shared: true),
        new("water capacity", InputKind.Ratio, 1, c.CapacityError_frac, "assumption", Shared: true),
        new("outside diameter", InputKind.Ratio, 1, c.DiameterError_frac, "assumption", Shared: true),

        // The same coach, but each reading is made on another side of it.
        new("coach off level", InputKind.Angle, 0, Tilt_rad, TiltBasis, Shared: false),
    ];

    /// <summary>The vessel as the inputs have it.</summary>
    internal static PressureVessel Vessel(GaugedCylinder c, ReadOnlySpan<double> shared)
        => c.Vessel(c.Volume_m3 * shared[1], c.OutsideDiameter_m * shared[2]);

    internal static double Clamp_K(double t_K) => Math.Clamp(t_K, SaturationTable.Lowest_K, SaturationTable.Highest_K);

    /// <summary>Liquid below the level and saturated vapour above it. [kg]</summary>
    internal static double Mass_kg(PressureVessel vessel, double level_m, double t_K)
    {
        double liquid_m3 = vessel.VolumeAtLevel_m3(Math.Clamp(level_m, 0, vessel.FullLevel_m));
        SaturatedPhases s = SaturationTable.At(Clamp_K(t_K));
        return liquid_m3 / s.LiquidVolume_m3_kg + (vessel.Volume_m3 - liquid_m3) / s.VapourVolume_m3_kg;
    }

    /// <summary>Refuses a level that is above the inside of the vessel.</summary>
    internal static void Check(PressureVessel vessel, double level_m, string reading)
    {
        if (!(level_m >= 0 && level_m <= vessel.FullLevel_m))
        {
            throw new ImpossibleReadingException(FormattableString.Invariant(
                $"{reading}: means a level of {level_m / ConversionFactors.Inch_m:0.0} in ({1000 * level_m:0} mm); inside it is {vessel.FullLevel_m / ConversionFactors.Inch_m:0.0} in ({1000 * vessel.FullLevel_m:0} mm) high"));
        }
    }
}
