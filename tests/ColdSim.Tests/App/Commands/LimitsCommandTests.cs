using ColdSim.App.Text;
using ColdSim.Tests.Planning.Limits;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class LimitsCommandTests
{
    [Fact]
    public void Table_and_chart_keep_to_eighty_columns_in_both_units()
    {
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            string printed = Shell.Printed(LimitText.Sections(HandLimits.Chart, units, Cautions.Short));
            Assert.Contains("not at", printed, StringComparison.Ordinal);
            Assert.All(printed.Split('\n'), l => Assert.InRange(l.Length, 0, 80));
        }
    }

    [Fact]
    public void The_page_fits_a_cupboard_door()
    {
        IReadOnlyList<string> lines = LimitPage.Lines(HandLimits.Chart, UnitStyle.Us, new DateTimeOffset(2027, 1, 2, 0, 0, 0, TimeSpan.Zero));
        Assert.InRange(lines.Count, 20, LimitPage.MostLines);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, LimitPage.Columns));
        Assert.Contains("Made 2 January 2027", lines[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("101")]
    [InlineData("50,x")]
    public void Fills_out_of_range_are_refused(string fills) => Assert.Equal(2, new Shell().Run("limits", Shell.ColdSnap, "--fills", fills));

    [Fact]
    public void They_are_run_at_whole_degrees_of_the_persons_own_unit_and_the_page_says_when()
    {
        Shell shell = new() { Clock = new HastyClock() };
        Assert.Equal(0, shell.Run("limits", Shell.ColdSnap, "--fills", "50", "--one-page"));
        Assert.Contains("Made ", shell.Out, StringComparison.Ordinal);
        Assert.Contains("-14", shell.Out, StringComparison.Ordinal);
        Assert.Equal(2, shell.Run("limits", Shell.ColdSnap, "--fills", "50", "--one-page", "--json"));
        Assert.Contains("do not go together", shell.Error, StringComparison.Ordinal);
    }
}
