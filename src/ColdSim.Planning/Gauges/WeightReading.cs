using ColdSim.Physics.Units;

namespace ColdSim.Planning.Gauges;

/// <summary>A weighing: scale less tare, accessories and ice.</summary>
/// <remarks>
/// The stamped tare's error: 98.4 % of new 20 lb cylinders, but only 65.7 % of used ones, lie within the trade's -3/+1 % (NCWM and NIST 2022).
/// The root mean square of a value distributed uniformly between those limits is 1.53 %; 1.5 % is used, without a shift.
/// </remarks>
public sealed class WeightReading : GaugeReading
{
    /// <summary>Standard uncertainty of a stamped tare unless stated.</summary>
    public const double StampedTareError_frac = 0.015;

    /// <summary>Error of a bathroom scale: 0.2 lb. [kg]</summary>
    public const double BathroomScale_kg = 0.2 * ConversionFactors.Pound_kg;

    /// <summary>What the scale shows. [kg]</summary>
    public required double Scale_kg { get; init; }

    /// <summary>Standard uncertainty of the scale; null takes a bathroom scale's. [kg]</summary>
    public double? ScaleError_kg { get; init; }

    /// <summary>The empty mass as stamped. [kg]</summary>
    public required double Tare_kg { get; init; }

    /// <summary>Its standard uncertainty; null takes that of stamped tares. [kg]</summary>
    public double? TareError_kg { get; init; }

    /// <summary>Everything else on the scale: a hose, a cover, a regulator. [kg]</summary>
    public double Accessories_kg { get; init; }

    /// <summary>Ice and snow on the cylinder. [kg]</summary>
    public double Ice_kg { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Cautions =>
    [
        "A weighing counts what hangs on the cylinder: hose, cover, ice and snow read as propane.",
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<StatedError> Inputs(GaugedCylinder cylinder)
    {
        List<StatedError> inputs =
        [
            new("scale", InputKind.Mass, Scale_kg, ScaleError_kg ?? BathroomScale_kg, ScaleError_kg is null ? "bathroom scale, from memory" : "given", Shared: false),
            new("tare", InputKind.Mass, Tare_kg, TareError_kg ?? StampedTareError_frac * Tare_kg,
                TareError_kg is null ? "stamp within -3/+1 %, survey 2022" : "given", Shared: true),
        ];
        if (Accessories_kg != 0)
            inputs.Add(new("accessories", InputKind.Mass, Accessories_kg, 0.1 * Accessories_kg, "a tenth of it, assumption", Shared: true));
        if (Ice_kg != 0)
            inputs.Add(new("ice", InputKind.Mass, Ice_kg, 0.5 * Ice_kg, "half of it, assumption", Shared: true));
        return inputs;
    }

    /// <inheritdoc/>
    public override double Mass_kg(GaugedCylinder cylinder, ReadOnlySpan<double> inputs)
    {
        double mass_kg = inputs[0];
        foreach (double off_kg in inputs[1..])
            mass_kg -= off_kg;
        return mass_kg;
    }
}
