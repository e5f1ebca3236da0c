using ColdSim.Physics.HeatTransfer;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.HeatTransfer;

public class WallTests
{
    // Table A.2, rounded there to two decimals; emissivity 0.9 and 0 °C as in the annex.
    [Theory]
    [InlineData(1, 0.08)]
    [InlineData(2, 0.06)]
    [InlineData(3, 0.05)]
    [InlineData(4, 0.04)]
    [InlineData(5, 0.04)]
    [InlineData(7, 0.03)]
    [InlineData(10, 0.02)]
    [Outside("ISO 6946", Field.Coach, Through = "a public program")]
    public void Outside_film_by_wind_matches_ISO_6946_table_A_2(double wind_m_s, double expected_m2K_W)
        => Assert.Equal(expected_m2K_W, SurfaceResistance.OutsideInWind_m2K_W(wind_m_s, 0.9, 273.15), 0.005);

    [Fact]
    public void Linear_radiation_gives_the_fourth_power_law_exactly()
        => Gen.Select(Gen.Double[220, 320], Gen.Double[221, 320], Gen.Double[0.05, 1]).Sample((s, r, eps) =>
            Math.Abs((Radiation.LinearCoefficient_W_m2K(eps, s, r) * (r - s)) - (eps * 5.670374419e-8 * (Math.Pow(r, 4) - Math.Pow(s, 4)))) < 1e-9);

    [Fact]
    public void Fin_is_its_whole_length_when_it_conducts_well_and_one_over_m_when_it_is_long()
    {
        Assert.Equal(0.2, Fin.EffectiveLength_m(0, 50, 0.002, 0.2));
        Assert.Equal(0.2, Fin.EffectiveLength_m(1e-9, 50, 0.002, 0.2), 1e-9);
        Assert.Equal(0.1, Fin.EffectiveLength_m(10, 50, 0.002, 1e6), 1e-12);
    }

    [Fact]
    public void Fin_solves_its_own_equation()
    {
        // Heat through the root, from 20 000 slices of the fin equation marched from the tip, against the closed form.
        const double h = 8, k = 50, t = 0.002, length = 0.25;
        const int n = 20_000;
        double dx = length / n, theta = 1, flux = 0;
        for (int i = 0; i < n; i++)
        {
            double middle = theta + (flux * 0.5 * dx / (k * t));
            flux += h * middle * dx;
            theta += flux * dx / (k * t);
        }

        Assert.Equal(flux / theta / h, Fin.EffectiveLength_m(h, k, t, length), 1e-5);
    }

    [Fact]
    public void Longer_or_thicker_fins_never_take_less()
        => Gen.Select(Gen.Double[1, 60], Gen.Double[0.2, 200], Gen.Double[0.001, 0.01], Gen.Double[0, 1], Gen.Double[1, 2]).Sample((h, k, t, length, more) =>
        {
            double now = Fin.EffectiveLength_m(h, k, t, length);
            return now <= length && Fin.EffectiveLength_m(h, k, t, length * more) >= now && Fin.EffectiveLength_m(h, k, t * more, length) >= now;
        });

    [Fact]
    public void Sublimation_takes_melting_and_boiling_together()
        => Assert.Equal(Frost.LatentHeatOfSublimation_J_kg, Frost.LatentHeatOfFusion_J_kg + Frost.LatentHeatOfVaporisation_J_kg, 1e3);

    [Fact]
    public void Mass_transfer_follows_the_Lewis_relation()
        => Assert.Equal(4 / (1.34 * 1006 * Math.Pow(Frost.Lewis, 2.0 / 3)), Frost.MassTransferCoefficient_m_s(4, 1.34), 1e-8);

    // Both walls cut into cells of a tenth of a millimetre: conduction along, outside on one face, the liquid on the other below its line. What the liquid
    // gets more than from wetted wall alone is the fin's.
    [Theory]
    [InlineData(6, 130, 0.0021, 0.4)]
    [InlineData(12, 130, 0.0021, 0.4)]
    [InlineData(12, 130, 0.0021, 0.03)]
    [InlineData(25, 60, 0.004, 0.4)]
    public void A_fin_on_wall_behind_a_film_leads_into_the_liquid_what_a_wall_in_cells_does(double h, double film, double thickness_m, double length_m)
    {
        const double Cell_m = 1e-4, Wetted_m = 0.4, K = 48;
        int wet = (int)(Wetted_m / Cell_m), all = wet + (int)Math.Round(length_m / Cell_m);
        double along = K * thickness_m / Cell_m;
        double[] upper = new double[all], t = new double[all];

        // Tridiagonal elimination; outside is at 1, the liquid at 0.
        for (int i = 0; i < all; i++)
        {
            double below = i == 0 ? 0 : along, above = i == all - 1 ? 0 : along, liquid = i < wet ? film * Cell_m : 0;
            double diagonal = below + above + h * Cell_m + liquid - (i == 0 ? 0 : below * upper[i - 1]);
            upper[i] = above / diagonal;
            t[i] = (h * Cell_m + (i == 0 ? 0 : below * t[i - 1])) / diagonal;
        }

        for (int i = all - 2; i >= 0; i--) t[i] += upper[i] * t[i + 1];
        double intoLiquid = t.Take(wet).Sum() * film * Cell_m, wetted_W_m2K = 1 / (1 / h + 1 / film);
        Assert.Equal(intoLiquid / wetted_W_m2K - Wetted_m, Fin.EffectiveLength_m(h, film, K, thickness_m, length_m), 2e-4);
    }

    [Fact]
    public void A_fin_on_a_root_as_cold_as_the_liquid_is_the_textbooks()
        => Assert.Equal(Fin.EffectiveLength_m(10, 48, 0.002, 0.3), Fin.EffectiveLength_m(10, 1e12, 48, 0.002, 0.3), 1e-6);
}
