using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Logs;

public class LogConsistencyTests
{
    private static readonly Scenario Three = ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "three-days.toml")).Scenario!;

    private static LogReading[] Log(params (double Hours, double Mass_kg)[] readings)
        => [.. readings.Select((r, i) => Weighed(Three.Start.AddHours(r.Hours), r.Mass_kg, i + 2))];

    private static LogReading Weighed(DateTimeOffset time, double mass_kg, int line) => new()
    {
        Line = line,
        Time = time,
        Reading = new WeightReading { Name = "weight", Scale_kg = mass_kg + 10, Tare_kg = 10 },
    };

    private static (Inconsistency Kind, int Line)[] LeftOut(params LogReading[] readings)
        => [.. LogConsistency.Of(readings, Three).LeftOut.Select(l => (l.Kind, l.Row.Reading.Line))];

    [Fact]
    public void Readings_that_go_down_are_all_kept()
        => Assert.Empty(LeftOut(Log((0, 18), (12, 15), (24, 13), (24.1, 13.1), (48, 9))));

    [Fact]
    public void A_reading_that_rises_without_a_filling_is_left_out_and_the_others_are_not()
        => Assert.Equal([(Inconsistency.RisesWithoutFilling, 4)], LeftOut(Log((0, 16), (12, 14), (24, 17), (36, 11), (48, 9))));

    [Fact]
    public void A_single_reading_that_is_too_low_does_not_take_those_after_it_with_it()
        => Assert.Equal([(Inconsistency.UsedTooFast, 4)], LeftOut(Log((0, 16), (12, 14), (13, 4), (36, 11), (48, 9))));

    [Fact]
    public void After_a_filling_or_where_it_was_checked_contents_may_rise()
    {
        LogReading[] log = Log((0, 10), (12, 8), (24, 17));
        Assert.Equal([(Inconsistency.RisesWithoutFilling, 4)], LeftOut(log));
        Assert.Empty(LeftOut(log[0], log[1], log[2] with { Filled = true }));
        Assert.Empty(LeftOut(log[0], log[1], log[2] with { Checked = true }));
    }

    [Fact]
    public void A_rise_that_the_next_reading_confirms_is_a_filling_that_nobody_marked()
    {
        LogConsistency log = LogConsistency.Of(Log((0, 10), (12, 8), (24, 17), (36, 15), (48, 12)), Three);
        Assert.Empty(log.LeftOut);
        LogRow noticed = Assert.Single(log.Kept.Rows, r => r.Reading.FillingNoticed);
        Assert.Equal((4, true), (noticed.Reading.Line, noticed.Reading.Filled));
        Assert.Null(noticed.Used);
    }

    [Fact]
    public void A_single_wrong_reading_is_no_filling()
    {
        foreach (LogReading[] log in (LogReading[][])[Log((0, 16), (12, 14), (24, 17), (36, 11), (48, 9)), Log((0, 16), (12, 14), (24, 12), (36, 18)), Log((0, 4), (12, 16), (24, 14))])
            Assert.DoesNotContain(LogConsistency.Of(log, Three).Kept.Rows, r => r.Reading.FillingNoticed);
    }

    [Fact]
    public void More_than_the_burners_take_is_used_too_fast()
    {
        // 20,000 BTU/h and 250 W burn 0.44 kg an hour.
        Assert.Empty(LeftOut(Log((0, 18), (12, 13))));
        InconsistentReading fast = Assert.Single(LogConsistency.Of(Log((0, 18), (12, 11)), Three).LeftOut);
        Assert.Equal(Inconsistency.UsedTooFast, fast.Kind);
        Assert.InRange(fast.MostUsed.Kilograms, 5.1, 5.5);
    }

    [Fact]
    public void A_reading_a_whole_number_of_years_away_has_a_wrong_year_and_one_of_another_season_has_not()
    {
        LogReading[] log = Log((0, 18), (12, 15), (24, 13));
        foreach (int years in (int[])[-10, -1, 1, 2])
        {
            LogReading wrong = Weighed(log[1].Time.AddYears(years), 14, 9);
            InconsistentReading found = Assert.Single(LogConsistency.Of([.. log, wrong], Three).LeftOut);
            Assert.Equal((Inconsistency.WrongYear, log[1].Time), (found.Kind, found.Meant!.Value));
        }

        Assert.Empty(LeftOut([.. log, Weighed(log[1].Time.AddDays(-200), 18, 9)]));
        LogReading[] lastYear = [.. log.Select(r => r with { Time = r.Time.AddYears(-1), Line = r.Line + 10 })];
        Assert.Empty(LeftOut([.. lastYear, log[0] with { Filled = true }, log[1], log[2]]));
    }

    [Fact]
    public void A_new_season_is_not_held_against_the_last_one()
    {
        LogReading[] log = Log((-24 * 200, 10), (-24 * 199, 8), (-24 * 198, 6), (-24 * 197, 4), (0, 18), (12, 15));
        Assert.Empty(LeftOut(log));
    }

    [Fact]
    public void The_clock_counts_for_a_reading_about_to_be_written()
    {
        DateTimeOffset now = new(2031, 1, 3, 8, 0, 0, TimeSpan.Zero);
        Assert.Empty(LogConsistency.Doubts(Weighed(now, 12, 0), [], Three, now));
        InconsistentReading doubt = Assert.Single(LogConsistency.Doubts(Weighed(now.AddYears(-1), 12, 0), [], Three, now));
        Assert.Equal(now, doubt.Meant);
    }

    [Fact]
    public void In_logs_with_the_errors_of_a_scale_nothing_is_left_out_and_a_wrong_reading_alone()
    {
        const int Logs = 500;
        double[] left_kg = NightRun.Of(Three).Series.Propane_kg.ToArray();
        Random random = new(1);
        int falseAlarms = 0, found = 0, foundAlone = 0;
        for (int n = 0; n < Logs; n++)
        {
            double[] hours = [.. Enumerable.Range(0, 8).Select(i => 12 * i + 3 * random.NextDouble())];
            double Read(int i) => left_kg[(int)(60 * hours[i])] + 0.1 * (2 * random.NextDouble() - 1);
            LogReading[] log = [.. hours.Select((h, i) => Weighed(Three.Start.AddHours(h), Read(i), i + 2))];
            falseAlarms += LogConsistency.Of(log, Three).LeftOut.Count;

            // One digit too many or too few in the pounds of the scale, or the wrong year.
            int wrong = random.Next(1, 7);
            log[wrong] = random.Next(3) switch
            {
                0 => Weighed(log[wrong].Time, Read(wrong) + 4.54, wrong + 2),
                1 => Weighed(log[wrong].Time, Math.Max(0.1, Read(wrong) - 4.54), wrong + 2),
                _ => log[wrong] with { Time = log[wrong].Time.AddYears(1) },
            };
            int[] leftOut = [.. LogConsistency.Of(log, Three).LeftOut.Select(l => l.Row.Reading.Line)];
            found += leftOut.Contains(wrong + 2) ? 1 : 0;
            foundAlone += leftOut is [var only] && only == wrong + 2 ? 1 : 0;
        }

        Assert.Equal(0, falseAlarms);
        Assert.True(found > 0.95 * Logs && foundAlone > 0.95 * Logs, $"found {found}, alone {foundAlone} of {Logs}");
    }

    [Fact]
    public void A_reading_between_two_others_is_held_against_both()
    {
        LogReading[] log = Log((0, 18), (24, 13));
        Assert.Empty(LogConsistency.Doubts(Weighed(Three.Start.AddHours(12), 15, 0), log, Three, Three.Start));
        Assert.Equal(Inconsistency.RisesWithoutFilling, Assert.Single(LogConsistency.Doubts(Weighed(Three.Start.AddHours(23), 10, 0), log, Three, Three.Start)).Kind);
    }
}
