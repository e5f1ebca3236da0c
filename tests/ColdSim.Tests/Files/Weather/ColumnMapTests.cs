using System.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
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
    [InlineData("offset = \"+01:00\"\n", "", "w.csv:3:1: Datum: '31.12.2030 23:00' has no offset from UTC; accepted: time_zone in the column map, offset = \"-07:00\" under [weather], --offset of 'coldsim weather', or times that have one")]
    [InlineData("header_line = 2", "header_line = 9", "w.csv:5:1: no headings in line 9")]
    [InlineData("time = \"Datum\"\n", "", "s.toml:4:1: [weather.columns] lacks 'time'; accepted: the heading over the times")]
    [InlineData("time_format = \"dd.MM.yyyy HH:mm\"", "time_format = \"local\"", "s.toml:7:1: 'time_format' is \"local\"; accepted: \"unix\", or letters for each part, such as \"dd.MM.yyyy HH:mm\"")]
    public void A_wrong_map_is_reported_with_its_place(string right, string wrong, string expected)
        => Assert.Equal(expected, Fixtures.Faults(Map.Replace(right, wrong, StringComparison.Ordinal), Table)[0]);

    [Fact]
    public void Headings_are_found_by_name_below_lines_of_all_kinds()
    {
        string above = string.Concat(Enumerable.Range(1, 55).Select(n => $"line {n}; of a report\n"));
        WeatherResult read = Mapped(above + Table, Map[Map.IndexOf("time =", StringComparison.Ordinal)..Map.IndexOf("[cylinder]", StringComparison.Ordinal)].Replace("header_line = 2\n", "", StringComparison.Ordinal), TimeSpan.FromHours(1));
        Assert.Equal([], read.Problems);
        Assert.Equal([-3.5, -4.5, -5.5], read.Rows.Select(r => r.Celsius()));
    }

    [Fact]
    public void A_date_may_lie_over_several_columns_parted_by_any_number_of_blanks()
    {
        const string table = "  YEAR  MO DY HR   T_F   WS\n 2031   1 10  22  14.0  5.0\n 2031   1 10  23   5.0  0.0\n 2031   1 10  24  -4.0  9.9\n";
        WeatherResult read = Mapped(table, "time = [\"YEAR\", \"MO\", \"DY\", \"HR\"]\nair = \"T_F\"\nair_unit = \"°F\"\nwind = \"WS\"\nwind_unit = \"m/s\"\n", TimeSpan.FromHours(-7));
        Assert.Equal([], read.Problems);
        Assert.Equal([-10, -15, -20], read.Rows.Select(r => r.Celsius()));
        Assert.Equal(new DateTimeOffset(2031, 1, 11, 0, 0, 0, TimeSpan.FromHours(-7)), read.Rows[2].Time);
        Assert.Equal([5, 0, 9.9], read.Rows.Select(r => r.Wind_m_s));
    }

    [Fact]
    public void Columns_of_a_table_without_headings_are_called_by_their_numbers()
    {
        const string table = "99999 20310110 1610 20310110 0910      3 -111.17   32.24     3.3     0.0\n99999 20310110 1615 20310110 0915      3 -111.17   32.24 -9999.0     0.0\n"
            + "99999 20310110 1620 20310110 0920      3 -111.17   32.24     3.1     0.0\n";
        WeatherResult read = Mapped(table, "time = [\"2\", \"3\"]\ntime_format = \"yyyyMMdd HHmm\"\nheader_line = 0\nseparator = \"blank\"\nair = \"9\"\nair_unit = \"°C\"\nmissing = \"-9999.0\"\n", TimeSpan.Zero);
        Assert.Equal([], read.Problems);
        Assert.Equal([3.3, 3.1], read.Rows.Select(r => r.Celsius()));
        Assert.Contains("w: 1 record without a temperature left out", read.Notes);
    }

    [Fact]
    public void Short_rows_lines_of_units_and_a_footer_are_no_faults()
    {
        const string table = "when|out|wind [m/s]\nUTC|degC|\n2031-01-10T06:00Z|-10|3\n2031-01-10T07:00Z|-11\n2031-01-10T08:00Z|-12|2\nMean of the day|-11|\nEnd of report\n";
        const string map = "time = \"when\"\nair = \"out\"\nair_unit = \"°C\"\nwind = \"wind [m/s]\"\n";
        WeatherResult read = Mapped(table, map);
        Assert.Equal([], read.Problems);
        Assert.Equal([-10, -11, -12], read.Rows.Select(r => r.Celsius()));
        Assert.Equal([3, 2.5, 2], read.Rows.Select(r => r.Wind_m_s));
        Assert.Contains("w: 1 line between the headings and the first row passed over", read.Notes);
        Assert.Contains("w: 2 lines below the last row passed over", read.Notes);
        Assert.Equal(
            "w:4:1: when: 'soon' is not a date and time; accepted: ISO 8601", Assert.Single(Mapped(table.Replace("2031-01-10T07:00Z", "soon", StringComparison.Ordinal), map).Problems).ToString());
    }

    [Fact]
    public void A_last_row_that_is_cut_off_is_left_out_and_said()
    {
        WeatherResult read = Mapped("when,out,in\n2031-01-10T06:00Z,-10,8\n2031-01-10T07:00Z,-11,8\n2031-01-10T08:00Z,-1", "time = \"when\"\nair = \"out\"\nair_unit = \"°C\"\n");
        Assert.Equal([-10, -11], read.Rows.Select(r => r.Celsius()));
        Assert.Equal(["w:4: the last row has fewer fields than the others, as where a file is cut short; it is left out"], read.Warnings);
    }

    [Fact]
    public void A_named_zone_has_its_summer_time_and_the_hour_that_is_there_twice()
    {
        const string map = "time = \"when\"\ntime_zone = \"America/Denver\"\nair = \"out\"\nair_unit = \"°C\"\n";
        WeatherResult autumn = Mapped("when,out\n2030-11-03 00:30,1\n2030-11-03 01:00,2\n2030-11-03 01:30,3\n2030-11-03 01:00,4\n2030-11-03 01:30,5\n2030-11-03 02:00,6\n", map);
        Assert.Equal([], autumn.Problems);
        Assert.Equal([-6, -6, -6, -7, -7, -7], autumn.Rows.Select(r => r.Time.Offset.TotalHours));
        Assert.All(autumn.Rows.Zip(autumn.Rows.Skip(1)), p => Assert.Equal(TimeSpan.FromMinutes(30), p.Second.Time - p.First.Time));
        WeatherResult spring = Mapped("when,out\n2031-03-09 01:00,1\n2031-03-09 03:00,2\n", map);
        Assert.Equal(TimeSpan.FromHours(1), spring.Rows[1].Time - spring.Rows[0].Time);
        Assert.Equal(
            "w:3:1: when: '2031-03-09 02:30' is left out where clocks go forward in that zone; accepted: a clock that is put forward, or offset instead of time_zone for one that is not",
            Assert.Single(Mapped("when,out\n2031-03-09 01:00,1\n2031-03-09 02:30,2\n2031-03-09 03:00,2\n", map).Problems).ToString());
    }

    [Theory]
    [InlineData("time_zone = \"America/Gotham\"", "m:1:1: 'time_zone' is \"America/Gotham\", which this machine does not know; accepted: a name of the time zone database, such as \"America/Denver\" or \"Europe/Oslo\"")]
    [InlineData("time_zone = \"../passwd\"", "m:1:1: 'time_zone' is \"../passwd\", which this machine does not know; accepted: a name of the time zone database, such as \"America/Denver\" or \"Europe/Oslo\"")]
    [InlineData("separator = \"comma\"", "m:1:1: 'separator' is \"comma\"; accepted: one sign such as \",\" or \";\", \"tab\", or \"blank\" for any number of blanks")]
    [InlineData("time = [1, 2]", "m:1:8: 'time' is a list; accepted: a text in quotes, or several in brackets, such as [\"Year\", \"Month\", \"Day\", \"Hour\"]")]
    public void A_wrong_key_of_a_map_is_said_with_what_is_accepted(string line, string expected)
        => Assert.Contains(expected, ColumnsFile.ReadText(line + "\nair = \"a\"\n", "m").Problems.Select(p => p.ToString()));

    private static WeatherResult Mapped(string table, string map, TimeSpan? offset = null)
    {
        (ColumnMap? read, IReadOnlyList<ColdSim.Files.FileProblem> problems) = ColumnsFile.ReadText(map, "m");
        Assert.Equal([], problems);
        return Samples.Read(Encoding.UTF8.GetBytes(table), new() { Map = read, Offset = offset });
    }

    [Fact]
    public void A_file_in_a_publishers_layout_needs_nothing_more_in_the_scenario()
    {
        ReadResult read = Fixtures.Read(Fixtures.Least, Samples.OpenMeteo);
        Assert.Empty(read.Problems);
        Assert.Equal(2400, read.Scenario!.Rig.Site.Elevation_m);
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
