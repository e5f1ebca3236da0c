using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using UnitsNet;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Nights;

public class NightVerdictTests
{
    // A small cylinder in deep cold with plenty of liquid: the furnace outruns what boils.
    private static Rig Starved => Heated(30_000, 130) with { Cylinders = [Bottle("20 lb", 0.9)] };

    private static RunReport ShortNight(NightCriteria? criteria = null) => Rigs.Nights(Starved, Steady(-28, 30), 1, criteria);

    [Fact]
    public void Cold_liquid_makes_a_night_short_with_propane_left()
    {
        NightReport night = ShortNight().Nights[0];
        Assert.Equal(Verdict.GasShort, night.Verdict);
        Assert.True(night.LeftAtFirstShort!.Value.Kilograms > 1);
        Assert.Null(night.DryAt);
        Assert.True(night.FirstShort > night.From && night.FirstShort < night.To);
        Assert.True(night.ShortTime.Minutes > 5);
        Assert.True(night.DeliveryPressureLow!.Value.Pascals < 10.5 * WaterColumn_Pa);
    }

    [Fact]
    public void Short_time_and_first_short_are_those_of_the_engine_s_events()
    {
        RunReport report = ShortNight();
        double total_s = 0;
        DateTimeOffset? since = null;
        foreach (ReportedEvent e in report.Events)
        {
            if (e.Kind == ReportedKind.ShortBegins) since = e.Time;
            if (e.Kind == ReportedKind.ShortEnds) (total_s, since) = (total_s + (e.Time - since!.Value).TotalSeconds, null);
        }

        if (since is not null) total_s += (report.Nights[0].To - since.Value).TotalSeconds;
        Assert.Equal(total_s, report.Nights[0].ShortTime.Seconds, 1e-3);
        Assert.Equal(report.Events.First(e => e.Kind == ReportedKind.ShortBegins).Time, report.Nights[0].FirstShort);
        Assert.Equal(report.Summary.FirstShort, report.Nights[0].FirstShort);
    }

    [Fact]
    public void A_night_records_the_liquid_s_state_at_its_first_shortage()
    {
        RunReport report = ShortNight();
        ReportedEvent begins = report.Events.First(e => e.Kind == ReportedKind.ShortBegins);
        Assert.Equal(begins.Liquid_K, report.Nights[0].LiquidAtFirstShort!.Value.Kelvins, 1e-9);
        Assert.Equal(begins.CylinderPressure_Pa, report.Nights[0].CylinderPressureAtFirstShort!.Value.Pascals, 1e-6);
        Assert.Equal(begins.Left_kg, report.Nights[0].LeftAtFirstShort!.Value.Kilograms, 1e-9);
    }

    [Fact]
    public void Lockouts_are_counted_within_their_night()
    {
        RunReport report = Rigs.Nights(Starved, Steady(-28, 54), 2);
        foreach (NightReport night in report.Nights)
        {
            ReportedEvent[] lockouts = [.. report.Events.Where(e => e.Kind == ReportedKind.Lockout && e.Time >= night.From && e.Time < night.To)];
            Assert.NotEmpty(lockouts);
            Assert.Equal(lockouts.Length, night.Lockouts);
            Assert.Equal(lockouts[0].Time, night.FirstLockout);
        }
    }

    [Fact]
    public void A_night_without_shortage_records_no_state_and_no_lockout()
    {
        NightReport night = Rigs.Nights(Heated(), Steady(-5), 1).Nights[0];
        Assert.Null(night.LiquidAtFirstShort);
        Assert.Null(night.CylinderPressureAtFirstShort);
        Assert.Null(night.FirstLockout);
        Assert.Equal(0, night.Lockouts);
        Assert.Null(night.LiquidGoneAt);
    }

    [Fact]
    public void Undersupply_over_noon_is_shared_between_both_nights()
    {
        Rig rig = new() { Cylinders = [Bottle("5 lb", 0.1)], Appliances = [Draw(9000)] };
        RunReport report = Rigs.Nights(rig, Steady(-5, 60), 2);
        Assert.Equal(24 * 3600, report.Nights[1].ShortTime.Seconds, 1e-6);
        Assert.Equal((report.Nights[0].To - report.Nights[0].FirstShort!.Value).TotalSeconds, report.Nights[0].ShortTime.Seconds, 1e-3);
        Assert.Equal(report.Nights[1].From, report.Nights[1].FirstShort);
        Assert.Equal(report.Nights[0].ShortTime.Seconds + 86_400, report.Summary.ShortTime.Seconds, 1e-6);
    }

