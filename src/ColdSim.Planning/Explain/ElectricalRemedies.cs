using ColdSim.Model.Electrical;
using ColdSim.Model.Site;

namespace ColdSim.Planning.Explain;

/// <summary>What could be done where the battery fails first: more charge, more that charges, less that draws.</summary>
/// <remarks>
/// A bank is made larger in kind and place as it is and as full at the start. Panels are added beside those there are, lying like the first of them, or flat where
/// there are none, and clear of snow. A generator burns the gas of the same cylinders.
/// </remarks>
internal static class ElectricalRemedies
{
    // Ends of reach and the usual set are common practice, no source.
    private const double LargestBank_J = 1000 * NominalVoltage.AmpereHour_J, BankStep_J = 10 * NominalVoltage.AmpereHour_J;
    private const double MostPanels_W = 2000, PanelStep_W = 25;
    private const double UsualGenerator_W = 2800;

    /// <summary>All that a rig with a battery has room for; none without one.</summary>
    public static IEnumerable<RemedyRange> Ranges(Scenario scenario)
    {
        if (scenario.Rig.Power is not { } power)
            yield break;
        SiteSpecification site = scenario.Rig.Site;
        if (power.Battery.Rated_J < LargestBank_J)
        {
            yield return new(RemedyKind.Battery, power.Battery.Rated_J, LargestBank_J, BankStep_J,
                (s, v) => On(s, p => p with { Battery = p.Battery with { Rated_J = v } }));
        }

        if (power.Panels.Any(p => p.SnowCover_frac > 0))
        {
            yield return new(RemedyKind.PanelsClear, 0, 1, 1,
                (s, _) => On(s, p => p with { Panels = [.. p.Panels.Select(panel => panel with { SnowCover_frac = 0 })] }));
        }

        if (power.Panels.Count > 0 || site is { Latitude_deg: not null, Longitude_deg: not null })
            yield return new(RemedyKind.MorePanels, 0, MostPanels_W, PanelStep_W, (s, v) => On(s, p => p with { Panels = [.. p.Panels, SamePanel(p, v)] }));
        for (int i = 0; i < power.Loads.Count; i++)
        {
            int load = i;
            yield return new(RemedyKind.LoadOff, 0, 1, 1, (s, _) => On(s, p => p with { Loads = [.. p.Loads.Where((_, place) => place != load)] }))
            {
                Name = _ => power.Loads[load].Name,
            };
        }

        // On a trip each stop has a hookup of its own or none.
        if (!site.Hookup && scenario.Legs.Count == 0)
            yield return new(RemedyKind.ShorePower, 0, 1, 1, (s, _) => s with { Rig = s.Rig with { Site = s.Rig.Site with { Hookup = true } } });
        if (power.Generator is null)
        {
            yield return new(RemedyKind.Generator, 0, UsualGenerator_W, UsualGenerator_W,
                (s, v) => On(s, p => p with { Generator = new GeneratorSpecification { Rated_W = v } }));
        }
    }

    private static SolarPanelSpecification SamePanel(PowerSpecification power, double rated_W)
        => (power.Panels.Count > 0 ? power.Panels[0] : new SolarPanelSpecification { Rated_W = rated_W }) with { Rated_W = rated_W, SnowCover_frac = 0 };

    private static Scenario On(Scenario scenario, Func<PowerSpecification, PowerSpecification> change)
        => scenario with { Rig = scenario.Rig with { Power = change(scenario.Rig.Power!) } };
}
