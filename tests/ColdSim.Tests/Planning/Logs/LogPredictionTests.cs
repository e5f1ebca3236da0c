using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Logs;

public class LogPredictionTests
{
    private static string Path(string name) => System.IO.Path.Combine(DocPage.Scenarios, name);

    private static Scenario Three => ScenarioReader.Read(Path("three-days.toml")).Scenario!;

    private static UseLog LogOf(Scenario scenario, params LogReading[] readings) => UseLog.Of(readings, [.. scenario.Rig.Cylinders.Select(GaugedCylinder.Of)]);

    private static LogReading Weighed(DateTimeOffset time, double mass_kg, int cylinder = 0, bool filled = false, int line = 2) => new()
    {
        Line = line,
        Time = time,
        Cylinder = cylinder,
        Filled = filled,
        Reading = new WeightReading { Name = "weight", Scale_kg = mass_kg + 10, Tare_kg = 10 },
    };

    [Fact]
    public void Prediction_of_simulated_readings_reproduces_them()
    {
        Scenario scenario = Three;
        RunReport run = NightRun.Of(scenario);
        LogReading At(int hours) => Weighed(scenario.Start.AddHours(hours), run.Series.Propane_kg[60 * hours], line: 2 + hours);
        LogPrediction log = LogPrediction.Of(scenario, LogOf(scenario, At(0), At(15), At(24), At(39), At(48)));
        Assert.Null(log.Rows[0].Predicted);
        Assert.All(log.Rows.Skip(1), r => Assert.InRange(r.Off!.Value.Pounds, -0.15, 0.15));
        Assert.All(log.Rows, r => Assert.Equal(ReadingMark.None, r.Mark));
        Assert.Equal(3, log.Days.Count);
        Assert.Equal([8.0, 24.0, 16.0], log.Days.Select(d => Math.Round(d.Covered.Hours, 6)));
        Assert.InRange(log.Used / log.Predicted, 0.98, 1.02);
        Assert.Equal(run.Series.Propane_kg[0] - run.Series.Propane_kg[60 * 48], log.Used.Kilograms, 6);
    }

    [Fact]
    public void The_days_add_up_to_the_readings_and_their_errors_to_less()
    {
        Scenario scenario = Three;
        UseLog use = UseLog.Of(LogReader.Read(Path("three-days.log.csv"), scenario.Rig).Readings, GaugedCylinder.Of(scenario.Rig.Cylinders[0]));
        LogPrediction log = LogPrediction.Of(scenario, use);
        Assert.Equal(use.Rows[0].Contents.Mass_kg - use.Rows[^1].Contents.Mass_kg, log.Used.Kilograms, 9);
        Assert.Equal(use.Rows[^1].Reading.Time - use.Rows[0].Reading.Time, TimeSpan.FromHours(log.Days.Sum(d => d.Covered.Hours)));
        Assert.All(log.Days, d => Assert.InRange(d.UsedUncertainty.Pounds, 0.02, 0.4));
        Assert.InRange(log.Used / log.Predicted, 1.05, 1.4);
    }

    [Fact]
    public void A_filling_and_a_time_outside_the_weather_are_not_predicted()
    {
        Scenario scenario = Three;
        LogPrediction log = LogPrediction.Of(scenario, LogOf(
            scenario, Weighed(scenario.Start, 10), Weighed(scenario.Start.AddHours(10), 18, filled: true), Weighed(scenario.Weather.Last.AddHours(5), 5)));
        Assert.All(log.Rows, r => Assert.Null(r.Predicted));
        Assert.Empty(log.Days);
        Assert.Empty(LogPrediction.Of(scenario, LogOf(scenario)).Rows);
    }

