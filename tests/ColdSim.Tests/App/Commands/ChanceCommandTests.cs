using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Planning.Ensemble;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class ChanceCommandTests
{
    [Fact]
    public void A_chance_in_us_units() => Snapshot.Match(Printed(HandChances.Report, "--members", "1000"));

    [Fact]
    public void A_chance_in_si_units() => Snapshot.Match(Printed(HandChances.Report, "--members", "1000", "--units", "si"));

    [Fact]
    public void A_chance_by_years() => Snapshot.Match(Printed(HandChances.ByYears, "--members", "12"));

    [Fact]
    public void Nothing_is_wider_than_eighty_columns()
    {
        foreach (ChanceReport report in (ChanceReport[])[HandChances.Report, HandChances.ByYears, HandChances.Report with { Done = 40 }])
            Assert.All(Printed(report, "--members", "1000").Split('\n'), l => Assert.InRange(l.Length, 0, 80));
    }

    [Fact]
    public void An_interrupted_ensemble_prints_what_is_done_and_ends_so()
    {
        Shell shell = Ending(HandChances.Report with { Done = 312, AllNights = new(120, 312) });
        Assert.Equal(130, shell.Run("run", Shell.AnyFile, "--members", "1000"));
        Assert.Contains("Interrupted after 312 of 1,000 members", shell.Out, StringComparison.Ordinal);
        Assert.Contains("interrupted after 312 of 1000", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--members", "0")]
    [InlineData("--members", "1.5")]
    [InlineData("--seed", "3")]
    [InlineData("--members", "10", "--csv", "x.csv")]
    [InlineData("--members", "10", "--years", "x.epw")]
    [InlineData("--years", "not-there.epw")]
    public void What_does_not_go_together_is_refused(params string[] words) => Assert.Equal(2, new Shell().Run(["run", Shell.AnyFile, .. words]));

    [Fact]
    public void A_chance_below_the_wanted_one_counts_as_a_failure_when_that_is_asked()
    {
        Assert.Equal(1, Ending(HandChances.Report).Run("run", Shell.AnyFile, "--members", "10", "--fail-if-short"));
        Assert.Equal(0, Ending(HandChances.ByYears).Run("run", Shell.AnyFile, "--members", "10", "--fail-if-short"));
    }

    [Fact]
    public void Json_is_one_document_and_nothing_else()
    {
        Shell shell = Ending(HandChances.Report);
        Assert.Equal(0, shell.Run("run", Shell.AnyFile, "--members", "10", "--json"));
        Assert.Equal(Shell.Document, shell.Out);
    }

    private static Shell Ending(ChanceReport report)
    {
        Shell shell = new();
        shell.Parts = shell.Parts with { Chance = (_, _, _, _, _) => report };
        return shell;
    }

    private static string Printed(ChanceReport report, params string[] words)
    {
        Shell shell = Ending(report);
        shell.Run(["run", Shell.AnyFile, .. words]);
        return shell.Out;
    }
}
