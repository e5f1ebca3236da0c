using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Heaters;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.Planning.Actions;

/// <summary>What can be done with what is on board.</summary>
internal static class OnBoardActions
{
    // Colder than this inside, pipes and people are the matter, not gas.
    private const double LowestSetPoint_K = 278.15;

    /// <summary>Covers, and a heater beside the furnace.</summary>
    public static IEnumerable<CandidateAction> Warmth(Scenario scenario)
    {
        Rig rig = scenario.Rig;
        if (rig.Coach is { Covers_W_K: > 0, CoverHours.Count: > 0 })
            yield return CandidateAction.Once(ActionKind.WindowCovers, s => With(s, r => r with { Coach = r.Coach! with { CoverHours = [] } }));
        for (int i = 0; i < rig.Heaters.Count; i++)
        {
            int place = i;
            OtherHeater heater = rig.Heaters[i];
            if (heater.Hours.Count == 0 || (heater.Supply == HeaterSupply.ShorePower && !rig.Site.Hookup && scenario.Legs.All(l => !l.Site.Hookup)))
                continue;
            yield return CandidateAction.Once(
                ActionKind.OtherHeater, s => With(s, r => r with { Heaters = [.. r.Heaters.Select((h, at) => at == place ? h with { Hours = [] } : h)] }), heater.Name);
        }
    }

    /// <summary>Lower set points.</summary>
    public static IEnumerable<CandidateAction> SetPoints(Scenario scenario, AmountGrid grid)
    {
        if (scenario.Rig is not { Thermostat: { } thermostat, Furnace: not null })
            yield break;
        if (grid.SetPointsBelow(thermostat.NightSetPoint_K, LowestSetPoint_K) is { Length: > 0 } night)
        {
            yield return new(ActionKind.NightSetPoint, night, (s, v) => With(s, r => r with { Thermostat = r.Thermostat! with { NightSetPoint_K = v } }))
            {
                Now = thermostat.NightSetPoint_K,
            };
        }

        if (grid.SetPointsBelow(thermostat.DaySetPoint_K, LowestSetPoint_K) is { Length: > 0 } day)
        {
            yield return new(ActionKind.DaySetPoint, day, (s, v) => With(s, r => r with { Thermostat = r.Thermostat! with { DaySetPoint_K = v } }))
            {
                Now = thermostat.DaySetPoint_K,
            };
        }
    }

    /// <summary>Which cylinder first, both open, and what else burns gas off.</summary>
    public static IEnumerable<CandidateAction> Gas(Scenario scenario)
    {
        Rig rig = scenario.Rig;

        // The refills of a trip name the cylinders by their places.
        if (scenario.Trip is null && rig.Arrangement is not OpenTogether)
        {
            for (int i = 1; i < rig.Cylinders.Count; i++)
            {
                int first = i;
                yield return CandidateAction.Once(ActionKind.CylinderFirst, s => InFront(s, first), rig.NameOf(first));
            }
        }

        if (rig is { Cylinders.Count: > 1, Arrangement: OneAtATime, Gas.IsMixed: false })
            yield return CandidateAction.Once(ActionKind.BothOpen, s => With(s, r => r with { Arrangement = new OpenTogether() }));
        foreach (int i in OtherAppliances(rig))
        {
            yield return CandidateAction.Once(
                ActionKind.ApplianceOff, s => With(s, r => r with { Appliances = [.. r.Appliances.Select((a, at) => at == i ? a.Shut() : a)] }), rig.Appliances[i].Name);
        }

        if (rig.Power?.Generator is not null)
            yield return CandidateAction.Once(ActionKind.GeneratorOff, s => With(s, r => r with { Power = r.Power! with { Generator = null } }));
    }

    /// <summary>The scenario with another rig; the legs of a trip follow.</summary>
    public static Scenario With(Scenario scenario, Func<Rig, Rig> change) => InputErrors.WithRig(scenario, change(scenario.Rig));

    // Without a furnace the largest burner is what the gas is for, so it stays lit.
    private static IEnumerable<int> OtherAppliances(Rig rig)
    {
        int largest = rig.Furnace is not null || rig.Appliances.Count == 0 ? -1
            : Enumerable.Range(0, rig.Appliances.Count).MaxBy(i => rig.Appliances[i].Input_W);
        for (int i = 0; i < rig.Appliances.Count; i++)
        {
            if (i != largest && rig.Appliances[i] is { IsOff: false }) yield return i;
        }
    }

    private static Scenario InFront(Scenario scenario, int first)
    {
        int[] order = [first, .. Enumerable.Range(0, scenario.Rig.Cylinders.Count).Where(i => i != first)];
        return With(scenario.WithPlacesIn(order), r => r with { Cylinders = [.. order.Select(i => r.Cylinders[i])] });
    }
}
