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
    /// <exception cref="CannotRunException">The rig cannot start; <see cref="Try"/> gives that as a value.</exception>
    /// <exception cref="ArgumentException">A start outside the weather, or a furnace without coach or thermostat.</exception>
    public static RunReport Of(Scenario scenario, CancellationToken cancel = default) => Try(scenario, cancel).ReportOrThrow();

    /// <summary>Runs the scenario from its start, or says why its rig cannot start: full of liquid, or at its relief pressure.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">A start outside the weather, or a furnace without coach or thermostat.</exception>
    public static RunOutcome Try(Scenario scenario, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        NightCalendar calendar = new(scenario);
        IReadOnlyList<Leg> legs = LegsOf(scenario, calendar);
        RunSeries series = new(
            calendar.Duration_s, scenario.Rig.Cylinders.Count, scenario.Rig.GasPlaces, scenario.Rig.Nodes().Count, scenario.Rig.Gas.IsMixed,
            scenario.Rig.Power is not null)
        {
            Outlook = new LegOutlook(legs, leg => new SupplyOutlook(leg.Of(scenario.Rig), leg.Weather, scenario.Start)),
        };
        NightWatch watch = new(scenario, calendar, new SeriesRecorder(series));
        LegRun run = Through(scenario, legs, watch, cancel);
        List<NightReport> nights = [];
        foreach (NightTally tally in watch.Nights)
        {
            // A boundary reached exactly opens a night in which nothing was run.
            if (!double.IsNaN(tally.PropaneAtStart_kg)) nights.Add(Report(nights.Count + 1, tally, scenario, calendar.Evening(nights.Count), series, legs));
        }

        // The engine checks the cylinders before its first step.
        if (nights.Count == 0) return new RunOutcome(null, new CannotStart(run.End));
        RunReport report = new()
        {
            Scenario = scenario,
            Nights = nights,
            Summary = Summarise(nights, scenario),
            Events = watch.Events,
            Ledger = run.Ledger,
            Series = series,
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
    /// <exception cref="ArgumentException">As <see cref="Try"/>.</exception>
    internal static LeanRun Lean(Scenario scenario, IRunObserver watcher, CancellationToken cancel = default)
    {
        NightCalendar calendar = new(scenario);
        return Lean(scenario, calendar, new NightWatch(scenario, calendar, watcher, listEvents: false), cancel);
    }

    /// <summary>The same, run on only until a night is known not to hold.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <returns>The run; null where a night does not hold.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    internal static LeanRun? LeanWhileItHolds(Scenario scenario, CancellationToken cancel = default)
    {
        NightCalendar calendar = new(scenario);
        using CancellationTokenSource failed = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        NightWatch watch = new(scenario, calendar, UnwatchedRun.Only, listEvents: false) { Failed = failed };
        try
        {
            LeanRun run = Lean(scenario, calendar, watch, failed.Token);
            return run.Nights.All(n => n.Verdict == Verdict.Holds) ? run : null;
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
        {
            return null;
        }
    }

    private static LeanRun Lean(Scenario scenario, NightCalendar calendar, NightWatch watch, CancellationToken cancel)
    {
        LegRun run = Through(scenario, LegsOf(scenario, calendar), watch, cancel);
        List<LeanNight> nights = new(watch.Nights.Count);
        foreach (NightTally t in watch.Nights)
        {
            if (!double.IsNaN(t.PropaneAtStart_kg)) nights.Add(LeanNight.Of(t, scenario.Criteria));
        }

        return new LeanRun(nights, run.End, run.Ledger);
    }

    /// <summary>The legs of a run, of one that has none as one leg.</summary>
    internal static IReadOnlyList<Leg> LegsOf(Scenario scenario) => LegsOf(scenario, new NightCalendar(scenario));

    private static IReadOnlyList<Leg> LegsOf(Scenario scenario, NightCalendar calendar)
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

    private static NightReport Report(int number, NightTally t, Scenario scenario, DateOnly evening, RunSeries series, IReadOnlyList<Leg> legs)
    {
        DateTimeOffset? At(double time_s) => double.IsNaN(time_s) ? null : scenario.Start.AddSeconds(time_s);
        (Verdict verdict, double failure_s) = t.Harm.Judge(scenario.Criteria);
        bool coach = double.IsFinite(t.InsideLow_K);
        double used_kg = t.Used_kg;
        int low = Math.Min((int)Math.Round(t.OutsideLowAt_s / RunSeries.Spacing_s), series.Count - 1);
        bool isShort = !double.IsNaN(t.Harm.FirstShort_s);
        double allowed_K = series.Outlook!.AllowedLiquid_K(series, low);
        IReadOnlyList<BlendReport> blends = scenario.Rig.Gas.IsMixed ? BlendReport.Of(t, scenario, series) : [];
        return new NightReport
        {
            Number = number,
            Evening = evening,
            From = scenario.Start.AddSeconds(t.From_s),
            To = scenario.Start.AddSeconds(t.To_s),
            Verdict = verdict,
            FirstFailure = At(failure_s),
            FreezingTime = Duration.FromSeconds(t.Harm.Freezing_s),
            Lowest = double.IsFinite(t.Harm.Lowest_K) ? Temperature.FromKelvins(t.Harm.Lowest_K) : null,
            NoHeatTime = Duration.FromSeconds(t.Harm.NoHeat_s),
            ColdKelvinHours = t.Harm.ColdKelvinSeconds / 3600,
            Power = t.Power?.Report(scenario.Start),
            OutsideLow = Temperature.FromKelvins(t.OutsideLow_K),
            InsideLow = coach ? Temperature.FromKelvins(t.InsideLow_K) : null,
            InsideLowAt = coach ? At(t.InsideLowAt_s) : null,
            BurnerTime = Duration.FromSeconds(t.Burner_s),
            BurnerStarts = t.BurnerStarts,
            GasUsed = Mass.FromKilograms(used_kg),
            GasHeat = Energy.FromJoules(blends.Count > 0 ? blends.Sum(b => b.HeatUsed_J) : used_kg * scenario.Rig.Gas.HeatingValue_J_kg),
            Blends = blends,
            LeftAtDawn = double.IsNaN(t.PropaneAtDawn_kg) ? null : Mass.FromKilograms(t.PropaneAtDawn_kg),
            LeftAtEnd = Mass.FromKilograms(t.PropaneAtEnd_kg),
            EachLeftAtDawn = double.IsNaN(t.PropaneAtDawn_kg) ? [] : Each(t.EachAtDawn, scenario),
            EachLeftAtEnd = Each(t.EachAtEnd, scenario),
            DampTime = Duration.FromSeconds(t.Damp_s),
            CylinderChanges = t.CylinderChanges,
            ReserveStarts = t.ReserveStarts,
            BlanketEnergy = Energy.FromJoules(t.Blanket_J),
            OtherHeat = Energy.FromJoules(t.OtherHeat_J),
            HottestCylinder = Temperature.FromKelvins(t.Hottest_K),
            CylinderHotAt = At(t.CylinderHot_s),
            HotCylinder = double.IsNaN(t.CylinderHot_s) ? null : t.HotCylinder,
            GasByAppliance = t.Consumers.Gas(),
            FirstToStarve = t.Consumers.FirstToStarve(),
            Water = t.Consumers.Water(At),
            CylinderPressureLow = Pressure.FromPascals(t.CylinderPressureLow_Pa),
            LiquidLow = Temperature.FromKelvins(t.LiquidLow_K),
            DeliveryPressureLow = double.IsFinite(t.DeliveryLow_Pa) ? Pressure.FromPascals(t.DeliveryLow_Pa) : null,
            FirstShort = At(t.Harm.FirstShort_s),
            ShortTime = Duration.FromSeconds(t.Harm.Short_s),
            NoFlameTime = Duration.FromSeconds(t.Harm.NoFlame_s),
            WeakFlameTime = Duration.FromSeconds(t.Harm.WeakFlame_s),
            LockedOutTime = Duration.FromSeconds(t.Harm.LockedOut_s),
            BelowMinimumInlet = Duration.FromSeconds(t.BelowMinimumInlet_s),
            LeftAtFirstShort = isShort ? Mass.FromKilograms(t.PropaneAtFirstShort_kg) : null,
            LiquidAtFirstShort = isShort ? Temperature.FromKelvins(t.LiquidAtFirstShort_K) : null,
            CylinderPressureAtFirstShort = isShort ? Pressure.FromPascals(t.CylinderPressureAtFirstShort_Pa) : null,
            FirstLockout = At(t.FirstLockout_s),
            Lockouts = t.Lockouts,
            LiquidGoneAt = At(t.LiquidGone_s),
            DryAt = At(t.Harm.Dry_s),
            BelowSetPoint = TemperatureDelta.FromKelvins(t.Harm.BelowSetPoint_K),
            FreezingAt = At(t.Freezing_s),
            Capacity = new NightCapacity(scenario, legs, series, low, evening),
            SteadySupplyAtLow = Power.FromWatts(series.Outlook.CanGiveWithoutEnd_W(series, low)),
            AllowedLiquid = double.IsFinite(allowed_K) ? Temperature.FromKelvins(allowed_K) : null,
            DemandAtLow = Power.FromWatts(MeanAsked_W(series, low)),
        };
    }

    private static Mass[] Each(CylinderReadings readings, Scenario scenario)
    {
        Mass[] each = new Mass[scenario.Rig.Cylinders.Count];
        for (int i = 0; i < each.Length; i++) each[i] = Mass.FromKilograms(readings[i].Propane_kg);
        return each;
    }

    // Over the hour around a sample, so that a burner's cycles even out.
    private static double MeanAsked_W(RunSeries series, int sample)
    {
        int from = Math.Max(1, sample - 29), to = Math.Min(series.Count - 1, sample + 30);
        if (to < from) return 0;
        double sum_W = 0;
        for (int i = from; i <= to; i++) sum_W += series.Asked_W[i];
        return sum_W / (to - from + 1);
    }

    private static RunSummary Summarise(List<NightReport> nights, Scenario scenario)
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
