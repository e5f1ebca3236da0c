namespace ColdSim.Model.Electrical;

/// <summary>Solar panels that lie or stand together. SI units.</summary>
public sealed record SolarPanelSpecification
{
    /// <summary>Power at 1,000 W/m² and 25 °C, all panels together. [W]</summary>
    public required double Rated_W { get; init; }

    /// <summary>Tilt from level: 0 lies flat. [rad]</summary>
    public double Tilt_rad { get; init; }

    /// <summary>Direction that they face, from north, clockwise. [rad]</summary>
    public double Azimuth_rad { get; init; } = Math.PI;

    /// <summary>What arrives at the battery per what the cells would give: 0.70 to 0.80 with a tracking charger, 0.60 to 0.70 with a plain one (from memory).</summary>
    public double PerformanceRatio_frac { get; init; } = 0.75;

    /// <summary>Part of the panels under snow, 0 to 1: covered cells give nothing.</summary>
    public double SnowCover_frac { get; init; }

    /// <summary>Change of power by the cells' temperature, −0.0035 to −0.0045 (from memory). [1/K]</summary>
    public double PowerPerKelvin_1_K { get; init; } = -0.004;

    /// <summary>Cell temperature at 800 W/m², 20 °C and 1 m/s, as on the data sheet. [K]</summary>
    public double NominalCell_K { get; init; } = 318.15;
}
