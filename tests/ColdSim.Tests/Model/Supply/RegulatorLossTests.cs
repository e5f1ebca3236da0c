using ColdSim.Model.Supply;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Supply;

/// <summary>A regulator below its minimum inlet, and what is lost in pigtail and hose.</summary>
public class RegulatorLossTests
{
    private const double Psi_Pa = ColdSim.Physics.Units.ConversionFactors.Psi_Pa;
    private const double InchOfWater_Pa = ColdSim.Physics.Units.ConversionFactors.InchOfWater_Pa;
    private const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;
    private const double HeatingValue_J_kg = 50.33e6;
    private const double RatingGas_K = 288.15;

    private static readonly RegulatorSpecification Plate = new();
    private static readonly TwoStageRegulator Regulator = new(Plate, HeatingValue_J_kg);
    private static readonly TwoStageRegulator Shutting = new(Plate with { ShutsBelowMinimum = true }, HeatingValue_J_kg);
    private static readonly TwoStageRegulator Pigtail = new(Plate with { PigtailLoss_Pa = 2 * Psi_Pa }, HeatingValue_J_kg);
    private static readonly TwoStageRegulator Hose = new(Plate with { HoseLoss_Pa = 0.5 * InchOfWater_Pa }, HeatingValue_J_kg);
    private static readonly double Rated_kg_s = Plate.RatedFlow_W / HeatingValue_J_kg;

    private static readonly Gen<(double Delivery_Pa, double Gauge_Pa, double Air_Pa, double Gas_K)> Any =
        Gen.Select(Gen.Double[0, 3000], Gen.Double[0, 400_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310]);

    private static double Flow_kg_s(TwoStageRegulator regulator, double delivery_Pa, double gauge_Pa, double air_Pa, double gas_K)
        => regulator.Flow_kg_s(delivery_Pa, new FeedPressures(air_Pa + gauge_Pa, 0, gas_K), air_Pa);

    [Fact]
    public void A_minimum_inlet_is_that_of_the_plate_and_else_of_the_type()
    {
        Assert.Equal(5 * Psi_Pa, Plate.MinimumInletOf_Pa(changeover: false));
        Assert.Equal(10 * Psi_Pa, Plate.MinimumInletOf_Pa(changeover: true));
        Assert.Equal(12_000, (Plate with { MinimumInlet_Pa = 12_000 }).MinimumInletOf_Pa(changeover: true));
    }

    [Fact]
    public void One_that_shuts_gives_the_same_above_its_minimum_inlet_and_nothing_clearly_below()
        => Any.Sample((delivery_Pa, gauge_Pa, air_Pa, gas_K) =>
        {
            double whole_kg_s = Flow_kg_s(Regulator, delivery_Pa, gauge_Pa, air_Pa, gas_K), shut_kg_s = Flow_kg_s(Shutting, delivery_Pa, gauge_Pa, air_Pa, gas_K);
            if (gauge_Pa > 5.001 * Psi_Pa) Assert.Equal(whole_kg_s, shut_kg_s);
            else if (gauge_Pa < 4.499 * Psi_Pa) Assert.Equal(0, shut_kg_s);
            else Assert.InRange(shut_kg_s, 0, whole_kg_s * (1 + 1e-9));
        }, iter: 3000);

