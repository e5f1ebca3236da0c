using ColdSim.Physics.Geometry;

namespace ColdSim.Planning.Gauges;

/// <summary>A level seen as a part of the height inside, such as a strip on the wall or a sight shows it.</summary>
/// <remarks>level = part × height inside, by the side on which it was read plus or minus the radius times the tangent of the tilt.</remarks>
internal sealed class HeightReading : GaugeReading
{
    /// <summary>Standard uncertainty of what is shown unless given: two percent points, an assumption.</summary>
    public const double UsualError_frac = 0.02;

    /// <summary>Part of the height inside, as shown.</summary>
    public required double Shown_frac { get; init; }

    /// <summary>Its standard uncertainty; null takes <see cref="UsualError_frac"/>.</summary>
    public double? ShownError_frac { get; init; }

    /// <summary>Temperature and tilt.</summary>
    public required LevelInputs Level { get; init; }

    /// <summary>Why the same gas reads another level once it is warmer, as a sentence.</summary>
    public const string WhyLevelMoves
        = "A level is not an amount: as it warms, liquid swells and some of it evaporates, so the same gas reads another level.";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Cautions => [WhyLevelMoves];

    /// <inheritdoc/>
    public override IReadOnlyList<StatedError> Inputs(GaugedCylinder cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return
        [
            new(
                "level", InputKind.Ratio, Shown_frac, ShownError_frac ?? UsualError_frac, ShownError_frac is null ? "assumption" : "given", Shared: false),
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
        return LevelInputs.Mass_kg(vessel, inputs[0] * vessel.FullLevel_m + lever_m * Math.Tan(shared[3]), shared[0]);
    }
}
