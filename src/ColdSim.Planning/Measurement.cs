using ColdSim.Physics.Units;

namespace ColdSim.Planning;

/// <summary>What is measured beside the contents of a cylinder.</summary>
internal enum MeasuredQuantity
{
    /// <summary>Pressure in a cylinder, as its gauge shows it. Pa over the air's.</summary>
    Pressure,

    /// <summary>Temperature of a cylinder's liquid. K.</summary>
    Liquid,

    /// <summary>Temperature of a cylinder's wall below the level of its liquid. K.</summary>
    Wall,

    /// <summary>Temperature of the air inside. K.</summary>
    Inside,

    /// <summary>Voltage at the battery's terminals. V.</summary>
    Voltage,
}

/// <summary>A value that somebody measured and wrote into the log, other than what a cylinder holds.</summary>
/// <remarks>It is compared with a run and moves nothing of it: contents, start and forecast come from readings of contents alone.</remarks>
internal sealed record Measurement
{
    /// <summary>Its line in the log, 1 for the header.</summary>
    public required int Line { get; init; }

    /// <summary>When it was measured.</summary>
    public required DateTimeOffset Time { get; init; }

    /// <summary>What was measured.</summary>
    public required MeasuredQuantity Quantity { get; init; }

    /// <summary>The value: K, Pa over the air's, or V.</summary>
    public required double Value { get; init; }

    /// <summary>Its standard error, in the same unit.</summary>
    public required double StandardError { get; init; }

    /// <summary>Place of the cylinder it was measured at, from 0; null where it is none's.</summary>
    public int? Cylinder { get; init; }

    /// <summary>Of a voltage: whether nothing was drawn or charged for hours before.</summary>
    public bool Rested { get; init; }

    /// <summary>What the person wrote beside it.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether a quantity is one cylinder's.</summary>
    /// <param name="quantity">The quantity.</param>
    public static bool IsOfCylinder(MeasuredQuantity quantity) => quantity is MeasuredQuantity.Pressure or MeasuredQuantity.Liquid or MeasuredQuantity.Wall;

    /// <summary>The standard error of a value whose error is not stated: 2 psi, 2 °F of liquid and inside, 4 °F of a wall, 0.05 V. [Pa, K or V]</summary>
    /// <remarks>Our choice for a gauge, a household thermometer, one held against a wall, and a plain voltmeter; no source.</remarks>
    /// <param name="quantity">The quantity.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is none of them.</exception>
    public static double UsualError(MeasuredQuantity quantity) => quantity switch
    {
        MeasuredQuantity.Pressure => 2 * ConversionFactors.Psi_Pa,
        MeasuredQuantity.Liquid or MeasuredQuantity.Inside => 2 * ConversionFactors.FahrenheitDegree_K,
        MeasuredQuantity.Wall => 4 * ConversionFactors.FahrenheitDegree_K,
        MeasuredQuantity.Voltage => 0.05,
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "is not measured"),
    };
}
