using System.Text;
using ColdSim.Files.Results;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>What is kept of a record of years, beside all of it held and searched.</summary>
public class YearCollectorTests
{
    private static readonly TimeSpan Clock = Rigs.Start.Offset;
    private static readonly TimeSpan ThreeHours = TimeSpan.FromHours(3);

    private static readonly DateTime[] Edges = [new(2028, 2, 29), new(2028, 1, 1), new(2028, 12, 31)];

    // A few days, and so many that the days of one year reach into those of the next.
    private static readonly Gen<TimeSpan> Durations = Gen.OneOf(
        Gen.Int[1, 6 * 24].Select(h => TimeSpan.FromHours(h)), Gen.Int[360 * 24, 400 * 24].Select(h => TimeSpan.FromHours(h)));

    private static readonly Gen<RecordDays> Days = Gen.Select(
        Gen.OneOf(Gen.Int[0, 365].Select(d => new DateTime(2028, 1, 1).AddDays(d)), Gen.Int[0, 2].Select(i => Edges[i])),
        Gen.Int[0, 23], Gen.Int[0, 59], Gen.Int[-12, 13], Durations,
        (day, hour, minute, offset, duration) => new RecordDays(new(day.AddHours(hour).AddMinutes(minute), TimeSpan.FromHours(offset)), duration));

    // Rows some minutes apart, not at whole hours, with holes and some just as long as a gap may be.
    private static readonly Gen<List<WeatherRow>> Records = Gen.Select(
        Gen.Int[0, 2 * 366 * 24 * 60], Gen.Int[1, 4 * 366], Gen.Int[37, 180], Gen.Int[-12, 13], Gen.Int[0, 1_000_000],
        (first, days, spacing, offset, seed) =>
        {
            Random random = new(seed);
            List<WeatherRow> rows = [];
            DateTimeOffset time = new DateTimeOffset(2018, 1, 1, 0, 0, 0, TimeSpan.FromHours(offset)).AddMinutes(first), last = time.AddDays(days);
            for (; time <= last; time = time.AddMinutes(random.Next(1500) == 0 ? random.Next(170, 3000) : random.Next(40) == 0 ? 180 : spacing))
                rows.Add(Row(time));
            return rows;
        });

    [Fact]
    [Trait("Category", "Slow")]
    public void Collected_years_equal_those_found_in_the_whole_record()
        => Gen.Select(Records, Days).Sample(
            (record, days) =>
            {
                RecordYears whole = Searched(record, days), kept = Kept(record, days);
                Assert.Equal(whole.Years.Select(y => (y.Year, y.Start)), kept.Years.Select(y => (y.Year, y.Start)));
                for (int i = 0; i < kept.Years.Count; i++)
                    Assert.Equal(Of(whole, i), Of(kept, i));
                Assert.Equal(whole.LeftOut, kept.LeftOut);
                Assert.Equal(whole.Years.SelectMany((_, i) => Of(whole, i)).Distinct().Count(), kept.Rows.Count);
            },
            iter: 300);

    [Fact]
    public void The_answer_is_that_of_the_whole_record_to_the_last_bit()
    {
        Scenario scenario = Rigs.Scenario(Rigs.Heated() with { Cylinders = [Rigs.Bottle("20 lb", 0.9)] }, Rigs.Changing(_ => -2), 2);
        ComparedOption[] options = [new("half full", scenario with { Rig = scenario.Rig with { Cylinders = [Rigs.Bottle("20 lb", 0.5)] } })];
        List<WeatherRow> record = Every(TimeSpan.FromMinutes(35), new(2019, 6, 1, 0, 7, 0, TimeSpan.Zero), 5 * 365)
            .ConvertAll(r => r with { Air_K = 258 + 9 * Math.Sin(r.Time.ToUnixTimeSeconds() / 4e4), Wind_m_s = r.Time.Day % 7, DewPoint_K = 250 });
        string before = Text(ChanceRun.OfYears(scenario, options, (days, _) => Searched(record, days)));
        Assert.Equal(before, Text(ChanceRun.OfYears(scenario, options, (days, _) => Kept(record, days))));
        Assert.Contains("2024", before, StringComparison.Ordinal);

        static string Text(ChanceReport report)
        {
            using MemoryStream stream = new();
            JsonReport.Write(report, stream);

            // The document rounds; a record's text gives every digit.
            return string.Join('\n', (IEnumerable<object?>)[
                Encoding.UTF8.GetString(stream.ToArray()), .. report.Nights.Select(n => n.LeftAtDawn_kg), report.Dry, .. report.Fan, report.Ledger]);
        }
    }

