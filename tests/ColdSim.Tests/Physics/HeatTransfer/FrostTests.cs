using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.HeatTransfer;

public class FrostTests
{
    private const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;

    // Fits to frost and to snow, each worked out here from its own printed form: ours lies within them.
    [Theory]
    [InlineData(100)]
    [InlineData(150)]
    [InlineData(200)]
    [InlineData(300)]
    [InlineData(400)]
    [Outside("Yonko and Sepsy 1967", Field.HeatTransfer, Through = "frostypy")]
    public void Frost_conducts_no_more_than_the_highest_fit_and_half_of_it_at_least_where_it_is_dense(double density_kg_m3)
    {
        // BTU/(h ft °F) over lb/ft³.
        double lb_ft3 = density_kg_m3 / 16.0185, highest_W_mK = 1.730735 * (0.014 + 0.00668 * lb_ft3 + 0.0001759 * lb_ft3 * lb_ft3);
        Assert.InRange(Frost.Conductivity_W_mK(density_kg_m3) / highest_W_mK, 0.42, 1);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(150)]
    [InlineData(200)]
    [InlineData(300)]
    [InlineData(400)]
    [Outside("Calonne and others 2011", Field.HeatTransfer, FromMemory = true)]
    public void Frost_conducts_as_snow_of_its_density_does_within_a_third(double density_kg_m3)
    {
        double snow_W_mK = 2.5e-6 * density_kg_m3 * density_kg_m3 - 1.23e-4 * density_kg_m3 + 0.024;
        Assert.InRange(Frost.Conductivity_W_mK(density_kg_m3) / snow_W_mK, 0.75, 1.34);
    }

    [Fact]
    public void Frost_conducts_better_when_denser_and_never_worse_than_still_air()
    {
        Gen.Select(Gen.Double[1, 490], Gen.Double[0, 10]).Sample((rho, more) => Frost.Conductivity_W_mK(rho + more) >= Frost.Conductivity_W_mK(rho));
        Assert.InRange(Frost.Conductivity_W_mK(10), 0.0225, 0.0245);
        Assert.InRange(Frost.Conductivity_W_mK(700), 0.7, 2.2);
    }

    // Marrero and Mason's fit, 1.87e-10 T^2.072 m²/s atm for 282 to 450 K, and the handbook's 0.26 cm²/s at 298 K (table A.8).
    [Fact]
    [Outside("Incropera and DeWitt", Field.HeatTransfer, FromMemory = true)]
    public void Vapour_diffuses_in_air_as_the_textbooks_table_says()
        => Assert.Equal(0.26e-4, Frost.VapourDiffusivity_m2_s(298, Sea_Pa), 0.006e-4);

    // In light snow near freezing the conductivity is up to about 50 % more than without the heat that vapour carries: a third of the whole.
    [Theory]
    [InlineData(150)]
    [InlineData(200)]
    [Outside("Fourteau and others 2021", Field.HeatTransfer)]
    public void Vapour_carries_up_to_a_third_of_the_heat_through_light_frost_near_freezing(double density_kg_m3)
    {
        double slope = Humidity.VapourDensity_kg_m3(MagnusFormula.OverIce_Pa(272), 272) * (MagnusFormula.OverIceSlope_1_K(272) - 1 / 272.0);
        double carried_frac = Frost.Inward_kg_m2s(Frost.VapourDiffusivity_m2_s(272, Sea_Pa) * slope, density_kg_m3) * Frost.LatentHeatOfSublimation_J_kg;
        Assert.InRange(carried_frac, 0.1, 1.0 / 3);
    }

    [Fact]
    public void A_layer_grows_with_the_density_at_which_what_is_laid_on_top_and_what_goes_inward_add_up_to_it()
        => Gen.Select(Gen.Double[1e-7, 3e-5], Gen.Double[0, 3e-7]).Sample((arriving, drive) =>
        {
            double density = Frost.GrowingDensity_kg_m3(arriving, drive);
            Assert.InRange(density, 50, 500);
            if (density < 499) Assert.Equal(50 * arriving, density * (arriving - Frost.Inward_kg_m2s(drive, density)), 1e-6 * arriving);
        });

    // 72.345 and 237.589 kg/m³ solve ρ (1 − d (1 − 1.5 ρ/917)/k(ρ)) = 50 with d of 0.01 and 0.2 W/(m K), bisected by hand with the printed k.
    [Theory]
    [InlineData(0.01, 72.345)]
    [InlineData(0.03, 103.700)]
    [InlineData(0.2, 237.589)]
    public void A_layer_grows_the_denser_the_more_goes_inward(double share_W_mK, double density_kg_m3)
    {
        Assert.Equal(density_kg_m3, Frost.GrowingDensity_kg_m3(1e-6, share_W_mK * 1e-6), 1e-3);
        Assert.Equal(density_kg_m3, Frost.GrowingDensity_kg_m3(2e-5, share_W_mK * 2e-5), 1e-3);
    }

    // (3 ε − 1)/2 at porosities of 0.8, 0.5 and a third.
    [Theory]
    [InlineData(0.2, 0.7)]
    [InlineData(0.5, 0.25)]
    [InlineData(2.0 / 3, 0)]
    [InlineData(0.9, 0)]
    public void Vapour_goes_through_the_pores_of_frost_and_not_through_dense_frost(double ice_frac, double frac)
        => Assert.Equal(frac, Frost.InPores_frac(ice_frac * 917), 1e-12);

    // At 272.15 K, 800 hPa.
    [Fact]
    public void Vapour_diffuses_faster_in_thin_air()
        => Assert.Equal(1013.25 / 800, Frost.VapourDiffusivity_m2_s(272.15, 80_000) / Frost.VapourDiffusivity_m2_s(272.15, 101_325), 1e-12);
}
