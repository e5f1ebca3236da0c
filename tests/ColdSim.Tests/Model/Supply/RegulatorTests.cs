using ColdSim.Model.Furnace;
using ColdSim.Model.Supply;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Supply;

public class RegulatorTests
{
    private const double Psi_Pa = ColdSim.Physics.Units.ConversionFactors.Psi_Pa;
    private const double InchOfWater_Pa = ColdSim.Physics.Units.ConversionFactors.InchOfWater_Pa;
    private const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;
    private const double HeatingValue_J_kg = 50.33e6;
    private const double RatingGas_K = 288.15;
    private const double Gamma = 1.13;

    private static readonly RegulatorSpecification Plate = new();
    private static readonly TwoStageRegulator Regulator = new(Plate, HeatingValue_J_kg);
    private static readonly double Rated_kg_s = Plate.RatedFlow_W / HeatingValue_J_kg;
    private static readonly double RatedInlet_Pa = Sea_Pa + Plate.RatedInlet_Pa;

    // Saint-Venant and Wantzel, written out again: flow through a hole over that of its choked flow at the same inlet.
    private static double PartOfChoked(double ratio)
    {
        double critical = Math.Pow(2 / (Gamma + 1), Gamma / (Gamma - 1));
        double Flow(double r) => Math.Sqrt(Math.Pow(r, 2 / Gamma) - Math.Pow(r, (Gamma + 1) / Gamma));
        return ratio <= critical ? 1 : Flow(ratio) / Flow(critical);
    }

    [Fact]
    public void At_rated_flow_and_rated_inlet_delivery_is_one_droop_below_set_point()
    {
        Assert.Equal(1, Regulator.Flow_kg_s(Plate.SetPoint_Pa - Plate.Droop_Pa, RatedInlet_Pa, Sea_Pa, RatingGas_K) / Rated_kg_s, 1e-6);
        Assert.Equal(Plate.SetPoint_Pa - Plate.Droop_Pa, Regulator.Delivery_Pa(Rated_kg_s * (1 - 1e-9), RatedInlet_Pa, Sea_Pa, RatingGas_K), 1);
    }

    [Fact]
    public void At_half_the_rated_flow_and_rated_inlet_delivery_is_near_set_point()
        => Assert.Equal(Plate.SetPoint_Pa, Regulator.Delivery_Pa(0.5 * Rated_kg_s, RatedInlet_Pa, Sea_Pa, RatingGas_K), 0.15 * Plate.Droop_Pa);

    [Fact]
    public void Lock_up_without_flow_is_one_droop_above_set_point()
    {
        Assert.Equal(Plate.SetPoint_Pa + Plate.Droop_Pa, Regulator.LockUp_Pa, 1e-9);
        Assert.Equal(0, Regulator.Flow_kg_s(Regulator.LockUp_Pa, RatedInlet_Pa, Sea_Pa, 270));
        Assert.True(Regulator.Flow_kg_s(Regulator.LockUp_Pa - 1, RatedInlet_Pa, Sea_Pa, 270) > 0);
        Assert.Equal(Regulator.LockUp_Pa, Regulator.Delivery_Pa(1e-9, RatedInlet_Pa, Sea_Pa, 270), 0.1);
    }

