using ColdSim.App.Text;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.App.Text;

/// <summary>A rule of the United States is quoted where it holds: by the country, else by the units.</summary>
public class BoardRuleTests
{
    [Theory]
    [InlineData(null, true, true)]
    [InlineData(null, false, false)]
    [InlineData("US", false, true)]
    [InlineData("DE", true, false)]
    public void The_rule_is_quoted_by_country_else_by_units(string? country, bool us, bool quoted)
    {
        Scenario scenario = InventedRuns.Scenario with { Country = country };
        UnitStyle units = us ? UnitStyle.Us : UnitStyle.Si;
        Assert.Equal(quoted, BoardRule.OnTheGround(scenario, units).Contains("24 CFR 3280.704", StringComparison.Ordinal));
        Assert.Equal(quoted, BoardRule.Actions(scenario, units).Contains("24 CFR 3280.704", StringComparison.Ordinal));
        Assert.Contains(us ? "105 lb of water" : "47.6 kg of water", BoardRule.OnTheGround(scenario, units), StringComparison.Ordinal);
    }
}
