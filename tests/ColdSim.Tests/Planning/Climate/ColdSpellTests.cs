using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;
using Xunit;

namespace ColdSim.Tests.Planning.Climate;

public class ColdSpellTests
{
    private static readonly TimeSpan Clock = TimeSpan.FromHours(-7);
    private static readonly DateTimeOffset Noon = new(2025, 1, 1, 12, 0, 0, Clock);

    // Nights of one temperature each, with 100 W/m² and 2 m/s all along.
    private static WeatherRow[] Flat(params double[] nights_C)
        => [.. nights_C.SelectMany(c => Enumerable.Repeat(c, 24)).Append(nights_C[^1]).Select((c, i) => new WeatherRow(Noon.AddHours(i), c + 273.15, Wind_m_s: 2, Sun_W_m2: 100))];

    private static IReadOnlyList<ColdSpell> Spells(int length, params double[] nights_C) => ColdSpells.Of(ColdNights.Of(Flat(nights_C), Clock), length);

    [Fact]
    public void A_spell_begins_on_every_night_that_has_enough_after_it()
    {
        IReadOnlyList<ColdSpell> spells = Spells(3, -1, -2, -3, -4, -5);
        Assert.Equal([1, 2, 3], spells.Select(s => s.Evening.Day));
        Assert.All(spells, s => Assert.Equal(TimeSpan.FromDays(3), s.To - s.From));
        Assert.Empty(Spells(6, -1, -2, -3, -4, -5));
    }

    [Fact]
    public void The_mean_of_a_spell_is_over_all_its_nights_and_its_low_is_the_coldest_hour()
    {
        IReadOnlyList<ColdNight> nights = ColdNights.Of(Flat(-1, -9, -4), Clock);
        ColdSpell spell = Assert.Single(ColdSpells.Of(nights, 3));
        Assert.Equal(nights.Average(n => n.Mean_K), spell.Mean_K, 9);
        Assert.Equal((264.15, Noon.AddDays(1)), (spell.Low_K, spell.LowAt));
    }

    [Fact]
    public void A_night_that_is_missing_parts_two_spells()
    {
        IReadOnlyList<ColdNight> nights = ColdNights.Of(Flat(-1, -2, -3, -4, -5), Clock);
        Assert.Equal([1, 4], ColdSpells.Of([nights[0], nights[1], nights[3], nights[4]], 2).Select(s => s.Evening.Day));
    }

    [Fact]
    public void Ninety_five_in_a_hundred_spells_are_warmer_than_the_one_picked()
    {
        double[] nights = [.. Enumerable.Range(0, 202).Select(i => -0.1 * ((i * 37) % 202))];
        IReadOnlyList<ColdSpell> spells = Spells(3, nights);
        DesignSpell picked = DesignSpell.Percentile(spells, 95);
        Assert.Equal((10, 200), (picked.Rank, picked.Of));
        Assert.Equal(190, spells.Count(s => s.Mean_K > picked.Spell.Mean_K));
        Assert.Equal("95 % of the record's spells of 3 nights are warmer", picked.Rule);
    }

    [Fact]
    public void The_coldest_spells_share_no_night()
    {
        ColdestSpells coldest = ColdestSpells.Of(Spells(2, -1, -8, -9, -8, -1, -1, -20, 5, -1, -1));
        Assert.Equal([6, 2, 4, 9], coldest.ByMean.Select(s => s.Evening.Day).Take(4));
        Assert.Equal([6, 2], coldest.ByLow.Select(s => s.Evening.Day).Take(2));
        Assert.All(coldest.ByMean, s => Assert.DoesNotContain(coldest.ByMean, o => o != s && o.Overlaps(s)));
    }

    [Fact]
    public void Wind_and_sun_of_a_night_are_from_noon_to_noon()
    {
        WeatherRow[] rows = [.. Flat(-1, -2).Select(r => r with { Sun_W_m2 = r.Time < Noon.AddDays(1) ? 100 : 50 })];
        IReadOnlyList<SpellNight> nights = SpellNights.Of(rows, Clock);
        Assert.Equal([2, 2], nights.Select(n => n.Wind_m_s!.Value));
        Assert.Equal(3600 * ((23 * 100) + 75), nights[0].Sun_J_m2!.Value, 6);
        Assert.Equal(3600 * 24 * 50, nights[1].Sun_J_m2!.Value, 6);
        rows[30] = rows[30] with { Sun_W_m2 = null };
        Assert.Equal([false, true], SpellNights.Of(rows, Clock).Select(n => n.Sun_J_m2 is null));
    }

    [Fact]
    public void A_spell_of_one_winter_in_two_needs_one_winter()
    {
        DateTimeOffset july = new(2010, 7, 1, 12, 0, 0, TimeSpan.Zero);
        WeatherRow[] rows = [.. Enumerable.Range(0, (366 * 24) + 1).Select(h => new WeatherRow(july.AddHours(h), july.AddHours(h) is { Month: 1, Day: 20 or 21 } ? 250 : 270))];
        DesignSpell picked = DesignSpell.OnceIn(ColdSpells.Of(ColdNights.Of(rows, TimeSpan.Zero), 12), 2, out int winters)!;
        Assert.Equal((1, 1), (winters, picked.Rank));
        Assert.Contains("the coldest spell of 12 nights of a winter", picked.Rule, StringComparison.Ordinal);
    }
}
