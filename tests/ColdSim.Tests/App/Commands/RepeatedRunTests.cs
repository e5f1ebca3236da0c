using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>The same files give the same bytes, whatever ran before in the same process.</summary>
public class RepeatedRunTests
{
    public static TheoryData<string> Demos => [.. Directory.EnumerateFiles(DocPage.Scenarios, "*.toml").Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_scenario_run_again_after_another_gives_the_same_bytes(string demo)
    {
        Shell first = new(), between = new(), again = new();
        string command = demo == "fortnight.toml" ? "trip" : "run";
        first.Run(command, Shell.Demo(demo), "--json");
        between.Run("run", Shell.Demo("mixed-gas.toml"), "--nights", "1", "--json");
        again.Run(command, Shell.Demo(demo), "--json");
        Assert.NotEqual("", first.Out);
        Assert.NotEqual(first.Out, between.Out);
        Assert.Equal(first.Out, again.Out);
    }
}
