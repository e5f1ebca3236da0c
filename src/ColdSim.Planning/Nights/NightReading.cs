using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>Reads a night off what was counted in it and the curves around it.</summary>
internal static class NightReading
{
    /// <summary>The report of a night.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="t">What was counted in it.</param>
    /// <param name="scenario">The scenario that is run.</param>
    /// <param name="evening">Its evening.</param>
    /// <param name="series">Curves with all of the night and half an hour after it, or up to the run's end.</param>
    /// <param name="legs">The run's legs.</param>
    public static NightReport Of(int number, NightTally t, Scenario scenario, DateOnly evening, RunSeries series, IReadOnlyList<Leg> legs)
    {
        DateTimeOffset? At(double time_s) => double.IsNaN(time_s) ? null : scenario.Start.AddSeconds(time_s);
        (Verdict verdict, double failure_s) = t.Harm.Judge(scenario.Criteria);
        bool coach = double.IsFinite(t.InsideLow_K);
        double used_kg = t.Used_kg;
        int low = Math.Min((int)Math.Round(t.OutsideLowAt_s / RunSeries.Spacing_s) - series.FirstSample, series.Count - 1);
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
}
