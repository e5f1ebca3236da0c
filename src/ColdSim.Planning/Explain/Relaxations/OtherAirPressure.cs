using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Planning.Explain.Relaxations;

/// <summary>A site lower or higher by a part of its height, with the air pressure that belongs to it; weather and coach stay as they are.</summary>
/// <remarks>
/// Both ways are tried. Thinner air leaves a cold cylinder more pressure above the air's, and lets the second stage of the regulator
/// pass less; which of the two counts, the run says. At sea level there is nothing to ease.
/// </remarks>
public sealed class OtherAirPressure : Relaxation
{
    private const double Lowest_m = -5000, Highest_m = 11_000;

    /// <inheritdoc/>
    public override Limit Limit => Limit.Altitude;

    /// <inheritdoc/>
    public override IReadOnlyList<Scenario> Eased(Scenario scenario, double part_frac)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return scenario.Rig.Site.Elevation_m == 0 && scenario.Legs.All(l => l.Site.Elevation_m == 0)
            ? []
            : [At(scenario, 1 - part_frac), At(scenario, 1 + part_frac)];
    }

    private static Scenario At(Scenario scenario, double height_factor)
    {
        SiteSpecification site = Moved(scenario.Rig.Site, height_factor);
        return scenario with
        {
            Rig = scenario.Rig with { Site = site },
            Weather = Under(scenario.Weather, scenario.Rig.Site, site),
            Legs = [.. scenario.Legs.Select(l => l with { Site = Moved(l.Site, height_factor), Weather = Under(l.Weather, l.Site, Moved(l.Site, height_factor)) })],
        };
    }

    private static WeatherSeries Under(WeatherSeries weather, SiteSpecification before, SiteSpecification after)
        => weather.UnderPressure(StandardAtmosphere.Pressure_Pa(after.Elevation_m) / StandardAtmosphere.Pressure_Pa(before.Elevation_m));

    private static SiteSpecification Moved(SiteSpecification site, double factor)
        => site with { Elevation_m = Math.Clamp(site.Elevation_m * factor, Lowest_m, Highest_m) };
}
