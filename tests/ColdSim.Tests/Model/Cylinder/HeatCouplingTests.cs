using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.Fluids;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Propane;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>Parts of the coupling one at a time: films by orientation and wind, factors, and the way from the last liquid to the whole shell.</summary>
public class HeatCouplingTests
{
    private static ExternalConvection Convection(string size, double wind_m_s, double air_K = 265, double wall_K = 250)
        => new(new CylinderBody(Some.Cylinder(size)), Some.Weather(air_K, wind_m_s), wall_K);

    // Air at 257.5 K and sea level by the ideal gas and Sutherland: k = 0.02277 W/mK, ν = 1.195e-5 m²/s; g β ΔT L³/(ν a) with Pr = 0.72.
    private static double Rayleigh(double length_m, double difference_K) => 9.80665 * difference_K * Math.Pow(length_m, 3) * 0.72 / (257.5 * 1.195e-5 * 1.195e-5);

    private const double Conductivity_W_mK = 0.02277;

    [Fact]
    public void Still_air_falls_along_the_whole_height_of_an_upright_cylinder()
    {
        double height_m = new CylinderBody(Some.Cylinder("20 lb")).Vessel.Height_m;
        double expected = NaturalConvection.VerticalPlate(Rayleigh(height_m, 15), 0.72) * Conductivity_W_mK / height_m;
        Assert.Equal(1, Convection("20 lb", 0).OfWall_W_m2K / expected, 0.01);
    }

    [Fact]
    public void Still_air_falls_round_a_lying_tank_by_its_diameter()
    {
        double diameter_m = Some.Cylinder("20 gal").OutsideDiameter_m;
        double expected = NaturalConvection.HorizontalCylinder(Rayleigh(diameter_m, 15), 0.72) * Conductivity_W_mK / diameter_m;
        Assert.Equal(1, Convection("20 gal", 0).OfWall_W_m2K / expected, 0.01);
    }

    // Churchill and Bernstein across the diameter, blended with the still air's by the third power upright and by the fourth lying.
    [Theory]
    [InlineData("20 lb", 3, 0.8)]
    [InlineData("20 gal", 4, 0.8)]
    [InlineData("20 lb", 3, 5)]
    public void Wind_blends_in_across_the_diameter(string size, double power, double wind_m_s)
    {
        double diameter_m = Some.Cylinder(size).OutsideDiameter_m;
        double forced = ForcedConvection.CrossFlow(wind_m_s * diameter_m / 1.195e-5, 0.72) * Conductivity_W_mK / diameter_m;
        double still = Convection(size, 0).OfWall_W_m2K;
        double expected = Math.Pow(Math.Pow(forced, power) + Math.Pow(still, power), 1 / power);
        Assert.Equal(1, Convection(size, wind_m_s).OfWall_W_m2K / expected, 0.012);
    }

    // A third of the difference: the Rayleigh number is a third, and still air takes less by about its fourth to third root.
    [Fact]
    public void A_surface_nearer_to_the_air_has_the_film_of_its_own_difference()
    {
        double height_m = new CylinderBody(Some.Cylinder("20 lb")).Vessel.Height_m;
        double expected = NaturalConvection.VerticalPlate(Rayleigh(height_m, 5), 0.72) * Conductivity_W_mK / height_m;
        Assert.Equal(1, Convection("20 lb", 0).At_W_m2K(1.0 / 3) / expected, 0.01);
    }

    [Fact]
    public void A_fixed_film_holds_whatever_the_difference_and_the_wind()
    {
        CylinderBody body = new(Some.Cylinder("20 lb", Some.Sheltered with { FixedConvection_W_m2K = 7 }));
        ExternalConvection fixedFilm = new(body, Some.Weather(265, 10), 250);
        Assert.Equal((7, 7), (fixedFilm.OfWall_W_m2K, fixedFilm.At_W_m2K(0.3)));
    }

