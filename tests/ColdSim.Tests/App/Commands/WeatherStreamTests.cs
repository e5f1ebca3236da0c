using System.Text;
using ColdSim.App.Commands;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Files.Weather;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>Long records go through row by row. The memory of the whole process is measured, so nothing may run beside these.</summary>
[CollectionDefinition(nameof(WeatherStreamTests), DisableParallelization = true)]
[Collection(nameof(WeatherStreamTests))]
[Trait("Category", "Slow")]
public sealed class WeatherStreamTests
{
    private const int Few = 100_000;
    private const int Many = 400_000;

    // Rows that were held would take some 100 bytes each: 30 MB more for the many than for the few.
    private const long Slack = 3_000_000;

    private static readonly WeatherQuestion Question = new(
        "generated", new WeatherRequest(), 273.15, new("--night", 1, SpellRule.Read("worst")), new PlaceShift { StationElevation_m = 100, HollowDrop_K = 2, HollowCalm_m_s = 4 }, 500, 40, -105);

    [Fact]
    public void What_is_held_while_a_record_is_looked_into_does_not_grow_with_its_rows()
        => Assert.InRange(Held(Many, Looked) - Held(Few, Looked), long.MinValue, Slack);

    [Fact]
    public void What_is_held_while_a_record_is_written_anew_does_not_grow_with_its_rows()
        => Assert.InRange(Held(Many, Written) - Held(Few, Written), long.MinValue, Slack);

    [Fact]
    public void What_is_held_of_a_record_for_a_run_is_the_window()
    {
        WeatherRequest window = new() { From = WindowEdge.Read("1900-03-01", endOfDay: false) };
        Assert.InRange(Held(Many, stream => Window(stream, window)) - Held(Few, stream => Window(stream, window)), long.MinValue, Slack);

        static void Window(Stream stream, WeatherRequest window)
        {
            WeatherRequest three = window with { To = WindowEdge.Read("1900-03-03", endOfDay: true) };

            // Without an end there would be something to hold; with it the reading stops there.
            WeatherResult read = WeatherFile.Read(stream, "generated", three);
            Assert.InRange(read.Rows.Count, 2, 3 * 24 * 12 + 1);
        }
    }

    [Fact]
    public void What_is_held_of_a_record_for_a_check_does_not_grow_with_its_rows()
    {
        Assert.InRange(Held(Many, Checked) - Held(Few, Checked), long.MinValue, Slack);

        static void Checked(Stream stream) => Assert.InRange(WeatherFile.Read(stream, "generated", new() { MostRows = 1 << 14 }).Rows.Count, 1 << 13, (1 << 14) + 3);
    }

    [Fact]
    public void A_window_at_the_end_of_a_long_record_holds_nothing_of_what_is_before()
    {
        WeatherRequest last = new() { From = WindowEdge.Read("1903-10-01", endOfDay: false) };
        long held = Held(Many, stream => Assert.InRange(WeatherFile.Read(stream, "generated", last).Rows.Count, 2, 30_000));
        Assert.InRange(held, 0, 30_000 * 150L + Slack);
    }

    [Fact]
    public void What_is_held_of_a_record_for_the_same_days_of_every_year_are_these_days()
    {
        RecordDays days = new(new(2027, 1, 12, 16, 0, 0, TimeSpan.FromHours(-7)), TimeSpan.FromDays(3));
        Assert.InRange(Held(Many, Read) - Held(Few, Read), long.MinValue, Slack);

        void Read(Stream stream)
        {
            YearRows route = new(days, CancellationToken.None);
            Assert.Empty(WeatherFile.Read(stream, "generated", new() { Bridge = TimeSpan.FromDays(31) }, route).Rows);
            RecordYears years = route.Finish();
            Assert.InRange(years.Years.Count, 1, 4);
            Assert.InRange(years.Rows.Count, 1, years.Years.Count * (3 * 24 * 12 + 2));
        }
    }

    [Fact]
    public void A_record_read_row_by_row_gives_what_it_gives_read_at_once()
    {
        using Stream held = GeneratedRows.Of(30_000, 5), streamed = GeneratedRows.Of(30_000, 5);
        WeatherResult whole = WeatherFile.Read(held, "generated", new());
        Assert.Equal(30_000, whole.Rows.Count);
        List<WeatherRow> rows = [];
        PlacedRows route = new(Question with { Shift = new(), Elevation_m = null }, rows.Add, CancellationToken.None);
        WeatherResult result = WeatherFile.Read(streamed, "generated", new(), route);
        Assert.Empty(route.Finish());
        Assert.Equal(whole.Rows, rows);
        Assert.Empty(result.Rows);
        Assert.Equal(whole.Notes, result.Notes);
        Assert.Equal(5, whole.AllGaps);
        Assert.Contains(whole.Notes, n => n.Contains("wind is empty in 309 rows; 309 filled", StringComparison.Ordinal) || n.Contains("filled in between", StringComparison.Ordinal));
    }

    [Fact]
    public void A_long_record_is_drawn_as_its_rows_would_be()
    {
        AirCurve curve = new();
        WeatherRow[] rows = [.. Enumerable.Range(0, 100_000).Select(i => new WeatherRow(DateTimeOffset.UnixEpoch.AddMinutes(5 * i), 260 + 10 * Math.Sin(i / 300.0)))];
        foreach (WeatherRow row in rows)
            curve.Add(row);
        Assert.InRange(curve.Slices.Count, 8192, 16_384);
        Assert.Equal((rows[0].Time, rows[^1].Time), (curve.Slices[0].From, curve.Slices[^1].To));
        Assert.Equal((rows.Min(r => r.Air_K), rows.Max(r => r.Air_K)), (curve.Slices.Min(s => s.Low_K), curve.Slices.Max(s => s.High_K)));
        Assert.All(curve.Slices.Zip(curve.Slices.Skip(1)), p => Assert.Equal(TimeSpan.FromMinutes(5), p.Second.From - p.First.To));
    }

    private static void Looked(Stream stream)
    {
        WeatherLook look = new(Question.Below_K, nights: true);
        PlacedRows? route = null;
        route = new(Question, row => look.Take(row, route!.Clock), CancellationToken.None);
        Assert.Empty(WeatherFile.Read(stream, "generated", Question.Request, route).Problems);
        Assert.NotEmpty(route.Finish());
        Assert.NotNull(look.Digest.LongestRun);
        Assert.NotEmpty(look.Nights);
    }

    private static void Written(Stream stream)
    {
        ColumnCounts all = new();
        all.Add(new WeatherRow(default, 260, 1, 255, 100));
        using StreamWriter nowhere = new(Stream.Null, Encoding.UTF8);
        using WeatherCsvWriter csv = new(nowhere, all);
        PlacedRows route = new(Question, row => csv.Add(row), CancellationToken.None);
        Assert.Empty(WeatherFile.Read(stream, "generated", Question.Request, route).Problems);
        route.Finish();
    }

    /// <summary>The most that is alive while a record is read, looked at eight times on the way.</summary>
    private static long Held(long rows, Action<Stream> read)
    {
        long before = GC.GetTotalMemory(forceFullCollection: true), most = 0;
        using Stream stream = GeneratedRows.Of(rows, 5, row =>
        {
            if (row % (rows / 8) == rows / 8 - 1)
                most = Math.Max(most, GC.GetTotalMemory(forceFullCollection: true) - before);
        });
        read(stream);
        return most;
    }
}