    [Fact]
    public void No_gas_flows_out_of_a_cylinder_without_pressure()
        => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 2000], Gen.Double[65_000, 104_000]).Sample((part, delivery_Pa, air_Pa) =>
            Regulator.Flow_kg_s(delivery_Pa, part * (air_Pa + delivery_Pa), air_Pa, 240) == 0);

    [Fact]
    public void A_wide_open_stage_is_a_hole_choked_or_not()
        => Gen.Select(Gen.Double[1.01, 12], Gen.Double[0, 0.9], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((over, part, air_Pa, gas_K) =>
        {
            // Set 50 kPa, droop 10: wide open up to 40 kPa gauge. Rated choked at 400 kPa, 288.15 K.
            SpringOrifice stage = new(50_000, 10_000, 1e-3, 400_000, Sea_Pa, RatingGas_K);
            double outlet_Pa = air_Pa + part * 40_000, inlet_Pa = over * outlet_Pa;
            double expected = 1e-3 * inlet_Pa / 400_000 * Math.Sqrt(RatingGas_K / gas_K) * PartOfChoked(outlet_Pa / inlet_Pa);
            return Math.Abs(stage.Flow_kg_s(inlet_Pa, outlet_Pa, air_Pa, gas_K) / expected - 1) < 1e-9;
        });

    [Fact]
    public void The_spring_feels_gauge_pressure_and_the_orifice_absolute()
        => Gen.Select(Gen.Double[60_000, 100_000], Gen.Double[41_000, 59_000]).Sample((air_Pa, outlet_Pa) =>
        {
            SpringOrifice stage = new(50_000, 10_000, 1e-3, 400_000, Sea_Pa, RatingGas_K);
            // Choked at both heights, at equal gauge pressures: the same opening, less gas in proportion to absolute inlet pressure.
            double high = stage.Flow_kg_s(air_Pa + 800_000, air_Pa + outlet_Pa, air_Pa, 260);
            double low = stage.Flow_kg_s(Sea_Pa + 800_000, Sea_Pa + outlet_Pa, Sea_Pa, 260);
            double opening = (60_000 - outlet_Pa) / 20_000;
            Assert.Equal((air_Pa + 800_000) / (Sea_Pa + 800_000), high / low, 1e-9);
            Assert.Equal(opening * 1e-3 * (Sea_Pa + 800_000) / 400_000 * Math.Sqrt(RatingGas_K / 260), low, 1e-12);
        });

    [Fact]
    public void More_cylinder_pressure_never_gives_less_and_more_delivery_pressure_never_more()
        => Gen.Select(Gen.Double[0, 3200], Gen.Double[80_000, 1_400_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((delivery_Pa, cylinder_Pa, air_Pa, gas_K, more, lift) =>
        {
            double now = Regulator.Flow_kg_s(delivery_Pa, cylinder_Pa, air_Pa, gas_K);
            double slack = 1e-6 * Rated_kg_s;
            return now >= 0
                && Regulator.Flow_kg_s(delivery_Pa, cylinder_Pa * (1 + more), air_Pa, gas_K) >= now - slack
                && Regulator.Flow_kg_s(delivery_Pa + 500 * lift, cylinder_Pa, air_Pa, gas_K) <= now + slack;
        }, iter: 5000);

    [Fact]
    public void A_regulator_rated_for_half_never_gives_more()
        => Gen.Select(Gen.Double[0, 3000], Gen.Double[80_000, 1_400_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((delivery_Pa, cylinder_Pa, air_Pa, gas_K) =>
        {
            TwoStageRegulator half = new(Plate with { RatedFlow_W = 0.5 * Plate.RatedFlow_W }, HeatingValue_J_kg);
            double whole_kg_s = Regulator.Flow_kg_s(delivery_Pa, cylinder_Pa, air_Pa, gas_K);
            // Both orifices are half as large, so at given pressures exactly half flows.
            return Math.Abs(half.Flow_kg_s(delivery_Pa, cylinder_Pa, air_Pa, gas_K) - 0.5 * whole_kg_s) <= 1e-6 * Rated_kg_s;
        });

    [Fact]
    public void The_sufficient_inlet_is_the_least_that_feeds()
        => Gen.Select(Gen.Double[0.01, 0.9], Gen.Double[1000, 2800], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((part, delivery_Pa, air_Pa, gas_K) =>
        {
            double flow_kg_s = part * Rated_kg_s;
            double least_Pa = Regulator.SufficientInlet_Pa(flow_kg_s, delivery_Pa, air_Pa, gas_K);
            if (double.IsInfinity(least_Pa))
            {
                Assert.True(Regulator.Flow_kg_s(delivery_Pa, 5e6, air_Pa, gas_K) < flow_kg_s * (1 + 1e-6));
                return;
            }

            Assert.True(least_Pa > air_Pa + delivery_Pa);
            Assert.True(Regulator.Flow_kg_s(delivery_Pa, least_Pa + 5, air_Pa, gas_K) >= flow_kg_s * (1 - 1e-5));
            Assert.True(Regulator.Flow_kg_s(delivery_Pa, least_Pa - 20, air_Pa, gas_K) < flow_kg_s);
        }, iter: 5000);

    [Fact]
    public void More_than_the_second_stage_can_pass_is_fed_by_no_inlet()
        => Assert.Equal(double.PositiveInfinity, Regulator.SufficientInlet_Pa(3 * Rated_kg_s, Plate.SetPoint_Pa, Sea_Pa, 270));

    [Fact]
    public void Delivery_is_the_inverse_of_flow_also_with_a_stage_wide_open()
        => Gen.Select(Gen.Double[0.01, 1.2], Gen.Double[102_000, 1_400_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((part, cylinder_Pa, air_Pa, gas_K) =>
        {
            double most_kg_s = Regulator.Flow_kg_s(0, cylinder_Pa, air_Pa, gas_K);
            double flow_kg_s = Math.Min(part * Rated_kg_s, 0.99 * most_kg_s);
            if (flow_kg_s <= 0) return;
            double delivery_Pa = Regulator.Delivery_Pa(flow_kg_s, cylinder_Pa, air_Pa, gas_K);
            Assert.InRange(delivery_Pa, 0, Regulator.LockUp_Pa);
            // While regulating the value is settled to a thousandth of the spring's band.
            double low_kg_s = Regulator.Flow_kg_s(Math.Min(delivery_Pa + 2e-3 * 2 * Plate.Droop_Pa, Regulator.LockUp_Pa), cylinder_Pa, air_Pa, gas_K);
            double high_kg_s = Regulator.Flow_kg_s(delivery_Pa - 2e-3 * 2 * Plate.Droop_Pa, cylinder_Pa, air_Pa, gas_K);
            Assert.InRange(flow_kg_s, low_kg_s - 1e-6 * Rated_kg_s, high_kg_s + 1e-6 * Rated_kg_s);
        }, iter: 5000);

    [Fact]
    public void The_allowed_liquid_boils_at_the_sufficient_inlet()
    {
        double flow_kg_s = 0.2 * Rated_kg_s;
        double allowed_K = SteadySupply.AllowedLiquid_K(Regulator, flow_kg_s, Plate.SetPoint_Pa - Plate.Droop_Pa, Sea_Pa);
        double least_Pa = Regulator.SufficientInlet_Pa(flow_kg_s, Plate.SetPoint_Pa - Plate.Droop_Pa, Sea_Pa, ReferenceEquation.NormalBoilingPoint_K);
        Assert.Equal(1, PropaneSaturation.Pressure_Pa(allowed_K) / least_Pa, 1e-9);
        Assert.True(double.IsNaN(SteadySupply.AllowedLiquid_K(Regulator, 3 * Rated_kg_s, Plate.SetPoint_Pa, Sea_Pa)));
        // Higher up less absolute pressure is needed, so colder liquid will do.
        Assert.True(SteadySupply.AllowedLiquid_K(Regulator, flow_kg_s, Plate.SetPoint_Pa - Plate.Droop_Pa, 75_000) < allowed_K);
    }

    [Fact]
    public void The_second_stage_is_set_to_the_standards_nominal_11_inches()
        => Assert.Equal(11, Plate.SetPoint_Pa / InchOfWater_Pa, 1e-9);

    [Fact]
    public void The_first_stage_is_set_within_2_to_10_psig()
        => Assert.InRange(Plate.Intermediate_Pa / Psi_Pa, 2, 10 + 1e-9);

    [Fact, Outside("UL 144", Field.Cylinder)]
    public void Delivery_never_exceeds_14_inches_even_at_the_250_psig_a_regulator_must_bear()
    {
        double highest_Pa = Regulator.Delivery_Pa(1e-6 * Rated_kg_s, Sea_Pa + 250 * Psi_Pa, Sea_Pa, 300);
        Assert.InRange(highest_Pa / InchOfWater_Pa, 11, 14);
    }

    [Fact]
    public void Lock_up_is_below_the_14_inches_that_may_be_delivered()
        => Assert.True(Regulator.LockUp_Pa / InchOfWater_Pa <= 14);

    [Fact]
    public void Lock_up_is_within_the_service_limit()
        => Assert.InRange(Regulator.LockUp_Pa / InchOfWater_Pa, 11, 14);

    [Fact]
    public void A_furnace_has_its_full_input_at_the_least_inlet_on_its_plate()
        => Assert.True(Furnace.FullPressure_Pa / InchOfWater_Pa <= 11.0);

    [Fact]
    public void Full_input_is_not_claimed_below_the_general_floor_of_10_inches()
        => Assert.True(Furnace.FullPressure_Pa / InchOfWater_Pa >= 10.0);

    [Fact]
    public void A_flame_is_lost_where_a_low_pressure_switch_opens()
        => Assert.Equal(6.5, Furnace.DropOutPressure_Pa / InchOfWater_Pa, 1e-9);

    [Fact]
    public void Ignition_is_tried_again_between_opening_and_closing_of_a_low_pressure_switch()
        => Assert.InRange(Furnace.IgnitionPressure_Pa / InchOfWater_Pa, 6.5, 10.2);

    private static FurnaceSpecification Furnace { get; } = new() { Input_W = 8800 };
}
