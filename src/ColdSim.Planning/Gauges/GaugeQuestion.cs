namespace ColdSim.Planning.Gauges;

/// <summary>One or several readings of a cylinder, with what the person knows besides.</summary>
public sealed record GaugeQuestion
{
    /// <summary>The cylinder.</summary>
    public required GaugedCylinder Cylinder { get; init; }

    /// <summary>The readings; none where only the pressure was read.</summary>
    public IReadOnlyList<GaugeReading> Readings { get; init; } = [];

    /// <summary>The pressure, if that was read.</summary>
    public PressureReading? Pressure { get; init; }

    /// <summary>Liquid temperature, if known. [K]</summary>
    public double? Temperature_K { get; init; }

    /// <summary>Whether the cylinder has stood closed for hours.</summary>
    public bool Rested { get; init; }

    /// <summary>The temperature for which a sensor reckons. [K]</summary>
    public double Assumed_K { get; init; } = DriftTable.Assumed_K;

    /// <summary>Furnace input, if hours are asked for. [W]</summary>
    public double? Furnace_W { get; init; }
}