    [Fact]
    public void Years_with_a_gap_in_these_days_are_left_out_and_the_rest_run()
    {
        DateTimeOffset hole = new(2021, 1, 13, 0, 0, 0, Clock);
        List<WeatherRow> record = [.. Every(TimeSpan.FromHours(1), new(2019, 1, 1, 0, 0, 0, Clock), 5 * 366)
            .Where(r => r.Time < hole || r.Time > hole.AddHours(6)).Select(r => r with { Air_K = 273.15 - (r.Time.Year == 2022 ? 30 : 0) })];
        Assert.Equal([2019, 2020, 2022, 2023], Kept(record, new(Rigs.Start, TimeSpan.FromHours(44))).Years.Select(y => y.Year));

        Scenario scenario = Rigs.Scenario(Rigs.Heated() with { Cylinders = [Rigs.Bottle("20 lb", 0.9)] }, Rigs.Changing(_ => -2), 1);
        ChanceReport report = ChanceRun.OfYears(scenario, [], (days, _) => Kept(record, days));
        Assert.Equal([2019, 2020, 2021, 2022, 2023], report.Years.Union([2021]).Order());
        Assert.Equal([new YearLeftOut(2021, WhyLeftOut.Gap)], report.YearsLeftOut);
        Assert.Null(report.Seed);
        Assert.Equal(report.Done - 1, report.AllNights.Count);
    }

    [Fact]
    public void A_gap_of_three_hours_is_none_and_a_gap_before_or_after_the_days_is_nothing()
    {
        RecordDays days = new(new(2020, 1, 10, 12, 0, 0, Clock), TimeSpan.FromDays(1));
        DateTimeOffset[] times = [.. new double[] { -9, -1, 2, 5, 8, 11, 14, 17, 20, 23, 24, 40 }.Select(h => days.Start.AddHours(h))];
        RecordYears kept = Kept(times.Select(Row), days);
        Assert.Equal(new RecordYear(2020, days.Start, 0, 10), Assert.Single(kept.Years));
        Assert.Equal(times[1..11], kept.Rows.Select(r => r.Time));

        times[4] += TimeSpan.FromSeconds(1);
        kept = Kept(times.Select(Row), days);
        Assert.Empty(kept.Years);
        Assert.Empty(kept.Rows);
    }

    [Fact]
    public void The_29th_of_February_is_run_in_the_years_that_have_one()
    {
        RecordDays days = new(new(2028, 2, 29, 16, 0, 0, Clock), TimeSpan.FromHours(44));
        RecordYears kept = Kept(Every(TimeSpan.FromHours(1), new(2015, 1, 1, 0, 0, 0, Clock), 10 * 365), days);
        Assert.Equal([2016, 2020, 2024], kept.Years.Select(y => y.Year));
        Assert.All(kept.Years, y => Assert.Equal((2, 29), (y.Start.Month, y.Start.Day)));
    }

    [Fact]
    public void A_record_that_begins_or_ends_within_the_days_lacks_that_year()
    {
        RecordDays days = new(Rigs.Start, TimeSpan.FromHours(44));
        DateTimeOffset start = new(2020, 1, 12, 16, 0, 0, Clock);
        List<WeatherRow> record = Every(TimeSpan.FromHours(1), start, 731 + 365);
        int end = record.FindIndex(r => r.Time == start.AddYears(2).AddHours(44));
        Assert.Equal([2020, 2021, 2022], Years(record[..(end + 1)]));
        Assert.Equal([2021, 2022], Years(record[1..(end + 1)]));
        Assert.Equal([2020, 2021], Years(record[..end]));
        Assert.Equal([2021], Years(record[1..end]));
        Assert.Equal([new(2020, WhyLeftOut.Begins), new(2022, WhyLeftOut.Ends)], Kept(record[1..end], days).LeftOut);
        Assert.Empty(Kept(record[..(end + 1)], days).LeftOut);
        Assert.Equal(2 * 45, Kept(record[..end], days).Rows.Count);
        Assert.Empty(Years([]));
        Assert.Empty(Years(record[..1]));

        IEnumerable<int> Years(IEnumerable<WeatherRow> rows) => Kept(rows, days).Years.Select(y => y.Year);
    }

    [Fact]
    public void Row_before_and_row_after_the_days_are_kept()
    {
        RecordDays days = new(Rigs.Start, TimeSpan.FromHours(20));
        RecordYears kept = Kept(Every(TimeSpan.FromHours(1), new(2019, 12, 31, 23, 53, 0, Clock), 366), days);
        RecordYear year = Assert.Single(kept.Years);
        Assert.Equal(new(2020, 1, 12, 15, 53, 0, Clock), kept.Rows[year.First].Time);
        Assert.Equal(new(2020, 1, 13, 12, 53, 0, Clock), kept.Rows[^1].Time);
        Assert.Equal(22, year.Count);
    }

