using ColdSim.Physics.Geometry;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Gauges;

/// <summary>What an echo's number is.</summary>
public enum EchoShown
{
    /// <summary>Time of flight there and back in the liquid, s.</summary>
    Time,

    /// <summary>A height, m, reckoned with the speed of sound at the assumed temperature.</summary>
    Height,

    /// <summary>A fraction of the height inside, reckoned likewise.</summary>
    PartOfHeight,

    /// <summary>A fraction of the volume inside, reckoned likewise.</summary>
    PartOfVolume,

    /// <summary>A fraction of the height of a full cylinder's level, which has four fifths of its volume as liquid, reckoned likewise.</summary>
    PartOfFull,
}

/// <summary>A level from below by echo: sound through the liquid to its surface and back.</summary>
/// <remarks>
/// level = c(T) t/2 with the speed of sound in saturated liquid; a number reckoned at another temperature is multiplied by c(T)/c(T_assumed).
/// A sensor y off the lowest point sits higher by the wall's rise there, and sees a tilted surface at its distance from the middle.
/// </remarks>
public sealed class EchoReading : GaugeReading
{
    /// <summary>Liquid in a full cylinder, as part of the volume: where the trade's stop fill and fixed level gauge end a filling (common practice, no source).</summary>
    internal const double Full_frac = 0.8;

    /// <summary>What the number is.</summary>
    public required EchoShown Shown { get; init; }

    /// <summary>The number, in SI units.</summary>
    public required double Value { get; init; }

    /// <summary>Its standard uncertainty; null takes 2 µs, 0.1 in or one percent point.</summary>
    public double? ValueError { get; init; }

    /// <summary>The temperature that the sensor is made for; not used for a time. [K]</summary>
    public double Assumed_K { get; init; } = DriftTable.Assumed_K;

    /// <summary>How far off the lowest point the sensor may sit. [m]</summary>
    public double PositionError_m { get; init; } = ConversionFactors.Inch_m;

    /// <summary>Whether that was given.</summary>
    public bool PositionGiven { get; init; }

    /// <summary>Temperature and tilt.</summary>
    public required LevelInputs Level { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Cautions =>
    [
        "An echo needs the liquid's own temperature: sound is up to 1.6 times as fast in cold liquid as in warm.",
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<StatedError> Inputs(GaugedCylinder cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        (InputKind kind, double usual) = Shown switch
        {
            EchoShown.Time => (InputKind.Time, 2e-6),
            EchoShown.Height => (InputKind.Length, 0.1 * ConversionFactors.Inch_m),
            _ => (InputKind.Ratio, 0.01),
        };
        return
        [
            new("echo", kind, Value, ValueError ?? usual, ValueError is null ? "assumption" : "given", Shared: false),
            new("sensor off the lowest point", InputKind.Length, 0, PositionError_m, PositionGiven ? "given" : "assumption", Shared: false),
            .. Level.Of(cylinder),
        ];
    }

    /// <inheritdoc/>
    public override double Mass_kg(GaugedCylinder cylinder, ReadOnlySpan<double> inputs)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ReadOnlySpan<double> shared = inputs[2..];
        PressureVessel vessel = LevelInputs.Vessel(cylinder, shared);
        return LevelInputs.Mass_kg(vessel, Level_m(cylinder, vessel, inputs), shared[0]);
    }

    internal double Level_m(GaugedCylinder cylinder) => Level_m(cylinder, cylinder.Vessel(), [.. Inputs(cylinder).Select(i => i.Value)]);

    private double Level_m(GaugedCylinder cylinder, PressureVessel vessel, ReadOnlySpan<double> inputs)
    {
        double sound_m_s = PropaneSaturation.LiquidSpeedOfSound_m_s(LevelInputs.Clamp_K(inputs[2]));
        double shown = Math.Max(0, inputs[0]);
        double path_m = Shown switch
        {
            EchoShown.Time => 0.5 * sound_m_s * shown,
            EchoShown.Height => shown,
            EchoShown.PartOfHeight => shown * vessel.FullLevel_m,
            EchoShown.PartOfFull => shown * vessel.LiquidLevel_m(Full_frac * vessel.Volume_m3),
            EchoShown.PartOfVolume => vessel.LiquidLevel_m(Math.Min(shown, 1) * vessel.Volume_m3),
            _ => throw new InvalidOperationException("Not a kind of echo."),
        };
        if (Shown != EchoShown.Time)
            path_m *= sound_m_s / PropaneSaturation.LiquidSpeedOfSound_m_s(Assumed_K);
        double radius_m = 0.5 * vessel.OutsideDiameter_m - vessel.WallThickness_m;
        double off = Math.Min(1, Math.Abs(inputs[1]) / radius_m);
        double rise_m = (cylinder.Lies ? radius_m : 0.5 * radius_m) * (1 - Math.Sqrt(1 - off * off));
        double lever_m = Math.Max(PositionError_m, cylinder.OffMiddleOf(vessel));
        return path_m + rise_m + lever_m * Math.Tan(inputs[5]);
    }
}
