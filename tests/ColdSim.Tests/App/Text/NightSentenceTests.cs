using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.App.Text;

public class NightSentenceTests
{
    [Fact]
    public void A_night_that_holds_gives_the_margin_with_its_liquid_temperature() => Assert.Equal(
        "Thursday night, 14 to 15 January, holds: outside falls to 14 °F, inside stays at 62 °F or above, and 9.1 lb is left at 07:00; "
        + "at the coldest hour 11,200 BTU/h is needed and the cylinder could give 16,900 BTU/h without end with its liquid at -20 °F.",
        Sentence(InventedRuns.Holds));

    [Fact]
    public void A_night_that_holds_on_stored_warmth_says_so() => Assert.EndsWith(
        "the cylinder could give only 9,000 BTU/h without end with its liquid at -20 °F, so it lives on warmth stored in the liquid.",
        Sentence(InventedRuns.Holds with { SteadySupplyAtLow = Power.FromBritishThermalUnitsPerHour(9_000) }), StringComparison.Ordinal);

    [Fact]
    public void A_dip_within_the_allowance_is_mentioned() => Assert.EndsWith(
        "; supply dips first at 05:00, 2 min in all, within the 5 min that counts as holding.",
        Sentence(InventedRuns.Holds with { FirstShort = InventedRuns.Noon.AddHours(17), ShortTime = Duration.FromSeconds(118) }), StringComparison.Ordinal);

    [Fact]
    public void A_dip_below_the_set_point_is_not_a_complaint_about_the_furnace() => Assert.DoesNotContain(
        "thermostat", Sentence(InventedRuns.Holds with { InsideLow = Temperature.FromDegreesFahrenheit(41) }), StringComparison.Ordinal);

    [Fact]
    public void A_furnace_that_stopped_is_told_with_its_time_and_the_hours_without_heat() => Assert.Equal(
        "Thursday night, 14 to 15 January, has no furnace from 03:00: there is no heat for 9 h in all, and inside falls to freezing at 04:30 and to 21 °F at 07:00.",
        Sentence(InventedRuns.Holds with
        {
            Verdict = Verdict.FurnaceStopped,
            FirstFailure = InventedRuns.Noon.AddHours(15),
            NoHeatTime = Duration.FromHours(9),
            FreezingAt = InventedRuns.Noon.AddHours(16.5),
            InsideLow = Temperature.FromDegreesFahrenheit(21),
        }));

    [Fact]
    public void A_furnace_that_is_too_small_is_told_with_its_time() => Assert.Equal(
        "Thursday night, 14 to 15 January, has too small a furnace: it burns without a pause with all the gas it needs, and from 02:00 on inside stays below the "
        + "set point; inside falls to 41 °F at 07:00.",
        Sentence(InventedRuns.Holds with
        {
            Verdict = Verdict.FurnaceTooSmall,
            FirstFailure = InventedRuns.Noon.AddHours(14),
            InsideLow = Temperature.FromDegreesFahrenheit(41),
        }));

    [Fact]
    public void Water_that_freezes_is_told_with_its_place_and_time() => Assert.StartsWith(
        "Thursday night, 14 to 15 January, does not hold, for water freezes in galley line at 02:00: ",
        Sentence(InventedRuns.Holds with
        {
            Verdict = Verdict.WaterFreezes,
            FirstFailure = InventedRuns.Noon.AddHours(14),
            Water = [new("galley line", Temperature.FromDegreesFahrenheit(30), Ratio.FromPercent(20), InventedRuns.Noon.AddHours(14), null) { HoldsWater = true }],
        }), StringComparison.Ordinal);

    [Fact]
    public void A_battery_that_is_flat_after_gas_ran_short_is_told() => Assert.EndsWith(
        "gas is short for 2 h 5 min in all, and the battery is flat from 05:00 as well, for 3 h in all.",
        Sentence(InventedRuns.Short with { Power = FlatFor(InventedRuns.Noon.AddHours(41), Duration.FromHours(3)) }), StringComparison.Ordinal);

    private static NightPower FlatFor(DateTimeOffset at, Duration gone) => new()
    {
        Drawn = [],
        Solar = Energy.Zero,
        Shore = Energy.Zero,
        Generator = Energy.Zero,
        GeneratorTime = Duration.Zero,
        ChargeLow = Ratio.Zero,
        ChargeLowAt = at,
        ChargeAtEnd = Ratio.Zero,
        FlatAt = at,
        VoltageGone = gone,
    };