    // By hand: 13 W/m²K outside, 1/120 + 0.05 m²K/W behind; the surface is 1/(1 + 13 · 0.058333) of the way from the air to the liquid.
    [Fact]
    public void The_surface_lies_between_air_and_liquid_as_the_films_divide()
    {
        CylinderSurroundings around = Some.Sheltered with { FixedConvection_W_m2K = 9, FixedRadiation_W_m2K = 4, InsideFilm_W_m2K = 120 };
        CylinderBody body = new(Some.Cylinder("20 lb", around));
        WeatherSample weather = Some.Weather(265);
        ExternalHeatTransfer film = new(body, weather, new ExternalConvection(body, weather, 250), 250, 0.05);
        Assert.Equal(265 - 15 / 1.758333, film.Surface_K, 1e-5);
        Assert.Equal(13, film.Total_W_m2K, 1e-12);
    }

    [Fact]
    public void A_fixed_radiation_looks_at_the_air_and_not_at_the_sky()
    {
        CylinderSurroundings around = new() { SkyView_frac = 1, FixedConvection_W_m2K = 9, FixedRadiation_W_m2K = 4 };
        CylinderBody body = new(Some.Cylinder("20 lb", around));
        WeatherSample weather = Some.Weather(265) with { Sky_K = 230 };
        Assert.Equal(265, HeatCoupling.At(body, weather, 5, 250, default).Environment_K, 1e-9);
    }

    [Fact]
    public void A_heat_gain_factor_multiplies_every_way_to_the_outside()
    {
        CylinderSpecification plain = Some.Cylinder("20 lb") with { Blanket = new BlanketSpecification { Power_W = 100 } };
        HeatCoupling Of(double factor) => HeatCoupling.At(
            new CylinderBody(plain with { Surroundings = plain.Surroundings with { HeatGain_factor = factor } }), Some.Weather(265, 2), 5, 250, default);
        HeatCoupling one = Of(1), more = Of(1.3);
        Assert.Equal(1.3 * one.Conductance_W_K, more.Conductance_W_K, 1e-12);
        Assert.Equal(1.3 * one.Wall.Outside_W_K, more.Wall.Outside_W_K, 1e-12);
        Assert.Equal(1.3 * one.Wall.Beside_W_K, more.Wall.Beside_W_K, 1e-12);
        Assert.Equal((one.Environment_K, one.Wall.ToLiquid_W_K, one.WettedShare_frac), (more.Environment_K, more.Wall.ToLiquid_W_K, more.WettedShare_frac));
    }

    [Fact]
    public void A_factor_and_an_extra_of_wetting_liquid_wet_what_that_much_liquid_would()
    {
        CylinderSpecification plain = Some.Cylinder("20 lb");
        double Level_m(double liquid_m3, double factor = 1, double extra_m3 = 0) => HeatCoupling.WettingLevel_m(
            new CylinderBody(plain with { Surroundings = plain.Surroundings with { WettingLiquid_factor = factor, WettingExtra_m3 = extra_m3 } }), liquid_m3);
        Assert.Equal(Level_m(0.009), Level_m(0.006, factor: 1.5), 1e-12);
        Assert.Equal(Level_m(0.008), Level_m(0.006, extra_m3: 0.002), 1e-12);
        Assert.Equal(Level_m(0.010), Level_m(0.006, 1.5, 0.001), 1e-12);
        Assert.Equal(Level_m(plain.Volume_m3), Level_m(plain.Volume_m3, 2), 1e-12);

        // A puddle of three ten-thousandths of the volume is the least that wets.
        Assert.Equal(Level_m(3e-4 * plain.Volume_m3), Level_m(0), 1e-12);
    }

    // A 20 lb cylinder of 9.07 kg: half a percent of that, 45 g, missing to saturation and the whole shell counts.
    [Fact]
    public void The_whole_shell_comes_to_count_as_half_a_percent_of_the_filling_is_missing_to_saturation()
    {
        CylinderBody body = new(Some.Cylinder("20 lb"));
        double saturated_kg = body.Specification.Volume_m3 / SaturationTable.At(260).VapourVolume_m3_kg;
        double Part(double missing_kg) => HeatCoupling.WholeShell_frac(body, body.Contents(saturated_kg - missing_kg, 260));
        Assert.Equal(0, Part(-1));
        Assert.Equal(0.02 / (0.005 * 9.07), Part(0.02), 0.01);
        Assert.Equal(1, Part(0.05));
        Assert.Equal(0.25, HeatCoupling.WholeShell_frac(body.Contents(saturated_kg - 0.05, 260), 0.2), 0.005);
    }