    [Fact]
    public void A_night_is_dry_without_liquid_and_short_of_gas()
    {
        Rig rig = new() { Cylinders = [Bottle("5 lb", 0.1)], Appliances = [Draw(9000)] };
        RunReport report = Rigs.Nights(rig, Steady(-5, 60), 2);
        Assert.All(report.Nights, n => Assert.Equal(Verdict.GasGone, n.Verdict));
        Assert.Single(report.Events, e => e.Kind == ReportedKind.Dry);
        ReportedEvent gone = Assert.Single(report.Events, e => e.Kind == ReportedKind.LiquidGone);
        Assert.True(report.Nights[0].DryAt >= gone.Time);
        Assert.Equal(gone.Time, report.Nights[0].LiquidGoneAt);
        Assert.Equal(report.Nights[0].DryAt, report.Summary.DryAt);
    }

    [Fact]
    public void Cylinder_of_vapour_without_demand_is_not_dry()
    {
        Rig rig = new() { Cylinders = [Bottle("20 lb") with { Contents_kg = 0.05 }] };
        RunReport report = Rigs.Nights(rig, Steady(5, 30), 1);
        Assert.Equal(Verdict.Holds, report.Nights[0].Verdict);
        Assert.Null(report.Nights[0].DryAt);
    }

    [Fact]
    public void Verdicts_turn_exactly_past_their_thresholds()
    {
        NightReport night = ShortNight().Nights[0];
        Duration allowed = night.ShortTime;
        TemperatureDelta below = night.BelowSetPoint;
        TemperatureDelta plenty = TemperatureDelta.FromKelvins(100);
        Duration ever = Duration.FromHours(100);
        Assert.True(below.Kelvins > 1);
        Assert.Equal(Verdict.Holds, ShortNight(new() { ShortAllowance = allowed, BelowSetPoint = plenty }).Nights[0].Verdict);
        Assert.Equal(Verdict.GasShort,
            ShortNight(new() { ShortAllowance = Duration.FromSeconds(Math.BitDecrement(allowed.Seconds)), BelowSetPoint = plenty }).Nights[0].Verdict);
        Assert.Equal(Verdict.Holds, ShortNight(new() { ShortAllowance = ever, BelowSetPoint = below }).Nights[0].Verdict);
        Assert.Equal(Verdict.GasShort,
            ShortNight(new() { ShortAllowance = ever, BelowSetPoint = TemperatureDelta.FromKelvins(Math.BitDecrement(below.Kelvins)) }).Nights[0].Verdict);
    }

    [Fact]
    public void Threshold_of_undersupply_can_be_changed()
    {
        DateTimeOffset strict = ShortNight(new() { Undersupplied = Ratio.FromPercent(99.5) }).Nights[0].FirstShort!.Value;
        DateTimeOffset usual = ShortNight().Nights[0].FirstShort!.Value;
        DateTimeOffset lenient = ShortNight(new() { Undersupplied = Ratio.FromPercent(85) }).Nights[0].FirstShort!.Value;
        Assert.True(strict < usual && usual < lenient, $"{strict:O} {usual:O} {lenient:O}");
    }

    [Fact]
    public void Fall_below_set_point_of_a_furnace_that_is_too_small_is_not_counted_as_a_lack_of_gas()
    {
        NightReport night = Rigs.Nights(Heated(8000, 200) with { Cylinders = [BigTank()] }, Steady(-25, 30), 1).Nights[0];
        Assert.True(night.InsideLow!.Value.DegreesCelsius < 5);
        Assert.Equal(0, night.BelowSetPoint.Kelvins);
        Assert.Equal(Verdict.FurnaceTooSmall, night.Verdict);
    }

    [Fact]
    public void Fall_below_a_set_point_that_rises_in_the_morning_is_not_counted()
    {
        NightReport night = Rigs.Nights(Heated() with { Cylinders = [BigTank()], Thermostat = Holding(20, 10) }, Steady(-5, 30), 1).Nights[0];
        Assert.True(night.InsideLow!.Value.DegreesCelsius < 12);
        Assert.Equal(0, night.BelowSetPoint.Kelvins);
        Assert.Equal(Verdict.Holds, night.Verdict);
    }

    // Steps as a watch sees them: inside and set point in °C, an hour each.
    private static double Deepest_K(params (double Inside_C, double SetPoint_C, bool Short)[] steps)
    {
        SetPointShortfall want = new();
        StepRecord step = new(1);
        RunSnapshot last = new(0, 250, 2, steps[0].Inside_C + Zero_K, steps[0].SetPoint_C + Zero_K, 1e5, 2700, 5, 0, default);
        double deepest_K = 0;
        foreach ((double inside_C, double setPoint_C, bool isShort) in steps)
        {
            RunSnapshot next = last with { Time_s = last.Time_s + 3600, Inside_K = inside_C + Zero_K, SetPoint_K = setPoint_C + Zero_K };
            step.Undersupplied = isShort;
            step.SetPart(step, last, next);
            deepest_K = Math.Max(deepest_K, want.Below_K(step));
            last = next;
        }

        return deepest_K;
    }