    [Fact]
    public void A_row_that_two_years_need_is_held_once()
    {
        RecordDays days = new(Rigs.Start, TimeSpan.FromDays(400));
        List<WeatherRow> record = Every(TimeSpan.FromHours(3), new(2019, 1, 1, 1, 0, 0, Clock), 5 * 365);
        RecordYears kept = Kept(record, days);
        Assert.Equal([2019, 2020, 2021, 2022], kept.Years.Select(y => y.Year));
        Assert.Equal(kept.Rows.Distinct().Count(), kept.Rows.Count);
        Assert.True(kept.Rows.Count < record.Count);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(60)]
    public void Only_rows_of_the_days_are_held(int minutesOutside)
    {
        const int Rows = 3 * 288 + 1;
        RecordDays days = new(Rigs.Start, TimeSpan.FromDays(3));
        YearCollector years = new(days);
        DateTimeOffset time = new(1990, 1, 1, 0, 0, 0, Clock), last = new(2019, 12, 31, 23, 0, 0, Clock);
        int begun = 0;
        while (time <= last)
        {
            DateTimeOffset start = new(time.Year, 1, 12, 16, 0, 0, Clock);
            bool within = time >= start && time < start + days.Duration;
            years.Add(Row(time));
            if (time > start) begun = time.Year - 1989;
            Assert.InRange(years.Held, 0, begun * Rows + 1);
            time = time.AddMinutes(within ? 5 : minutesOutside);
        }

        Assert.Equal(30, years.Finish().Years.Count);
        Assert.Equal(30 * Rows + 1, years.Held);
    }

    [Fact]
    public void Rows_of_a_year_left_out_are_not_held()
    {
        DateTimeOffset start = new(2020, 1, 12, 16, 0, 0, Clock);
        YearCollector years = new(new(Rigs.Start, TimeSpan.FromDays(3)));
        for (int h = -5; h <= 60; h++)
            years.Add(Row(start.AddHours(h)));
        Assert.Equal(62, years.Held);
        years.Add(Row(start.AddHours(64)));
        Assert.Equal(1, years.Held);
    }

    [Fact]
    public void Rows_out_of_order_and_days_of_no_length_are_refused()
    {
        YearCollector years = new(new(Rigs.Start, TimeSpan.FromDays(3)));
        years.Add(Row(Rigs.Start));
        Assert.Throws<ArgumentException>(() => years.Add(Row(Rigs.Start)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new YearCollector(new(Rigs.Start, TimeSpan.Zero)));
    }

    [Fact]
    public void A_record_without_these_days_is_refused()
    {
        Scenario scenario = Rigs.Scenario(Rigs.Heated(), Rigs.Changing(_ => -2), 1);
        CannotRunException fault = Assert.Throws<CannotRunException>(() => ChanceRun.OfYears(scenario, [], (days, _) => Kept([], days)));
        Assert.Contains("No year of the record covers these days", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(9999)]
    public void Years_at_the_ends_of_the_calendar_are_accepted(int year)
        => Assert.Empty(Kept(Every(TimeSpan.FromHours(1), new(year, 3, 1, 0, 0, 0, TimeSpan.Zero), 200), new(new(2020, 1, 1, 0, 0, 0, TimeSpan.FromHours(9)), TimeSpan.FromDays(3))).Years);

    // The whole record held, and each year's days looked up in it.
    private static RecordYears Searched(List<WeatherRow> record, RecordDays days)
    {
        List<RecordYear> years = [];
        List<YearLeftOut> leftOut = [];
        for (int year = record[0].Time.Year - 1; year <= record[^1].Time.Year + 1; year++)
        {
            if (days.Start.Day > DateTime.DaysInMonth(year, days.Start.Month))
                continue;
            DateTimeOffset from = new(new DateTime(year, days.Start.Month, days.Start.Day) + days.Start.TimeOfDay, days.Start.Offset);
            int first = record.FindLastIndex(r => r.Time <= from), last = record.FindIndex(r => r.Time >= from + days.Duration);
            if (first >= 0 && last >= 0 && Enumerable.Range(first, last - first).All(i => record[i + 1].Time - record[i].Time <= ThreeHours))
                years.Add(new RecordYear(year, from, first, last - first + 1));
            else if (record[0].Time < from + days.Duration && record[^1].Time > from)
                leftOut.Add(new(year, first < 0 ? WhyLeftOut.Begins : Gap(first, last < 0 ? record.Count - 1 : last) ? WhyLeftOut.Gap : WhyLeftOut.Ends));
        }

        return new RecordYears(years, record, leftOut);

        bool Gap(int first, int last) => Enumerable.Range(first, last - first).Any(i => record[i + 1].Time - record[i].Time > ThreeHours);
    }

    private static RecordYears Kept(IEnumerable<WeatherRow> record, RecordDays days)
    {
        YearCollector years = new(days);
        foreach (WeatherRow row in record)
            years.Add(row);
        return years.Finish();
    }

    private static IEnumerable<WeatherRow> Of(RecordYears years, int year) => years.Rows.Skip(years.Years[year].First).Take(years.Years[year].Count);

    private static List<WeatherRow> Every(TimeSpan spacing, DateTimeOffset first, int days)
        => [.. Enumerable.Range(0, (int)(TimeSpan.FromDays(days) / spacing)).Select(i => Row(first + i * spacing))];

    private static WeatherRow Row(DateTimeOffset time) => new(time, 260);
}
