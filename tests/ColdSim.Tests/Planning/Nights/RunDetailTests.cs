using System.Text;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Model;
using Xunit;

namespace ColdSim.Tests.Planning.Nights;

/// <summary>Runs that keep only a part of their curves and events beside those that keep all.</summary>
public class RunDetailTests
{
    // Longer than the curves that are kept while it runs, and short of gas only near its end.
    private static readonly Scenario FailsLate = Invented(10, Rigs.Bottle("100 lb", 1));
    private static readonly Lazy<RunReport> Whole = new(() => NightRun.Of(FailsLate));
    private static readonly Lazy<RunReport> Part = new(() => NightRun.Of(FailsLate, RunDetail.Answer));

    private static Scenario Invented(int days, CylinderSpecification cylinder) => Rigs.Scenario(
        Rigs.Heated() with { Cylinders = [cylinder] }, Rigs.Changing(h => -6 - 5 * Math.Cos(h / 12 * Math.PI), 24 * days), days);

    private static string Json(RunReport report)
    {
        using MemoryStream stream = new();
        JsonReport.Write(report, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    [Fact]
    public void The_invented_run_fails_after_more_nights_than_are_kept_while_it_runs()
        => Assert.InRange(Whole.Value.Nights.First(n => n.Verdict != Verdict.Holds).Number, 6, 9);

    [Fact]
    public void A_run_without_curves_reads_the_same_nights()
        => Assert.Equal(Json(Whole.Value), Json(NightRun.Of(FailsLate, RunDetail.Events)));

    [Theory]
    [InlineData("cold-snap.toml")]
    [InlineData("mixed-gas.toml")]
    [InlineData("changeover.toml")]
    [InlineData("battery-first.toml")]
    [InlineData("fortnight.toml")]
    public void A_demo_without_curves_reads_the_same_nights(string file)
    {
        Scenario scenario = ScenarioReader.Read(Shell.Demo(file)).Scenario!;
        Assert.Equal(Json(NightRun.Of(scenario)), Json(NightRun.Of(scenario, RunDetail.Events)));
    }

    [Fact]
    public void The_cause_is_read_from_a_day_or_two_of_curves_and_is_the_same()
    {
        DateTimeOffset failure = Whole.Value.Summary.FirstFailure!.Value;
        Assert.InRange(Part.Value.Curves.Around((failure - FailsLate.Start).TotalSeconds).Count, 1440, 2 * 1440);
        Assert.Equal(ChainOfCause.Before(Whole.Value, failure), ChainOfCause.Before(Part.Value, failure));
    }

    [Fact]
    public void A_cause_elsewhere_is_the_same()
    {
        DateTimeOffset early = FailsLate.Start.AddHours(30);
        Assert.Equal(ChainOfCause.Before(Whole.Value, early), ChainOfCause.Before(Part.Value, early));
    }

    [Fact]
    public void Curves_that_were_not_kept_are_the_same_when_they_are_asked_for()
    {
        RunSeries kept = Whole.Value.Series, again = Part.Value.Series;
        Assert.Equal(kept.Count, again.Count);
        Assert.Equal(kept.Inside_K, again.Inside_K);
        Assert.Equal(kept.Cylinders[0].FrostMass_kg_m2, again.Cylinders[0].FrostMass_kg_m2);
        Assert.Equal(kept.CanGiveNow_W, again.CanGiveNow_W);
    }

    [Fact]
    public void An_answer_s_run_keeps_the_events_that_lists_show()
        => Assert.Equal(
            Whole.Value.Events.Where(e => EventKinds.Of(e.Kind).Fold != EventFold.OnlyCounted), Part.Value.Events);

    [Fact]
    public void An_answer_on_the_screen_needs_no_more_than_was_kept()
    {
        foreach (Scenario scenario in new[] { FailsLate, Invented(5, Rigs.BigTank()) })
        {
            CommandWork<RunAnswer> work = RunWork.Of(scenario, adviseIn: UnitStyle.Us, detail: RunDetail.Answer);
            RunAnswer answer = work.Answer(new Progress<int>(), default);
            Assert.NotEmpty(work.OnScreen!(answer, UnitStyle.Us).Verdict);
            Assert.False(answer.Report.Curves.HasWhole);
        }
    }

    [Fact]
    public void A_document_of_a_run_that_holds_needs_no_curves()
    {
        RunReport report = NightRun.Of(Invented(5, Rigs.BigTank()), RunDetail.Events);
        Assert.NotEmpty(Json(report));
        Assert.False(report.Curves.HasWhole);
    }

    [Fact]
    public void A_night_more_takes_a_row_and_no_curves()
    {
        Scenario few = Invented(5, Rigs.BigTank()), more = Invented(25, Rigs.BigTank());
        double perNight = (Allocated(more) - Allocated(few)) / 20.0;
        Assert.InRange(perNight, 500, 20_000);
    }

    // The least of three: the first run makes what is made once.
    private static long Allocated(Scenario scenario)
    {
        long least = long.MaxValue;
        for (int i = 0; i < 3; i++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            RunReport report = NightRun.Of(scenario, RunDetail.Answer);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
            Assert.Equal(scenario.Nights, report.Nights.Count);
        }

        return least;
    }
}
