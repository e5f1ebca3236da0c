using Xunit;

namespace ColdSim.Tests.App.Commands;

public class ExplainCommandTests
{
    [Theory]
    [InlineData("soon", "coldsim: --at: 'soon' is not a time; accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z, or a clock time such as 04:00\nSee 'coldsim explain --help'.\n")]
    [InlineData("2027-02-30T03:00", "coldsim: --at: '2027-02-30T03:00' is not a time; accepted: such as 2025-01-14T17:00-07:00 or 2025-01-15T00:00Z, or a clock time such as 04:00\nSee 'coldsim explain --help'.\n")]
    [InlineData("2027-01-12T15:59", "coldsim: --at: Tuesday 12 January 2027, 15:59 (UTC-07:00) is outside the run, which starts Tuesday 12 January 2027, 16:00 (UTC-07:00)\n")]
    public void A_time_that_is_none_or_outside_is_refused(string at, string words)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("explain", Shell.ColdSnap, "--at", at));
        Assert.Equal(words, shell.Error);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_time_is_read_by_the_scenarios_clock()
    {
        Shell utc = new(), local = new();
        Assert.Equal(0, utc.Run("explain", Shell.ColdSnap, "--at", "2027-01-13T00:30Z"));
        Assert.Contains("At Tue 12 Jan 17:30 the cylinder", utc.Out, StringComparison.Ordinal);
        Assert.Equal(0, local.Run("explain", Shell.ColdSnap, "--at", "2027-01-12T17:30"));
        Assert.Equal(utc.Out, local.Out);
    }

    [Fact]
    public void What_hangs_on_gas_below_the_minimum_inlet_is_said_as_run_says_it()
    {
        Shell explain = new(), run = new();
        Assert.Equal(0, explain.Run("explain", Shell.ColdSnap, "--full", "--at", "03:00"));
        Assert.DoesNotContain("minimum inlet", Joined(explain), StringComparison.Ordinal);
        Assert.Equal(0, explain.Run("explain", Shell.ColdSnap));
        Assert.Equal(0, run.Run("run", Shell.ColdSnap));
        const string Said = "This counts on gas below the regulator's minimum inlet";
        string sentence = Joined(run)[Joined(run).IndexOf(Said, StringComparison.Ordinal)..];
        Assert.Contains(sentence[..sentence.IndexOf(". ", StringComparison.Ordinal)], Joined(explain), StringComparison.Ordinal);

        static string Joined(Shell shell) => shell.Out.ReplaceLineEndings(" ");
    }

    [Fact]
    public void Runs_are_counted_on_standard_error_only()
    {
        Shell shell = new() { Terminal = true, Clock = new HastyClock() };
        Assert.Equal(0, shell.Run("explain", Shell.ColdSnap, "--at", "2027-01-13T00:30Z"));
        Assert.Contains("\rrunning for 1 s, 0 runs done", shell.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("running for", shell.Out, StringComparison.Ordinal);
    }
}