    [Fact]
    public void A_night_without_a_coach_speaks_of_outside_and_cylinder() => Assert.StartsWith(
        "Thursday night, 14 to 15 January, holds: outside falls to 14 °F, and 9.1 lb is left at 07:00",
        Sentence(InventedRuns.Holds with { InsideLow = null, InsideLowAt = null }), StringComparison.Ordinal);

    [Fact]
    public void A_night_without_demand_says_so() => Assert.EndsWith(
        "9.1 lb is left at 07:00; nothing asks for gas.",
        Sentence(InventedRuns.Holds with { GasUsed = Mass.Zero, DemandAtLow = Power.Zero }), StringComparison.Ordinal);

    [Fact]
    public void A_short_night_says_what_fails_when_and_how_cold_it_gets() => Assert.Equal(
        "Friday night, 15 to 16 January, runs short at 03:12 with 4.4 lb of propane still in the cylinder: "
        + "the liquid is at -37 °F and gives 3.1 psi, too little for the burners; the furnace locks out at 03:23, "
        + "inside falls to 44 °F at 07:12, and gas is short for 2 h 5 min in all.",
        Sentence(InventedRuns.Short));

    [Fact]
    public void A_short_night_without_a_coach_leaves_inside_out() => Assert.EndsWith(
        "too little for the burners; the furnace locks out at 03:23, and gas is short for 2 h 5 min in all.",
        Sentence(InventedRuns.Short with { InsideLow = null, InsideLowAt = null }), StringComparison.Ordinal);

    [Fact]
    public void A_night_short_from_its_start_says_so() => Assert.StartsWith(
        "Friday night, 15 to 16 January, is short from its start at 12:00 with 4.4 lb of propane still in the cylinder",
        Sentence(InventedRuns.Short with { FirstShort = InventedRuns.Noon.AddDays(1) }), StringComparison.Ordinal);

    [Fact]
    public void A_dry_night_says_when_it_is_short_dry_and_freezing() => Assert.Equal(
        "Friday night, 15 to 16 January, runs short at 03:12 with 0.8 lb left and dry at 04:30: no liquid is left; "
        + "inside falls to freezing at 05:54 and to 21 °F at 07:12, and gas is short for 2 h 5 min in all.",
        Sentence(DryOfUnknownLiquid));

    [Fact]
    public void A_night_that_is_at_its_coldest_as_it_freezes_says_that_once() => Assert.Contains(
        "inside falls to freezing, 32 °F, at 05:54, and gas is short",
        Sentence(InventedRuns.Dry with { InsideLow = Temperature.FromDegreesFahrenheit(31.9), InsideLowAt = InventedRuns.Dry.FreezingAt }), StringComparison.Ordinal);

