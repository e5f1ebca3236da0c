using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Nodes;
using ColdSim.Model.Weather;
using ColdSim.Physics.Freezing;
using ColdSim.Planning;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;
using UnitsNet;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Freezing;

public class CoolDownRunTests
{
    private const double Pipe_J_K = 0.4 * Water.SpecificHeat_J_kgK;

    // A pipe that knows outside alone, so that the closed forms hold for it.
    private static readonly ThermalNode Line = new()
    {
        Name = "line",
        Capacity_J_K = Pipe_J_K,
        Water_kg = 0.4,
        Inside_W_K = 1.5,
        Outside_W_K = 0.5,
    };

    private static Scenario Held(double air_C = -10, params ThermalNode[] water)
        => Scenario(Heated() with { Cylinders = [BigTank()], Water = water }, Changing(_ => air_C, 120), 2);

    private static DateTimeOffset At(double hours) => Start.AddHours(hours);

    [Fact]
    public void Coach_of_one_node_cools_as_in_the_closed_form()
    {
        Scenario scenario = Scenario(Heated() with { Cylinders = [BigTank()], Coach = OneNode(100, 3.6e6) }, Changing(_ => -10, 120), 2);
        CoolDown stop = CoolDownRun.At(scenario, At(11));
        double inside_C = stop.Inside!.Value.DegreesCelsius, hours = 3.6e6 / 100 / 3600;
        Assert.InRange(inside_C, 18, 21);
        Assert.Equal(hours * Math.Log((inside_C + 10) / 20), stop.FiftyAfter!.Value.Hours, 1e-3);
        Assert.Equal(hours * Math.Log((inside_C + 10) / 10), stop.FreezingAfter!.Value.Hours, 1e-3);
        Assert.Equal(120 - 11, stop.Watched.Hours, 1e-6);
    }

    [Fact]
    public void Pipe_warmed_by_the_coach_freezes_after_the_coach_has_cooled()
    {
        CoolDown stop = CoolDownRun.At(Held(-10, Line), At(11));
        WaterAfter line = Assert.Single(stop.Water);
        Assert.True(line.BeginsAfter!.Value.Seconds > stop.FiftyAfter!.Value.Seconds);
        Assert.True(line.SolidAfter!.Value.Seconds > line.BeginsAfter.Value.Seconds);
        Assert.Same(line, stop.First);
    }

    [Fact]
    public void Run_with_a_furnace_stop_reports_the_same_times_as_the_question()
    {
        Scenario scenario = Held(-10, Line) with { HeatStops = At(11) };
        RunReport run = NightRun.Of(scenario);
        Assert.Equal(CoolDownRun.At(Held(-10, Line), At(11)).First!.BeginsAfter, run.CoolDown!.First!.BeginsAfter);
        ReportedEvent freezes = run.Events.First(e => e.Kind == ReportedKind.WaterFreezes);
        Assert.Equal(run.CoolDown.First!.BeginsAfter!.Value.Seconds, (freezes.Time - At(11)).TotalSeconds, 1);
        Assert.True(run.Ledger.Closes);
    }

    [Fact]
    public void Run_before_the_furnace_stop_equals_the_run_without_one()
    {
        double Used_kg(Scenario s) => NightRun.Of(s).Series.Propane_kg[11 * 60];
        Assert.Equal(Used_kg(Held()), Used_kg(Held() with { HeatStops = At(11) }), 1e-9);
    }

    [Fact]
    public void Time_until_freezing_falls_with_colder_air()
    {
        double last_s = double.PositiveInfinity;
        foreach (double air_C in (double[])[-3, -8, -15, -25])
        {
            double left_s = CoolDownRun.At(Held(air_C, Line), At(11)).First!.BeginsAfter!.Value.Seconds;
            Assert.True(left_s < last_s, $"{left_s} s at {air_C} °C");
            last_s = left_s;
        }
    }

    [Fact]
    public void Nothing_freezes_in_mild_weather()
    {
        CoolDown stop = CoolDownRun.At(Held(3, Line), At(11));
        Assert.Null(stop.FreezingAfter);
        Assert.Null(stop.First);
        Assert.NotNull(stop.FiftyAfter);
    }

