using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>Runs a scenario and reads the nights off it.</summary>
public static class NightRun
{
    /// <summary>Runs the scenario from its start.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <returns>The whole report. Check <c>Ledger.Closes</c> before trusting it.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="CannotRunException">The rig cannot start; <see cref="Try(Scenario, CancellationToken)"/> gives that as a value.</exception>
    /// <exception cref="ArgumentException">A start outside the weather, or a furnace without coach or thermostat.</exception>
    public static RunReport Of(Scenario scenario, CancellationToken cancel = default) => Of(scenario, RunDetail.Curves, cancel);

    /// <summary>The same, and only as much of the run is kept as is needed.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="detail">What is kept. Curves that are asked for all the same are worked out by running again.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="CannotRunException">The rig cannot start.</exception>
    /// <exception cref="ArgumentException">As <see cref="Of(Scenario, CancellationToken)"/>.</exception>
    internal static RunReport Of(Scenario scenario, RunDetail detail, CancellationToken cancel = default) => Try(scenario, detail, cancel).ReportOrThrow();

    /// <summary>Runs the scenario from its start, or says why its rig cannot start: full of liquid, or at its relief pressure.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">A start outside the weather, or a furnace without coach or thermostat.</exception>
    public static RunOutcome Try(Scenario scenario, CancellationToken cancel = default) => Try(scenario, RunDetail.Curves, cancel);

    /// <summary>The same, and only as much of the run is kept as is needed.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="detail">What is kept. Curves that are asked for all the same are worked out by running again.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">As <see cref="Try(Scenario, CancellationToken)"/>.</exception>
    internal static RunOutcome Try(Scenario scenario, RunDetail detail, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        NightCalendar calendar = new(scenario);
        IReadOnlyList<Leg> legs = LegsOf(scenario, calendar);
        NightReader reader = new(scenario, calendar, legs, detail);
        LegRun run = Through(scenario, legs, reader.Watch, cancel);
        reader.Finish();
        IReadOnlyList<NightReport> nights = reader.Nights;

        // The engine checks the cylinders before its first step.
        if (nights.Count == 0) return new RunOutcome(null, new CannotStart(run.End));
        RunReport report = new()
        {
            Scenario = scenario,
            Nights = nights,
            Summary = Summarise(nights, scenario),
            Events = reader.Watch.Events,
            Ledger = run.Ledger,
            Curves = reader.Curves,
            End = run.End,
            CoolDown = scenario.HeatStops is { } stops && run.Ended > stops && CoolDownRun.Reaches(scenario, stops) ? CoolDownRun.At(scenario, stops, cancel) : null,
        };
        return new RunOutcome(report, null);
    }

    /// <summary>The same run without curves and events: only how its nights went.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="watcher">Observes every step, in the run's own time.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">As <see cref="Try(Scenario, CancellationToken)"/>.</exception>
    internal static LeanRun Lean(Scenario scenario, IRunObserver watcher, CancellationToken cancel = default) => Lean(scenario, watcher, [], cancel);

    /// <summary>The same, with the legs that options have in common with it run once for all.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="watcher">Receives steps and events.</param>
    /// <param name="options">Runs that go on from its legs.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    internal static LeanRun Lean(Scenario scenario, IRunObserver watcher, IReadOnlyList<OptionRun> options, CancellationToken cancel)
    {
        NightCalendar calendar = new(scenario);
        IReadOnlyList<Leg> legs = LegsOf(scenario, calendar);
        NightWatch watch = new(scenario, calendar, watcher, RunDetail.Nights);
        LegRun run = new(scenario, watch);
        for (int i = 0; i < legs.Count; i++)
        {
            bool goesOn = run.Go(legs[i], [.. options.Where(o => o.Shared > i && !o.HasFailed).Select(o => o.Watch)], cancel);
            foreach (OptionRun option in options.Where(o => o.Shared > i))
            {
                if (!goesOn) option.EndWith(run);
                else if (option.Shared == i + 1) option.GoOnFrom(run);
            }

            if (!goesOn) break;
        }

        return LeanOf(run, watch, scenario);
    }

    /// <summary>The same, run on only until a night is known not to hold.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <returns>The run; null where a night does not hold.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    internal static LeanRun? LeanWhileItHolds(Scenario scenario, CancellationToken cancel = default)
    {
        using OptionRun run = new(scenario, 0, cancel);
        return run.Finish();
    }

    /// <summary>What a run has come to.</summary>
    internal static LeanRun LeanOf(LegRun run, NightWatch watch, Scenario scenario)
    {
        List<LeanNight> nights = new(watch.Nights.Count);
        foreach (NightTally t in watch.Nights)
        {
            if (!double.IsNaN(t.PropaneAtStart_kg)) nights.Add(LeanNight.Of(t, scenario.Criteria));
        }

        return new LeanRun(nights, run.End, run.Ledger);
    }