    [Fact]
    public void Readings_of_several_cylinders_are_predicted_separately()
    {
        Scenario scenario = ScenarioReader.Read(Path("changeover.toml")).Scenario!;
        Assert.Equal(2, scenario.Rig.Cylinders.Count);
        DateTimeOffset t = scenario.Start;
        UseLog use = LogOf(
            scenario, Weighed(t, 8, 0, line: 2), Weighed(t, 7, 1, line: 3), Weighed(t.AddHours(12), 6, 0, line: 4), Weighed(t.AddHours(12), 7, 1, line: 5));
        Assert.Equal([null, null, 2.0, 0.0], use.Rows.Select(r => r.Used is { } u ? Math.Round(u.Kilograms, 9) : (double?)null));
        LogPrediction log = LogPrediction.Of(scenario, use);
        Assert.Equal(7, log.Rows[3].Predicted!.Value.Kilograms, 1);
        Assert.True(log.Rows[2].Predicted!.Value.Kilograms < 8);
        ForecastStart start = ForecastStart.Of(scenario, use)!;
        Assert.Equal([6.0, 7.0], start.Scenario.Rig.Cylinders.Select(c => Math.Round(c.Contents_kg, 9)));
        Assert.Empty(start.Older);
        ForecastStart later = ForecastStart.Of(scenario, LogOf(scenario, Weighed(t.AddHours(2), 8, 0), Weighed(t.AddHours(12), 6, 0)))!;
        Assert.Equal([1], later.Unread);

        // What the left one gave is about all that was used, so the right one has given nothing.
        Assert.Equal(StartedBy.WorkedOut, later.Scenario.StartedFrom!.Cylinders[1].By);
        Assert.Equal(scenario.Rig.Cylinders[1].Contents_kg, later.Scenario.Rig.Cylinders[1].Contents_kg, 0.1);
    }

    [Fact]
    public void A_trip_is_cut_at_the_reading()
    {
        Scenario one = Three;
        DateTimeOffset t = one.Start;
        TripStop Stop(int from, int to) => new() { From = t.AddHours(from), To = t.AddHours(to), Site = one.Rig.Site, Weather = one.Weather };
        Refill At(int hours) => new() { Cylinder = 0, At = t.AddHours(hours), Kind = RefillKind.Fill };
        Trip trip = new() { Stops = [Stop(0, 30), Stop(34, 80)], Refills = [At(10), At(50)] };
        Scenario scenario = one with { Trip = trip, Legs = TripLegs.Of(trip, one.Rig.Cylinders) };
        Scenario Moved(int hours) => ForecastStart.Of(scenario, LogOf(scenario, Weighed(t.AddHours(hours), 9)))!.Scenario;
        Scenario here = Moved(20);
        Assert.Equal(t.AddHours(20), here.Start);
        Assert.Equal([t.AddHours(20), t.AddHours(34)], here.Trip!.Stops.Select(s => s.From));
        Assert.Equal(t.AddHours(50), Assert.Single(here.Trip.Refills).At);
        Assert.Equal(9, here.Rig.Cylinders[0].Contents_kg, 9);
        Scenario road = Moved(32);
        Assert.Equal(t.AddHours(34), road.Start);
        Assert.Single(road.Trip!.Stops);
        Assert.Null(ForecastStart.Of(scenario, LogOf(scenario, Weighed(t.AddHours(81), 9))));
        Assert.NotEmpty(NightRun.Of(here).Nights);
    }

    [Fact]
    public void A_cylinder_has_a_name_in_the_log()
    {
        Scenario scenario = ScenarioReader.Read(Path("changeover.toml")).Scenario!;
        Assert.All(Enumerable.Range(0, 2), i => Assert.Equal(i, LogCylinders.PlaceOf(scenario.Rig, LogCylinders.NameOf(scenario.Rig, i).ToUpperInvariant())));
        Assert.Null(LogCylinders.PlaceOf(scenario.Rig, "nothing of the kind"));
        CylinderSpecification one = Three.Rig.Cylinders[0];
        Assert.Equal(0, LogCylinders.PlaceOf(Three.Rig, one.Name));
    }
}
