using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[solar]</c> for one field of panels, <c>[[solar]]</c> for several.</summary>
internal static class SolarSection
{
    private const double Percent = 0.01;

    private static readonly SolarPanelSpecification Usual = new() { Rated_W = 0 };

    private static readonly QuantityKey Rated = new("rated", Dimension.Power, "1 W", "20 kW", KeyDefault.Needed, "at 1,000 W/m² and 25 °C");

    private static readonly QuantityKey Tilt = new(
        "tilt", Dimension.Angle, "0 °", "90 °", KeyDefault.Of(Usual.Tilt_rad, "°", "flat"), "from level");

    private static readonly QuantityKey Azimuth = new(
        "azimuth", Dimension.Angle, "0 °", "360 °", KeyDefault.Of(Usual.Azimuth_rad, "°", "south"), "direction they face, from north by east");

    private static readonly QuantityKey PerformanceRatio = new(
        "performance_ratio", Dimension.Ratio, "0.1", "1", KeyDefault.Of(Usual.PerformanceRatio_frac, ""),
        "what arrives per what the cells give; a plain charger 0.65");

    private static readonly QuantityKey SnowCover = new(
        "snow_cover", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.SnowCover_frac, ""), "part of them under snow; a flat panel after snowfall is 1")
    {
        Assumed = "solar: snow cover not given; assumed none",
    };

    private static readonly NumberKey TemperatureCoefficient = new(
        "temperature_coefficient", -1, 0, KeyDefault.Of(Usual.PowerPerKelvin_1_K / Percent), "change of power by the cells' temperature")
    { Unit = "% per K" };

    public static readonly ScenarioSection Declared = new(
        "solar", TableForm.OneOrMany, "solar panels", [Rated, Tilt, Azimuth, PerformanceRatio, SnowCover, TemperatureCoefficient]);

    public static SolarPanelSpecification Read(SectionReader section)
    {
        SolarPanelSpecification panel = new()
        {
            Rated_W = section.Present ? section.Require(Rated) : section.Get(Rated, 0),
            Tilt_rad = section.GetOrDefault(Tilt),
            Azimuth_rad = section.GetOrDefault(Azimuth),
            PerformanceRatio_frac = section.GetOrDefault(PerformanceRatio),
            SnowCover_frac = section.GetOrDefault(SnowCover),
            PowerPerKelvin_1_K = section.Get(TemperatureCoefficient) * Percent ?? Usual.PowerPerKelvin_1_K,
        };
        section.Finish();
        if (section.Present)
            section.Assume(SnowCover, "solar");
        return panel;
    }
}
