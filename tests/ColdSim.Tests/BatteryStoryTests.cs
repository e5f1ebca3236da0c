using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Electrical;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests;

/// <summary>The story of battery first: with three quarters of the gas left the furnace stands still, for want of 12 V.</summary>
public class BatteryStoryTests
{
    private static readonly Lazy<ReadResult> File = new(() => ScenarioReader.Read(Path.Combine(Root(), "scenarios", "battery-first.toml")));

    private static readonly Lazy<RunReport> Story = new(() => NightRun.Of(File.Value.Scenario!));

    private static readonly Lazy<Comparison> Compared = new(() => Comparison.Of(File.Value.Scenario!, File.Value.Options));

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));

    private static ComparedRow Row(string name) => Compared.Value.Rows.Single(r => r.Option.Name == name);

    [Fact]
    public void The_first_night_holds_and_the_second_runs_flat()
    {
        Assert.Empty(File.Value.Problems);
        Assert.Equal([Verdict.Holds, Verdict.BatteryFlat], Story.Value.Nights.Select(n => n.Verdict));
        Assert.True(Story.Value.Ledger.Closes);
    }

    [Fact]
    public void Three_quarters_of_the_gas_are_left_and_none_of_it_was_ever_short()
    {
        Assert.True(Story.Value.Summary.LeftAtEnd / Story.Value.Summary.LeftAtStart > 0.75);
        Assert.Null(Story.Value.Summary.FirstShort);
        Assert.Null(Story.Value.Summary.DryAt);
    }

    [Fact]
    public void The_coach_freezes_when_the_battery_is_flat()
        => Assert.True(Story.Value.Nights[1].FreezingAt > Story.Value.Nights[1].Power!.FlatAt);

    [Fact]
    public void Most_of_the_charge_went_into_the_furnaces_fan()
    {
        NightPower first = Story.Value.Nights[0].Power!;
        Assert.True(first.Drawn[PowerSpecification.FanPlace].Energy / first.DrawnInAll > 0.6);
        Assert.Equal(0, first.Solar.WattHours);
    }

    [Fact]
    public void Panels_swept_and_tilted_to_the_winter_sun_hold_both_nights() => Assert.True(Row("panels swept and tilted").Holds);

    [Fact]
    public void A_generator_on_the_same_cold_cylinders_is_short_of_gas_in_its_turn()
    {
        RunSummary with = Row("generator by day").Summary;
        Assert.Equal(Verdict.GasShort, with.Verdict);
    }
}