    // The thermostat asks for nothing on the road, and the gas is shut off.
    [Fact]
    public void A_night_on_the_road_says_that_it_is_and_when()
    {
        NightReport cold = InventedRuns.Holds with { InsideLow = Temperature.FromDegreesFahrenheit(21) };
        RunReport run = InventedRuns.Report([cold], []);
        DateTimeOffset noon = InventedRuns.Noon;
        Leg Part(double from_h, double to_h, bool road = false)
            => new() { From = noon.AddHours(from_h), To = noon.AddHours(to_h), Site = run.Scenario.Rig.Site, Weather = run.Scenario.Weather, OnTheRoad = road };
        string Of(params Leg[] legs) => NightSentence.Of(cold, run with { Scenario = run.Scenario with { Legs = legs } }, UnitStyle.Us);
        Assert.Contains(
            "outside falls to 14 °F; the coach is on the road from 21:00 to 08:30 with its gas shut off, and inside is down to 21 °F at 07:00, and 9.1 lb is left",
            Of(Part(4, 9), Part(9, 20.5, road: true), Part(20.5, 24)), StringComparison.Ordinal);
        Assert.DoesNotContain("thermostat", Of(Part(4, 9), Part(9, 20.5, road: true), Part(20.5, 24)), StringComparison.Ordinal);
        Assert.Contains("inside stays at 21 °F or above", Of(Part(4, 9), Part(9, 10, road: true), Part(10, 24)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_night_short_long_before_it_is_dry_says_why_it_is_short() => Assert.Contains(
        "and dry at 04:30: the liquid is at -37 °F and gives 3.1 psi, too little for the burners, "
        + "and the last of it boils off at 04:25; inside",
        NightSentence.Of(InventedRuns.Dry, InventedRuns.HoldsThenDry, UnitStyle.Us), StringComparison.Ordinal);

    [Fact]
    public void A_night_dry_at_once_says_when_the_liquid_is_gone() => Assert.StartsWith(
        "Friday night, 15 to 16 January, runs dry at 04:30: the last liquid boils off at 04:25; inside",
        NightSentence.Of(
            InventedRuns.Dry with { FirstShort = InventedRuns.Dry.DryAt }, InventedRuns.HoldsThenDry, UnitStyle.Us), StringComparison.Ordinal);

    [Fact]
    public void A_night_dry_from_its_start_says_so() => Assert.StartsWith(
        "Friday night, 15 to 16 January, is dry from its start: no liquid is left;",
        Sentence(DryOfUnknownLiquid with { DryAt = InventedRuns.Noon.AddDays(1) }), StringComparison.Ordinal);

    [Fact]
    public void A_night_that_begins_short_and_freezing_and_runs_dry_says_so() => Assert.StartsWith(
        "Friday night, 15 to 16 January, is short from its start at 12:00 with 0.8 lb left and dry at 04:30: no liquid is left; "
        + "inside is freezing from its start and falls to 21 °F at 07:12,",
        Sentence(DryOfUnknownLiquid with { FirstShort = InventedRuns.Noon.AddDays(1), FreezingAt = InventedRuns.Noon.AddDays(1) }), StringComparison.Ordinal);

    [Fact]
    public void A_short_night_counts_its_further_lockouts()
    {
        Assert.Contains("the furnace locks out at 03:23 and 2 times more,", Sentence(InventedRuns.Short with { Lockouts = 3 }), StringComparison.Ordinal);
        Assert.Contains("the furnace locks out at 03:23 and once more,", Sentence(InventedRuns.Short with { Lockouts = 2 }), StringComparison.Ordinal);
    }

    [Fact]
    public void A_night_cut_off_says_what_part_was_run() => Assert.StartsWith(
        "Thursday night, 14 to 15 January (run only from 16:00 to 03:00), holds: outside falls to 14 °F, "
        + "inside stays at 62 °F or above, and 8.1 lb is left at 03:00, where the run ends",
        Sentence(InventedRuns.Holds with { LeftAtDawn = null, To = InventedRuns.Noon.AddHours(15) }), StringComparison.Ordinal);

    [Theory]
    [InlineData("2027-01-31", "Sunday night, 31 January to 1 February,")]
    [InlineData("2026-12-31", "Thursday night, 31 December 2026 to 1 January 2027,")]
    public void A_night_is_named_after_its_evening(string evening, string name)
        => Assert.StartsWith(
            name, Sentence(InventedRuns.Holds with { Evening = DateOnly.Parse(evening, System.Globalization.CultureInfo.InvariantCulture) }), StringComparison.Ordinal);

    [Theory]
    [InlineData(RunEnd.Complete, null)]
    [InlineData(RunEnd.WeatherEnded, "weather file ends")]
    [InlineData(RunEnd.LiquidFull, "liquid has swollen")]
    [InlineData(RunEnd.ReliefPressure, "relief valve would open")]
    public void An_early_end_is_explained(RunEnd end, string? words)
    {
        string? sentence = NightSentence.WhyItEnds(InventedRuns.HoldsThenShort with { End = end });
        if (words is null)
            Assert.Null(sentence);
        else
            Assert.Contains(words, sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40, "40 s", "0:01")]
    [InlineData(20, "20 s", "<0:01")]
    [InlineData(0, "0 s", "0:00")]
    [InlineData(1680, "28 min", "0:28")]
    [InlineData(7200, "2 h", "2:00")]
    [InlineData(7500, "2 h 5 min", "2:05")]
    [InlineData(3599, "1 h", "1:00")]
    public void A_duration_reads_in_the_usual_words(double seconds, string words, string brief)
    {
        Assert.Equal(words, ClockText.Span(Duration.FromSeconds(seconds)));
        Assert.Equal(brief, ClockText.SpanShort(Duration.FromSeconds(seconds)));
    }

    private static NightReport DryOfUnknownLiquid { get; } = InventedRuns.Dry with
    {
        LiquidAtFirstShort = null,
        CylinderPressureAtFirstShort = null,
        LiquidGoneAt = null,
    };

    private static string Sentence(NightReport night) => NightSentence.Of(night, InventedRuns.Report([night], []), UnitStyle.Us);
}
