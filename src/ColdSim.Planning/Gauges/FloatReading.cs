using ColdSim.Physics.Geometry;

namespace ColdSim.Planning.Gauges;

/// <summary>The percentage that the float gauge of a lying tank shows: liquid by volume, at whatever temperature it has.</summary>
public sealed class FloatReading : GaugeReading
{
    /// <summary>Part of the volume that is liquid, as shown.</summary>
    public required double Shown_frac { get; init; }

    /// <summary>Its standard uncertainty; null takes 3 percent points.</summary>
    public double? ShownError_frac { get; init; }

    /// <summary>Temperature and tilt.</summary>
    public required LevelInputs Level { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Cautions =>
    [
        "A float shows volume, not mass, and moves with a tilted coach; near empty and near full it shows little.",
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<StatedError> Inputs(GaugedCylinder cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        if (!cylinder.Lies)
            throw new ImpossibleReadingException($"{Name}: a float gauge is read on lying tanks only");
        return
        [
            new("float gauge", InputKind.Ratio, Shown_frac, ShownError_frac ?? 0.03, ShownError_frac is null ? "from memory" : "given", Shared: false),
            .. Level.Of(cylinder),
        ];
    }

    /// <inheritdoc/>
    public override double Mass_kg(GaugedCylinder cylinder, ReadOnlySpan<double> inputs)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ReadOnlySpan<double> shared = inputs[1..];
        PressureVessel vessel = LevelInputs.Vessel(cylinder, shared);
        double level_m = vessel.LiquidLevel_m(Math.Clamp(inputs[0], 0, 1) * vessel.Volume_m3)
            + cylinder.OffMiddleOf(vessel) * Math.Tan(shared[3]);
        return LevelInputs.Mass_kg(vessel, level_m, shared[0]);
    }
}
