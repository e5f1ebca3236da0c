using Xunit;

namespace ColdSim.Tests.Planning.Capacity;

/// <summary>What the model gives for a time, beside printed capacities; docs/model-checks.md has all of them.</summary>
/// <remarks>
/// No rule states wind, shelter, humidity or frost, and only one its time, so none is met by choice of a time: four hours are compared where the rules are for
/// cylinders in use, and the shapes of the rules, by fill and by air temperature, where a film coefficient does not move them.
/// </remarks>
public class TradeRuleTests
{
    [Theory]
    [InlineData(100, 0, 113_000)]
    [InlineData(50, 0, 64_000)]
    [InlineData(20, 0, 36_000)]
    [InlineData(100, 20, 167_000)]
    [InlineData(50, 20, 94_000)]
    [Outside(TradeRules.Handbook, Field.Cylinder)]
    public void For_four_hours_from_warm_liquid_a_100_lb_cylinder_gives_within_a_tenth_of_the_printed_table(double mass_lb, double air_F, double printed_Btu_h)
    {
        TradeRule rule = TradeRules.Upright(mass_lb, air_F, printed_Btu_h);
        Assert.Equal(1, rule.For_W(4) / rule.Printed_W, 0.10);
    }

    [Theory]
    [InlineData(0.60, 100)]
    [InlineData(0.40, 80)]
    [InlineData(0.20, 60)]
    [InlineData(0.10, 45)]
    [Outside(TradeRules.Handbook, Field.Cylinder)]
    public void Capacity_goes_with_fill_as_in_the_rule_by_diameter_and_length(double full_frac, double k)
    {
        // K over K at half full: the rule's wetted perimeter against our wetted area with its heads.
        double half_W = TradeRules.ByDiameterAndLength(0.5, 90).WithoutEnd_W(TradeRule.Breeze_m_s);
        Assert.Equal(1, TradeRules.ByDiameterAndLength(full_frac, k).WithoutEnd_W(TradeRule.Breeze_m_s) / half_W / (k / 90), 0.07);
    }

    // The manual's multipliers are linear in air less -20 °F. Ours are a little steeper, as the natural part of the film grows with the difference.
    [Theory]
    [InlineData(-10, 0.50)]
    [InlineData(-5, 0.75)]
    [InlineData(10, 1.50)]
    [InlineData(20, 2.00)]
    [Outside(TradeRules.Motorhome, Field.Cylinder)]
    public void Capacity_goes_with_air_temperature_nearly_by_the_manuals_multipliers(double air_F, double multiplier)
    {
        double ours = TradeRules.FrameTank(0.5, air_F, 1).WithoutEnd_W(TradeRule.Breeze_m_s) / TradeRules.FrameTank(0.5, 0, 1).WithoutEnd_W(TradeRule.Breeze_m_s);
        Assert.Equal(1, ours / multiplier, 0.03);
    }

    [Fact]
    public void The_time_moves_a_capacity_more_than_the_rules_differ()
    {
        // So a printed figure without its time is no check of a film coefficient.
        TradeRule rule = TradeRules.Upright(50, 0, 64_000);
        Assert.True(rule.For_W(1) > 3 * rule.For_W(8));
        Assert.InRange(rule.For_W(8) / rule.WithoutEnd_W(0), 0.7, 1.1);
    }
}
