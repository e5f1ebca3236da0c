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
        Assert.Equal(["Nothing out of the ordinary.", "The burner lights 41 times, 6.4 h in all; --json has every time."], lines);
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
        EventRows.Of(InventedRuns.Events, InventedRuns.Rig, UnitStyle.Us).Select(r => r.What));

    [Fact]
    public void A_short_spell_without_an_end_has_no_length()
        => Assert.Equal("gas runs short", Assert.Single(EventRows.Of([InventedRuns.Events[2]], InventedRuns.Rig, UnitStyle.Us)).What);

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
            EventRows.Of(events, InventedRuns.Rig, UnitStyle.Us).Select(r => r.What));
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
