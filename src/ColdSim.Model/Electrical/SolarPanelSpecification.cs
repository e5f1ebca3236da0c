using ColdSim.Model.Weather;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Electrical;

/// <summary>Solar panels of one tilt and direction. SI units.</summary>
public sealed record SolarPanelSpecification
{
    private const double StandardSun_W_m2 = 1000;
    private const double StandardCell_K = 298.15;
    private const double NominalSun_W_m2 = 800;
    private const double NominalAir_K = 293.15;

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

    /// <summary>Power at the battery. [W]</summary>
    /// <param name="sun_W_m2">Sun in their plane. [W/m²]</param>
    /// <param name="air_K">Air around them. [K]</param>
    public double Power_W(double sun_W_m2, double air_K)
        => Cells_W(sun_W_m2, Cell_K(sun_W_m2, air_K)) * PerformanceRatio_frac * (1 - SnowCover_frac);

    /// <summary>What the cells give: in proportion to the sun, less by their temperature; never below 0. [W]</summary>
    /// <param name="sun_W_m2">Sun in their plane. [W/m²]</param>
    /// <param name="cell_K">Temperature of the cells. [K]</param>
    public double Cells_W(double sun_W_m2, double cell_K)
        => Math.Max(0, Rated_W * sun_W_m2 / StandardSun_W_m2 * (1 + (PowerPerKelvin_1_K * (cell_K - StandardCell_K))));

    /// <summary>Temperature of the cells: above the air in proportion to the sun. [K]</summary>
    /// <param name="sun_W_m2">Sun in their plane. [W/m²]</param>
    /// <param name="air_K">Air around them. [K]</param>
    public double Cell_K(double sun_W_m2, double air_K)
        => air_K + ((NominalCell_K - NominalAir_K) * sun_W_m2 / NominalSun_W_m2);

    /// <summary>Sun in the panels' plane from that on level ground. [W/m²]</summary>
    /// <param name="level_W_m2">Global irradiance on level ground. [W/m²]</param>
    /// <param name="sun">Position of the sun; null where the site has no position: all of the light then counts as diffuse.</param>
    /// <param name="dayOfYear">Day of the year in UTC.</param>
    /// <param name="albedo_frac">Part of the sunlight that the ground throws back.</param>
    public double PlaneSun_W_m2(double level_W_m2, SunAngles? sun, int dayOfYear, double albedo_frac)
    {
        if (level_W_m2 <= 0) return 0;
        SunAngles angles = sun ?? default;
        (double beam, double diffuse) = sun is null ? (0, level_W_m2) : GlobalHorizontalIrradiance.BeamAndDiffuse_W_m2(level_W_m2, angles, dayOfYear);
        return SurfaceIrradiance.Plane_W_m2(beam, diffuse, level_W_m2, angles, Tilt_rad, Azimuth_rad, albedo_frac);
    }
}
