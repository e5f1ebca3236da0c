using ColdSim.Physics.Fluids;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Propane;
using Xunit;

namespace ColdSim.Tests.Physics.Mixtures;

/// <summary>What Raoult's law leaves out, against a multi-fluid Helmholtz model worked out once outside this program (sources.md, "KunzWagner2012").</summary>
public class BubblePressureTests
{
    private static GasMasses Binary(double propane_mol)
        => new(propane_mol * ReferenceEquation.MolarMass_kg_mol, (1 - propane_mol) * NormalButane.MolarMass_kg_mol, 0);

    [Theory]
    [InlineData(-20, 0.90, 223.7, 0.0041)]
    [InlineData(-20, 0.70, 182.8, 0.0106)]
    [InlineData(-20, 0.50, 142.6, 0.0161)]
    [InlineData(0, 0.90, 434.7, 0.0061)]
    [InlineData(0, 0.70, 357.3, 0.0161)]
    [InlineData(0, 0.50, 282.2, 0.0237)]
    public void Raoult_is_high_by_the_known_error(double t_C, double propane_mol, double true_kPa, double error)
        => Assert.Equal(true_kPa, MixedContents.BubblePressure_Pa(Binary(propane_mol), t_C + 273.15) / (1 + error) / 1000, 0.11);

    // Raoult's y is x p_sat/p; the vapour in the cylinder is by saturated densities, which makes it a little richer still, so that the
    // program's blend leaves a little more butane behind than a real one: the cautious side.
    [Theory]
    [InlineData(0.90, 0.978, 0.002, 0.0035)]
    [InlineData(0.70, 0.920, 0.006, 0.0105)]
    [InlineData(0.50, 0.834, 0.010, 0.017)]
    public void The_vapour_at_minus_20_C_is_richer_in_propane_than_it_should_be_by_no_more_than_known(
        double propane_mol, double true_mol, double raoult, double ours)
    {
        double propane_Pa = propane_mol * SaturationTable.Pressure_Pa(253.15);
        double byRaoult = propane_Pa / MixedContents.BubblePressure_Pa(Binary(propane_mol), 253.15);
        Assert.Equal(true_mol + raoult, byRaoult, 0.0011);

        // Nearly full, so that the liquid is what was filled in.
        GasMasses filled = Binary(propane_mol);
        MixedContents c = MixedContents.Of(filled * (0.0215 * 550 / filled.Sum), 0.0216, 253.15);
        double propane = c.Vapour.Propane / ReferenceEquation.MolarMass_kg_mol;
        double butane = c.Vapour.NormalButane / NormalButane.MolarMass_kg_mol;
        Assert.InRange(propane / (propane + butane) - true_mol, 0, ours);
    }
}
