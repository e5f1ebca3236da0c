using ColdSim.Model.Weather;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Electrical;

/// <summary>What solar panels give in a sunshine. SI units.</summary>
public static class SolarPanel
{
    private const double StandardSun_W_m2 = 1000;
    private const double StandardCell_K = 298.15;
    private const double NominalSun_W_m2 = 800;
    private const double NominalAir_K = 293.15;

    /// <summary>Power at the battery. [W]</summary>
    /// <param name="panel">The panels.</param>
    /// <param name="sun_W_m2">Sun in their plane. [W/m²]</param>
    /// <param name="air_K">Air around them. [K]</param>
    public static double Power_W(SolarPanelSpecification panel, double sun_W_m2, double air_K)
        => Cells_W(panel, sun_W_m2, Cell_K(panel, sun_W_m2, air_K)) * panel.PerformanceRatio_frac * (1 - panel.SnowCover_frac);

    /// <summary>What the cells give: in proportion to the sun, less by their temperature; never below 0. [W]</summary>
    /// <param name="panel">The panels.</param>
    /// <param name="sun_W_m2">Sun in their plane. [W/m²]</param>
    /// <param name="cell_K">Temperature of the cells. [K]</param>
    public static double Cells_W(SolarPanelSpecification panel, double sun_W_m2, double cell_K)
        => Math.Max(0, panel.Rated_W * sun_W_m2 / StandardSun_W_m2 * (1 + (panel.PowerPerKelvin_1_K * (cell_K - StandardCell_K))));

    /// <summary>Temperature of the cells: above the air in proportion to the sun. [K]</summary>
    /// <param name="panel">The panels.</param>
    /// <param name="sun_W_m2">Sun in their plane. [W/m²]</param>
    /// <param name="air_K">Air around them. [K]</param>
    public static double Cell_K(SolarPanelSpecification panel, double sun_W_m2, double air_K)
        => air_K + ((panel.NominalCell_K - NominalAir_K) * sun_W_m2 / NominalSun_W_m2);

    /// <summary>Sun in the panels' plane from that on level ground. [W/m²]</summary>
    /// <param name="panel">The panels.</param>
    /// <param name="level_W_m2">Global irradiance on level ground. [W/m²]</param>
    /// <param name="sun">Where the sun stands; null where the place is not known: all of the light then counts as diffuse.</param>
    /// <param name="dayOfYear">Day of the year in UTC.</param>
    /// <param name="albedo_frac">Part of the sunlight that the ground throws back.</param>
    public static double PlaneSun_W_m2(SolarPanelSpecification panel, double level_W_m2, SunAngles? sun, int dayOfYear, double albedo_frac)
    {
        if (level_W_m2 <= 0) return 0;
        SunAngles angles = sun ?? default;
        (double beam, double diffuse) = sun is null ? (0, level_W_m2) : SunParts.Of(level_W_m2, angles, dayOfYear);
        return TiltedSurface.Irradiance_W_m2(beam, diffuse, level_W_m2, angles, panel.Tilt_rad, panel.Azimuth_rad, albedo_frac);
    }
}
