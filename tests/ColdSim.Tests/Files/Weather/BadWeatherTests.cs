using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using ColdSim.Files.Weather;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class BadWeatherTests
{
    private static readonly string[] All =
    [
        Samples.EpwOf([(1990, 1, 31)]), Samples.Tmy3Of([("01/01/1980", 2)]), Samples.LcdMetric, Samples.LcdUs, Samples.Ghcnh, Samples.OpenMeteo, Samples.Meteostat,
        Samples.MeteostatBulk, Samples.MeteostatYear, Samples.Forecast, ForecastSamples.OpenMeteo, ForecastSamples.MetNorway, PublisherSamples.EnvironmentCanada, PublisherSamples.EnvironmentCanadaColumns,
        PublisherSamples.Nsrdb, PublisherSamples.PvgisPanel, PublisherSamples.PvgisLevel, PublisherSamples.PvgisTypical, PublisherSamples.GlobalHourly, PublisherSamples.OpenMeteoBlocks,
        PublisherSamples.OpenMeteoPlaces, Fixtures.Weather,
    ];

    [Fact]
    public void Cut_short_at_any_byte_a_file_is_read_or_refused_and_never_thrown()
    {
        foreach (string text in All)
        {
            byte[] bytes = Encoding.UTF8.GetBytes(text);
            int step = Math.Max(1, bytes.Length / 400);
            for (int length = 0; length < bytes.Length; length += step)
                Checked(Samples.Read(bytes[..length]));
        }
    }

    [Fact]
    public void Damage_anywhere_is_read_or_refused_and_never_thrown()
        => Gen.Select(Gen.Int[0, All.Length - 1], Gen.Select(Gen.Int[0, 6000], Gen.Byte).Array[1, 8]).Sample(
            (which, hits) =>
            {
                byte[] bytes = Encoding.UTF8.GetBytes(All[which]);
                foreach ((int at, byte value) in hits)
                    bytes[at % bytes.Length] = value;
                Checked(Samples.Read(bytes));
            },
            iter: 1500);

    [Fact]
    public void Any_layout_may_be_asked_for_of_any_file()
    {
        foreach ((_, WeatherFormat format) in WeatherFormatNames.Choices)
        {
            foreach (string text in All)
                Checked(Samples.Read(text, new() { Format = format }));
        }
    }

    [Fact]
    public void A_packed_file_cut_short_is_refused_or_read_as_far_as_it_goes()
    {
        using MemoryStream packed = new();
        using (GZipStream zip = new(packed, CompressionMode.Compress, leaveOpen: true))
            zip.Write(Encoding.UTF8.GetBytes(Samples.Epw));
        byte[] bytes = packed.ToArray();
        for (int length = 0; length < bytes.Length; length += 5)
            Checked(Samples.Read(bytes[..length]));
        Assert.NotEmpty(Samples.Read(bytes[..(bytes.Length / 2)]).Problems);
    }

    [Theory]
    [InlineData("PK\u0003\u0004 and more", "w:1:1: the file is a zip archive or a spreadsheet's own file; accepted: a text table of weather, packed with gzip or not, or a forecast in JSON of Open-Meteo, the US weather service or MET Norway")]
    [InlineData("<!DOCTYPE html><html>", "w:1:1: the file is a web page; accepted: a text table of weather, packed with gzip or not, or a forecast in JSON of Open-Meteo, the US weather service or MET Norway")]
    [InlineData("", "w:1:1: the file is empty; accepted: a row of headings, such as time,air [°C], and rows below it")]
    [InlineData("{\"properties\": {\"periods\": [", "w:1:29: the JSON document ends in the middle; the file is cut short")]
    [InlineData("location_id,latitude,longitude,elevation,utc_offset_seconds\n0,40,-105,0,0\n", "w:2:1: no headings below the lines about the place")]
    public void A_file_that_is_not_weather_is_refused(string text, string expected)
        => Assert.Equal(expected, Samples.Read(Encoding.Latin1.GetBytes(text.Replace("°", "\u00B0", StringComparison.Ordinal))).Problems[0].ToString());

    [Fact]
    public void A_spreadsheets_copy_with_semicolons_commas_and_quotes_is_read()
    {
        string[] lines = Samples.Epw.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string copy = string.Join("\r\n", lines.Select(l => string.Join(';', l.Split(',').Select(f => $"\"{f.Replace("\"", "\"\"", StringComparison.Ordinal).Replace('.', ',')}\""))));
        Assert.Equal(Samples.Good(Samples.Epw).Rows, Samples.Good(copy).Rows);
        Assert.Equal([-5.5, -6.5], Samples.Good("time;air [°C]\n2025-01-14T16:00Z;-5,5\n2025-01-14T17:00Z;-6,5\n").Rows.Select(r => r.Celsius()));
    }

    [Fact]
    public void A_copy_in_latin_1_is_read_with_a_warning()
    {
        WeatherResult read = Samples.Read(Encoding.Latin1.GetBytes("time,air [°C]\n2025-01-14T16:00Z,-5\n2025-01-14T17:00Z,-6\n"));
        Assert.Equal(2, read.Rows.Count);
        Assert.Equal(["w: not in UTF-8, read as Latin-1"], read.Warnings);
    }

    [Fact]
    public void The_end_of_a_day_may_be_its_24th_hour()
        => Assert.Equal(
            new DateTimeOffset(2025, 1, 15, 0, 0, 0, TimeSpan.FromHours(-7)),
            Samples.Good("time,air [°C]\n2025-01-14T23:00-07:00,-5\n2025-01-14T24:00-07:00,-6\n").Rows[1].Time);

    [Fact]
    public void Each_fault_is_reported_with_its_line_and_all_at_once()
    {
        string[] lines = Samples.Epw.Split('\n');
        lines[9] = lines[9].Replace(",1,31,2,", ",1,31,25,", StringComparison.Ordinal);
        lines[10] = lines[10].Replace(",-10.3,", ",cold,", StringComparison.Ordinal);
        lines[11] = lines[11].Replace(",84000,", ",8400,", StringComparison.Ordinal);
        lines[12] = string.Join(',', lines[12].Split(',')[..9]);
        Assert.Equal(
            [
                "w:10:1: year, month, day, hour and minute cannot be read; accepted: whole numbers, hour 1 to 24, minute 0 to 60",
                "w:11:19: dry bulb [°C]: 'cold' is not a number; accepted: a number, or nothing where it is not known",
                "w:12:34: station pressure [Pa]: 8400 Pa is out of range; accepted: 400 hPa to 1,100 hPa",
                "w:13:1: 9 fields; accepted: 24 or more in a row of data",
            ],
            Samples.Read(string.Join('\n', lines)).Problems.Select(p => p.ToString()));
    }

    [Fact]
    public void Months_out_of_order_are_refused()
    {
        WeatherResult read = Samples.Read(Samples.Tmy3Of([("03/01/1985", 1), ("02/01/1988", 2)]));
        Assert.Contains("comes after", read.Problems[0].What, StringComparison.Ordinal);
        Assert.Equal(21, read.Problems.Count);
    }

    [Fact]
    public void An_epw_that_ends_before_it_says_is_warned_of()
    {
        string text = Samples.Epw[..Samples.Epw.IndexOf("1984,2,1,1,", StringComparison.Ordinal)];
        Assert.Contains("w: ends on 1/31, its line DATA PERIODS says 2/1; cut short, perhaps", Samples.Good(text).Warnings);
    }

    [Fact]
    public void Two_lines_of_headings_are_refused_with_the_second_ones_line()
        => Assert.Contains("w:2:1: time: 'UTC' is not a date and time", Samples.Read("time,air [°C]\nUTC,degrees\n2025-01-14T16:00Z,-5\n2025-01-14T17:00Z,-6\n").Problems[0].ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_file_without_any_temperature_is_refused_for_that()
    {
        string text = Regex.Replace(Samples.Epw, @"\?9,-1[0-9]\.[0-9],", "?9,99.9,");
        Assert.Equal("w:56:1: every air temperature is missing; accepted: two or more", Assert.Single(Samples.Read(text).Problems).ToString());
        string[] lines = Samples.Meteostat.Split('\n');
        Assert.Equal(
            "w:2:1: every air temperature is missing; accepted: two or more",
            Assert.Single(Samples.Read(lines[0] + "\n" + lines[1].Replace("-10.0,", ",", StringComparison.Ordinal)).Problems).ToString());
    }

    [Fact]
    public void Repeated_headings_are_reported_as_such()
    {
        foreach (string text in (string[])[Samples.LcdMetric, Samples.LcdUs, Samples.Ghcnh, Samples.Meteostat, Samples.MeteostatYear, Fixtures.Weather])
            Again(text.ReplaceLineEndings("\n"), 0, new());
        Again(Samples.Tmy3.ReplaceLineEndings("\n"), 1, new());
        Again("When,Air [°C]\n2025-01-14T16:00Z,-5\n2025-01-14T17:00Z,-6\n", 0, new()
        {
            Map = new ColumnMap { Time = ["when"], Columns = new Dictionary<string, MappedColumn> { ["air"] = new("Air [°C]", null) } },
        });

        static void Again(string text, int heading, WeatherRequest request)
        {
            List<string> lines = [.. text.TrimEnd('\n').Split('\n')];
            lines.Insert(heading + 2, lines[heading]);
            Assert.Equal(
                FormattableString.Invariant($"w:{heading + 3}:1: the headings are here again; accepted: one row of headings, above all others"),
                Samples.Read(string.Join('\n', lines), request).Problems[0].ToString());
        }
    }

    [Fact]
    public void A_layout_that_is_not_recognised_is_reported_first()
    {
        const string text = "Datum,Temperatur\n14.01.2031 16:00,-3.5\n";
        Assert.StartsWith("w:1:1: no known layout is recognised, and as our own CSV it has no column 'time'; accepted: ", Samples.Read(text).Problems[0].ToString(), StringComparison.Ordinal);
        Assert.StartsWith("w:1:1: no column 'time'; accepted: ", Samples.Read(text, new() { Format = WeatherFormat.Csv }).Problems[0].ToString(), StringComparison.Ordinal);
    }

    private static void Checked(WeatherResult result) => Assert.Equal(result.Problems.Count == 0, result.Rows.Count >= 2);
}
