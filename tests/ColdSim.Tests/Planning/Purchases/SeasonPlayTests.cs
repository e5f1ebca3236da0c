using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Purchases;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Purchases;

/// <summary>A record and limits made up by hand: 2 kg a night, in a set-up of 9.07 kg a cylinder.</summary>
public class SeasonPlayTests
{
    private static readonly StandardSize Twenty = StandardSize.Find("20 lb")!;
    private static readonly SetUp One = new(Twenty, 1, false, false), Pair = new(Twenty, 2, true, false);

    // Fed through 270, 260 and 250 K a quarter, half and all full: ten kelvin for each halving.
    private static readonly ColdLimits Limits = LimitsOf(270, 260, 250);
    private static readonly ColdLimits Warm = LimitsOf(200, 190, 180);

    [Theory]
    [InlineData(250, 1)]
    [InlineData(255, 0.7071)]
    [InlineData(260, 0.5)]
    [InlineData(270, 0.25)]
    [InlineData(280, 0.125)]
    [InlineData(320, 0.05)]
    public void The_fill_that_a_night_needs_lies_between_the_fills_that_were_run(double low_K, double fill_frac)
        => Assert.Equal(fill_frac, Limits.NeededFill_frac(low_K), 1e-3);

    [Fact]
    public void A_night_colder_than_the_limit_of_full_cylinders_needs_more_than_there_is()
        => Assert.Equal(double.PositiveInfinity, Limits.NeededFill_frac(249.9));

    [Fact]
    public void A_furnace_that_is_too_small_is_no_limit_of_the_gas()
        => Assert.Equal(ColdLimits.Reserve_frac,
            new ColdLimits([.. Limits.Cells.Select(c => c with { FailsColder = Verdict.FurnaceTooSmall })]).NeededFill_frac(240), 1e-12);

    // 9.07 kg last four nights of 2 kg with half a kilogram kept: filled before the fifth and the ninth.
    [Fact]
    public void It_is_filled_up_before_a_night_that_it_would_not_last()
    {
        SeasonPlay play = SeasonPlay.Of(Nights(10, 275), One, Warm, Price.PerMass(3, 1));
        Assert.Equal((0, 2, 3, 0), (play.ShortNights, play.Refills, play.Fillings, play.Changes));
        Assert.Equal((20, 60), (Math.Round(play.Used_kg, 9), Math.Round(play.Money!.Value, 9)));
    }

    [Fact]
    public void Two_cylinders_halve_the_ways_to_the_filler_and_are_changed()
    {
        SeasonPlay play = SeasonPlay.Of(Nights(10, 275), Pair, Warm, Price.PerExchange(24));
        Assert.Equal((0, 1, 1), (play.ShortNights, play.Refills, play.Changes));
        Assert.Equal(24 * play.Fillings, play.Money);
        Assert.Equal(3, play.Fillings);
    }

    [Fact]
    public void Cold_asks_for_fuller_cylinders_than_the_gas_alone()
        => Assert.True(SeasonPlay.Of(Nights(10, 255), One, Limits, null).Refills > SeasonPlay.Of(Nights(10, 255), One, Warm, null).Refills);

    [Fact]
    public void A_night_for_which_full_is_not_enough_is_short_and_costs_nothing_that_is_not_known()
    {
        SeasonPlay play = SeasonPlay.Of(Nights(3, 245), One, Limits, null);
        Assert.Equal((3, null), (play.ShortNights, play.Money));
    }

    [Fact]
    public void A_days_use_lies_on_the_line_through_the_nights()
    {
        SeasonUse season = new([.. Enumerable.Range(0, 5).Select(i => new SeasonNight(new(2027, 1, 1), 250 + 5 * i, 4 - 0.5 * i))], Ledger);
        Assert.Equal(3.25, season.Day_kg(257.5), 1e-9);
        Assert.Equal((250, 260, 270), (season.Low_K(0), season.Low_K(0.5), season.Low_K(1)));
    }

    // Nothing is short on the demo of a changeover, so what its own cylinders give is what the store gives.
    [Fact]
    public void What_is_burned_is_what_a_rig_burns_that_gets_all_its_gas()
    {
        Scenario scenario = ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "changeover.toml")).Scenario!;
        NightReport first = NightRun.Of(scenario).Nights[0];
        SeasonNight night = SeasonUse.Of(scenario, CancellationToken.None).Nights[0];
        Assert.Equal(Verdict.Holds, first.Verdict);
        Assert.Equal(first.OutsideLow.Kelvins, night.Low_K, 0.01);
        Assert.InRange(night.Used_kg, 0.97 * first.GasUsed.Kilograms, 1.03 * first.GasUsed.Kilograms);
    }

    [Fact]
    public void Every_size_that_is_carried_comes_alone_and_in_pairs_and_the_large_one_stands_on_the_ground()
    {
        foreach (bool metric in (bool[])[false, true])
        {
            IReadOnlyList<SetUp> all = SetUp.Usual(metric);
            Assert.All(all, s => Assert.Equal(metric, s.Size.IsMetric));
            Assert.Equal(2, all.Count(s => s.IsOnGround));
            Assert.All(all.Where(s => s.IsOnGround), s => Assert.Equal(1, s.Count));
            Assert.Equal(all.Count, all.Select(s => s.Name).Distinct().Count());
        }
    }

    private static LedgerBalance Ledger => new(0, 0, 0, 0, 0, 0, 0, 0);

    private static SeasonUse Nights(int count, double low_K)
        => new([.. Enumerable.Range(0, count).Select(i => new SeasonNight(new DateOnly(2027, 1, 1).AddDays(i), low_K, 2))], Ledger);

    private static ColdLimits LimitsOf(params double[] lows_K) => new([.. lows_K.Select((l, i) => new LimitCell
    {
        Fill_frac = ColdLimits.Fills[i], Kind = LimitKind.Found, Step = 10, Low_K = l, Contents_kg = 1, FailsColder = Verdict.GasShort,
    })]);
}
