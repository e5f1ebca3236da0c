using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Climate;

public class ColdNightTests
{
    private static readonly DateTimeOffset Noon = new(2025, 1, 1, 12, 0, 0, TimeSpan.FromHours(-7));

    private static WeatherRow[] Rows(DateTimeOffset from, params double[] hourly_C)
        => [.. hourly_C.Select((c, i) => new WeatherRow(from.AddHours(i), c + 273.15))];

    // A night of one temperature, joined to its neighbours within an hour.
    private static WeatherRow[] Flat(DateTimeOffset from, params double[] nights_C)
        => Rows(from, [.. nights_C.SelectMany(c => Enumerable.Repeat(c, 24)), nights_C[^1]]);

    [Fact]
    public void A_nights_mean_is_over_time_from_noon_to_noon()
    {
        WeatherRow[] rows = [new(Noon.AddHours(-1), 270), new(Noon.AddHours(6), 263), new(Noon.AddHours(18), 251), new(Noon.AddHours(26), 283)];
        ColdNight night = Assert.Single(ColdNights.Of(rows, TimeSpan.FromHours(-7)));
        Assert.Equal((((269 + 263) / 2.0 * 6) + ((263 + 251) / 2.0 * 12) + ((251 + 275) / 2.0 * 6)) / 24, night.Mean_K, 9);
        Assert.Equal((251, Noon.AddHours(18)), (night.Low_K, night.LowAt));
        Assert.Equal((0, 3), (night.FirstRow, night.LastRow));
    }

    [Fact]
    public void Only_nights_whole_by_the_given_clock_are_counted()
    {
        Assert.Equal(2, ColdNights.Of(Flat(Noon, -1, -2), TimeSpan.FromHours(-7)).Count);
        Assert.Single(ColdNights.Of(Flat(Noon, -1, -2), TimeSpan.Zero));
        Assert.Empty(ColdNights.Of(Rows(Noon, -1, -2, -3), TimeSpan.FromHours(-7)));
    }

    [Fact]
    public void The_99th_percentile_of_two_hundred_nights_is_the_second_coldest()
    {
        IReadOnlyList<ColdSpell> nights = ColdSpells.Of(ColdNights.Of(Flat(Noon, [.. Enumerable.Range(0, 200).Select(i => -0.1 * ((i * 37) % 200))]), TimeSpan.FromHours(-7)), 1);
        DesignSpell picked = DesignSpell.Percentile(nights, 99);
        Assert.Equal((2, 200), (picked.Rank, picked.Of));
        Assert.Equal(1, nights.Count(n => n.Mean_K < picked.Spell.Mean_K));
        Assert.Equal("99 % of the record's nights are warmer", picked.Rule);
        Assert.Equal(nights.Min(n => n.Mean_K), DesignSpell.Worst(nights).Spell.Mean_K);
    }

    [Theory]
    [InlineData(56, 99, 1, "the record has 56 nights, too few for p99, so its coldest is used; 98.21 % are warmer")]
    [InlineData(56, 99.9, 1, "the record has 56 nights, too few for p99.9, so its coldest is used; 98.21 % are warmer")]
    [InlineData(56, 90, 5, "91.07 % of the record's nights are warmer")]
    [InlineData(1, 99, 1, "the record's only night is used for p99")]
    public void The_part_of_warmer_nights_is_the_true_one(int count, double percent, int rank, string rule)
    {
        DesignSpell picked = DesignSpell.Percentile(ColdSpells.Of(ColdNights.Of(Flat(Noon, [.. Enumerable.Range(0, count).Select(i => -0.1 * i)]), TimeSpan.FromHours(-7)), 1), percent);
        Assert.Equal((rank, count, rule), (picked.Rank, picked.Of, picked.Rule));
    }

    [Fact]
    public void Night_of_one_winter_in_ten_needs_nine_winters()
    {
        DateTimeOffset july = new(2010, 7, 1, 12, 0, 0, TimeSpan.Zero);
        double[] nights = [.. Enumerable.Range(0, 9 * 366).Select(i => july.AddDays(i) is { Month: 1, Day: 20 } d ? -20.0 - d.Year % 100 : -1.0)];
        IReadOnlyList<ColdSpell> read = ColdSpells.Of(ColdNights.Of(Flat(july, nights), TimeSpan.Zero), 1);
        Assert.Equal(2019, DesignSpell.OnceIn(read, 10, out int winters)!.Spell.Evening.Year);
        Assert.Equal(9, winters);
        Assert.Equal(2018, DesignSpell.OnceIn(read, 5, out _)!.Spell.Evening.Year);
        Assert.Null(DesignSpell.OnceIn(read, 11, out _));
    }

    [Fact]
    public void Degree_hours_are_the_area_below_the_line()
    {
        WeatherDigest digest = WeatherDigest.Of(Rows(Noon, 4, -4, -4, 4, -2, -2), TimeSpan.Zero, 273.15);
        Assert.Equal(0.5 + 1 + 0.5 + (2 / 6.0) + 1, digest.HoursBelow, 9);
        Assert.Equal(1 + 4 + 1 + (1 / 3.0) + 2, digest.DegreeHours_Kh, 9);
        Assert.Equal((Noon.AddMinutes(30), Noon.AddMinutes(150)), (digest.LongestRun!.From, digest.LongestRun.To));
        Assert.Equal(269.15, digest.LongestRun.Low_K, 9);
        Assert.Null(WeatherDigest.Of(Rows(Noon, 4, 5), TimeSpan.Zero, 273.15).LongestRun);
    }

    [Fact]
    public void Hours_below_agree_with_a_fine_count()
        => Gen.Int[-100, 99].Array[2, 40].Sample(tenths =>
        {
            double[] hourly = [.. tenths.Select(t => (t / 10.0) + 0.05)];
            WeatherRow[] rows = Rows(Noon, hourly);
            int count = 0;
            for (int i = 0; i < (hourly.Length - 1) * 1000; i++)
                count += hourly[i / 1000] + ((hourly[(i / 1000) + 1] - hourly[i / 1000]) * ((i % 1000 + 0.5) / 1000)) < 0 ? 1 : 0;
            Assert.Equal(count / 1000.0, WeatherDigest.Of(rows, TimeSpan.Zero, 273.15).HoursBelow, 0.0011 * hourly.Length);
        });
}
