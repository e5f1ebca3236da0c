using System.Globalization;
using System.Text;
using ColdSim.Files;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Weather;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class WeatherCsvTests
{
    [Fact]
    public void Columns_arrive_in_si_whatever_their_units_and_order()
    {
        WeatherRow row = Good("""
            # from a station
            Cloud_Cover (%),Temperature (°F),time,wind speed [mph],dewpoint [°F],pressure (inHg),irradiance [W/m²]
            40,-4,2025-01-14T23:00Z,10,-13,25,120
            40,-4,2025-01-15T00:00Z,10,-13,25,120
            """)[0];
        Assert.Equal(253.15, row.Air_K, 9);
        Assert.Equal(4.4704, row.Wind_m_s!.Value, 9);
        Assert.Equal(248.15, row.DewPoint_K!.Value, 9);
        Assert.Equal(0.4, row.Cloud_frac!.Value, 12);
        Assert.Equal(84659.7, row.Pressure_Pa!.Value, 0.1);
        Assert.Equal(120, row.Sun_W_m2);
    }

    [Theory]
    [InlineData(40, 5.99)]
    [InlineData(50, 9.26)]
    [InlineData(60, 12.00)]
    public void Humidity_becomes_a_dew_point(int percent, double celsius)
        => Assert.Equal(celsius, Good($"time,air [°C],humidity [%]\n2025-01-14T16:00Z,20,{percent}\n2025-01-14T17:00Z,20,{percent}\n")[0].DewPoint_K!.Value - 273.15, 0.01);

    [Fact]
    public void Byte_order_mark_windows_line_ends_and_a_missing_last_one_are_fine()
    {
        IReadOnlyList<WeatherRow> rows = Good("\uFEFFtime,air [°C]\r\n2025-01-14T16:00-07:00,-5\r\n\r\n2025-01-14T17:00-07:00,-6");
        Assert.Equal([-5, -6], rows.Select(r => Math.Round(r.Air_K - 273.15, 9)));
    }

    [Fact]
    public void When_clocks_go_back_the_repeated_hour_counts_twice()
    {
        IReadOnlyList<WeatherRow> rows = Good("""
            time,air [°C]
            2025-11-02T00:00-06:00,1
            2025-11-02T01:00-06:00,2
            2025-11-02T01:00-07:00,3
            2025-11-02T02:00-07:00,4
            """);
        Assert.All(rows.Zip(rows.Skip(1)), p => Assert.Equal(TimeSpan.FromHours(1), p.Second.Time - p.First.Time));
    }

    [Fact]
    public void When_clocks_go_forward_no_hour_is_missing()
    {
        WeatherResult result = Read("""
            time,air [°C]
            2025-03-09T00:00-07:00,1
            2025-03-09T01:00-07:00,2
            2025-03-09T03:00-06:00,3
            2025-03-09T04:00-06:00,4
            """);
        Assert.Empty(result.Problems);
        Assert.Empty(result.Notes);
    }

    [Fact]
    public void Without_offsets_the_repeated_hour_is_refused()
        => Assert.Equal(
            "w.csv:4:1: 2025-11-02T01:00-06:00 is the same instant as 2025-11-02T01:00-06:00 in line 3",
            Assert.Single(Read("time,air [°C]\n2025-11-02T00:00,1\n2025-11-02T01:00,2\n2025-11-02T01:00,3\n2025-11-02T02:00,4\n", TimeSpan.FromHours(-6)).Problems).ToString());

    [Theory]
    [InlineData("2025-01-14T18:00-07:00,-5", "w.csv:4:1: 2025-01-14T18:00-07:00 is the same instant as 2025-01-14T18:00-07:00 in line 3")]
    [InlineData("2025-01-14T17:00-07:00,-5", "w.csv:4:1: 2025-01-14T17:00-07:00 comes after 2025-01-14T18:00-07:00 in line 3; accepted: rows in order of time")]
    [InlineData("2025-01-14T19:00,-5", "w.csv:4:1: time: '2025-01-14T19:00' has no offset from UTC; accepted: such as 2025-01-14T17:00-07:00, or offset = \"-07:00\" under [weather], or --offset of 'coldsim weather'")]
    [InlineData("14.1.2025 19:00,-5", "w.csv:4:1: time: '14.1.2025 19:00' is not a date and time; accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z")]
    [InlineData("2025-01-14T19:00-07:00,", "w.csv:4:24: air [°C]: is empty; accepted: a temperature in every row")]
    [InlineData("2025-01-14T19:00-07:00,NaN", "w.csv:4:24: air [°C]: 'NaN' is not a number; accepted: a number, or nothing where it is not known")]
    [InlineData("2025-01-14T19:00-07:00,Infinity", "w.csv:4:24: air [°C]: 'Infinity' is not a number; accepted: a number, or nothing where it is not known")]
    [InlineData("2025-01-14T19:00-07:00,-5 °C", "w.csv:4:24: air [°C]: '-5 °C' is not a number; accepted: a number, or nothing where it is not known")]
    [InlineData("2025-01-14T19:00-07:00,\"-5,5\"", "w.csv:4:24: air [°C]: a decimal comma; write -5.5")]
    [InlineData("2025-01-14T19:00-07:00,-5,5", "w.csv:4:1: 3 fields under 2 headings; a decimal comma, perhaps; accepted: 2 fields, numbers with a point")]
    [InlineData("2025-01-14T19:00-07:00", "w.csv:4:1: 1 fields under 2 headings; accepted: 2 fields, numbers with a point")]
    [InlineData("2025-01-14T19:00-07:00,-91", "w.csv:4:24: air [°C]: -91 is out of range; accepted: -90 °C to 60 °C")]
    [InlineData("\"2025-01-14T19:00-07:00,-9", "w.csv:4:1: a quotation mark that does not open and close a field")]
    [InlineData("2025-01-14T22:00-07:00,-5", "w.csv:4:1: nothing between 2025-01-14T18:00-07:00 and 2025-01-14T22:00-07:00, 4 h; accepted: at most 3 h between rows; --bridge \"4 h\", or bridge under [weather], puts a straight line over it")]
    public void A_bad_row_is_reported_with_its_place(string row, string expected)
        => Assert.Equal(expected, Assert.Single(Read($"time,air [°C]\n2025-01-14T17:00-07:00,-4\n2025-01-14T18:00-07:00,-4\n{row}\n").Problems).ToString());

    [Theory]
    [InlineData("", "w.csv:1:1: the file is empty; accepted: a row of headings, such as time,air [°C], and rows below it")]
    [InlineData("time,air [°C]", "w.csv:1:1: no rows below the headings; accepted: two or more")]
    [InlineData("time,air", "w.csv:1:6: column 'air' has no unit; accepted: its unit in brackets, such as air [°C]")]
    [InlineData("time,air [mph]", "w.csv:1:6: column 'air': 'mph' is not a unit of temperature; accepted: °C, °F, K")]
    [InlineData("time,air [°X]", "w.csv:1:6: column 'air': unknown unit '°X'; accepted: °C, °F, K")]
    [InlineData("time,air [°C],temperature [°F]", "w.csv:1:15: column 'air' is given twice")]
    [InlineData("time,air [°C],wimd [m/s]", "w.csv:1:15: unknown column 'wimd'; did you mean 'wind'?")]
    [InlineData("time,wind [m/s]", "w.csv:1:1: no column 'air'; accepted: air [°C]")]
    [InlineData("air [°C]", "w.csv:1:1: no column 'time'; accepted: time and air [°C], and any of wind [m/s], humidity [%], dew point [°C], sun [W/m²], cloud [%], pressure [hPa]")]
    public void A_bad_heading_is_reported_with_its_place(string header, string expected)
        => Assert.Equal(expected, Read(header + "\n").Problems[0].ToString());

    [Fact]
    public void All_faults_are_reported_up_to_twenty()
    {
        StringBuilder text = new("time,air [°C]\n");
        for (int i = 0; i < 30; i++)
            text.Append(CultureInfo.InvariantCulture, $"2025-01-{i + 1:00}T00:00Z,x\n");
        IReadOnlyList<FileProblem> problems = Read(text.ToString()).Problems;
        Assert.Equal(21, problems.Count);
        Assert.EndsWith("more faults in this file", problems[^1].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_hours_are_bridged_and_noted()
        => Assert.Equal(
            ["w.csv: bridged 3 h between 2025-01-14T18:00-07:00 and 2025-01-14T21:00-07:00"],
            Read("time,air [°C]\n2025-01-14T16:00-07:00,1\n2025-01-14T17:00-07:00,2\n2025-01-14T18:00-07:00,3\n2025-01-14T21:00-07:00,4\n2025-01-14T22:00-07:00,4\n").Notes);

    [Fact]
    public void Empty_cells_are_filled_where_their_neighbours_are_near()
    {
        WeatherResult result = Read("""
            time,air [°C],wind [m/s]
            2025-01-14T16:00Z,1,
            2025-01-14T17:00Z,1,2
            2025-01-14T18:00Z,1,
            2025-01-14T19:00Z,1,6
            """);
        Assert.Equal([null, 2, 4, 6], result.Rows.Select(r => r.Wind_m_s));
        Assert.Equal(["w.csv: wind is empty in 2 rows; 1 filled in between their neighbours, 1 left to the stand-in"], result.Notes);
    }

    [Fact]
    public void Columns_of_no_use_are_left_aside_with_a_warning()
        => Assert.Equal(["w.csv: column 'snow depth [cm]' is not used"], Read("time,air [°C],snow depth [cm]\n2025-01-14T16:00Z,1,2\n2025-01-14T17:00Z,1,2\n").Warnings);

    [Fact]
    public void What_the_writer_writes_the_reader_reads()
        => Gen.Select(Gen.Double[-40, 10], Gen.Double[0, 20].Nullable(), Gen.Double[0, 1].Nullable(), (air, wind, cloud) => (air, wind, cloud))
            .Array[2, 30].Sample(values =>
            {
                DateTimeOffset start = new(2025, 1, 1, 0, 0, 0, TimeSpan.FromHours(5.5));
                WeatherRow[] rows = [.. values.Select((v, i) => new WeatherRow(start.AddHours(i), v.air + 273.15, v.wind, null, null, v.cloud))];
                using StringWriter text = new();
                WeatherCsvWriter.Write(rows, text, " a\n b");
                IReadOnlyList<WeatherRow> again = Good(text.ToString());
                Assert.Equal(rows.Select(r => r.Time), again.Select(r => r.Time));
                Assert.All(rows.Zip(again), p => Assert.Equal(p.First.Air_K, p.Second.Air_K, 0.006));
            });

    [Fact]
    public void Damage_to_a_weather_file_is_reported_and_never_thrown()
    {
        byte[] whole = Encoding.UTF8.GetBytes("time,air [°C],wind [m/s]\n2025-01-14T16:00Z,-5,2\n2025-01-14T17:00Z,-6,\n2025-01-14T18:00Z,-7,3\n");
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte).Array[1, 6].Sample(hits =>
        {
            byte[] bytes = [.. whole];
            foreach ((int at, byte value) in hits)
                bytes[at] = value;
            WeatherResult result = Read(Encoding.UTF8.GetString(bytes));
            Assert.Equal(result.Problems.Count == 0, result.Rows.Count >= 2);
        });
    }

    private static WeatherResult Read(string text, TimeSpan? offset = null)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text));
        return WeatherFile.Read(stream, "w.csv", new() { Format = WeatherFormat.Csv, Offset = offset });
    }

    private static IReadOnlyList<WeatherRow> Good(string text)
    {
        WeatherResult result = Read(text);
        Assert.Empty(result.Problems);
        return result.Rows;
    }
}
