using ColdSim.Model.Cylinder;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

public class WallTemperatureTests
{
    private const double Liquid_K = Some.Zero_K - 30;

    private static WallTemperature At(CylinderSpecification cylinder, double air_K, double fill_frac = 0.4)
    {
        CylinderBody body = new(cylinder);
        CylinderContents contents = body.Contents(fill_frac * cylinder.LegalFill_kg, Liquid_K);
        return WallTemperature.At(body, Some.Weather(air_K, wind_m_s: 2), contents.LiquidVolume_m3, Liquid_K, default)!.Value;
    }

    [Fact]
    public void A_wall_is_between_the_liquid_and_the_air_and_warmer_above_the_level()
        => Gen.Select(Some.Size, Gen.Double[2, 40], Some.Fill).Sample(
            (size, warmer_K, fill_frac) =>
            {
                WallTemperature wall = At(Some.Cylinder(size), Liquid_K + warmer_K, fill_frac);
                Assert.InRange(wall.Below_K, Liquid_K, wall.Above_K);
                Assert.InRange(wall.Above_K, wall.Below_K, Liquid_K + warmer_K);
            },
            iter: 100);

    [Fact]
    public void A_wall_as_warm_as_the_air_has_nothing_to_differ_by()
    {
        WallTemperature wall = At(Some.Cylinder("20 lb"), Liquid_K);
        Assert.Equal(Liquid_K, wall.Below_K, 1e-9);
        Assert.Equal(Liquid_K, wall.Above_K, 1e-9);
    }

    [Fact]
    public void Below_the_level_the_heat_through_the_inside_film_is_the_heat_from_outside()
    {
        // Fixed films: 10 and 0 W/m²K outside, 130 inside, so the wall is a fourteenth of the way from the liquid to the air.
        CylinderSurroundings around = Some.Sheltered with { FixedConvection_W_m2K = 10, FixedRadiation_W_m2K = 0, InsideFilm_W_m2K = 130 };
        Assert.Equal(Liquid_K + 28 / 14.0, At(Some.Cylinder("20 lb", around), Liquid_K + 28).Below_K, 1e-9);
    }

    [Fact]
    public void A_wall_that_conducts_without_end_is_at_one_temperature()
    {
        WallTemperature wall = At(Some.Cylinder("20 lb") with { WallConductivity_W_mK = 1e9 }, Liquid_K + 20);
        Assert.Equal(wall.Below_K, wall.Above_K, 1e-3);
    }

    [Fact]
    public void A_measured_conductance_says_nothing_of_the_wall()
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Some.Sheltered with { FixedConductance_W_K = 4 }));
        Assert.Null(WallTemperature.At(body, Some.Weather(Liquid_K + 20), 0.01, Liquid_K, default));
    }
}
