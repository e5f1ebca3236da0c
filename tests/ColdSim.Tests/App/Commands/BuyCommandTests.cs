using System.Text.Json;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class BuyCommandTests
{
    [Fact]
    public void The_verdict_is_a_sentence_and_the_set_ups_are_side_by_side_in_both_units()
    {
        foreach (string units in (string[])["us", "si"])
        {
            Shell shell = new();
            Assert.Equal(0, shell.Run("buy", Shell.ColdSnap, "--price", "$4.35/gal", "--units", units));
            Assert.StartsWith("Best: 2 × ", shell.Out, StringComparison.Ordinal);
            Assert.Contains("fed on all 3 nights", shell.Out, StringComparison.Ordinal);
            string[] lines = shell.Out.TrimEnd('\n').Split('\n');
            Assert.True(lines.Length <= 23 && lines.All(l => l.Length <= 80), shell.Out);
        }
    }

    [Fact]
    public void The_document_has_the_keys_of_its_figures_and_limits_that_fall_with_the_fill()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        Shell shell = new();
        Assert.Equal(0, shell.Run("buy", Shell.ColdSnap, "--price", "24 per exchange", "--json"));
        JsonElement root = JsonDocument.Parse(shell.Out).RootElement;
        ResultsTests.Collect(root, "", written);
        ResultsTests.AssertKeys("buy", written);
        Assert.All(root.GetProperty("set_ups").EnumerateArray(), s =>
        {
            Assert.True(s.GetProperty("full_limit_c").GetDouble() <= s.GetProperty("half_limit_c").GetDouble());
            Assert.True(s.GetProperty("half_limit_c").GetDouble() <= s.GetProperty("quarter_limit_c").GetDouble());
            Assert.Equal(24 * s.GetProperty("fillings").GetInt32(), s.GetProperty("money").GetDouble());
        });
    }

    [Theory]
    [InlineData("fortnight.toml", "has stops or refills")]
    public void What_cannot_be_played_is_refused(string demo, string why)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("buy", Shell.Demo(demo)));
        Assert.Contains(why, shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_that_is_none_is_refused_with_what_is_accepted()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("buy", Shell.ColdSnap, "--price", "cheap"));
        Assert.Contains("'cheap' is not a price", shell.Error, StringComparison.Ordinal);
    }
}