    /// <summary>The legs of a run, of one that has none as one leg.</summary>
    internal static IReadOnlyList<Leg> LegsOf(Scenario scenario) => LegsOf(scenario, new NightCalendar(scenario));

    /// <summary>The same, where its calendar is known.</summary>
    internal static IReadOnlyList<Leg> LegsOf(Scenario scenario, NightCalendar calendar)
    {
        IReadOnlyList<Leg> legs = scenario.Legs.Count > 0 ? scenario.Legs : [WholeRun(scenario, calendar)];
        return scenario.HeatStops is { } stops ? Leg.WithFurnaceOut(legs, stops) : legs;
    }

    private static LegRun Through(Scenario scenario, IReadOnlyList<Leg> legs, NightWatch watch, CancellationToken cancel)
    {
        LegRun run = new(scenario, watch);
        foreach (Leg leg in legs)
        {
            if (!run.Go(leg, cancel)) break;
        }

        return run;
    }

    private static Leg WholeRun(Scenario scenario, NightCalendar calendar) => new()
    {
        From = scenario.Start,
        To = scenario.Start.AddSeconds(calendar.Duration_s),
        Site = scenario.Rig.Site,
        Weather = scenario.Weather,
    };

    private static RunSummary Summarise(IReadOnlyList<NightReport> nights, Scenario scenario)
    {
        double used_kg = nights.Sum(n => n.GasUsed.Kilograms);
        NightReport? failed = nights.FirstOrDefault(n => n.Verdict != Verdict.Holds);
        Harm harm = Harm.None;
        foreach (NightReport night in nights) harm += night.Harm;
        return new RunSummary
        {
            Verdict = failed?.Verdict ?? Verdict.Holds,
            FirstFailure = failed?.FirstFailure,
            FreezingTime = Duration.FromHours(harm.FreezingHours),
            Lowest = double.IsFinite(harm.Lowest_K) ? Temperature.FromKelvins(harm.Lowest_K) : null,
            NoHeatTime = Duration.FromHours(harm.NoHeatHours),
            ColdKelvinHours = harm.ColdKelvinHours,
            Nights = nights.Count,
            NightsHeld = nights.Count(n => n.Verdict == Verdict.Holds),
            FirstShort = nights.FirstOrDefault(n => n.Verdict != Verdict.Holds && n.FirstShort is not null)?.FirstShort,
            DryAt = nights.FirstOrDefault(n => n.DryAt is not null)?.DryAt,
            FlatAt = nights.FirstOrDefault(n => n.Verdict != Verdict.Holds && n.Power?.FlatAt is not null)?.Power?.FlatAt,
            VoltageGone = Duration.FromSeconds(nights.Sum(n => n.Power?.VoltageGone.Seconds ?? 0)),
            ChargeLow = nights[0].Power is null ? null : Ratio.FromDecimalFractions(nights.Min(n => n.Power!.ChargeLow.DecimalFractions)),
            WaterFreezesAt = nights.SelectMany(n => n.Water).Where(w => w.HoldsWater).Min(w => w.FreezesAt),
            GasUsed = Mass.FromKilograms(used_kg),
            GasHeat = Energy.FromJoules(
                scenario.Rig.Gas.IsMixed ? nights.Sum(n => n.GasHeat.Joules) : used_kg * scenario.Rig.Gas.HeatingValue_J_kg),
            GasByAppliance = ApplianceGas.Sum([.. nights.Select(n => n.GasByAppliance)]),
            LeftAtStart = Mass.FromKilograms(scenario.Rig.Cylinders.Sum(c => c.Contents_kg)),
            LeftAtEnd = nights[^1].LeftAtEnd,
            CylinderChanges = nights.Sum(n => n.CylinderChanges),
            BlanketEnergy = Energy.FromJoules(nights.Sum(n => n.BlanketEnergy.Joules)),
            OutsideLow = Temperature.FromKelvins(nights.Min(n => n.OutsideLow.Kelvins)),
            InsideLow = nights[0].InsideLow is null ? null : Temperature.FromKelvins(nights.Min(n => n.InsideLow!.Value.Kelvins)),
            ShortTime = Duration.FromSeconds(nights.Sum(n => n.ShortTime.Seconds)),
            NoFlameTime = Duration.FromSeconds(nights.Sum(n => n.NoFlameTime.Seconds)),
            WeakFlameTime = Duration.FromSeconds(nights.Sum(n => n.WeakFlameTime.Seconds)),
            LockedOutTime = Duration.FromSeconds(nights.Sum(n => n.LockedOutTime.Seconds)),
        };
    }
}
