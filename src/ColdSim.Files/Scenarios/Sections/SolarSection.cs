using ColdSim.Files.Quantities;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[solar]</c> for one field of panels, <c>[[solar]]</c> for several.</summary>
internal static class SolarSection
{
    private const double Percent = 0.01;
    private static readonly QuantityKey Rated = new("rated", Dimension.Power, "1 W", "20 kW");
    private static readonly QuantityKey Tilt = new("tilt", Dimension.Angle, "0 °", "90 °");
    private static readonly QuantityKey Azimuth = new("azimuth", Dimension.Angle, "0 °", "360 °");
    private static readonly QuantityKey PerformanceRatio = new("performance_ratio", Dimension.Ratio, "0.1", "1");
    private static readonly QuantityKey SnowCover = new("snow_cover", Dimension.Ratio, "0", "1");

    public static SolarPanelSpecification Read(SectionReader section)
    {
        SolarPanelSpecification defaults = new() { Rated_W = 0 };
        SolarPanelSpecification panel = new()
        {
            Rated_W = section.Present ? section.Require(Rated) : section.Get(Rated, 0),
            Tilt_rad = section.Get(Tilt, defaults.Tilt_rad),
            Azimuth_rad = section.Get(Azimuth, defaults.Azimuth_rad),
            PerformanceRatio_frac = section.Get(PerformanceRatio, defaults.PerformanceRatio_frac),
            SnowCover_frac = section.Get(SnowCover, defaults.SnowCover_frac),
            PowerPerKelvin_1_K = section.Number("temperature_coefficient", -1, 0) * Percent ?? defaults.PowerPerKelvin_1_K,
        };
        section.Finish();
        if (section.Present && !section.Has("snow_cover"))
            section.Reading.Assume($"solar: snow cover not given, taken as none");
        return panel;
    }
}