    [Fact]
    public void An_instant_outside_the_run_is_refused()
    {
        Assert.Throws<TimeOutsideRunException>(() => CoolDownRun.At(Held(), At(-1)));
        Assert.Throws<TimeOutsideRunException>(() => CoolDownRun.At(Held(), At(121)));
        Assert.Throws<TimeOutsideRunException>(() => FreezeOutlook.Of(Held(), [At(1), At(500)]));
    }

    [Fact]
    public void Outlook_covers_four_instants_a_night_and_names_the_shortest()
    {
        Scenario scenario = Scenario(Heated() with { Cylinders = [BigTank()] }, Changing(h => h < 24 ? -5 : -20, 120), 2);
        IReadOnlyList<DateTimeOffset> instants = FreezeOutlook.UsualInstants(scenario);
        Assert.Equal(["18:00", "22:00", "03:00", "07:00", "18:00", "22:00", "03:00", "07:00"], instants.Select(t => t.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)));
        FreezeOutlook outlook = FreezeOutlook.Of(scenario, instants);
        Assert.Equal(outlook.Stops.Min(s => s.FreezingAfter!.Value.Seconds), outlook.Shortest!.FreezingAfter!.Value.Seconds);
        Assert.True(outlook.Shortest.At > At(14));
    }

    [Fact]
    public void Furnace_stop_after_the_end_of_the_run_has_no_effect()
    {
        Scenario scenario = Held() with { HeatStops = Held().End.AddHours(1) };
        RunReport run = NightRun.Of(scenario);
        Assert.Null(run.CoolDown);
        Assert.Equal(NightRun.Of(Held()).Summary.GasUsed.Kilograms, run.Summary.GasUsed.Kilograms, 1e-9);
    }

    [Fact]
    public void First_water_to_freeze_precedes_water_already_frozen_and_water_that_freezes_later()
    {
        WaterAfter ice = new("ice", Duration.Zero, Duration.Zero), now = new("now", Duration.Zero, Duration.FromHours(2)), later = new("later", Duration.FromHours(1), null);
        CoolDown Of(params WaterAfter[] water) => NightRun.Of(Held(-10, Line) with { HeatStops = At(11) }).CoolDown! with { Water = water };
        Assert.Equal("now", Of(later, ice, now).First!.Name);
        Assert.Equal("later", Of(later, ice).First!.Name);
        Assert.Equal("ice", Of(ice).First!.Name);

        // The headline is of the instant that leaves the least time, not of one at which it is too late.
        CoolDown late = Of(now), soon = Of(later) with { At = At(12) };
        Assert.Same(soon, new FreezeOutlook(Held(), [late, soon]).Shortest);
        Assert.Same(late, new FreezeOutlook(Held(), [late]).Shortest);
    }

    // Sun on a cylinder that is filled far too well, so that the run ends before noon.
    private static Scenario EndingEarly()
    {
        CylinderSpecification swelling = Bottle("20 lb", 1.15) with { InitialTemperature_K = 270 };
        swelling = swelling with { Surroundings = swelling.Surroundings with { FixedSun_W = 800 } };
        return Scenario(Heated() with { Cylinders = [swelling], Furnace = null, Thermostat = null }, Changing(_ => 5, 120), 2);
    }

    [Fact]
    public void A_furnace_that_would_stop_after_a_run_has_ended_early_has_no_answer_of_its_own()
    {
        RunReport run = NightRun.Of(EndingEarly() with { HeatStops = At(11) });
        Assert.Equal(RunEnd.LiquidFull, run.End);
        Assert.Null(run.CoolDown);
    }

    [Fact]
    public void A_question_about_an_instant_after_an_early_end_is_refused_with_the_end()
    {
        CannotRunException refused = Assert.Throws<CannotRunException>(() => CoolDownRun.At(EndingEarly(), At(11)));
        Assert.Matches("^The run ends at 2027-01-12T1[6-9]:.*liquid fills a cylinder", refused.Message);
    }
}