    // 0.05 kg short of 0.1464 kg; with little heat apart the 45 g of the filling are the more, with 4 kW over 3 kJ/K 10 s · 4000/3000 · 0.03/K · 0.1464 kg = 59 g.
    [Fact]
    public void With_much_heat_between_bare_and_whole_shell_it_takes_ten_seconds_to_come_to_count()
    {
        CylinderBody body = new(Some.Cylinder("20 lb"));
        double saturated_kg = body.Specification.Volume_m3 / SaturationTable.At(260).VapourVolume_m3_kg;
        CylinderContents short50 = body.Contents(saturated_kg - 0.05, 260);
        Assert.Equal(0.005 * body.Specification.LegalFill_kg, HeatCoupling.Unsaturated_kg(body, short50, 3000, 10), 1e-12);

        // Its own vapour fills the volume; with what is missing that is what saturates it.
        Assert.Equal(10 * 4000 / 3000.0 * 0.03 * saturated_kg, HeatCoupling.Unsaturated_kg(body, short50, 3000, -4000), 5e-4);
    }

    [Fact]
    public void Vapour_alone_says_what_is_missing_how_large_it_is_and_how_its_pressure_follows_its_mass()
    {
        const double Volume_m3 = 0.0216, Mass_kg = 0.05, T_K = 260;
        CylinderContents c = CylinderContents.Of(Mass_kg, Volume_m3, T_K);
        SaturatedPhases s = SaturationTable.At(T_K);
        Assert.Equal(Volume_m3 / Mass_kg, c.VapourVolume_m3_kg, 1e-12);

        // Were it saturated, the lever rule would have less than no liquid.
        Assert.Equal((Mass_kg * s.VapourVolume_m3_kg - Volume_m3) / (s.VapourVolume_m3_kg - s.LiquidVolume_m3_kg), c.LiquidMass_kg, 1e-9);
        double dp_Pa = CylinderContents.Of(Mass_kg + 1e-5, Volume_m3, T_K).Pressure_Pa - CylinderContents.Of(Mass_kg - 1e-5, Volume_m3, T_K).Pressure_Pa;
        Assert.Equal(1, c.PressureByMass_Pa_kg * 2e-5 / dp_Pa, 1e-5);

        // Hotter than the saturation line goes, it is counted from the line's end.
        Assert.Equal(CylinderContents.Of(Mass_kg, Volume_m3, SaturationTable.Highest_K).LiquidMass_kg, CylinderContents.Of(Mass_kg, Volume_m3, SaturationTable.Highest_K + 20).LiquidMass_kg);
    }

    [Fact]
    public void A_mixed_gas_says_how_large_its_vapour_is()
    {
        MixedContents mixed = MixedContents.Of(new GasMasses(0.02, 0.01, 0), 0.0216, 270);
        Assert.Equal(0.0216 / 0.03, CylinderContents.Of(mixed).VapourVolume_m3_kg, 1e-9);
    }

    [Fact]
    public void Only_a_blanket_that_covers_something_is_one()
    {
        CylinderSpecification plain = Some.Cylinder("20 lb");
        CylinderBody With(double coverage_frac) => new(plain with { Blanket = new BlanketSpecification { Power_W = 50, Coverage_frac = coverage_frac } });
        Assert.False(new CylinderBody(plain).IsUnderBlanket);
        Assert.False(With(0).IsUnderBlanket);
        Assert.True(With(0.01).IsUnderBlanket);
        Assert.False(CylinderBody.IsAnyUnderBlanket([new CylinderBody(plain), With(0)]));
        Assert.True(CylinderBody.IsAnyUnderBlanket([new CylinderBody(plain), With(0.5)]));
        Assert.Equal(HeatCoupling.At(new CylinderBody(plain), Some.Weather(265), 5, 250, default), HeatCoupling.At(With(0), Some.Weather(265), 5, 250, default));
    }

    [Fact]
    public void A_lying_tank_is_wide_and_low_and_an_upright_cylinder_tall()
    {
        CylinderBody upright = new(Some.Cylinder("20 lb")), lying = new(Some.Cylinder("20 gal"));
        Assert.True(upright.Vessel.FullLevel_m > upright.Specification.OutsideDiameter_m);
        Assert.Equal(lying.Specification.OutsideDiameter_m - 2 * lying.Specification.WallThickness_m, lying.Vessel.FullLevel_m, 1e-9);
    }
}
