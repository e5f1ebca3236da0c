using ColdSim.App.Commands;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Planning.Explain;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class ExplainCommandTests
{
    private static Shell Asked(Parts? parts = null) => new()
    {
        Parts = (parts ?? Shell.AlgebraicState) with { ReadScenario = _ => new(SixRigs.Of(Limit.HeatIntoLiquid), [], []) },
    };

    [Theory]
    [InlineData("soon", "coldsim: --at: 'soon' is not a time; accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z\nSee 'coldsim explain --help'.\n")]
    [InlineData("2027-02-30T03:00", "coldsim: --at: '2027-02-30T03:00' is not a time; accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z\nSee 'coldsim explain --help'.\n")]
    [InlineData("2027-01-12T15:59", "coldsim: --at: Tuesday 12 January 2027, 15:59 (UTC-07:00) is outside the run, which starts Tuesday 12 January 2027, 16:00 (UTC-07:00)\n")]
    public void A_time_that_is_none_or_outside_is_refused(string at, string words)
    {
        Shell shell = Asked();
        Assert.Equal(2, shell.Run("explain", Shell.AnyFile, "--at", at));
        Assert.Equal(words, shell.Error);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_time_is_read_by_the_scenarios_clock()
    {
        DateTimeOffset? asked = null;
        Shell shell = Asked(Shell.AlgebraicState with { Explain = (scenario, at, _, cancel) => Explanation.Of(scenario, asked = at, cancel: cancel) });
        Assert.Equal(0, shell.Run("explain", Shell.AnyFile, "--at", "2027-01-13T00:30Z"));
        Assert.Equal(new DateTimeOffset(2027, 1, 12, 17, 30, 0, TimeSpan.FromHours(-7)), asked);
        Assert.Equal(TimeSpan.FromHours(-7), asked!.Value.Offset);
    }

    [Fact]
    public async Task An_interrupted_explanation_prints_nothing()
    {
        using CancellationTokenSource source = new();
        Shell shell = Asked(Shell.AlgebraicState with
        {
            Explain = (_, _, _, cancel) =>
            {
                source.Cancel();
                cancel.ThrowIfCancellationRequested();
                throw new InvalidOperationException("went on");
            },
        });
        Assert.Equal(130, await shell.RunAsync(["explain", Shell.AnyFile], source.Token));
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public async Task Runs_are_counted_on_standard_error_only()
    {
        using ManualResetEventSlim seen = new();
        Shell shell = Asked(Shell.AlgebraicState with
        {
            Explain = (scenario, _, finished, cancel) =>
            {
                for (int i = 0; i < 7; i++) finished();
                seen.Wait(TimeSpan.FromSeconds(60), cancel);
                return Explanation.Of(scenario, scenario.Start.AddHours(1), cancel: cancel);
            },
        });
        shell.Terminal = true;
        Task<int> work = shell.RunAsync(["explain", Shell.AnyFile], CancellationToken.None);
        for (int i = 0; i < 600 && !shell.HasComplained; i++) await Task.Delay(100);
        seen.Set();
        Assert.Equal(0, await work);
        Assert.Contains("\rrunning for 1 s, 7 runs done", shell.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("running for", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Books_that_do_not_close_are_an_internal_error()
    {
        Shell shell = Asked(Shell.AlgebraicState with { Explain = (_, _, _, _) => throw new LedgerOpenException(new(1, 1e-3, 0, 0, 0, 0, 0, 0)) });
        Assert.Equal(3, shell.Run("explain", Shell.AnyFile));
        Assert.Equal("", shell.Out);
        Assert.StartsWith("coldsim: internal error: the ledger does not close, so nothing of this explanation is shown.\n", shell.Error, StringComparison.Ordinal);
    }
}
