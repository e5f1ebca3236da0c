using ColdSim.Physics.Mixtures;
using Xunit;

namespace ColdSim.Tests.Physics.Mixtures;

public class GasBlendTests
{
    // Heats of combustion over molar masses: 2,219.3 kJ/mol over 44.0956 g/mol, 2,877.1 and 2,867.8 over 58.1222.
    [Theory]
    [InlineData(1, 0, 0, 50.33e6)]
    [InlineData(0, 1, 0, 49.50e6)]
    [InlineData(0, 0, 1, 49.34e6)]
    [InlineData(2, 3, 5, 2 * 50.33e6 + 3 * 49.50e6 + 5 * 49.34e6)]
    public void Heat_of_combustion_is_the_sum_of_the_species(double propane_kg, double normal_kg, double iso_kg, double heat_J)
        => Assert.Equal(1, GasBlend.Heat_J(new GasMasses(propane_kg, normal_kg, iso_kg)) / heat_J, 2e-4);

    [Theory]
    [InlineData(1, 0, 0, 44.0956)]
    [InlineData(0, 0.3, 0.7, 58.1222)]
    [InlineData(1, 0.6, 0.4, 50.1466)]
    public void Molar_mass_is_mass_over_the_sum_of_moles(double propane_kg, double normal_kg, double iso_kg, double molar_g)
    {
        GasMasses gas = new(propane_kg, normal_kg, iso_kg);
        Assert.Equal(molar_g, 1e3 * GasBlend.MolarMass_kg_mol(gas), 1e-3);
        Assert.Equal(Math.Sqrt(molar_g / 44.0956), GasBlend.Flow_factor(gas), 1e-4);
    }

    [Fact]
    public void Parts_by_liquid_volume_and_by_mass_undo_each_other()
    {
        GasMasses gas = new(0.5, 0.3, 0.2), back = GasBlend.FromLiquidVolumes(GasBlend.LiquidVolumes(gas));
        for (int i = 0; i < GasSpecies.Count; i++) Assert.Equal(gas[i], back[i], 1e-12);

        // Propane is the lightest liquid, so it has more of the volume than of the mass.
        Assert.InRange(GasBlend.LiquidVolumes(gas).Propane, 0.52, 0.56);
    }
}
