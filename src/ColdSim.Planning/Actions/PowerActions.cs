using ColdSim.Model.Electrical;
using ColdSim.Model.Heaters;
using ColdSim.Model.Site;

namespace ColdSim.Planning.Actions;

/// <summary>What can be done on the 12 V side: less that draws, more that charges, more charge.</summary>
/// <remarks>
/// A bank is made larger in kind and place as it is and as full at the start. Panels are added beside those there are, lying like the first of them, or
/// flat where there are none, and clear of snow. A generator burns the gas of the same cylinders.
/// </remarks>
internal static class PowerActions
{
    // Ends of reach and the usual set are common practice, no source.
    private const double LargestBank_J = 1000 * NominalVoltage.AmpereHour_J, BankStep_J = 25 * NominalVoltage.AmpereHour_J;
    private const double MostPanels_W = 2000, PanelStep_W = 50;
    private const double UsualGenerator_W = 2800;

    /// <summary>A place with a hookup, where something on board would use it. On a trip each stop has one of its own or none.</summary>
    public static IEnumerable<CandidateAction> ShorePower(Scenario scenario)
    {
        bool used = scenario.Rig.Power is not null || scenario.Rig.Appliances.Any(a => a.ElectricInput_W > 0)
            || scenario.Rig.Heaters.Any(h => h.Supply == HeaterSupply.ShorePower);
        if (used && !scenario.Rig.Site.Hookup && scenario.Legs.Count == 0)
            yield return CandidateAction.Once(ActionKind.ShorePower, s => OnBoardActions.With(s, r => r with { Site = r.Site with { Hookup = true } }));
    }

    /// <summary>All that a rig with a battery has room for; none without one.</summary>
    public static IEnumerable<CandidateAction> Battery(Scenario scenario)
    {
        if (scenario.Rig.Power is not { } power)
            yield break;
        SiteSpecification site = scenario.Rig.Site;
        if (power.Panels.Any(p => p.SnowCover_frac > 0))
        {
            yield return CandidateAction.Once(
                ActionKind.PanelsClear, s => On(s, p => p with { Panels = [.. p.Panels.Select(panel => panel with { SnowCover_frac = 0 })] }));
        }

        for (int i = 0; i < power.Loads.Count; i++)
        {
            string name = power.Loads[i].Name;
            int place = i;
            yield return CandidateAction.Once(ActionKind.LoadOff, s => On(s, p => p with { Loads = [.. p.Loads.Where((_, at) => at != place)] }), name);
        }

        if (power.Generator is { Hours.Count: > 0 })
            yield return CandidateAction.Once(ActionKind.GeneratorAnyHour, s => On(s, p => p with { Generator = p.Generator! with { Hours = [] } }));
        if (power.Panels.Count > 0 || site is { Latitude_deg: not null, Longitude_deg: not null })
        {
            yield return new(ActionKind.MorePanels, AmountGrid.Upwards(0, MostPanels_W, PanelStep_W),
                (s, v) => On(s, p => p with { Panels = [.. p.Panels, SamePanel(p, v)] }));
        }

        if (power.Battery.Rated_J < LargestBank_J)
        {
            yield return new(ActionKind.Battery, AmountGrid.Upwards(power.Battery.Rated_J, LargestBank_J, BankStep_J),
                (s, v) => On(s, p => p with { Battery = p.Battery with { Rated_J = v } }))
            {
                Now = power.Battery.Rated_J,
            };
        }

        if (power.Generator is null)
        {
            yield return new(ActionKind.Generator, [UsualGenerator_W],
                (s, v) => On(s, p => p with { Generator = new GeneratorSpecification { Rated_W = v } }));
        }
    }

    private static SolarPanelSpecification SamePanel(PowerSpecification power, double rated_W)
        => (power.Panels.Count > 0 ? power.Panels[0] : new SolarPanelSpecification { Rated_W = rated_W }) with { Rated_W = rated_W, SnowCover_frac = 0 };

    private static Scenario On(Scenario scenario, Func<PowerSpecification, PowerSpecification> change)
        => OnBoardActions.With(scenario, r => r with { Power = change(r.Power!) });
}
