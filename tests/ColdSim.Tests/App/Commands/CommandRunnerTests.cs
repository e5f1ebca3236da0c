using ColdSim.App.Commands;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Text;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class CommandRunnerTests
{
    private static readonly LedgerBalance OpenLedger = new(0, 2e-3, 0, 0, 0, 0, 0, 0);

    private static CommandWork<RunAnswer> Giving(RunReport report) => RunWork.Of(InventedRuns.Scenario) with { Answer = (_, _) => new(report) };

    private static CommandWork<string> Saying(string answer) => new()
    {
        Answer = (_, _) => answer,
        Text = (a, to) => to.Write([a]),
        Json = (a, stream) => stream.Write(System.Text.Encoding.UTF8.GetBytes($"\"{a}\"\n")),
        BesideJson = a => [$"beside {a}"],
    };

    private static async Task<CommandFault> RefusedAsync<T>(Shell shell, CommandWork<T> work)
        where T : class
        => await Assert.ThrowsAsync<CommandFault>(() => shell.RunAsync(work, json: false, CancellationToken.None));

    [Theory]
    [InlineData(2e-3, "Energy closes to 2e-3")]
    [InlineData(double.NaN, "Energy closes to NaN")]
    public async Task A_ledger_that_does_not_close_shows_nothing_of_the_run(double energy, string line)
    {
        Shell shell = new();
        CommandFault fault = await RefusedAsync(shell, Giving(InventedRuns.HoldsThenShort with { Ledger = new(0, energy, 0, 0, 0, 0, 0, 0) }));
        Assert.Equal(3, fault.Code);
        Assert.Equal("", shell.Out);
        Assert.Equal("coldsim: internal error: the ledger does not close, so nothing of this run is shown.", fault.Lines[0]);
        Assert.StartsWith(line, fault.Lines[1], StringComparison.Ordinal);
        Assert.EndsWith("Allowed is 1e-6.", fault.Lines[1], StringComparison.Ordinal);
        Assert.Equal("Please report it with the scenario and its weather file.", fault.Lines[2]);
    }

    [Fact]
    public async Task An_open_ledger_of_several_names_its_run()
    {
        Shell shell = new();
        CommandFault fault = await RefusedAsync(shell, Saying("words") with
        {
            Ledgers = new("this comparison", _ => [.. LedgerLine.IfOpen(default, "even"), .. LedgerLine.IfOpen(OpenLedger, "odd")]),
        });
        Assert.Equal(3, fault.Lines.Count);
        Assert.StartsWith("odd: Energy closes to 2e-3", fault.Lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ledger_that_the_planner_finds_open_is_an_internal_error_of_the_same_words()
    {
        Shell shell = new();
        CommandFault fault = await RefusedAsync(shell, Saying("words") with
        {
            Answer = (_, _) => throw new LedgerOpenException(OpenLedger),
            Ledgers = new("this explanation", _ => []),
        });
        Assert.Equal(3, fault.Code);
        Assert.Equal("coldsim: internal error: the ledger does not close, so nothing of this explanation is shown.", fault.Lines[0]);
        Assert.StartsWith("Energy closes to 2e-3", fault.Lines[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, "words\n", "")]
    [InlineData(true, "\"words\"\n", "beside words\n")]
    public async Task Json_is_all_there_is_on_standard_output(bool json, string output, string error)
    {
        Shell shell = new();
        Assert.Equal(0, await shell.RunAsync(Saying("words"), json, CancellationToken.None));
        Assert.Equal((output, error), (shell.Out, shell.Error));
    }

    [Fact]
    public async Task A_failure_ends_with_one_and_an_answer_that_outlived_an_interrupt_with_130()
    {
        Shell shell = new();
        Assert.Equal(1, await shell.RunAsync(Saying("words") with { Fails = _ => true }, json: false, CancellationToken.None));
        CommandWork<string> part = Saying("words") with { OutlivesInterrupt = true, Interrupted = a => $"interrupted after 5 {a}" };
        Assert.Equal(130, await shell.RunAsync(part, json: false, new CancellationToken(canceled: true)));
        Assert.Equal(("words\n", "coldsim: interrupted after 5 words\n"), (shell.Out, shell.Error));
    }

    [Fact]
    public async Task An_interrupt_during_the_work_shows_nothing_even_where_the_work_goes_on()
    {
        using CancellationTokenSource source = new();
        Shell shell = new();
        CommandWork<string> work = Saying("words") with
        {
            Answer = (_, _) =>
            {
                source.Cancel();
                return "words";
            },
        };
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => shell.RunAsync(work, json: false, source.Token));
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public async Task Work_of_over_a_second_gives_a_sign_of_life_on_a_terminal_and_wipes_it()
    {
        using ManualResetEventSlim seen = new();
        Shell shell = new() { Terminal = true, WhileWaiting = seen.Set };
        CommandWork<string> work = Saying("words") with
        {
            Answer = (done, _) =>
            {
                done.Report(7);
                seen.Wait(TimeSpan.FromSeconds(60), CancellationToken.None);
                return "words";
            },
            Progress = done => $", {done} of 3 done",
        };
        Assert.Equal(0, await shell.RunAsync(work, json: false, CancellationToken.None));
        Assert.StartsWith("\rrunning for 1 s, 1 of 3 done", shell.Error, StringComparison.Ordinal);
        Assert.EndsWith($"\r{new string(' ', "running for 1 s, 1 of 3 done".Length)}\r", shell.Error, StringComparison.Ordinal);
        Assert.Equal("words\n", shell.Out);
    }
}
