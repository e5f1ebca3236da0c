using ColdSim.App.Screens.Drawing;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

public class ScreenPageTests
{
    [Fact]
    public void The_page_has_the_colour_of_every_quantity()
    {
        string page = File.ReadAllText(DocPage.PathOf("screen.md"));
        Assert.All(QuantityColors.All, q => Assert.Contains($"| {q.Meaning} | {Words(q.Color)} |", page, StringComparison.Ordinal));
    }

    private static string Words(AnsiColor color)
        => color == AnsiColor.DarkGray ? "grey" : color.ToString().Replace("Bright", "bright ", StringComparison.Ordinal).ToLowerInvariant();
}
