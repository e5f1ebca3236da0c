using ColdSim.Model;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Model;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Nights;

/// <summary>Nights seen through whole runs: a cylinder that does nothing will do.</summary>
public class NightCalendarTests
{
    private static RunReport Idle(int startHour, double weather_h, int? nights, TimeOnly? dawn = null)
    {
        DateTimeOffset start = new(2027, 1, 12, startHour, 0, 0, TimeSpan.FromHours(-7));
        return Rigs.Nights(new Rig { Cylinders = [Bottle()], Appliances = [Draw(100)] }, Changing(_ => -5, weather_h, first: start), nights,
            new NightCriteria { Dawn = dawn ?? new TimeOnly(7, 0) }, start);
    }

    private static string[] Spans(RunReport report) => [.. report.Nights.Select(n => $"{n.From:dd HH}-{n.To:dd HH}")];

    [Theory]
    [InlineData(16, 2, "12 16-13 12,13 12-14 12")]
    [InlineData(10, 2, "12 10-13 12,13 12-14 12")]
    [InlineData(7, 1, "12 07-13 12")]
    [InlineData(6, 1, "12 06-12 12")]
    [InlineData(12, 1, "12 12-13 12")]
    [InlineData(13, 1, "12 13-13 12")]
    [InlineData(0, 2, "12 00-12 12,12 12-13 12")]
    public void Nights_end_at_noon_and_the_first_begins_with_the_run(int startHour, int nights, string spans)
    {
        RunReport report = Idle(startHour, 96, nights);
        Assert.Equal(spans.Split(','), Spans(report));
        Assert.Equal(Enumerable.Range(1, nights), report.Nights.Select(n => n.Number));
        Assert.Equal(nights, report.Summary.Nights);
    }

    [Theory]
    [InlineData(16, "12 13")]
    [InlineData(12, "12 13")]
    [InlineData(10, "12 13")]
    [InlineData(7, "12 13")]
    [InlineData(6, "11 12")]
    [InlineData(0, "11 12")]
    public void Every_night_is_named_after_the_day_on_whose_evening_it_begins(int startHour, string evenings)
        => Assert.Equal(evenings, string.Join(' ', Idle(startHour, 96, 2).Nights.Select(n => $"{n.Evening:dd}")));

    [Fact]
    public void A_morning_belongs_to_the_stop_of_the_night_that_it_comes_before()
    {
        DateTimeOffset start = new(2027, 1, 12, 8, 0, 0, TimeSpan.FromHours(-7));
        Rig rig = new() { Cylinders = [Bottle()], Appliances = [Draw(100)] };
        WeatherSeries weather = Changing(_ => -5, 96, first: start);
        Trip trip = new()
        {
            Stops =
            [
                new() { From = start, To = start.AddHours(2), Site = rig.Site, Weather = weather },
                new() { From = start.AddHours(4), To = start.AddHours(28), Site = rig.Site, Weather = weather },
            ],
        };
        Scenario scenario = new() { Title = "", Rig = rig, Weather = weather, Start = start, Trip = trip, Legs = TripLegs.Of(trip, rig.Cylinders) };
        Assert.Equal(1, Assert.Single(TripRun.Of(scenario).Nights).Stop);
    }

    [Theory]
    [InlineData(20, 1)]
    [InlineData(26, 1)]
    [InlineData(32, 1)]
    [InlineData(33, 2)]
    [InlineData(44, 2)]
    public void An_afternoon_that_the_weather_cuts_off_is_left_out(double weather_h, int nights)
    {
        // From four in the afternoon: noon is 20 h away, the midnight after it 32 h.
        RunReport report = Idle(16, weather_h, null);
        Assert.Equal(nights, report.Nights.Count);
        Assert.Equal(weather_h <= 32 ? "13 12" : weather_h == 33 ? "14 01" : "14 12", $"{report.Nights[^1].To:dd HH}");
    }

    [Fact]
    public void More_nights_than_weather_ends_with_the_weather()
    {
        RunReport report = Idle(16, 30, 3);
        Assert.Equal(ColdSim.Model.Engine.RunEnd.WeatherEnded, report.End);
        Assert.Equal(["12 16-13 12", "13 12-13 22"], Spans(report));
        Assert.Equal(ReportedKind.WeatherEnds, report.Events[^1].Kind);
    }

    [Fact]
    public void Gas_used_adds_up_over_the_nights()
    {
        RunReport report = Idle(16, 96, 3);
        Assert.Equal(report.Summary.LeftAtStart.Kilograms - report.Summary.LeftAtEnd.Kilograms, report.Nights.Sum(n => n.GasUsed.Kilograms), 1e-12);
        Assert.Equal(100 * Btu_h * 68 * 3600, report.Summary.GasHeat.Joules, 1.0);
        for (int i = 1; i < 3; i++)
            Assert.Equal(report.Nights[i - 1].LeftAtEnd.Kilograms - report.Nights[i].LeftAtEnd.Kilograms, report.Nights[i].GasUsed.Kilograms, 1e-12);
    }

    [Fact]
    public void Gas_left_at_dawn_is_read_at_dawn()
    {
        RunReport report = Idle(16, 96, 2);
        double an_hour_kg = 100 * Btu_h * 3600 / 50.33e6;
        Assert.Equal(report.Summary.LeftAtStart.Kilograms - 15 * an_hour_kg, report.Nights[0].LeftAtDawn!.Value.Kilograms, 1e-9);
        Assert.Equal(report.Summary.LeftAtStart.Kilograms - 39 * an_hour_kg, report.Nights[1].LeftAtDawn!.Value.Kilograms, 1e-9);
        double early_kg = Idle(16, 96, 1, new TimeOnly(5, 30)).Nights[0].LeftAtDawn!.Value.Kilograms;
        Assert.Equal(report.Summary.LeftAtStart.Kilograms - 13.5 * an_hour_kg, early_kg, 1e-9);
    }

    [Fact]
    public void A_night_that_begins_after_dawn_is_the_coming_one_and_has_its_own_dawn()
    {
        NightReport night = Idle(10, 96, 1).Nights[0];
        Assert.Equal(26, (night.To - night.From).TotalHours);
        Assert.NotNull(night.LeftAtDawn);
    }

    [Fact]
    public void A_night_that_the_weather_ends_before_dawn_has_nothing_left_at_dawn() => Assert.Null(Idle(16, 12, 1).Nights[0].LeftAtDawn);
}
