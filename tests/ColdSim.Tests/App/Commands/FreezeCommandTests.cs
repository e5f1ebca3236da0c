using System.Text.Json;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class FreezeCommandTests
{
    private static readonly string Scenario = Shell.Demo("lockout-at-three.toml");

    [Fact]
    public void A_lockout_at_three_is_answered_with_times()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("freeze", Scenario));
        Assert.StartsWith("If the furnace stops on Thu 14 Jan 03:00, galley line begins to freeze after 2 h", shell.Out, StringComparison.Ordinal);
        Assert.Contains("Inside drops to 50 °F about 03:05", shell.Out, StringComparison.Ordinal);
        Assert.Contains("never thaw a pipe or warm a cylinder with a flame", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_several_times_the_one_that_leaves_the_least_is_the_verdict()
    {
        Shell shell = new(), one = new();
        Assert.Equal(0, shell.Run("freeze", Scenario, "--at", "2027-01-13T20:00", "--at", "2027-01-14T06:00"));
        Assert.Equal(0, one.Run("freeze", Scenario, "--at", "2027-01-14T06:00"));
        string at = "If the furnace stops on Thu 14 Jan 06:00, ";
        Assert.StartsWith(at, shell.Out, StringComparison.Ordinal);
        Assert.StartsWith(at, one.Out, StringComparison.Ordinal);
        Assert.Contains("the least of 2 times", shell.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("the least of", one.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_instants_come_as_one_document()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("freeze", Scenario, "--at", "2027-01-13T20:00", "--at", "2027-01-14T06:00", "--json"));
        JsonElement stops = JsonDocument.Parse(shell.Out).RootElement.GetProperty("stops");
        Assert.Equal(2, stops.GetArrayLength());
        Assert.True(stops[0].GetProperty("freezing_after_s").GetDouble() > stops[1].GetProperty("freezing_after_s").GetDouble());
    }

    [Fact]
    public void An_instant_that_is_none_or_outside_the_run_is_refused_with_what_is_accepted()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("freeze", Scenario, "--at", "dusk"));
        Assert.Contains("'dusk' is not a time", shell.Error, StringComparison.Ordinal);
        Shell late = new();
        Assert.Equal(2, late.Run("freeze", Scenario, "--at", "2029-01-01T00:00"));
        Assert.Contains("outside the run", late.Error, StringComparison.Ordinal);
    }
}