    [Fact]
    public void One_that_shuts_is_fed_by_no_less_than_nine_tenths_of_its_minimum_inlet()
        => Gen.Select(Gen.Double[0.001, 0.9], Gen.Double[1000, 2800], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((part, delivery_Pa, air_Pa, gas_K) =>
        {
            double least_Pa = Shutting.SufficientInlet_Pa(part * Rated_kg_s, delivery_Pa, air_Pa, gas_K), before_Pa = Regulator.SufficientInlet_Pa(part * Rated_kg_s, delivery_Pa, air_Pa, gas_K);
            if (double.IsInfinity(before_Pa)) Assert.True(double.IsInfinity(least_Pa));
            else if (before_Pa - air_Pa > 5 * Psi_Pa) Assert.Equal(1, least_Pa / before_Pa, 1e-9);
            else Assert.InRange(least_Pa - air_Pa, 4.5 * Psi_Pa - 1, 5 * Psi_Pa + 1);
        }, iter: 2000);

    [Fact]
    public void A_pigtail_loses_what_it_is_said_to_at_the_rated_flow_and_inlet()
    {
        double delivery_Pa = Plate.SetPoint_Pa - Plate.Droop_Pa;
        Assert.Equal(1, Flow_kg_s(Pigtail, delivery_Pa, Plate.RatedInlet_Pa + 2 * Psi_Pa, Sea_Pa, RatingGas_K) / Rated_kg_s, 1e-6);
        Assert.True(Flow_kg_s(Pigtail, delivery_Pa, Plate.RatedInlet_Pa, Sea_Pa, RatingGas_K) < 0.99 * Rated_kg_s);
    }

    // Isothermal turbulent flow of a gas in a pipe (Weymouth's form): p1² - p2² goes with the squared flow.
    [Fact]
    public void A_pigtail_needs_the_more_pressure_the_thinner_the_gas_is()
        => Gen.Select(Gen.Double[0.02, 0.9], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((part, air_Pa, gas_K) =>
        {
            double flow_kg_s = part * Rated_kg_s, delivery_Pa = 2000, rated_Pa = Sea_Pa + Plate.RatedInlet_Pa;
            double end_Pa = Regulator.SufficientInlet_Pa(flow_kg_s, delivery_Pa, air_Pa, gas_K);
            if (double.IsInfinity(end_Pa)) return;
            double squared = (Math.Pow(rated_Pa + 2 * Psi_Pa, 2) - rated_Pa * rated_Pa) * part * part * gas_K / RatingGas_K;
            double inlet_Pa = Math.Sqrt(end_Pa * end_Pa + squared);
            Assert.Equal(1, Pigtail.SufficientInlet_Pa(flow_kg_s, delivery_Pa, air_Pa, gas_K) / inlet_Pa, 1e-13);
            Assert.Equal(1, Flow_kg_s(Pigtail, delivery_Pa, inlet_Pa - air_Pa, air_Pa, gas_K) / flow_kg_s, 2e-4);
        }, iter: 2000);

    [Fact]
    public void A_hose_lowers_the_delivery_pressure_with_the_squared_flow()
        => Gen.Select(Gen.Double[0.01, 0.95], Gen.Double[200_000, 900_000], Gen.Double[220, 310]).Sample((part, gauge_Pa, gas_K) =>
        {
            FeedPressures feed = new(Sea_Pa + gauge_Pa, 0, gas_K);
            double plain_Pa = Regulator.Delivery_Pa(part * Rated_kg_s, feed, Sea_Pa), behind_Pa = Hose.Delivery_Pa(part * Rated_kg_s, feed, Sea_Pa);
            if (!double.IsNaN(plain_Pa)) Assert.Equal(plain_Pa - part * part * 0.5 * InchOfWater_Pa, behind_Pa, 1e-6);
        });

    [Fact]
    public void With_losses_regulator_and_appliances_still_balance_at_one_pressure()
    {
        TwoStageRegulator regulator = new(Plate with { PigtailLoss_Pa = 3 * Psi_Pa, HoseLoss_Pa = 1 * InchOfWater_Pa, ShutsBelowMinimum = true }, HeatingValue_J_kg);
        Gen.Select(Gen.Double[500, 200_000], Gen.Double[0.1, 1.2], Gen.Double[220, 300]).Sample((gauge_Pa, part, gas_K) =>
        {
            GasSupply supply = new(regulator, [new GasLoad(part * Rated_kg_s, 10.5 * InchOfWater_Pa)]);
            supply.Set(0, true);
            FeedPressures feed = new(Sea_Pa + gauge_Pa, 0, gas_K);
            SupplyPoint point = supply.At(feed, Sea_Pa);
            double most_kg_s = regulator.Flow_kg_s(10.5 * InchOfWater_Pa, feed, Sea_Pa);
            if (point.IsFull) Assert.True(most_kg_s >= part * Rated_kg_s * (1 - 1e-4));
            else Assert.Equal(regulator.Flow_kg_s(point.Delivery_Pa, feed, Sea_Pa), point.Flow_kg_s, 2e-3 * Rated_kg_s);
        }, iter: 2000);
    }

    [Fact]
    public void Behind_a_hose_flows_what_flows_without_it_at_the_pressure_before_the_hose()
        => Gen.Select(Gen.Double[0, 2900], Gen.Double[3000, 400_000], Gen.Double[220, 310]).Sample((delivery_Pa, gauge_Pa, gas_K) =>
        {
            double flow_kg_s = Flow_kg_s(Hose, delivery_Pa, gauge_Pa, Sea_Pa, gas_K), part = flow_kg_s / Rated_kg_s;
            Assert.Equal(Flow_kg_s(Regulator, delivery_Pa + part * part * 0.5 * InchOfWater_Pa, gauge_Pa, Sea_Pa, gas_K), flow_kg_s, 1e-5 * Rated_kg_s);
            double before_Pa = Regulator.SufficientInlet_Pa(0.5 * Rated_kg_s, 2000 + 0.25 * 0.5 * InchOfWater_Pa, Sea_Pa, gas_K);
            Assert.Equal(1, Hose.SufficientInlet_Pa(0.5 * Rated_kg_s, 2000, Sea_Pa, gas_K) / before_Pa, 1e-9);
        }, iter: 2000);

    [Fact]
    public void A_hose_loses_what_it_is_said_to_at_the_rated_flow_and_a_quarter_at_half_of_it()
    {
        TwoStageRegulator hose = new(Plate with { HoseLoss_Pa = 120 }, HeatingValue_J_kg);
        Assert.Equal(120, hose.HoseLoss_Pa(Rated_kg_s), 1e-9);
        Assert.Equal(30, hose.HoseLoss_Pa(0.5 * Rated_kg_s), 1e-9);
    }

    // A hose so long that what it loses decides whether all is given, and pressures about the one that just suffices.
    [Fact]
    public void A_supply_behind_a_long_hose_stops_giving_all_at_the_inlet_that_just_suffices()
    {
        TwoStageRegulator hose = new(Plate with { HoseLoss_Pa = 700 }, HeatingValue_J_kg);
        for (double part = 0.7; part < 0.95; part += 0.05)
        {
            double demand_kg_s = part * Rated_kg_s, least_Pa = hose.SufficientInlet_Pa(demand_kg_s, 2000, Sea_Pa, 260);
            GasSupply supply = new(hose, [new GasLoad(demand_kg_s, 2000)]);
            supply.Set(0, true);
            for (double over = 1.019; over > 0.97; over -= 0.002)
            {
                supply.At(new FeedPressures(1.03 * least_Pa, 0, 260), Sea_Pa);
                Assert.Equal(over > 1, supply.At(new FeedPressures(over * least_Pa, 0, 260), Sea_Pa).IsFull);
            }
        }
    }

    [Fact]
    public void No_flow_needs_only_the_delivery_pressure()
        => Assert.Equal(Sea_Pa + 2000, Hose.SufficientInlet_Pa(0, 2000, Sea_Pa, 250));

    // What gives all is asked first whether it still does; with hose and pigtail that must be the same answer.
    [Fact]
    public void A_supply_that_gave_all_a_moment_ago_gives_what_a_new_one_does()
    {
        TwoStageRegulator regulator = new(Plate with { PigtailLoss_Pa = 3 * Psi_Pa, HoseLoss_Pa = 2 * InchOfWater_Pa }, HeatingValue_J_kg);
        Gen.Select(Gen.Double[0.3, 0.98], Gen.Double[0.9, 1.04], Gen.Double[220, 300]).Sample((part, over, gas_K) =>
        {
            double demand_kg_s = part * Rated_kg_s, least_Pa = regulator.SufficientInlet_Pa(demand_kg_s, 2000, Sea_Pa, gas_K);
            if (!double.IsFinite(least_Pa)) return;
            GasSupply was = Open(), anew = Open();
            SupplyPoint full = was.At(new FeedPressures(1.03 * least_Pa, 0, gas_K), Sea_Pa);
            Assert.True(full.IsFull);
            FeedPressures feed = new(over * least_Pa, 0, gas_K);
            SupplyPoint now = was.At(feed, Sea_Pa), first = anew.At(feed, Sea_Pa);
            Assert.Equal(first.Flow_kg_s, now.Flow_kg_s, 1e-6 * demand_kg_s);
            if (now.IsFull) Assert.True(regulator.Flow_kg_s(2000, feed, Sea_Pa) >= demand_kg_s * (1 - 1e-4));
            else Assert.Equal(regulator.Flow_kg_s(now.Delivery_Pa, feed, Sea_Pa), now.Flow_kg_s, 1e-4 * demand_kg_s);

            GasSupply Open()
            {
                GasSupply supply = new(regulator, [new GasLoad(demand_kg_s, 2000)]);
                supply.Set(0, true);
                return supply;
            }
        }, iter: 1500);
    }

    [Fact]
    public void A_plate_without_figures_is_that_of_160_000_Btu_an_hour_at_11_inches()
    {
        RegulatorSpecification plate = new();
        Assert.Equal(46_891, plate.RatedFlow_W, 1.0);
        Assert.Equal(206_843, plate.RatedInlet_Pa, 1.0);
        Assert.Equal(2740, plate.SetPoint_Pa, 1.0);
        Assert.Equal(274, plate.Droop_Pa, 0.1);
        Assert.Equal(68_948, plate.Intermediate_Pa, 1.0);
        Assert.Equal(10_342, plate.IntermediateDroop_Pa, 1.0);
    }
}
