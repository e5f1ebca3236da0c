using ColdSim.Model.Electrical;
using Xunit;

namespace ColdSim.Tests.Model.Electrical;

public class LeadAcidFreezingTests
{
    private static double F(double t_K) => (t_K - 273.15) * 1.8 + 32;

    [Theory]
    [InlineData(1.265, -75)]
    [InlineData(1.225, -35)]
    [InlineData(1.200, -17)]
    [InlineData(1.150, 5)]
    [InlineData(1.100, 18)]
    [Outside("Battery freezing points, owner's manual", Field.Electrical)]
    public void Acid_freezes_where_another_table_says(double gravity, double printed_F) => Assert.Equal(printed_F, F(LeadAcidFreezing.FreezingPoint_K(gravity)), 4.5);

    [Theory]
    [InlineData(0, 13.4)]
    [InlineData(0.5, -11.8)]
    [InlineData(1, -76)]
    public void Less_charge_freezes_warmer(double charge, double expected_F) => Assert.Equal(expected_F, F(LeadAcidFreezing.AtCharge_K(charge)), 0.01);

    [Fact]
    public void It_falls_with_every_bit_of_charge()
    {
        for (double charge = 0; charge < 1; charge += 0.01) Assert.True(LeadAcidFreezing.AtCharge_K(charge + 0.01) < LeadAcidFreezing.AtCharge_K(charge));
    }
}