    [Fact]
    public void Fall_is_counted_from_the_inside_temperature_when_gas_ran_short()
        => Assert.Equal(3, Deepest_K((17, 20, false), (17, 20, true), (14, 20, true)), 1e-9);

    [Fact]
    public void Fall_is_counted_from_the_set_point_where_inside_was_above_it()
        => Assert.Equal(2, Deepest_K((20, 15, false), (20, 15, true), (13, 15, true)), 1e-9);

    [Fact]
    public void Fall_continues_after_supply_is_back_until_inside_has_recovered()
        => Assert.Equal(5, Deepest_K((20, 20, false), (20, 20, true), (18, 20, true), (15, 20, false), (16, 20, false)), 1e-9);

    [Fact]
    public void Fall_after_inside_has_recovered_is_not_counted()
        => Assert.Equal(1, Deepest_K((20, 20, false), (20, 20, true), (19, 20, true), (20.1, 20, false), (10, 20, false)), 1e-9);

    [Fact]
    public void A_coach_without_a_thermostat_has_no_set_point_to_fall_below()
    {
        // A heater on a constant draw, starved: the night is short or dry, and its numbers are numbers.
        Rig rig = new() { Cylinders = [Bottle("5 lb", 0.2)], Coach = OneNode(60), Appliances = [Draw(9000, 0.9)] };
        NightReport night = Rigs.Nights(rig, Steady(-15, 30), 1).Nights[0];
        Assert.Equal(Verdict.GasShort, night.Verdict);
        Assert.True(double.IsFinite(night.BelowSetPoint.Kelvins), "The fall below the set point is not a number.");
    }

    [Fact]
    public void A_cylinder_alone_has_no_inside()
    {
        NightReport night = Rigs.Nights(new Rig { Cylinders = [Bottle()], Appliances = [Draw(3000)] }, Steady(-5, 30), 1).Nights[0];
        Assert.Null(night.InsideLow);
        Assert.Null(night.InsideLowAt);
        Assert.Null(night.FreezingAt);
        Assert.Equal(0, night.BelowSetPoint.Kelvins);
    }

    [Fact]
    public void Run_without_demand_has_no_lowest_delivery_pressure()
        => Assert.Null(Rigs.Nights(new Rig { Cylinders = [Bottle()] }, Steady(-5, 30), 1).Nights[0].DeliveryPressureLow);

    [Fact]
    public void Burner_time_and_starts_are_those_of_the_flame()
    {
        RunReport report = Rigs.Nights(Heated(), Steady(-5, 60), 2);
        Trace run = Run(Heated(), Steady(-5, 60), 44);
        Assert.Equal(run.Times_s(EventKind.BurnerOn).Length, report.Nights.Sum(n => n.BurnerStarts));
        Assert.Equal(run.Steps.Where(s => s.BurnerLit).Sum(s => s.To.Time_s - s.From.Time_s), report.Nights.Sum(n => n.BurnerTime.Seconds), 1e-6);
        double gas_J = report.Nights.Sum(n => n.BurnerTime.Seconds) * Heated().Furnace!.Input_W;
        Assert.Equal(gas_J, report.Summary.GasHeat.Joules, 1e-6 * gas_J);
    }

    [Fact]
    public void Lowest_outside_temperature_is_found_between_steps_too()
    {
        RunReport report = Rigs.Nights(Heated(), Changing(h => h == 13 ? -21 : -5 - h / 10, 40), 1);
        Assert.Equal(-21, report.Nights[0].OutsideLow.DegreesCelsius, 1e-9);
        Assert.Equal(-21, report.Summary.OutsideLow.DegreesCelsius, 1e-9);
    }

    [Fact]
    public void Cylinder_liquid_full_at_the_start_gives_a_reason_instead_of_a_crash()
    {
        Rig rig = new() { Cylinders = [Bottle("20 lb", 1.4) with { InitialTemperature_K = 300 }] };
        CannotRunException e = Assert.Throws<CannotRunException>(() => Rigs.Nights(rig, Steady(20, 30), 1));
        Assert.Contains("cylinder", e.Message, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_run_that_ends_in_its_relief_reports_the_night_so_far()
    {
        CylinderSpecification cylinder = Bottle("20 lb", 0.5);
        cylinder = cylinder with { ReliefPressure_Pa = 12e5, Surroundings = cylinder.Surroundings with { FixedSun_W = 500 } };
        RunReport report = Rigs.Nights(new Rig { Cylinders = [cylinder] }, Steady(25, 60), 2);
        Assert.Equal(RunEnd.ReliefPressure, report.End);
        Assert.Single(report.Nights);
        Assert.Equal(ReportedKind.ReliefPressure, report.Events[^1].Kind);
        Assert.Equal(report.Events[^1].Time, report.Nights[0].To);
    }
}
