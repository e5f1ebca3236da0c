using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>Stops and refills in a scenario, and what is wrong with them.</summary>
public class TripReaderTests
{
    private const string Stop = "[[stop]]\nfrom = 2025-01-14T16:00:00\nto = 2025-01-14T18:00:00\n";

    // Header and times stand in lines 5 to 7, more of the stop from line 8 on.
    [Theory]
    [InlineData("[[stop]]\nfrom = 2025-01-14T16:00:00", "s.toml:5:1: [stop] lacks 'to'; accepted: a date and time, without quotes, such as 2027-01-14T16:00:00")]
    [InlineData("[[stop]]\nfrom = \"today\"\nto = 2025-01-14T18:00:00", "s.toml:6:8: 'from' is a text; accepted: a date and time, without quotes, such as 2027-01-14T16:00:00")]
    [InlineData("[[stop]]\nfrom = 2025-01-14T17:00:00\nto = 2025-01-14T17:00:00", "s.toml:7:1: the stop ends at 2025-01-14T17:00-07:00, not after it begins; accepted: after 2025-01-14T17:00-07:00")]
    [InlineData("[[stop]]\nfrom = 2025-01-14T15:00:00\nto = 2025-01-14T17:00:00", "s.toml:6:1: the stop's weather does not hold 2025-01-14T15:00-07:00; accepted: from 2025-01-14T16:00-07:00 to before 2025-01-14T21:00-07:00")]
    [InlineData("[[stop]]\nfrom = 2025-01-14T17:00:00\nto = 2025-01-14T22:00:00", "s.toml:7:1: the stop ends at 2025-01-14T22:00-07:00, after its weather; accepted: up to 2025-01-14T21:00-07:00")]
    [InlineData(Stop + "[[stop]]\nfrom = 2025-01-14T17:00:00\nto = 2025-01-14T19:00:00", "s.toml:9:1: the stop begins at 2025-01-14T17:00-07:00, before the one before it ends; accepted: from 2025-01-14T18:00-07:00")]
    [InlineData(Stop + "[stop.weather]\nfile = \"x.csv\"", "s.toml:9:8: the weather file 'x.csv' cannot be opened: there is no such file")]
    [InlineData(Stop + "hookups = true", "s.toml:8:1: unknown key 'hookups' in [stop]; did you mean 'hookup'?")]
    [InlineData(Stop + "latitude = 4", "s.toml:8:1: latitude and longitude belong together; accepted: both or neither")]
    [InlineData(Stop + "[run]\nnights = 1", "s.toml:9:1: 'nights' beside [[stop]]; accepted: leave 'nights' out, the last [[stop]] says when the run ends")]
    [InlineData(Stop + "[run]\nstart = 2025-01-14T17:00:00-07:00", "s.toml:9:1: the run starts at 2025-01-14T17:00-07:00 and the first stop begins at 2025-01-14T16:00-07:00; accepted: leave 'start' out, the first [[stop]] says it")]
    [InlineData(Stop + "[[refill]]\nat = 2025-01-14T18:00:00", "s.toml:9:1: the refill at 2025-01-14T18:00-07:00 lies outside the stops; accepted: from 2025-01-14T16:00-07:00 to before 2025-01-14T18:00-07:00")]
    [InlineData("[[refill]]\nat = 2025-01-14T23:00:00", "s.toml:6:1: the refill at 2025-01-14T23:00-07:00 lies outside the run; accepted: from 2025-01-14T16:00-07:00 to before 2025-01-14T21:00-07:00")]
    [InlineData("[[refill]]", "s.toml:5:1: [refill] lacks 'at'; accepted: a date and time, without quotes, such as 2027-01-14T11:00:00, or a date with 'time'")]
    [InlineData("[[refill]]\nat = 2025-01-14", "s.toml:6:6: 'at' is a date; accepted: a date and time, without quotes, such as 2027-01-14T16:00:00")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\ntime = \"17:00\"", "s.toml:7:1: 'at' already says the time; accepted: a date and time, or a date with 'time'")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\ncylinder = 2", "s.toml:7:12: 'cylinder' names no such cylinder; accepted: 1")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\ncylinder = \"left\"", "s.toml:7:12: 'cylinder' names no such cylinder; accepted: 1")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nclosed = [\"Tuesday\"]", "s.toml:6:1: the station is closed on Tuesday 14 January 2025; accepted: a day that 'closed' does not name")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nclosed = [2025-01-14]", "s.toml:6:1: the station is closed on Tuesday 14 January 2025; accepted: a day that 'closed' does not name")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nclosed = [\"Sonday\"]", "s.toml:7:11: 'closed' is \"Sonday\"; accepted: days such as \"Sunday\" or \"Sun\", and dates such as 2027-01-18")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nprice = \"4\"", "s.toml:7:9: 'price' is \"4\"; accepted: a price such as \"1.20 per lb\", \"2.60 per kg\" or \"$4.35/gal\", or \"24 per exchange\"")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nprice = \"24 per exchange\"", "s.toml:7:1: a price per exchange for a filling; accepted: a price per lb, kg, gal or L")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nlimit = \"90 % of volume\"", "s.toml:7:9: 'limit' is \"90 % of volume\"; accepted: \"80 % of volume\", \"42 % of water weight\"; did you mean '80 % of volume'?")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nexchange_fill = \"15 lb\"", "s.toml:7:1: 'exchange_fill' has no effect with kind = \"fill\"; accepted with kind = \"exchange\"")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nkind = \"exchange\"\namount = \"5 lb\"", "s.toml:8:1: 'amount' has no effect with kind = \"exchange\"; accepted with kind = \"fill\"")]
    [InlineData("[[refill]]\nat = 2025-01-14T17:00:00\nkind = \"exchange\"\nexchange_fill = \"25 lb\"", "s.toml:8:1: 11.34 kg is more than the legal filling of 9.07 kg; accepted: up to 9.07 kg")]
    [InlineData("[gas]\nprice = \"24 per exchange\"", "s.toml:6:9: 'price' is \"24 per exchange\"; accepted: a price such as \"1.20 per lb\", \"2.60 per kg\" or \"$4.35/gal\"")]
    [InlineData("requalify_by = \"soon\"", "s.toml:5:16: 'requalify_by' is a text; accepted: a date, without quotes, such as 2031-06-30")]
    [InlineData("requalify_by = 2030-01-01\nstamped = 2020-01-01", "s.toml:6:1: 'requalify_by' already says until when it may be filled; accepted: requalify_by, or stamped with requalify_years")]
    [InlineData("requalify_years = 5", "s.toml:5:1: 'requalify_years' without 'stamped'; accepted: stamped, the day from which they count")]
    [InlineData("[people]\ncarries = \"1 t\"", "s.toml:6:11: 'carries': unknown unit 't'; accepted for mass: kg, g, lb, oz; did you mean 'g'?")]
    [InlineData(Stop + "[[draw]]\nrate = \"1 kW\"\n[[option]]\nname = \"b\"\n[option.set]\n\"stop.1.to\" = 2025-01-14T19:00:00", "s.toml:13:1: an option may not change 'stop.1.to'; all options have the scenario's own nights, weather file and verdict")]
    public void A_fault_is_reported_with_its_place(string more, string expected)
        => Assert.Equal([expected], Fixtures.Faults(Fixtures.Least + "\n" + more));

    [Fact]
    public void The_road_to_a_stop_must_be_in_its_weather()
    {
        const string later = "time,air [°C]\n2025-01-14T19:00-07:00,-5\n2025-01-14T21:00-07:00,-6\n";
        string text = Fixtures.Least + "\n" + Stop + "[[stop]]\nfrom = 2025-01-14T19:30:00\nto = 2025-01-14T21:00:00\n[stop.weather]\nfile = \"later.csv\"";
        ReadResult read = ScenarioReader.ReadText(text, "s.toml", new Two(later));
        Assert.Equal(
            ["s.toml:9:1: the stop's weather does not hold 2025-01-14T18:00-07:00, when the coach sets out for it; accepted: from 2025-01-14T19:00-07:00 to before 2025-01-14T21:00-07:00"],
            read.Problems.Select(p => p.ToString()));
    }

    [Fact]
    public void Values_arrive_and_cylinders_are_found_by_number_as_written_or_by_name()
    {
        Scenario scenario = Good("""
            [weather]
            file = "w.csv"
            [gas]
            price = "2.00 per kg"
            currency = "EUR"
            [people]
            carries = "20 kg"
            [[cylinder]]
            name = "left"
            size = "20 lb"
            stamped = 2015-06-30
            requalify_years = 5
            [[cylinder]]
            size = "20 lb"
            name = "right"
            [arrangement]
            kind = "changeover"
            order = [2, 1]
            [[stop]]
            name = "a"
            from = 2025-01-14T16:00:00
            to = 2025-01-14T18:00:00
            hookup = true
            elevation = "1000 m"
            [[stop]]
            from = 2025-01-14T19:00:00
            to = 2025-01-14T21:00:00
            [[refill]]
            at = 2025-01-14
            time = "18:30"
            cylinder = "right"
            kind = "exchange"
            price = "24 per exchange"
            [[refill]]
            at = 2025-01-14T17:00:00
            cylinder = 1
            amount = "5 lb"
            limit = "42 % of water weight"
            closed = ["Sunday", 2025-01-18]
            station = "the pump"
            """);
        Trip trip = scenario.Trip!;
        Assert.Equal(["a", "stop 2"], trip.Stops.Select(s => s.Name));
        Assert.Equal((true, 1000.0), (trip.Stops[0].Site.Hookup, trip.Stops[0].Site.Elevation_m));
        Assert.Equal(new DateTimeOffset(2025, 1, 14, 16, 0, 0, TimeSpan.FromHours(-7)), scenario.Start);
        Assert.Equal([1, 0], trip.Refills.Select(r => r.Cylinder));
        Assert.Equal([FillLimit.Weight, FillLimit.Volume], trip.Refills.Select(r => r.Limit));
        Assert.Equal(5 * 0.45359237, trip.Refills[0].Asked_kg!.Value, 12);
        Assert.True(trip.Refills[0].Closed.Has(new DateOnly(2025, 1, 18)) && trip.Refills[0].Closed.Has(new DateOnly(2025, 1, 19)));
        Assert.Equal((24.0, true), (trip.Refills[1].Price!.Value.Amount, trip.Refills[1].Price!.Value.Each));
        Assert.Equal(0.75 * scenario.Rig.Cylinders[0].LegalFill_kg, trip.Refills[1].ExchangeFill_kg, 12);
        Assert.Equal(new DateOnly(2020, 6, 30), scenario.Rig.Cylinders[1].RequalifyBy);
        Assert.Equal((20.0, "EUR", 2.0), (trip.Carries_kg, scenario.Prices.Currency, scenario.Prices.Gas!.Value.Amount));
        Assert.Equal([16, 17, 18, 18.5, 19], scenario.Legs.Select(l => l.From.TimeOfDay.TotalHours));
        Assert.Equal([false, false, true, true, false], scenario.Legs.Select(l => l.OnTheRoad));
    }

    [Fact]
    public void Stops_with_a_weather_each_need_none_for_all_and_take_the_clock_of_the_first()
    {
        const string Own = "[stop.weather]\nfile = \"w.csv\"\nwind = \"5 m/s\"\n";
        string stops = "[cylinder]\nsize = \"20 lb\"\n" + Stop + Own + Stop.Replace("16:00", "18:00", StringComparison.Ordinal).Replace("to = 2025-01-14T18", "to = 2025-01-14T20", StringComparison.Ordinal);
        Scenario scenario = Good(stops + Own);
        Assert.Equal(new DateTimeOffset(2025, 1, 14, 16, 0, 0, TimeSpan.FromHours(-7)), scenario.Start);
        Assert.Equal(5, scenario.WeatherDefaults.Wind_m_s);
        int row = 0;
        Assert.Equal(268.15, scenario.Weather.At(0, ref row).Air_K, 9);
        Assert.Contains("the scenario has no [weather]", Assert.Single(Fixtures.Faults(stops)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_refill_without_stops_goes_into_the_run_as_it_is()
    {
        Scenario scenario = Good(Fixtures.Least + "\n[[refill]]\nat = 2025-01-14T17:00:00\n");
        Assert.Single(scenario.Trip!.Stops);
        Assert.Equal(2, scenario.Legs.Count);
        Assert.Null(Good(Fixtures.Least).Trip);
    }

    private static Scenario Good(string text)
    {
        ReadResult result = Fixtures.Read(text);
        Assert.Empty(result.Problems);
        return result.Scenario!;
    }

    private sealed class Two(string later) : IWeatherSource
    {
        public bool TryOpen(string file, out Stream? stream, out string shown)
        {
            stream = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(file == "later.csv" ? later : Fixtures.Weather));
            shown = file;
            return true;
        }
    }
}
