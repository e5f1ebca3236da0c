using ColdSim.App.Text;
using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests.App.Text;

public class EventListTests
{
    [Fact]
    public void Burner_cycles_are_counted_and_not_listed()
    {
        IReadOnlyList<string> lines = EventList.Lines(InventedRuns.Report([InventedRuns.Holds], [.. InventedRuns.Events.Take(2)]), UnitStyle.Us);
        Assert.Equal(["Nothing unusual happens.", "The burner lights 41 times, 6.4 h in all; --json has every time."], lines);
    }

    [Fact]
    public void A_burner_that_lights_one_time_lights_once()
    {
        NightReport one = InventedRuns.Holds with { BurnerStarts = 1 };
        Assert.Equal("The burner lights once, 6.4 h in all; --json has every time.", EventList.Lines(InventedRuns.Report([one], []), UnitStyle.Us)[^1]);
    }

    [Fact]
    public void A_row_that_would_be_wider_than_the_terminal_goes_on_in_the_next()
    {
        ReportedEvent freezes = InventedRuns.Events[2] with { Kind = ReportedKind.WaterFreezes, Node = "the pipe behind the shower, along the outside wall" };
        IReadOnlyList<string> lines = EventList.Lines(InventedRuns.Report([InventedRuns.Short], [freezes]), UnitStyle.Us);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, 80));
        Assert.Equal(2, lines.Count(l => l.Contains("shower", StringComparison.Ordinal) || l.Contains("freeze", StringComparison.Ordinal)));
    }

    [Fact]
    public void Repeats_fold_into_one_row() => Assert.Equal(
        [
            "gas runs short",
            "flame lost",
            "ignition fails, 3 tries",
            "furnace locks out",
            "furnace tries again",
            "gas is enough again",
            "gas is short 2 times, 53 min",
        ],
        EventRows.Of(InventedRuns.HoldsThenShort, UnitStyle.Us).Select(r => r.What));

    [Fact]
    public void A_short_spell_without_an_end_has_no_length()
        => Assert.Equal("gas runs short", Assert.Single(EventRows.Of(InventedRuns.Report([InventedRuns.Short], [InventedRuns.Events[2]]), UnitStyle.Us)).What);

    [Fact]
    public void A_round_of_lockouts_is_listed_once_and_then_counted()
    {
        ReportedEvent begin = InventedRuns.Events[2];
        List<ReportedEvent> events = [];
        foreach ((ReportedKind kind, int i) in Enumerable.Range(0, 5).SelectMany(_ => (ReportedKind[])[
            ReportedKind.ShortBegins, ReportedKind.FlameLost, ReportedKind.IgnitionFailed, ReportedKind.IgnitionFailed, ReportedKind.Lockout,
            ReportedKind.InsideFreezing, ReportedKind.LockoutReset, ReportedKind.ShortEnds, ReportedKind.InsideThawed]).Select((k, i) => (k, i)))
        {
            events.Add(begin with { Kind = kind, Time = begin.Time.AddMinutes(i) });
        }

        Assert.Equal(
            [
                "gas runs short", "flame lost", "ignition fails, 2 tries", "furnace locks out",
                "inside falls to freezing", "furnace locks out 4 times more", "gas is enough again",
            ],
            EventRows.Of(InventedRuns.Report([InventedRuns.Short], events), UnitStyle.Us).Select(r => r.What));
    }

    [Fact]
    public void A_long_list_is_cut_and_says_by_how_much()
    {
        ReportedEvent freezing = InventedRuns.Events[2] with { Kind = ReportedKind.InsideFreezing };
        ReportedEvent thawed = freezing with { Kind = ReportedKind.InsideThawed };
        ReportedEvent[] events = [.. Enumerable.Range(0, 60).Select(i => i % 2 == 0 ? freezing : thawed)];
        Assert.Contains("... and 20 more; --json has them all.", EventList.Lines(InventedRuns.Report([InventedRuns.Short], events), UnitStyle.Us));
    }

    [Fact]
    public void Without_a_coach_there_is_no_inside_column()
    {
        ReportedEvent alone = InventedRuns.Events[2] with { Inside_K = double.NaN };
        Assert.DoesNotContain(EventList.Lines(InventedRuns.Report([InventedRuns.Short], [alone]), UnitStyle.Us), l => l.Contains("Inside", StringComparison.Ordinal));
    }
}
