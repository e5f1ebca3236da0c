using ColdSim.App.Text;
using ColdSim.Tests.Planning.Limits;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class LimitsCommandTests
{
    [Fact]
    public void Table_and_chart_keep_to_eighty_columns_in_both_units()
    {
        foreach (string units in (string[])["us", "si"])
        {
            Shell shell = new();
            Assert.Equal(0, shell.Run("limits", Shell.AnyFile, "--units", units));
            Assert.Contains("not at", shell.Out, StringComparison.Ordinal);
            Assert.All(shell.Out.Split('\n'), l => Assert.InRange(l.Length, 0, 80));
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
    public void Fills_out_of_range_are_refused(string fills) => Assert.Equal(2, new Shell().Run("limits", Shell.AnyFile, "--fills", fills));

    [Fact]
    public async Task An_interrupted_search_prints_nothing()
    {
        using CancellationTokenSource source = new();
        Shell shell = new();
        shell.Parts = shell.Parts with
        {
            Limits = (_, _, _, _, cancel) =>
            {
                source.Cancel();
                cancel.ThrowIfCancellationRequested();
                return HandLimits.Chart;
            },
        };
        Assert.Equal(130, await shell.RunAsync(["limits", Shell.AnyFile], source.Token));
        Assert.Equal("", shell.Out);
    }
}
