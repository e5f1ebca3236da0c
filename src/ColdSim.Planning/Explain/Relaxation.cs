using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;

namespace ColdSim.Planning.Explain;

/// <summary>One limit relaxed by a fraction of itself: a sensitivity for finding out which limit binds, never a piece of advice.</summary>
/// <param name="Limit">The limit that it relaxes.</param>
/// <param name="Eased">
/// The scenario with the limit relaxed by a fraction; two scenarios where it is not known beforehand which direction relaxes it; none where
/// the rig has no such limit.
/// </param>
internal sealed record Relaxation(Limit Limit, Func<Scenario, double, IReadOnlyList<Scenario>> Eased)
{
    // The volume of a filling is stated at 60 °F, the temperature to which fillings refer.
    private const double Filling_K = 288.71;

    private const double Lowest_m = -5000, Highest_m = 11_000;

    /// <summary>All of them, in the order that decides between limits that are equal in everything else.</summary>
    public static IReadOnlyList<Relaxation> All { get; } =
    [
        new(Limit.HeatIntoLiquid, (scenario, part_frac) => [WithEach(scenario, c => MoreHeat(c, part_frac))]),
        new(Limit.LittleLiquid, (scenario, part_frac) => [WithEach(scenario, c => MoreWettedWall(c, part_frac))]),
        new(Limit.Regulator, (scenario, part_frac) => [WithLargerRegulator(scenario, part_frac)]),
        new(Limit.Appliances, WithSmallerAppliance),
        new(Limit.Altitude, WithOtherAirPressure),
        new(Limit.LiquidGone, (scenario, part_frac) => [WithEach(scenario, c => MorePropane(c, part_frac))]),
    ];

    /// <summary>
    /// The index among the appliances of the largest other one, beside the furnace, or beside the largest where there is no furnace; -1 where
    /// there is none.
    /// </summary>
    public static int LargestOther(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        int[] bySize = [.. Enumerable.Range(0, rig.Appliances.Count).OrderByDescending(i => rig.Appliances[i].Input_W)];
        int rank = rig.Furnace is null ? 1 : 0;
        return rank < bySize.Length ? bySize[rank] : -1;
    }

    // More heat from surroundings and blanket, at the same temperatures.
    private static CylinderSpecification MoreHeat(CylinderSpecification cylinder, double part_frac) => cylinder with
    {
        Surroundings = cylinder.Surroundings with { HeatGain_factor = cylinder.Surroundings.HeatGain_factor * (1 + part_frac) },
        Blanket = cylinder.Blanket is null ? null : cylinder.Blanket with { Power_W = cylinder.Blanket.Power_W * (1 + part_frac) },
    };

    // Wall wetted as if a fraction of a legal filling more liquid were in the cylinder; the propane stays as it is. Counted from the legal
    // filling, because a tenth of what is there would always do less than a tenth more heat and could never be distinguished from it.
    private static CylinderSpecification MoreWettedWall(CylinderSpecification cylinder, double part_frac) => cylinder with
    {
        Surroundings = cylinder.Surroundings with
        {
            WettingExtra_m3 = cylinder.Surroundings.WettingExtra_m3
                + part_frac * cylinder.LegalFill_kg / PropaneSaturation.LiquidDensity_kg_m3(Filling_K),
        },
    };

    // More propane to burn, without wetting more wall.
    private static CylinderSpecification MorePropane(CylinderSpecification cylinder, double part_frac) => cylinder with
    {
        Contents_kg = cylinder.Contents_kg * (1 + part_frac),
        Surroundings = cylinder.Surroundings with { WettingLiquid_factor = cylinder.Surroundings.WettingLiquid_factor / (1 + part_frac) },
    };

    private static Scenario WithLargerRegulator(Scenario scenario, double part_frac)
        => With(scenario, rig => rig with { Regulator = rig.Regulator with { RatedFlow_W = rig.Regulator.RatedFlow_W * (1 + part_frac) } });

    private static IReadOnlyList<Scenario> WithSmallerAppliance(Scenario scenario, double part_frac)
    {
        int other = LargestOther(scenario.Rig);
        return other < 0 ? [] :
        [
            With(scenario, rig => rig with
            {
                Appliances = [.. rig.Appliances.Select((d, i) => i == other ? d with { Input_W = d.Input_W * (1 - part_frac) } : d)],
            }),
        ];
    }

    // A site lower or higher by a fraction of its elevation, with the air pressure that belongs to it; weather and coach stay as they are. Both
    // directions are tried: thinner air leaves a cold cylinder more gauge pressure, and lets the second stage of the regulator pass less. At sea
    // level there is nothing to relax.
    private static IReadOnlyList<Scenario> WithOtherAirPressure(Scenario scenario, double part_frac)
        => scenario.Rig.Site.Elevation_m == 0 && scenario.Legs.All(l => l.Site.Elevation_m == 0)
            ? []
            : [AtElevation(scenario, 1 - part_frac), AtElevation(scenario, 1 + part_frac)];

    private static Scenario AtElevation(Scenario scenario, double factor)
    {
        SiteSpecification site = Moved(scenario.Rig.Site, factor);
        return scenario with
        {
            Rig = scenario.Rig with { Site = site },
            Weather = UnderPressure(scenario.Weather, scenario.Rig.Site, site),
            Legs = [.. scenario.Legs.Select(l => l with { Site = Moved(l.Site, factor), Weather = UnderPressure(l.Weather, l.Site, Moved(l.Site, factor)) })],
        };
    }

    private static WeatherSeries UnderPressure(WeatherSeries weather, SiteSpecification before, SiteSpecification after)
        => weather.UnderPressure(StandardAtmosphere.Pressure_Pa(after.Elevation_m) / StandardAtmosphere.Pressure_Pa(before.Elevation_m));

    private static SiteSpecification Moved(SiteSpecification site, double factor)
        => site with { Elevation_m = Math.Clamp(site.Elevation_m * factor, Lowest_m, Highest_m) };

    private static Scenario With(Scenario scenario, Func<Rig, Rig> change) => scenario with { Rig = change(scenario.Rig) };

    private static Scenario WithEach(Scenario scenario, Func<CylinderSpecification, CylinderSpecification> change)
        => With(scenario, rig => rig with { Cylinders = [.. rig.Cylinders.Select(change)] });
}
