using System.Text.Json;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class PropaneCommandTests
{
    [Theory]
    [InlineData("-20 °C", -20)]
    [InlineData("-4F", -20)]
    [InlineData("-20C", -20)]
    [InlineData("20 °C", 20)]
    [InlineData("253.15 K", -20)]
    [InlineData("-80C", -80)]
    [InlineData("80C", 80)]
    [InlineData("-112 °F", -80)]
    [InlineData("176 °F", 80)]
    public void A_bare_temperature_is_accepted(string text, double t_C)
    {
        foreach (string[] words in (string[][])[["propane", text, "--json"], ["propane", "--json", text], ["propane", "--json", "--", text]])
        {
            Shell shell = new();
            Assert.Equal(0, shell.Run(words));
            using JsonDocument json = JsonDocument.Parse(shell.Out);
            Assert.Equal(t_C, json.RootElement.GetProperty("temperature_c").GetDouble(), 1e-6);
            Assert.Equal("", shell.Error);
        }
    }

    [Fact]
    public void A_temperature_may_come_in_two_words()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("propane", "-20", "°C"));
        Assert.Contains("-4.00  °F", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_four_properties_in_si_units()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("propane", "20C", "--json"));
        using JsonDocument json = JsonDocument.Parse(shell.Out);
        Assert.InRange(json.RootElement.GetProperty("p_kpa").GetDouble(), 830, 842);
        Assert.InRange(json.RootElement.GetProperty("rho_liquid_kg_m3").GetDouble(), 495, 505);
        Assert.InRange(json.RootElement.GetProperty("rho_vapour_kg_m3").GetDouble(), 17, 19);
        Assert.InRange(json.RootElement.GetProperty("latent_heat_kj_kg").GetDouble(), 335, 350);
        Assert.Equal(5, json.RootElement.EnumerateObject().Count());
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(json.RootElement, "", written);
        ResultsTests.AssertKeys("propane", written);
    }

    [Theory]
    [InlineData("-81 °C", "from -80 to 80 °C")]
    [InlineData("200F", "from -80 to 80 °C")]
    [InlineData("20", "has no unit")]
    [InlineData("20 psi", "temperature")]
    [InlineData("warm", "does not begin with a number")]
    public void Anything_else_is_refused(string text, string message)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("propane", text));
        Assert.Contains(message, shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }
}
