using ColdSim.Physics.Geometry;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Gauges;

/// <summary>The height of a line on the outside of the wall: where it turns cold under hot water, or where frost ends.</summary>
/// <remarks>level = height - foot - wall thickness, by the side on which it was read plus or minus the radius times the tangent of the tilt.</remarks>
public sealed class LineReading : GaugeReading
{
    /// <summary>Height of the line. [m]</summary>
    public required double Height_m { get; init; }

    /// <summary>Height of the body's lowest point above where the line's height was counted from. [m]</summary>
    public double Foot_m { get; init; }

    /// <summary>Whether it is the edge of frost; otherwise hot water showed it.</summary>
    public bool Frost { get; init; }

    /// <summary>Standard uncertainty of the line; null takes 0.25 in felt by hand, 1 in for frost. [m]</summary>
    public double? LineError_m { get; init; }

    /// <summary>Temperature and tilt.</summary>
    public required LevelInputs Level { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Cautions => Frost
        ? ["Frost climbs above the liquid, for the wall conducts, and stays behind when the level falls."]
        : ["Hot water is poured over the outside of the wall from a kettle; never use a flame."];

    /// <inheritdoc/>
    public override IReadOnlyList<StatedError> Inputs(GaugedCylinder cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return
        [
            new(Frost ? "frost's edge" : "line", InputKind.Length, Height_m, LineError_m ?? (Frost ? 1 : 0.25) * ConversionFactors.Inch_m,
                LineError_m is not null ? "given" : Frost ? "assumption" : "felt by hand, from memory", Shared: false),
            .. Level.Of(cylinder),
        ];
    }

    /// <inheritdoc/>
    public override double Mass_kg(GaugedCylinder cylinder, ReadOnlySpan<double> inputs)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ReadOnlySpan<double> shared = inputs[1..];
        PressureVessel vessel = LevelInputs.Vessel(cylinder, shared);
        double lever_m = cylinder.Lies ? cylinder.OffMiddleOf(vessel) : 0.5 * vessel.OutsideDiameter_m;
        double level_m = inputs[0] - Foot_m - cylinder.WallThickness_m + lever_m * Math.Tan(shared[3]);
        return LevelInputs.Mass_kg(vessel, level_m, shared[0]);
    }

    internal double Level_m(GaugedCylinder cylinder) => Height_m - Foot_m - cylinder.WallThickness_m;
}
