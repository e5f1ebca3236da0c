using System.Runtime.CompilerServices;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests;

/// <summary>The demo tells a story: a night that holds, one that runs short with propane left, one that runs dry.</summary>
public class DemoStoryTests
{
    private static readonly Lazy<Scenario> ColdSnap = new(() =>
    {
        ReadResult read = ScenarioReader.Read(Path.Combine(Root(), "scenarios", "cold-snap.toml"));
        Assert.Empty(read.Problems);
        return read.Scenario!;
    });

    private static readonly Lazy<RunReport> Story = new(() => NightRun.Of(ColdSnap.Value));

    private static RunReport Stepped(double step_s) => NightRun.Of(ColdSnap.Value with { Step_s = step_s });

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));

    private static NightReport Night(int number) => Story.Value.Nights[number - 1];

    private static bool IsBeforeDawn(DateTimeOffset time) => time.TimeOfDay < new TimeSpan(7, 0, 0) || time.TimeOfDay > new TimeSpan(17, 0, 0);

    [Fact]
    public void The_demo_has_three_nights_and_runs_to_its_end()
    {
        Assert.Equal(3, Story.Value.Nights.Count);
        Assert.Equal(ColdSim.Model.Engine.RunEnd.Complete, Story.Value.End);
    }

    [Fact]
    public void The_first_night_holds()
    {
        Assert.Equal(Verdict.Holds, Night(1).Verdict);
        Assert.Null(Night(1).FirstShort);
        Assert.True(Night(1).InsideLow!.Value.DegreesCelsius > 13);
    }

    [Fact]
    public void The_second_night_runs_short_before_dawn_with_plenty_of_propane_left()
    {
        Assert.Equal(Verdict.GasShort, Night(2).Verdict);
        Assert.True(IsBeforeDawn(Night(2).FirstShort!.Value), $"{Night(2).FirstShort:O}");
        Assert.True(Night(2).LeftAtFirstShort!.Value.Pounds > 10, $"{Night(2).LeftAtFirstShort!.Value.Pounds} lb");
        Assert.Null(Night(2).DryAt);
    }

    [Fact]
    public void The_third_night_runs_dry_before_dawn()
    {
        Assert.Equal(Verdict.GasGone, Night(3).Verdict);
        Assert.True(IsBeforeDawn(Night(3).DryAt!.Value), $"{Night(3).DryAt:O}");
        Assert.Contains(Story.Value.Events, e => e.Kind == ReportedKind.Lockout && e.Time > Night(3).From);
    }

    [Fact]
    public void Inside_falling_to_50_F_is_an_event_once_in_each_night_that_fails_and_lies_on_the_curve()
    {
        ReportedEvent[] fifty = [.. Story.Value.Events.Where(e => e.Kind == ReportedKind.InsideFifty)];
        Assert.Equal(2, fifty.Length);
        Assert.All(fifty.Zip([Night(2), Night(3)]), pair =>
        {
            (ReportedEvent happened, NightReport night) = pair;
            Assert.True(happened.Time > night.FirstShort);
            Assert.False(happened.Time >= night.FreezingAt);
            int minute = (int)(happened.Time - Story.Value.Scenario.Start).TotalMinutes;
            double[] inside_K = Story.Value.Series.Inside_K;
            Assert.InRange(283.15, inside_K[minute + 1], inside_K[minute]);
        });
    }

    [Fact]
    public void The_books_close()
    {
        Assert.True(Story.Value.Ledger.Closes, Story.Value.Ledger.ToString());
    }

    [Fact]
    public void The_curves_hold_the_gas_that_was_used()
        => Assert.Equal(1, Story.Value.Series.Given_W.Sum() * 60 / Story.Value.Summary.GasHeat.Joules, 1e-9);

    // Half the default step of 300 s, and shorter ones.
    [Theory]
    [InlineData(150)]
    [InlineData(30)]
    [InlineData(10)]
    public void A_shorter_step_gives_the_same_story(double step_s)
    {
        RunReport fine = Stepped(step_s);
        Assert.Equal(1, fine.Summary.GasUsed.Kilograms / Story.Value.Summary.GasUsed.Kilograms, 1e-3);
        double starts = Story.Value.Nights.Sum(n => n.BurnerStarts);
        Assert.Equal(1, fine.Nights.Sum(n => n.BurnerStarts) / starts, 0.02);
        Assert.Equal(Story.Value.Nights.Select(n => n.Verdict), fine.Nights.Select(n => n.Verdict));
        for (int i = 0; i < 3; i++)
        {
            SameMinute("short", i, Story.Value.Nights[i].FirstShort, fine.Nights[i].FirstShort);
            SameMinute("dry", i, Story.Value.Nights[i].DryAt, fine.Nights[i].DryAt);
            SameMinute("freezing", i, Story.Value.Nights[i].FreezingAt, fine.Nights[i].FreezingAt);
        }
    }

    private static void SameMinute(string what, int night, DateTimeOffset? coarse, DateTimeOffset? fine)
    {
        Assert.Equal(coarse is null, fine is null);
        if (coarse is not null)
            Assert.True(Math.Abs((coarse.Value - fine!.Value).TotalSeconds) < 60, $"Night {night + 1} {what}: {coarse:O} against {fine:O}");
    }

    private static ReadResult Demo(string file)
    {
        ReadResult read = ScenarioReader.Read(Path.Combine(Root(), "scenarios", file));
        Assert.Empty(read.Problems);
        return read;
    }

    [Fact]
    public void With_a_hookup_the_blanket_is_best_and_without_one_it_is_worse_than_nothing()
    {
        ReadResult demo = Demo("blanket-or-second.toml");
        Comparison comparison = Comparison.Of(demo.Scenario!, demo.Options);
        Assert.Equal("shore blanket, hookup", comparison.Best.Option.Name);
        Assert.True(comparison.Best.Holds);
        Assert.Equal("second one, changeover", comparison.Rows.First(r => !r.Option.Scenario.Rig.Site.Hookup).Option.Name);
        Assert.Equal("shore blanket, no hookup", comparison.Rows[^1].Option.Name);
    }

    [Fact]
    public void The_blend_leaves_pounds_of_butane_that_the_first_night_already_foretold()
    {
        ReadResult demo = Demo("mixed-gas.toml");
        Comparison comparison = Comparison.Of(demo.Scenario!, demo.Options);
        Assert.Equal("special-duty propane", comparison.Best.Option.Name);
        Assert.True(comparison.Best.Holds);
        RunReport blend = NightRun.Of(demo.Scenario!);
        Assert.Equal(blend.Nights[^1].Blends[0].LeftBehind, comparison.Rows.Single(r => r.Order == 0).LeftBehind);
        Assert.True(blend.Ledger.Closes);
        Assert.Equal([Verdict.Holds, Verdict.Holds, Verdict.GasShort], blend.Nights.Select(n => n.Verdict));
        Assert.DoesNotContain(blend.Events, e => e.Kind == ReportedKind.LiquidGone);
        BlendReport first = blend.Nights[0].Blends[0], last = blend.Nights[2].Blends[0];
        Assert.InRange(first.LeftBehind!.Value.Kilograms, 2, 3);
        Assert.InRange(blend.Nights[2].LeftAtFirstShort!.Value.Kilograms / first.LeftBehind.Value.Kilograms, 1, 1.5);
        Assert.True(last.AtEnd.Propane < 0.2 && first.AtStart.Propane > 0.55);
    }

    [Fact]
    public void Breakfast_overloads_a_cylinder_that_held_the_night()
    {
        ReadResult demo = Demo("breakfast-overload.toml");
        NightReport night = NightRun.Of(demo.Scenario!).Nights[0];
        Assert.Equal(Verdict.GasShort, night.Verdict);
        Assert.InRange(night.FirstShort!.Value.TimeOfDay, new TimeSpan(6, 30, 0), new TimeSpan(7, 40, 0));
        Assert.True(night.LeftAtFirstShort!.Value.Pounds > 5, $"{night.LeftAtFirstShort!.Value.Pounds} lb");
        Assert.Equal("oven", night.FirstToStarve);
        Assert.Null(night.Water.Single(w => w.Name == "cold line").FreezesAt);
        RunReport apart = NightRun.Of(demo.Options.Single(o => o.Name == "one after the other").Scenario);
        Assert.Equal(Verdict.Holds, apart.Summary.Verdict);
    }

    [Fact]
    public void A_lockout_at_three_is_answered_with_times_to_freezing()
    {
        RunReport run = NightRun.Of(Demo("lockout-at-three.toml").Scenario!);
        CoolDown stop = run.CoolDown!;
        Assert.Equal(new TimeSpan(3, 0, 0), stop.At.TimeOfDay);
        Assert.True(stop.FiftyAfter!.Value.Seconds < stop.FreezingAfter!.Value.Seconds);
        Assert.Equal("galley line", stop.First!.Name);
        Assert.InRange(stop.First.BeginsAfter!.Value.Hours, 1, 4);
        Assert.Null(stop.Water.Single(w => w.Name == "fresh water").BeginsAfter);
        Assert.True(run.Nights[0].DampTime.Hours > 1);

        // Without the lockout the same night keeps the line from freezing.
        RunReport kept = NightRun.Of(Demo("lockout-at-three.toml").Scenario! with { HeatStops = null });
        Assert.Null(kept.Nights[0].Water.Single(w => w.Name == "galley line").FreezesAt);
    }

    [Fact]
    public void The_changeover_takes_from_the_reserve_with_pounds_left_in_the_service_cylinder()
    {
        RunReport run = NightRun.Of(Demo("changeover.toml").Scenario!);
        Assert.Equal(Verdict.Holds, run.Summary.Verdict);
        ReportedEvent first = run.Events.First(e => e.Kind == ReportedKind.ReserveFeeds);
        Assert.True(first.Value > 3, $"{first.Value} kg");
        Assert.DoesNotContain(run.Events, e => e.Kind == ReportedKind.LiquidGone);
    }
}
