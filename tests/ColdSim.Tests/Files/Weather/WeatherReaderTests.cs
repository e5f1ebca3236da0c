using System.Globalization;
using System.IO.Compression;
using System.Text;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class WeatherReaderTests
{
    public static TheoryData<string, WeatherFormat> Whole => new()
    {
        { Samples.Epw, WeatherFormat.Epw },
        { Samples.Tmy3, WeatherFormat.Tmy3 },
        { Samples.LcdMetric, WeatherFormat.Lcd },
        { Samples.LcdUs, WeatherFormat.Lcd },
        { Samples.Ghcnh, WeatherFormat.Ghcnh },
        { Samples.OpenMeteo, WeatherFormat.OpenMeteo },
        { Samples.Meteostat, WeatherFormat.Meteostat },
        { Samples.MeteostatBulk, WeatherFormat.Meteostat },
        { Samples.MeteostatYear, WeatherFormat.Meteostat },
        { Samples.Forecast, WeatherFormat.NwsForecast },
        { ForecastSamples.OpenMeteo, WeatherFormat.OpenMeteoJson },
        { ForecastSamples.MetNorway, WeatherFormat.MetNorway },
        { PublisherSamples.Nsrdb, WeatherFormat.Nsrdb },
        { PublisherSamples.PvgisPanel, WeatherFormat.Pvgis },
        { PublisherSamples.PvgisLevel, WeatherFormat.Pvgis },
        { PublisherSamples.PvgisTypical, WeatherFormat.Pvgis },
        { PublisherSamples.GlobalHourly, WeatherFormat.GlobalHourly },
        { PublisherSamples.OpenMeteoBlocks, WeatherFormat.OpenMeteo },
        { Fixtures.Weather, WeatherFormat.Csv },
    };

    [Theory]
    [MemberData(nameof(Whole))]
    public void A_layout_is_recognised_by_looking(string text, WeatherFormat format)
    {
        Assert.Equal(format, Samples.Good(text).Format);
        Assert.Equal(format, Samples.Good("\uFEFF" + text.ReplaceLineEndings("\r\n")).Format);
    }

    [Theory]
    [MemberData(nameof(Whole))]
    public void Packing_and_line_ends_do_not_change_what_is_read(string text, WeatherFormat format)
    {
        IReadOnlyList<WeatherRow> plain = Samples.Good(text, new() { Format = format }).Rows;
        using MemoryStream packed = new();
        using (GZipStream zip = new(packed, CompressionMode.Compress, leaveOpen: true))
            zip.Write(Encoding.UTF8.GetBytes(text));
        Assert.Equal(plain, Samples.Read(packed.ToArray()).Rows);
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        string mixed = string.Concat(lines.Select((l, i) => l + (i % 2 == 0 ? "\r\n" : "\n")));
        Assert.Equal(plain, Samples.Good(mixed).Rows);
    }

    [Theory]
    [MemberData(nameof(Whole))]
    public void As_our_csv_and_back_nothing_changes(string text, WeatherFormat format)
    {
        IReadOnlyList<WeatherRow> rows = Samples.Good(text, new() { Format = format }).Rows;
        using StringWriter csv = new();
        WeatherCsvWriter.Write(rows, csv);
        IReadOnlyList<WeatherRow> again = Samples.Good(csv.ToString()).Rows;
        Assert.Equal(rows.Select(r => r.Time), again.Select(r => r.Time));
        Assert.All(rows.Zip(again), p =>
        {
            Assert.Equal(p.First.Air_K, p.Second.Air_K, 0.0051);
            Assert.Equal(p.First.Wind_m_s ?? -1, p.Second.Wind_m_s ?? -1, 0.0051);
            Assert.Equal(p.First.DewPoint_K ?? -1, p.Second.DewPoint_K ?? -1, 0.0051);
            Assert.Equal(p.First.Pressure_Pa ?? -1, p.Second.Pressure_Pa ?? -1, 0.51);
        });
    }

    [Fact]
    public void Hour_one_of_an_epw_ends_at_one_in_local_standard_time()
    {
        WeatherResult read = Samples.Good(Samples.Epw);
        Assert.Equal(new DateTimeOffset(1990, 1, 31, 1, 0, 0, TimeSpan.FromHours(-7)), read.Rows[0].Time);
        Assert.Equal(-10.1, read.Rows[0].Celsius());
        Assert.Equal(84000, read.Rows[0].Pressure_Pa);
        Assert.Equal(0.5, read.Rows[0].Cloud_frac!.Value, 9);
        Assert.Equal((40.0, -105.2, 1600.0), (read.Station.Latitude_deg, read.Station.Longitude_deg, read.Station.Elevation_m));
    }

    [Fact]
    public void Sun_of_the_hour_before_a_stamp_is_set_to_the_stamp_by_its_neighbours()
    {
        IReadOnlyList<WeatherRow> rows = Samples.Good(Samples.Epw).Rows;
        Assert.Equal([0, 100, 200], rows.Skip(6).Take(3).Select(r => r.Sun_W_m2));
        Assert.Equal([0, 50, 200], Samples.Good(Samples.OpenMeteo).Rows.Take(3).Select(r => r.Sun_W_m2));
    }

    [Fact]
    public void Irradiance_that_was_moved_to_the_timestamps_is_noted()
    {
        const string note = "w: sun: means over the hour before each time; each time is given the mean of the hours on its two sides";
        Assert.All([Samples.Epw, Samples.Tmy3, Samples.OpenMeteo], text => Assert.Single(Samples.Good(text).Notes, note));
        string instant = Samples.OpenMeteo.Replace("shortwave_radiation", "shortwave_radiation_instant", StringComparison.Ordinal);
        Assert.DoesNotContain(Samples.Good(instant).Notes, n => n.Contains("sun", StringComparison.Ordinal));
        Assert.DoesNotContain(Samples.Good(Samples.OpenMeteo.Replace("shortwave_radiation", "nothing_known", StringComparison.Ordinal)).Notes, n => n.Contains("sun", StringComparison.Ordinal));
    }

    [Fact]
    public void A_year_is_reported_as_not_used_where_the_times_have_their_own()
    {
        WeatherRequest request = new() { Year = 2028 };
        Assert.Contains("w: its times have years of their own; the year 2028 that was asked for is not used", Samples.Good(Samples.OpenMeteo, request).Warnings);
        Assert.DoesNotContain(Samples.Good(Samples.Epw, request).Warnings, w => w.Contains("not used", StringComparison.Ordinal));
    }

    [Fact]
    public void Months_of_a_typical_year_are_put_on_one_year_in_order()
    {
        WeatherResult read = Samples.Good(Samples.Epw);
        Assert.Equal(48, read.Rows.Count);
        Assert.All(read.Rows.Zip(read.Rows.Skip(1)), p => Assert.Equal(TimeSpan.FromHours(1), p.Second.Time - p.First.Time));
        Assert.Contains("w: a typical year, its months from 1984 to 1990, one after another as 1990", read.Notes);
        Assert.Equal(2031, Samples.Good(Samples.Epw, new() { Year = 2031 }).Rows[0].Time.Year);
    }

    [Fact]
    public void Midnight_of_a_tmy3_day_is_the_next_day_and_december_goes_on_in_january()
    {
        IReadOnlyList<WeatherRow> rows = Samples.Good(Samples.Tmy3).Rows;
        Assert.Equal(new DateTimeOffset(1992, 1, 1, 0, 0, 0, TimeSpan.FromHours(-7)), rows[23].Time);
        Assert.Equal(new DateTimeOffset(1992, 1, 1, 1, 0, 0, TimeSpan.FromHours(-7)), rows[24].Time);
        Assert.Equal(0.4, rows[4].Cloud_frac!.Value, 9);
    }

    [Fact]
    public void A_typical_year_without_a_leap_day_goes_on_a_year_without_one()
    {
        string text = Samples.Tmy3Of([("02/28/1988", 1), ("03/01/1985", 2)]);
        Assert.Equal(1989, Samples.Good(text).Rows[0].Time.Year);
        WeatherResult leap = Samples.Good(text, new() { Year = 2028 });
        Assert.Equal(72, leap.Rows.Count);
        Assert.Contains(leap.Notes, n => n.Contains("29 February is not in the file", StringComparison.Ordinal));
        Assert.Equal(leap.Rows[0].Air_K, leap.Rows[24].Air_K);
    }

    [Fact]
    public void A_leap_day_is_kept_or_left_out_as_the_year_has_one()
    {
        string text = Samples.Tmy3Of([("02/28/1988", 1), ("02/29/1985", 2), ("03/01/1985", 3)]);
        Assert.Equal((1988, 72), (Samples.Good(text).Rows[0].Time.Year, Samples.Good(text).Rows.Count));
        WeatherResult without = Samples.Good(text, new() { Year = 2031 });
        Assert.Equal(48, without.Rows.Count);
        Assert.Contains("w: 29 February left out, 2031 has none", without.Notes);
    }

    [Fact]
    public void Four_rows_an_hour_of_an_epw_are_quarters()
    {
        string[] lines = Samples.EpwOf([(2031, 1, 31)], perHour: 4).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        IEnumerable<string> rows = lines[8..11].SelectMany(l => ((int[])[15, 30, 45, 60]).Select(m => l.Replace(",60,?9,", $",{m},?9,", StringComparison.Ordinal)));
        IReadOnlyList<WeatherRow> read = Samples.Good(string.Join('\n', lines[..8].Concat(rows))).Rows;
        Assert.Equal(12, read.Count);
        Assert.Equal(new DateTimeOffset(2031, 1, 31, 0, 15, 0, TimeSpan.FromHours(-7)), read[0].Time);
    }

    [Fact]
    public void Of_lcd_reports_one_an_hour_is_kept_the_routine_one_first()
    {
        WeatherResult read = Samples.Good(Samples.LcdMetric);
        Assert.Equal(["23:54", "00:54", "01:37", "02:54"], read.Rows.Select(r => r.Time.ToString("HH:mm")));
        Assert.Equal([-10, -11, -11.4, -13], read.Rows.Select(r => r.Celsius()));
        Assert.Equal([1, 0, 1, 0], read.Rows.Select(r => r.Cloud_frac));
        Assert.Contains("w: 1 value that the publisher marks as suspect left out", read.Notes);
        Assert.Contains(read.Notes, n => n.Contains("UTC-07:00 by its sunrise and sunset", StringComparison.Ordinal));
    }

    [Fact]
    public void Lcds_offset_is_its_own_or_asked_for_and_not_the_longitudes()
    {
        Assert.Contains("w: local standard time, UTC-07:00 by the UTC in its reports", Samples.Good(Samples.LcdUs).Notes);
        Assert.Equal(TimeSpan.FromHours(-7), Samples.Good(Samples.LcdUs).Station.Offset);

        // 83 degrees west, where the clock is an hour ahead of the sun's: the nearest full hours would be -06:00.
        string east = Samples.LcdMetric.Replace("-105.2", "-83.0", StringComparison.Ordinal).Replace(",0720,1656,", ",0753,1727,", StringComparison.Ordinal);
        Assert.Equal(TimeSpan.FromHours(-5), Samples.Good(east).Station.Offset);
        string silent = Samples.LcdMetric.Replace(",0720,1656,", ",,,", StringComparison.Ordinal);
        Assert.Equal(
            "w:1:1: times in local standard time, and neither sunrise and sunset nor a report's UTC to tell its offset; accepted: --offset \"-07:00\", or offset under [weather], the standard time of the station's zone; "
            + "at longitude -105.2 often -07:00 or an hour beside it",
            Assert.Single(Samples.Read(silent).Problems).ToString());
        Assert.Equal(TimeSpan.FromHours(-8), Samples.Good(silent, new() { Offset = TimeSpan.FromHours(-8) }).Rows[0].Time.Offset);
    }

    [Fact]
    public void A_file_that_is_hardly_used_says_so()
    {
        string days = string.Concat(Enumerable.Range(11, 20).Select(d => $"USW00099999,2031-01-{d}T23:59:00,40.0,-105.2,1600.0,\"NOWHERE FIELD, XX US\",SOD  ,335,,,,,,,,,0720,1656,\n"));
        Assert.Contains("w: only 4 of 26 rows are used; 22 have no hour's temperature, as sums of days have none", Samples.Good(Samples.LcdMetric.ReplaceLineEndings("\n") + "\n" + days).Warnings);
        Assert.DoesNotContain(Samples.Good(Samples.LcdMetric).Warnings, w => w.Contains("rows are used", StringComparison.Ordinal));
    }

    [Fact]
    public void Cut_short_is_said_only_where_a_file_is()
    {
        string[] lines = Samples.Tmy3.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains("w: 48 hours, a whole year has 8760", Samples.Good(Samples.Tmy3).Notes);
        Assert.Empty(Samples.Good(Samples.Tmy3).Warnings);
        Assert.Contains("w: 43 hours, a whole year has 8760, and the last day does not end; cut short, perhaps", Samples.Good(string.Join('\n', lines[..^5])).Warnings);
        string withoutLast = Samples.Epw.Replace("2,1,24,60,?9,-12.4,-15.0", "2,1,24,60,?9,99.9,99.9", StringComparison.Ordinal);
        Assert.NotEqual(Samples.Epw, withoutLast);
        Assert.DoesNotContain(Samples.Good(withoutLast).Warnings, w => w.Contains("cut short", StringComparison.Ordinal));
        Assert.Equal("w:1:29: the JSON document ends in the middle; the file is cut short", Samples.Read("{\"properties\": {\"periods\": [").Problems[0].ToString());
        Assert.Equal("w:1:30: not JSON from here on", Samples.Read("{\"properties\": {\"periods\": [ } ]}").Problems[0].ToString());
    }

    [Fact]
    public void Columns_that_are_not_used_are_one_warning()
        => Assert.Equal(
            ["w: columns 'q1', 'q2', 'q3', 'q4', 'q5' and 2 more are not used"],
            Samples.Good("time,air [°C],q1,q2,q3,q4,q5,q6,q7\n2025-01-14T01:00Z,-1,,,,,,,\n2025-01-14T02:00Z,-2,,,,,,,\n").Warnings);

    [Fact]
    public void The_two_versions_of_lcd_differ_in_their_units()
    {
        WeatherRow us = Samples.Good(Samples.LcdUs).Rows[0], metric = Samples.Good(Samples.LcdMetric).Rows[0];
        Assert.Equal(-10, us.Celsius());
        Assert.Equal(4.4704, us.Wind_m_s!.Value, 9);
        Assert.Equal(83982.4, us.Pressure_Pa!.Value, 0.1);
        Assert.Equal((-10, 3.1, 84000), (metric.Celsius(), metric.Wind_m_s, metric.Pressure_Pa));
    }

    [Fact]
    public void Ghcnh_values_that_failed_a_check_are_left_out()
    {
        WeatherResult read = Samples.Good(Samples.Ghcnh);
        Assert.Equal([-10, -11, -13], read.Rows.Select(r => r.Celsius()));
        Assert.Equal(TimeSpan.Zero, read.Rows[0].Time.Offset);
        Assert.Equal(0.75, read.Rows[0].Cloud_frac);
        Assert.Contains("w: 3 values that failed the publisher's checks left out", read.Notes);
        Assert.Equal("NOWHERE \"FIELD", read.Station.Name);
    }

    [Fact]
    public void An_older_ghcnh_dates_by_parts_and_an_offset_shows_local_time()
    {
        string old = Samples.Ghcnh.Replace("STATION|", "Station_ID|", StringComparison.Ordinal).Replace("|DATE|", "|unused|", StringComparison.Ordinal);
        Assert.Equal(Samples.Good(Samples.Ghcnh).Rows, Samples.Good(old).Rows);
        Assert.Equal("23:53", Samples.Good(old, new() { Offset = TimeSpan.FromHours(-7) }).Rows[0].Time.ToString("HH:mm"));
    }

    [Fact]
    public void Open_meteo_keeps_one_offset_takes_units_from_headings_and_leaves_the_daily_block()
    {
        WeatherResult read = Samples.Good(Samples.OpenMeteo);
        Assert.Equal(4, read.Rows.Count);
        Assert.Equal(new DateTimeOffset(2031, 1, 10, 6, 0, 0, TimeSpan.FromHours(-7)), read.Rows[0].Time);
        Assert.Equal([1, 2, 3, 3], read.Rows.Select(r => Math.Round(r.Wind_m_s!.Value, 9)));
        Assert.Equal([0.25, 0.5, 0.75, 1], read.Rows.Select(r => r.Cloud_frac));
        Assert.Equal(["w: a further block from line 10 on is not used"], read.Warnings);
    }

    [Fact]
    public void Open_meteo_seconds_since_1970_are_utc()
    {
        WeatherResult read = Samples.Good("latitude,longitude,elevation,utc_offset_seconds\n40,-105,1600,-25200\n\ntime,temperature_2m (°F),wind_speed_10m (mp/h)\n1925848800,14,10\n1925852400,14,10\n");
        Assert.Equal(new DateTimeOffset(2031, 1, 10, 2, 0, 0, TimeSpan.Zero).ToUnixTimeSeconds(), read.Rows[0].Time.ToUnixTimeSeconds() - (1925848800 - 1925776800));
        Assert.Equal((-10, 4.4704), (read.Rows[0].Celsius(), Math.Round(read.Rows[0].Wind_m_s!.Value, 9)));
    }

    [Fact]
    public void Meteostat_is_in_utc_and_kilometres_an_hour_and_its_pressure_is_not_the_stations()
    {
        WeatherResult read = Samples.Good(Samples.Meteostat);
        Assert.Equal([1, 2, 3], read.Rows.Select(r => Math.Round(r.Wind_m_s!.Value, 9)));
        Assert.All(read.Rows, r => Assert.Null(r.Pressure_Pa));
        Assert.Contains("w: column 'pres' is pressure at sea level and is not used", read.Warnings);
    }

    [Fact]
    public void A_forecast_keeps_its_offsets_and_a_range_of_wind_is_its_mean()
    {
        WeatherResult read = Samples.Good(Samples.Forecast);
        Assert.Equal([-10, -11.111111, -12], read.Rows.Select(r => r.Celsius()));
        Assert.Equal([5 * 0.44704, 15 * 0.44704, 10], read.Rows.Select(r => Math.Round(r.Wind_m_s!.Value, 9)));
        Assert.All(read.Rows.Zip(read.Rows.Skip(1)), p => Assert.Equal(TimeSpan.FromHours(1), p.Second.Time - p.First.Time));
        Assert.Equal((40.0, 2400.5), (Math.Round(read.Station.Latitude_deg!.Value, 9), read.Station.Elevation_m));
    }

    [Fact]
    public void A_window_is_cut_while_reading()
    {
        WeatherRequest request = new() { From = WindowEdge.Read("1990-02-01", endOfDay: false), To = WindowEdge.Read("1990-02-01T06:00-07:00", endOfDay: true) };
        WeatherResult read = Samples.Good(Samples.Epw, request);
        Assert.Equal(7, read.Rows.Count);
        Assert.True(read.Outside > 20);
        Assert.Equal(
            "w:56:1: no row in the window asked for; the file goes from 1990-01-31T01:00-07:00 to 1990-02-02T00:00-07:00",
            Assert.Single(Samples.Read(Samples.Epw, new() { From = WindowEdge.Read("1995-01-01", endOfDay: false) }).Problems).ToString());
    }

    [Fact]
    public void A_longer_gap_is_bridged_and_noted_only_where_that_is_asked_for()
    {
        const string text = "time,air [°C]\n2025-01-14T01:00Z,-1\n2025-01-14T02:00Z,-2\n2025-01-14T03:00Z,-3\n2025-01-14T09:00Z,-9\n";
        Assert.Contains("nothing between", Assert.Single(Samples.Read(text).Problems).What, StringComparison.Ordinal);
        WeatherResult read = Samples.Good(text, new() { Bridge = TimeSpan.FromHours(6) });
        Assert.Equal(["w: bridged 6 h between 2025-01-14T03:00+00:00 and 2025-01-14T09:00+00:00, by a straight line, as asked for"], read.Notes);
        Assert.Equal(6, Assert.Single(read.Gaps).Length.TotalHours);
    }

    [Fact]
    public void Of_very_many_gaps_all_are_counted_and_the_longest_kept()
    {
        StringBuilder text = new("time,air [°C]\n");
        DateTime time = new(2030, 1, 1);
        for (int i = 0; i < 9000; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{time:yyyy-MM-dd'T'HH:mm}Z,-3\n");
            time = time.AddHours(i % 3 < 2 ? 1 : i == 8000 ? 3 : 2);
        }

        WeatherResult read = Samples.Good(text.ToString());
        Assert.Equal(2999, read.AllGaps);
        Assert.Equal(1000, read.Gaps.Count);
        Assert.Contains(read.Gaps, g => g.Length.TotalHours == 3);
        Assert.Equal(read.Gaps.OrderBy(g => g.From), read.Gaps);
        Assert.Equal("w: bridged 2979 more gaps, 5959 h in all", read.Notes[^1]);
    }
}
