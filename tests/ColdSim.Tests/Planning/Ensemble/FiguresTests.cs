using ColdSim.Model.Weather;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Model;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>What is made of the members' counts.</summary>
public class FiguresTests
{
    // Wilson's interval at 95 %, from memory of its common examples.
    [Theory]
    [InlineData(0, 10, 0, 0.2775)]
    [InlineData(5, 10, 0.2366, 0.7634)]
    [InlineData(10, 10, 0.7225, 1)]
    public void The_interval_of_a_proportion_is_wilsons(int count, int of, double low, double high)
    {
        Assert.Equal(low, new Proportion(count, of).Low_frac, 4);
        Assert.Equal(high, new Proportion(count, of).High_frac, 4);
    }

    [Fact]
    public void An_interval_holds_its_chance_and_narrows_with_members()
        => Gen.Select(Gen.Int[0, 50], Gen.Int[50, 500]).Sample((count, of) =>
        {
            Proportion few = new(count, of), many = new(count * 10, of * 10);
            return few.Low_frac >= 0 && few.High_frac <= 1 && few.Low_frac <= few.Chance_frac && few.Chance_frac <= few.High_frac
                && many.High_frac - many.Low_frac < few.High_frac - few.Low_frac;
        });

    [Fact]
    public void Ranks_do_not_see_scale()
    {
        double[] x = [1, 2, 3, 4, 5], far = [1, 10, 100, 1000, 10_000];
        Assert.Equal(1, Ranks.Correlation(x, far), 12);
        Assert.Equal(-1, Ranks.Correlation(x, [.. far.Reverse()]), 12);
        Assert.Equal(0.8, Ranks.Correlation(x, [1, 3, 2, 5, 4]), 12);
        Assert.Equal(double.NaN, Ranks.Correlation(x, [3, 3, 3, 3, 3]));
    }

    [Fact]
    public void A_percentile_is_a_value_that_is_there()
    {
        double[] ten = [.. Enumerable.Range(1, 10).Select(i => (double)i)];
        Assert.Equal(1, Ranks.Percentile(ten, 0.1));
        Assert.Equal(5, Ranks.Percentile(ten, 0.5));
        Assert.Equal(9, Ranks.Percentile(ten, 0.9));
    }

    [Fact]
    public void Years_with_a_gap_in_these_days_are_left_out_and_the_rest_run()
    {
        DateTimeOffset first = new(2019, 1, 1, 0, 0, 0, Rigs.Start.Offset);
        DateTimeOffset hole = new(2021, 1, 13, 0, 0, 0, Rigs.Start.Offset);
        List<WeatherRow> record = [.. Enumerable.Range(0, 5 * 366 * 24).Select(h => first.AddHours(h))
            .Where(t => t < hole || t > hole.AddHours(6)).Select(t => new WeatherRow(t, 273.15 - (t.Year == 2022 ? 30 : 0)))];
        IReadOnlyList<RecordYear> years = RecordYear.Of(record, Rigs.Start, TimeSpan.FromHours(44));
        Assert.Equal([2019, 2020, 2022, 2023], years.Select(y => y.Year));
        Assert.All(years, y => Assert.True(record[y.First].Time <= y.Start && record[y.First + y.Count - 1].Time >= y.Start.AddHours(44)));

        ColdSim.Planning.Scenario scenario = Rigs.Scenario(
            Rigs.Heated() with { Cylinders = [Rigs.Bottle("20 lb", 0.9)] }, Rigs.Changing(_ => -2), 1);
        ChanceReport report = ChanceRun.OfYears(scenario, [], record);
        Assert.Equal([2019, 2020, 2021, 2022, 2023], report.Years.Union([2021]).Order());
        Assert.Null(report.Seed);
        Assert.Equal(report.Done - 1, report.AllNights.Count);
    }
}
