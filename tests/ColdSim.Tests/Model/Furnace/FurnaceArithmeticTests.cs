using ColdSim.Model.Appliances;
using ColdSim.Model.Furnace;
using ColdSim.Model.Gas;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Furnace;

public class FurnaceArithmeticTests
{
    private const double Btu_J = 1055.05585262, Gallon_m3 = 3.785411784e-3, At60F_K = 288.706;

    private static double Heat_Btu_gal
        => new GasSpecification().HeatingValue_J_kg * PropaneSaturation.LiquidDensity_kg_m3(At60F_K) * Gallon_m3 / Btu_J;

    // Gallons an hour at full fire: input through the gas's heat and the liquid's density, all ours.
    private static double FullFire_gal_h(double input_Btu_h) => Plated(input_Btu_h).Input_W / Btu_J * 3600 / Heat_Btu_gal;

    [Fact]
    [Outside("EIA, heat content of propane", Field.Furnace)]
    public void A_gallon_holds_the_energy_agency_s_heat() => Assert.Equal(91_452, Heat_Btu_gal, 0.003 * 91_452);

    [Theory]
    [InlineData(91_500)]
    [InlineData(91_690)]
    [InlineData(91_330)]
    [Outside("Propane trade pages", Field.Furnace)]
    public void A_gallon_holds_the_trade_s_heat(double printed_Btu_gal) => Assert.Equal(printed_Btu_gal, Heat_Btu_gal, 0.003 * printed_Btu_gal);

    [Fact]
    [Outside("Propane trade pages", Field.Furnace)]
    public void A_worked_heater_of_43750_burns_the_printed_half_gallon_an_hour() => Assert.Equal(0.48, FullFire_gal_h(43_750), 0.005);

    [Theory]
    [InlineData(12_000, 0.131)]
    [InlineData(20_000, 0.219)]
    [InlineData(25_000, 0.273)]
    [InlineData(30_000, 0.33)]
    [InlineData(40_000, 0.44)]
    [Outside("common practice, no source", Field.Furnace, FromMemory = true)]
    public void Furnaces_burn_what_their_class_is_said_to_burn(double input_Btu_h, double printed_gal_h)
        => Assert.Equal(printed_gal_h, FullFire_gal_h(input_Btu_h), 0.01 * printed_gal_h);

    [Theory]
    [InlineData(3000, 0.88)]
    [InlineData(4000, 0.84)]
    [InlineData(5000, 0.80)]
    [InlineData(7500, 0.70)]
    [InlineData(10_000, 0.60)]
    public void The_code_takes_four_per_cent_a_thousand_feet(double feet, double printed)
        => Assert.Equal(printed, Share(AltitudeRule.CodePercentage, feet * 0.3048), 1e-9);

    [Fact]
    public void The_code_takes_nothing_up_to_two_thousand_feet_and_everything_from_sea_level_above()
    {
        Assert.Equal(1, Share(AltitudeRule.CodePercentage, 2000 * 0.3048), 1e-12);
        Assert.Equal(1 - 0.04 * 2.001, Share(AltitudeRule.CodePercentage, 2001 * 0.3048), 1e-9);
        Assert.Equal(1, Share(AltitudeRule.CodePercentage, -100), 1e-12);
    }

    [Fact]
    public void An_orifice_left_alone_passes_the_square_root_of_air_pressure()
    {
        Assert.Equal(1, Share(AltitudeRule.FixedOrifice, 0), 1e-9);
        foreach (double m in new double[] { 500, 1500, 3000 })
            Assert.Equal(Math.Sqrt(StandardAtmosphere.Pressure_Pa(m) / 101_325), Share(AltitudeRule.FixedOrifice, m), 1e-12);
    }

    [Fact]
    public void Rules_are_either_or_and_the_code_s_is_the_harder()
    {
        for (double m = 700; m < 3500; m += 100) Assert.True(Share(AltitudeRule.CodePercentage, m) < Share(AltitudeRule.FixedOrifice, m));
    }

    // Purge 15 to 17 s, some six seconds a try, three tries, an hour of lockout.
    [Fact]
    public void The_board_s_purge_is_that_of_a_service_sheet() => Assert.InRange(Plated().PrePurge_s, 15, 17);

    [Fact]
    public void The_board_s_try_is_that_of_a_service_sheet() => Assert.Equal(6, Plated().TrialForIgnition_s, 1.01);

    [Fact]
    public void The_board_tries_three_times() => Assert.Equal(3, Plated().Tries);

    [Fact]
    public void The_board_locks_out_for_an_hour() => Assert.Equal(3600, Plated().Lockout_s);

    private static double Share(AltitudeRule rule, double elevation_m)
    {
        FurnaceSpecification plate = Plated() with { Altitude = rule };
        return BurnerInput.At_W(plate.Input_W, plate.Altitude, elevation_m) / plate.Input_W;
    }
}
