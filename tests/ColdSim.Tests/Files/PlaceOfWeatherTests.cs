using System.Globalization;
using System.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Appliances;
using ColdSim.Model.Furnace;
using ColdSim.Planning;
using ColdSim.Tests.Files.Weather;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>The place of a scenario that does not say it is that of its weather file.</summary>
public class PlaceOfWeatherTests
{
    private const string Rig = """
        [cylinder]
        size = "20 lb"
        [furnace]
        input = "20,000 BTU/h"
        [thermostat]
        day = "18 °C"
        [coach]
        length = "20 ft"
        grade = "ordinary"

        """;

    private const string Own = "[weather]\nfile = \"w.csv\"\n";

    // A typical year's three days at 2,000 m in a valley of the mountains; invented data in the publisher's documented layout.
    private static readonly string High = Samples.EpwOf([(2031, 1, 29), (2031, 1, 30), (2031, 1, 31)]).Replace(",1600.0\n", ",2000.0\n", StringComparison.Ordinal);

    private static Scenario Good(string scenario, string weather)
    {
        ReadResult read = Fixtures.Read(scenario, weather);
        Assert.Equal([], read.Problems.Select(p => p.ToString()));
        return read.Scenario!;
    }

    private static double FirstAir_C(Scenario scenario)
    {
        int row = 0;
        return Math.Round(scenario.Weather.At(0, ref row).Air_K - 273.15, 6);
    }

    [Fact]
    public void A_station_at_two_thousand_metres_is_run_at_its_height_and_not_shifted()
    {
        Scenario scenario = Good(Own + Rig, High);
        Assert.Equal((2000, 40, -105.2), (scenario.Rig.Site.Elevation_m, scenario.Rig.Site.Latitude_deg, scenario.Rig.Site.Longitude_deg));
        Assert.Equal(-10.1, FirstAir_C(scenario));
        FurnaceSpecification furnace = scenario.Rig.Furnace!;
        Assert.Equal(0.886, BurnerInput.At_W(furnace.Input_W, furnace.Altitude, scenario.Rig.Site.Elevation_m) / furnace.Input_W, 3);
        Assert.Contains("place: elevation 2000 m, as the weather file says", scenario.Assumptions);
        Assert.Contains("place: position 40, -105.2, as the weather file says", scenario.Assumptions);
        Assert.DoesNotContain(scenario.Assumptions, a => a.Contains("shifted by", StringComparison.Ordinal));
    }

    [Fact]
    public void A_lapse_without_a_place_of_its_own_shifts_nothing()
    {
        Scenario scenario = Good(Own + "lapse = 6.5\n" + Rig, High);
        Assert.Equal((2000, -10.1), (scenario.Rig.Site.Elevation_m, FirstAir_C(scenario)));
        Assert.Contains("weather: not shifted: [place] gives no elevation, so the place is as high as the weather's, 2000 m", scenario.Assumptions);
    }

    [Fact]
    public void A_shift_goes_between_two_heights_that_are_given_and_names_both()
    {
        Scenario scenario = Good("[place]\nelevation = \"2,600 m\"\n" + Own + "lapse = 5\n" + Rig, High);
        Assert.Equal((2600, -13.1), (scenario.Rig.Site.Elevation_m, FirstAir_C(scenario)));
        Assert.Contains(scenario.Assumptions, a => a.StartsWith("weather: temperature shifted by -3.0 K from 2000 m to 2600 m, 5 K per km", StringComparison.Ordinal));
    }

    [Fact]
    public void The_scenarios_own_place_counts_and_one_far_away_is_said()
    {
        ReadResult read = Fixtures.Read("[place]\nelevation = \"1,600 m\"\nlatitude = 41\nlongitude = -105.2\n" + Own + Rig, High);
        Assert.Equal((1600, 41), (read.Scenario!.Rig.Site.Elevation_m, read.Scenario.Rig.Site.Latitude_deg));
        Assert.Contains(read.Warnings, w => w.Contains("is 111 km from the place at 41, -105.2", StringComparison.Ordinal));
        Assert.Contains(read.Warnings, w => w.Contains("the place at 1600 m is 400 m lower than the weather file's station at 2000 m; usual: within 300 m", StringComparison.Ordinal));
        read = Fixtures.Read("[place]\nelevation = \"1,750 m\"\nlatitude = 40.3\nlongitude = -105.2\n" + Own + Rig, High);
        Assert.DoesNotContain(read.Warnings, w => w.Contains("; usual:", StringComparison.Ordinal));
    }

    [Fact]
    public void A_run_without_a_start_begins_at_the_first_four_in_the_afternoon()
    {
        Scenario scenario = Good(Own + Rig, High);
        Assert.Equal(new DateTimeOffset(2031, 1, 29, 16, 0, 0, TimeSpan.FromHours(-7)), scenario.Start);
        Assert.Contains("run: start not given; assumed the first 16:00 in the weather, 2031-01-29T16:00-07:00", scenario.Assumptions);
        Assert.Equal(19, Good(Own + Rig, Fixtures.Weather.Replace("2025-01-14T16:00-07:00,-5\n", "", StringComparison.Ordinal)
            .Replace("2025-01-14T17:00-07:00,-6\n", "", StringComparison.Ordinal).Replace("2025-01-14T18:00-07:00,-7\n", "", StringComparison.Ordinal)).Start.Hour);
    }

    [Fact]
    public void Times_in_utc_are_run_by_the_clock_of_the_files_meridian()
    {
        StringBuilder rows = new(Samples.Ghcnh.Split('\n')[0] + "\n");
        for (int h = 0; h < 48; h++)
            rows.Append(CultureInfo.InvariantCulture, $"XXI0000TEST|NOWHERE FIELD|{new DateTime(2031, 1, 10).AddHours(h):yyyy-MM-dd'T'HH:mm:ss}|2031|01|10|07|00|40.0|-105.2|1600.0|-10.4||FM15|335|-15.0||335|840.0||335|3.1||335|||\n");
        Scenario scenario = Good(Own + Rig, rows.ToString());
        Assert.Equal(new DateTimeOffset(2031, 1, 10, 16, 0, 0, TimeSpan.FromHours(-7)), scenario.Start);
        Assert.Contains(scenario.Assumptions, a => a.Contains("the first 16:00 in the weather by the clock of the meridian", StringComparison.Ordinal));
    }

    [Fact]
    public void A_start_without_an_offset_is_by_the_weathers_clock_where_there_is_one()
    {
        Assert.Equal(TimeSpan.FromHours(-7), Good(Own + "[run]\nstart = 2025-01-14T17:00:00\n" + Rig, Fixtures.Weather).Start.Offset);
        string fault = Assert.Single(Fixtures.Faults(Own + "[run]\nstart = 2031-01-10T01:00:00\n" + Rig, Samples.Meteostat));
        Assert.StartsWith("s.toml:4:9: 'start' has no offset from UTC", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void The_place_of_a_stop_is_that_of_its_own_weather()
    {
        const string stop = "[[stop]]\nname = \"A\"\nfrom = 2031-01-29T16:00:00\nto = 2031-01-30T16:00:00\n[stop.weather]\nfile = \"w.csv\"\n";
        Scenario scenario = Good(stop + Rig, High);
        Assert.Equal(2000, scenario.Trip!.Stops[0].Site.Elevation_m);
        Assert.Contains("A: elevation 2000 m, as the weather file says", scenario.Assumptions);
    }
}
