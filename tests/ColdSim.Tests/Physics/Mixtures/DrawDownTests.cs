using ColdSim.Physics.Fluids;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Propane;
using Xunit;

namespace ColdSim.Tests.Physics.Mixtures;

/// <summary>Vapour drawn at constant temperature until little is left.</summary>
public class DrawDownTests
{
    private const double Volume_m3 = 0.0216;

    // Fourth-order Runge–Kutta over the mass drawn, with the program's own flash.
    private static GasMasses Drawn(GasMasses gas, double t_K, double draw_kg, int steps)
    {
        GasMasses Vapour(GasMasses at) => MixedContents.Of(at, Volume_m3, t_K).Vapour;
        double h = draw_kg / steps;
        for (int i = 0; i < steps; i++)
        {
            GasMasses k1 = Vapour(gas), k2 = Vapour(gas - k1 * (h / 2)), k3 = Vapour(gas - k2 * (h / 2)), k4 = Vapour(gas - k3 * h);
            gas -= (k1 + (k2 + k3) * 2 + k4) * (h / 6);
        }

        return gas;
    }

    private static double MolarVapour(Fluid fluid, double t_K) => 1 / fluid.Saturation.At(t_K).VapourVolume_m3_kg / fluid.MolarMass_kg_mol;

    // d ln n1/d ln n2 = α in a vessel whose vapour weighs nothing (Rayleigh); the vapour in it makes the change slower.
    [Theory]
    [InlineData(-70, 0.001)]
    [InlineData(-50, 0.004)]
    [InlineData(-30, 0.009)]
    public void Follows_Rayleigh_as_far_as_the_vapour_in_the_vessel_is_light(double t_C, double within)
    {
        double t_K = t_C + 273.15;
        double alpha = MolarVapour(ReferenceEquation.Fluid, t_K) / MolarVapour(NormalButane.Fluid, t_K);
        GasMasses from = new(5, 4, 0), to = Drawn(from, t_K, 3, 400);
        double order = Math.Log(to.Propane / from.Propane) / Math.Log(to.NormalButane / from.NormalButane);
        Assert.InRange(order / alpha, 1 - within, 1);
    }

    [Theory]
    [InlineData(-30)]
    [InlineData(20)]
    [InlineData(60)]
    public void Follows_an_independent_reference_where_the_vapour_in_the_vessel_counts(double t_C)
    {
        double t_K = t_C + 273.15;
        GasMasses from = new(5, 4, 0), to = Drawn(from, t_K, 8, 400);
        (double propane_kg, double butane_kg) = BinaryReference(5, 4, to.Propane, t_K);
        Assert.Equal(1, to.Propane / propane_kg, 1e-9);
        Assert.Equal(1, to.NormalButane / butane_kg, 1e-4);
    }

    // By propane left, with the liquid's mole fraction found by halving; nothing of the program's flash is used.
    private static (double Propane_kg, double Butane_kg) BinaryReference(double propane_kg, double butane_kg, double until_kg, double t_K)
    {
        Fluid a = ReferenceEquation.Fluid, b = NormalButane.Fluid;
        double ca = MolarVapour(a, t_K), cb = MolarVapour(b, t_K);
        double va = a.Saturation.At(t_K).LiquidVolume_m3_kg * a.MolarMass_kg_mol, vb = b.Saturation.At(t_K).LiquidVolume_m3_kg * b.MolarMass_kg_mol;
        double na = propane_kg / a.MolarMass_kg_mol, nb = butane_kg / b.MolarMass_kg_mol, end = until_kg / a.MolarMass_kg_mol;

        double ButanePerPropane(double na, double nb)
        {
            // More propane in the liquid means less vapour space and, by the balance of each species, a fuller vessel.
            double low = 1e-12, high = na / (na + nb);
            for (int i = 0; i < 100; i++)
            {
                double x = 0.5 * (low + high);
                double space = (na / x - nb / (1 - x)) / (ca - cb), liquid = na / x - ca * space;
                if (space + liquid * (x * va + (1 - x) * vb) > Volume_m3) low = x;
                else high = x;
            }

            return (1 - low) * cb / (low * ca);
        }

        // In even steps of ln n, because the propane goes almost to nothing.
        const int Steps = 2000;
        double part = Math.Pow(end / na, 1.0 / Steps), half = Math.Sqrt(part);
        for (int i = 0; i < Steps; i++)
        {
            double middle = nb + (half - 1) * na * ButanePerPropane(na, nb);
            nb += (part - 1) * na * ButanePerPropane(half * na, middle);
            na *= part;
        }

        return (na * a.MolarMass_kg_mol, nb * b.MolarMass_kg_mol);
    }

    [Fact]
    public void A_blend_drawn_in_the_cold_leaves_butane()
    {
        GasMasses from = GasBlend.FromLiquidVolumes(new(60, 28, 12)) * 9, to = Drawn(from, 258.15, 6, 200);
        Assert.True(to.Parts().Propane < 0.35 * from.Parts().Propane);
        Assert.True(MixedContents.BubblePressure_Pa(to, 258.15) < 0.65 * MixedContents.BubblePressure_Pa(from, 258.15));
    }

    [Fact]
    public void Parts_by_liquid_volume_go_to_mass_and_back()
    {
        GasMasses volumes = GasBlend.LiquidVolumes(GasBlend.FromLiquidVolumes(new(60, 28, 12)));
        Assert.Equal(0.60, volumes.Propane, 1e-12);
        Assert.Equal(0.12, volumes.Isobutane, 1e-12);
    }

    [Fact]
    public void Heat_of_n_butane_is_within_its_measured_uncertainty()
        => Assert.Equal(2877.5e3, GasSpecies.All[1].HeatingValue_J_kg * NormalButane.MolarMass_kg_mol, 1.26e3);

    [Fact]
    public void Heat_of_isobutane_is_near_the_remembered_measurement()
        => Assert.Equal(2869.0e3, GasSpecies.All[2].HeatingValue_J_kg * Isobutane.MolarMass_kg_mol, 1.5e3);
}
