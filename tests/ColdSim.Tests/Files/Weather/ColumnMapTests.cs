using ColdSim.Files.Scenarios;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class ColumnMapTests
{
    private const string Table = """
        Station 7;exported
        Datum;Uhr;Temperatur;Wind (km/h);Taupunkt
        31.12.2030;23:00;-3,5;7,2;-99
        31.12.2030;24:00;-4,5;7,2;-8,0
        01.01.2031;01:00;-5,5;7,2;-8,0
        """;

    private const string Map = """
        [weather]
        file = "w.csv"
        offset = "+01:00"
        [weather.columns]
        time = "Datum"
        clock = "Uhr"
        time_format = "dd.MM.yyyy HH:mm"
        header_line = 2
        air = "Temperatur"
        air_unit = "°C"
        wind = "Wind (km/h)"
        dew_point = "Taupunkt"
        dew_point_unit = "°C"
        missing = "-99"
        [cylinder]
        size = "20 lb"
        """;

    [Fact]
    public void A_table_of_no_known_layout_is_read_by_its_map()
    {
        ReadResult read = Fixtures.Read(Map, Table);
        Assert.Equal([], read.Problems);
        Assert.Equal(new DateTimeOffset(2030, 12, 31, 23, 0, 0, TimeSpan.FromHours(1)), read.Scenario!.Weather.First);
        Assert.Equal(TimeSpan.FromHours(2), read.Scenario.Weather.Last - read.Scenario.Weather.First);
        int row = 0;
        Assert.Equal(-3.5, read.Scenario.Weather.At(0, ref row).Air_K - 273.15, 9);
        Assert.Equal(2, read.Scenario.Weather.At(0, ref row).Wind_m_s, 9);
    }

    [Theory]
    [InlineData("air = \"Temperatur\"", "air = \"Temperature\"", "w.csv:2:1: no column 'Temperature'; did you mean 'Temperatur'?")]
    [InlineData("air_unit = \"°C\"", "air_unit = \"mph\"", "s.toml:10:1: 'air_unit' is \"mph\"; accepted: °C, °F, K")]
    [InlineData("offset = \"+01:00\"\n", "", "w.csv:3:1: Datum: '31.12.2030 23:00' has no offset from UTC; accepted: offset = \"-07:00\" under [weather], --offset of 'coldsim weather', or times that have one")]
    [InlineData("header_line = 2", "header_line = 9", "w.csv:5:1: no headings in line 9")]
    [InlineData("time = \"Datum\"\n", "", "s.toml:4:1: [weather.columns] lacks 'time'; accepted: the heading over the times")]
    [InlineData("time_format = \"dd.MM.yyyy HH:mm\"", "time_format = \"local\"", "s.toml:7:1: 'time_format' is \"local\"; accepted: \"unix\", or letters for each part, such as \"dd.MM.yyyy HH:mm\"")]
    public void A_wrong_map_is_reported_with_its_place(string right, string wrong, string expected)
        => Assert.Equal(expected, Fixtures.Faults(Map.Replace(right, wrong, StringComparison.Ordinal), Table)[0]);

    [Fact]
    public void A_file_in_a_publishers_layout_needs_nothing_more_in_the_scenario()
    {
        ReadResult read = Fixtures.Read(Fixtures.Least, Samples.OpenMeteo);
        Assert.Empty(read.Problems);
        Assert.Contains(read.Warnings, w => w.Contains("the station is at 2400 m and the place at 0 m", StringComparison.Ordinal));
        Assert.Contains("accepted: \"csv\"", Fixtures.Faults(Fixtures.Least.Replace("[cylinder]", "format = \"epv\"\n[cylinder]", StringComparison.Ordinal))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_shift_in_the_scenario_is_listed_with_the_assumptions()
    {
        ReadResult read = Fixtures.Read("[place]\nelevation = \"2500 m\"\n" + Fixtures.Least.Replace("[cylinder]", "station_elevation = \"1500 m\"\n[cylinder]", StringComparison.Ordinal));
        Assert.Contains(read.Scenario!.Assumptions, a => a.StartsWith("weather: temperature shifted by -6.5 K from 1500 m to 2500 m", StringComparison.Ordinal));
        Assert.Equal(
            "s.toml:3:1: 'hollow' needs to know when the sun sets; accepted: latitude and longitude under [place]",
            Fixtures.Faults(Fixtures.Least.Replace("[cylinder]", "hollow = \"3 K\"\n[cylinder]", StringComparison.Ordinal))[0]);
    }
}
