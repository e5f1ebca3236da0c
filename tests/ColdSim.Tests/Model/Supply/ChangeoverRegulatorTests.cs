using ColdSim.Model.Numerics;
using ColdSim.Model.Supply;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Supply;

/// <summary>The two first stages of an automatic changeover, and what both give to one second stage.</summary>
public class ChangeoverRegulatorTests
{
    private const double Psi_Pa = ColdSim.Physics.Units.ConversionFactors.Psi_Pa;
    private const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;
    private const double HeatingValue_J_kg = 50.33e6;
    private const double RatingGas_K = 288.15;

    // Service shuts at 79 and is wide open at 59 kPa gauge, the reserve at 55 and 45.
    private static readonly SpringOrifice Service = new(69_000, 10_000, 1e-3, 308_000, Sea_Pa, RatingGas_K);
    private static readonly SpringOrifice Reserve = Service.WithSpring(50_000, 5000);
    private static readonly FirstStages Both = new(Service, Reserve);

    private static readonly RegulatorSpecification Plate = new();
    private static readonly double Rated_kg_s = Plate.RatedFlow_W / HeatingValue_J_kg;

    // The reserve is set three psi below the service side.
    private static readonly TwoStageRegulator Changeover = new(Plate, HeatingValue_J_kg, (7 * Psi_Pa, 1.5 * Psi_Pa));

    // Both sides set equally: by symmetry each gives half where their pressures are equal.
    private static readonly TwoStageRegulator Twins = new(Plate, HeatingValue_J_kg, (Plate.Intermediate_Pa, Plate.IntermediateDroop_Pa));

    private static readonly Gen<(FeedPressures Feed, double Air_Pa)> Any =
        Gen.Select(Gen.Double[-5000, 500_000], Gen.Double[-5000, 500_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310])
            .Select((service_Pa, reserve_Pa, air_Pa, gas_K) => (new FeedPressures(air_Pa + service_Pa, air_Pa + reserve_Pa, gas_K), air_Pa));

    private static GasSupply Feeding(TwoStageRegulator regulator, double demand_kg_s, double full_Pa = 2600)
    {
        GasSupply supply = new(regulator, [new GasLoad(demand_kg_s, full_Pa)]);
        supply.Set(0, true);
        return supply;
    }

    [Fact]
    public void Another_spring_moves_the_band_of_an_orifice_and_leaves_its_size()
    {
        SpringOrifice other = Service.WithSpring(50_000, 5000);
        Assert.Equal(55_000, other.LockUp_Pa);
        double wideOpen_kg_s = Service.Flow_kg_s(600_000, Sea_Pa + 40_000, Sea_Pa, 260);
        Assert.Equal(wideOpen_kg_s, other.Flow_kg_s(600_000, Sea_Pa + 44_000, Sea_Pa, 260), 1e-15);
        Assert.Equal(0.5 * wideOpen_kg_s, other.Flow_kg_s(600_000, Sea_Pa + 50_000, Sea_Pa, 260), 1e-12);
        Assert.Equal(0, other.Flow_kg_s(600_000, Sea_Pa + 55_000, Sea_Pa, 260));
    }

    [Fact]
    public void Another_spring_leaves_what_the_pigtail_loses_and_the_inlet_at_which_it_shuts()
    {
        SpringOrifice lossy = new(69_000, 10_000, 1e-3, 308_000, Sea_Pa, RatingGas_K, least_Pa: 30_000, loss_Pa: 20_000);
        SpringOrifice other = lossy.WithSpring(50_000, 5000);
        Assert.Equal(lossy.Flow_kg_s(500_000, Sea_Pa + 10_000, Sea_Pa, 260), other.Flow_kg_s(500_000, Sea_Pa + 10_000, Sea_Pa, 260));
        Assert.Equal(0, other.Flow_kg_s(Sea_Pa + 26_000, Sea_Pa + 10_000, Sea_Pa, 260));
        Assert.True(other.Flow_kg_s(Sea_Pa + 40_000, Sea_Pa + 10_000, Sea_Pa, 260) > 0);
    }

    [Fact]
    public void Both_sides_pass_their_sum_and_a_reserve_without_pressure_passes_nothing()
        => Gen.Select(Any, Gen.Double[0, 90_000]).Sample((any, between_Pa) =>
        {
            (FeedPressures feed, double air_Pa) = any;
            double into_Pa = air_Pa + between_Pa, service_kg_s = Service.Flow_kg_s(feed.Service_Pa, into_Pa, air_Pa, feed.Gas_K);
            double reserve_kg_s = Reserve.Flow_kg_s(feed.Reserve_Pa, into_Pa, air_Pa, feed.Gas_K);
            Assert.Equal(service_kg_s + reserve_kg_s, Both.Flow_kg_s(feed, into_Pa, air_Pa), 1e-18);
            Assert.Equal(reserve_kg_s, Both.Reserve_kg_s(feed, into_Pa, air_Pa));
            Assert.Equal(service_kg_s, Both.Flow_kg_s(feed with { Reserve_Pa = 0 }, into_Pa, air_Pa));
            Assert.Equal(0, new FirstStages(Service, null).Reserve_kg_s(feed, into_Pa, air_Pa));
        }, iter: 2000);

    [Fact]
    public void No_gas_flows_at_the_highest_pressure_between_the_stages_and_some_just_below()
        => Any.Sample((feed, air_Pa) =>
        {
            double highest_Pa = Both.Highest_Pa(feed, air_Pa);
            Assert.Equal(0, Both.Flow_kg_s(feed, highest_Pa, air_Pa), 1e-15);
            if (Math.Max(feed.Service_Pa, feed.Reserve_Pa) > air_Pa) Assert.True(Both.Flow_kg_s(feed, highest_Pa - 1, air_Pa) > 0);
        }, iter: 3000);

    [Fact]
    public void The_reserve_lifts_the_highest_pressure_no_further_than_its_own_lock_up()
    {
        FeedPressures weak = new(Sea_Pa + 20_000, Sea_Pa + 300_000, 250);
        Assert.Equal(Sea_Pa + 55_000, Both.Highest_Pa(weak, Sea_Pa), 1e-9);
        Assert.Equal(Sea_Pa + 20_000, Both.Highest_Pa(weak with { Reserve_Pa = 0 }, Sea_Pa), 1e-9);
        Assert.Equal(Sea_Pa + 79_000, Both.Highest_Pa(weak with { Service_Pa = Sea_Pa + 200_000 }, Sea_Pa), 1e-9);
        Assert.Equal(Sea_Pa + 30_000, Both.Highest_Pa(weak with { Reserve_Pa = Sea_Pa + 30_000 }, Sea_Pa), 1e-9);
        Assert.Equal((55_000.0, 0.0), (Both.ReserveShutAbove_Pa, new FirstStages(Service, null).ReserveShutAbove_Pa));
    }

    // The spring of a side that regulates is followed to a thousandth of its band; where both give, the root is found to many digits.
    [Fact]
    public void The_pressure_between_the_stages_is_the_inverse_of_the_flow()
        => Gen.Select(Any, Gen.Double[0.001, 0.999], Gen.Bool).Sample((any, part, followed) =>
        {
            (FeedPressures feed, double air_Pa) = any;
            double most_kg_s = Both.Flow_kg_s(feed, air_Pa, air_Pa), flow_kg_s = part * most_kg_s;

            // Where the feed is above the air by its last digits only, no number lies between the two.
            if (most_kg_s <= 1e-9) return;
            double outlet_Pa = Both.Outlet_Pa(flow_kg_s, feed, air_Pa, followed ? new FollowedRoot() : null), slack_Pa = 2e-3 * 20_000;
            double low_kg_s = Both.Flow_kg_s(feed, air_Pa + outlet_Pa + slack_Pa, air_Pa), high_kg_s = Both.Flow_kg_s(feed, air_Pa + outlet_Pa - slack_Pa, air_Pa);
            Assert.InRange(flow_kg_s, low_kg_s * (1 - 1e-6), high_kg_s * (1 + 1e-6));
            if (outlet_Pa < 54_900 && feed.Reserve_Pa > air_Pa + 1000) Assert.Equal(1, Both.Flow_kg_s(feed, air_Pa + outlet_Pa, air_Pa) / flow_kg_s, 1e-3);
        }, iter: 5000);

    [Fact]
    public void More_than_both_sides_pass_has_no_pressure_between_the_stages()
        => Any.Sample((feed, air_Pa) =>
        {
            double more_kg_s = 1.001 * Both.Flow_kg_s(feed, air_Pa, air_Pa) + 1e-9;
            Assert.True(double.IsNaN(Both.Outlet_Pa(more_kg_s, feed, air_Pa)));
            Assert.True(double.IsNaN(Both.Outlet_Pa(more_kg_s, feed, air_Pa, new FollowedRoot())));
        }, iter: 2000);

    [Fact]
    public void A_service_side_that_passes_a_flow_above_the_reserves_lock_up_passes_it_alone()
        => Gen.Select(Gen.Double[0.01, 0.9], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((part, air_Pa, gas_K) =>
        {
            double flow_kg_s = part * 1e-3, into_Pa = air_Pa + Both.ReserveShutAbove_Pa;
            double least_Pa = Both.ServiceInlet_Pa(flow_kg_s, into_Pa, air_Pa, gas_K);
            Assert.Equal(1, Service.Flow_kg_s(least_Pa, into_Pa, air_Pa, gas_K) / flow_kg_s, 1e-6);
            FeedPressures enough = new(1.001 * least_Pa, air_Pa + 400_000, gas_K), little = enough with { Service_Pa = 0.999 * least_Pa };
            Assert.Equal(0, Both.Reserve_kg_s(enough, air_Pa + Both.Outlet_Pa(flow_kg_s, enough, air_Pa), air_Pa));
            Assert.True(Both.Reserve_kg_s(little, air_Pa + Both.Outlet_Pa(flow_kg_s, little, air_Pa), air_Pa) > 0);
        });

    [Fact]
    public void Sides_that_are_set_equally_and_have_one_pressure_give_half_each()
        => Gen.Select(Gen.Double[0.01, 1.3], Gen.Double[20_000, 400_000], Gen.Double[220, 310]).Sample((part, gauge_Pa, gas_K) =>
        {
            FeedPressures feed = new(Sea_Pa + gauge_Pa, Sea_Pa + gauge_Pa, gas_K);
            double flow_kg_s = Math.Min(part * Rated_kg_s, 0.98 * Twins.Flow_kg_s(0, feed, Sea_Pa));
            Assert.Equal(0.5, Twins.Reserve_kg_s(flow_kg_s, feed, Sea_Pa) / flow_kg_s, 1e-5);
            GasSupply supply = Feeding(Twins, part * Rated_kg_s);
            SupplyPoint first = supply.At(feed, Sea_Pa), second = supply.At(feed, Sea_Pa);
            if (gauge_Pa > 1.5 * (10 * Psi_Pa + 1.5 * Psi_Pa) && first.IsFull && first.Reserve_kg_s == 0) return;
            Assert.Equal(0.5, first.Reserve_kg_s / first.Flow_kg_s, 1e-5);
            Assert.Equal(0.5, second.Reserve_kg_s / second.Flow_kg_s, 1e-5);
            Assert.Equal(first.IsFull, second.IsFull);
        }, iter: 2000);

    [Fact]
    public void Two_sides_are_one_of_twice_the_orifice()
        => Gen.Select(Gen.Double[500, 2800], Gen.Double[5000, 60_000], Gen.Double[220, 310]).Sample((delivery_Pa, gauge_Pa, gas_K) =>
        {
            // Wide open both stages: what one of twice the size passes at a pressure, two pass too.
            SpringOrifice twice = new(69_000, 10_000, 2e-3, 308_000, Sea_Pa, RatingGas_K);
            FirstStages pair = new(Service, Service);
            FeedPressures feed = new(Sea_Pa + gauge_Pa, Sea_Pa + gauge_Pa, gas_K);
            Assert.Equal(1, pair.Flow_kg_s(feed, Sea_Pa + delivery_Pa, Sea_Pa) / twice.Flow_kg_s(feed.Service_Pa, Sea_Pa + delivery_Pa, Sea_Pa, gas_K), 1e-12);
        });

    [Fact]
    public void Without_a_reserve_or_a_flow_the_reserve_gives_nothing()
    {
        TwoStageRegulator one = new(Plate, HeatingValue_J_kg);
        FeedPressures sagging = new(Sea_Pa + 5 * Psi_Pa, Sea_Pa + 60 * Psi_Pa, 250);
        Assert.Equal(0, one.Reserve_kg_s(1e-4, sagging, Sea_Pa));
        Assert.Equal(0, Changeover.Reserve_kg_s(1e-4, sagging with { Reserve_Pa = 0 }, Sea_Pa));
        Assert.Equal(0, Changeover.Reserve_kg_s(0, sagging, Sea_Pa));
        Assert.Equal(0, Changeover.Reserve_kg_s(1, sagging, Sea_Pa));
        Assert.InRange(Changeover.Reserve_kg_s(1e-4, sagging, Sea_Pa), 1e-6, 1e-4);
    }

    [Fact]
    public void Below_the_inlet_that_suffices_alone_the_reserve_helps_and_above_it_does_not()
        => Gen.Select(Gen.Double[0.02, 0.8], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((part, air_Pa, gas_K) =>
        {
            double flow_kg_s = part * Rated_kg_s, alone_Pa = Changeover.SufficientAlone_Pa(flow_kg_s, 2000, air_Pa, gas_K);
            double ever_Pa = Changeover.SufficientInlet_Pa(flow_kg_s, 2000, air_Pa, gas_K);
            if (!double.IsFinite(alone_Pa)) return;
            Assert.True(alone_Pa >= ever_Pa);
            FeedPressures above = new(alone_Pa + 100, air_Pa + 60 * Psi_Pa, gas_K), below = above with { Service_Pa = 0.98 * alone_Pa };
            Assert.Equal(0, Changeover.Reserve_kg_s(flow_kg_s, above, air_Pa));

            // Near its limit the second stage needs more pressure than the reserve gives; only below that the reserve opens.
            if (alone_Pa > ever_Pa) Assert.True(Changeover.Reserve_kg_s(flow_kg_s, below, air_Pa) > 0);
        }, iter: 1000);

    [Fact]
    public void What_the_service_side_gives_and_the_reserve_gives_is_what_flows_the_second_time_too()
        => Gen.Select(Gen.Double[0.02, 1.5], Any).Sample((part, any) =>
        {
            (FeedPressures feed, double air_Pa) = any;

            // A feed that is above the air by its last digits only gives as many digits of flow.
            if (Math.Abs(Math.Max(feed.Service_Pa, feed.Reserve_Pa) - air_Pa) < 1e-3) return;
            GasSupply supply = Feeding(Changeover, part * Rated_kg_s);
            SupplyPoint first = supply.At(feed, air_Pa), again = supply.At(feed, air_Pa);
            Assert.Equal(first.IsFull, again.IsFull);
            Assert.Equal(first.Flow_kg_s, again.Flow_kg_s, 1e-8 * supply.Demand_kg_s);
            Assert.Equal(first.Reserve_kg_s, again.Reserve_kg_s, 1e-6 * supply.Demand_kg_s);
            Assert.InRange(first.Reserve_kg_s, 0, first.Flow_kg_s);
            if (first.IsFull) Assert.Equal(first.Reserve_kg_s, Changeover.Reserve_kg_s(first.Flow_kg_s, feed, air_Pa), 1e-6 * supply.Demand_kg_s);
            else if (first.Flow_kg_s > 0) Assert.Equal(Changeover.Flow_kg_s(first.Delivery_Pa, feed, air_Pa), first.Flow_kg_s, 1e-5 * supply.Demand_kg_s);
        }, iter: 4000);

    // By the law of a hole: a service side without pressure leaves all to the reserve, and one that has both wide open divides by their holes.
    [Fact]
    public void A_starved_pair_takes_from_the_side_that_has_pressure()
    {
        GasSupply supply = Feeding(Changeover, 2 * Rated_kg_s);
        SupplyPoint reserveOnly = supply.At(new FeedPressures(Sea_Pa - 3000, Sea_Pa + 2 * Psi_Pa, 240), Sea_Pa);
        Assert.False(reserveOnly.IsFull);
        Assert.True(reserveOnly.Flow_kg_s > 0);
        Assert.Equal(1, reserveOnly.Reserve_kg_s / reserveOnly.Flow_kg_s, 1e-9);
        SupplyPoint serviceOnly = supply.At(new FeedPressures(Sea_Pa + 2 * Psi_Pa, Sea_Pa - 3000, 240), Sea_Pa);
        Assert.Equal(reserveOnly.Flow_kg_s, serviceOnly.Flow_kg_s, 1e-9);
        Assert.Equal(0, serviceOnly.Reserve_kg_s);
        SupplyPoint nothing = supply.At(new FeedPressures(Sea_Pa - 3000, Sea_Pa - 2000, 240), Sea_Pa);
        Assert.Equal((0.0, 0.0, 0.0), (nothing.Flow_kg_s, nothing.Reserve_kg_s, nothing.Delivery_Pa));
    }

    // Halved until numbers are no finer.
    private static double BetweenByHalving_Pa(in FirstStages stages, double flow_kg_s, in FeedPressures feed, double air_Pa)
    {
        double low_Pa = air_Pa, high_Pa = stages.Highest_Pa(feed, air_Pa);
        for (int i = 0; i < 80; i++)
        {
            double middle_Pa = 0.5 * (low_Pa + high_Pa);
            if (stages.Flow_kg_s(feed, middle_Pa, air_Pa) > flow_kg_s) low_Pa = middle_Pa;
            else high_Pa = middle_Pa;
        }

        return low_Pa;
    }

    [Fact]
    public void A_reserve_that_gives_nothing_leaves_the_pressure_between_the_stages_as_it_is()
        => Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[1000, 500_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310])
        .Sample((part, gauge_Pa, air_Pa, gas_K) =>
        {
            FirstStages alone = new(Service, null);
            FeedPressures feed = new(air_Pa + gauge_Pa, 0, gas_K);
            double flow_kg_s = part * alone.Flow_kg_s(feed, air_Pa, air_Pa), alone_Pa = alone.Outlet_Pa(flow_kg_s, feed, air_Pa);
            foreach (double reserve_Pa in (double[])[0, air_Pa - 2000, air_Pa])
                Assert.Equal(alone_Pa, Both.Outlet_Pa(flow_kg_s, feed with { Reserve_Pa = reserve_Pa }, air_Pa));

            // Up to the most that the service side passes at the reserve's lock-up the reserve is shut.
            double most_kg_s = Service.Flow_kg_s(feed.Service_Pa, air_Pa + Both.ReserveShutAbove_Pa, air_Pa, gas_K);
            if (most_kg_s <= 0) return;
            FeedPressures strong = feed with { Reserve_Pa = air_Pa + 300_000 };
            foreach (double shut_kg_s in (double[])[part * most_kg_s, most_kg_s])
                Assert.Equal(alone.Outlet_Pa(shut_kg_s, feed, air_Pa), Both.Outlet_Pa(shut_kg_s, strong, air_Pa));
        }, iter: 1000);

    [Fact]
    public void The_most_that_both_sides_pass_goes_into_air_pressure()
    {
        FeedPressures weak = new(Sea_Pa + 20_000, Sea_Pa + 30_000, 250);
        Assert.Equal(0, Both.Outlet_Pa(Both.Flow_kg_s(weak, Sea_Pa, Sea_Pa), weak, Sea_Pa));
        Assert.Equal(0, Both.Outlet_Pa(Both.Flow_kg_s(weak, Sea_Pa, Sea_Pa), weak, Sea_Pa, new FollowedRoot()));
    }

    [Fact]
    public void Where_both_sides_give_the_pressure_between_them_is_that_of_plain_halving()
        => Gen.Select(Gen.Double[1000, 54_000], Gen.Double[60_000, 400_000], Gen.Double[0.02, 0.98], Gen.Double[220, 310])
        .Sample((service_Pa, reserve_Pa, part, gas_K) =>
        {
            FeedPressures feed = new(Sea_Pa + service_Pa, Sea_Pa + reserve_Pa, gas_K);
            double flow_kg_s = part * Both.Flow_kg_s(feed, Sea_Pa + 44_000, Sea_Pa);
            double halved_Pa = BetweenByHalving_Pa(Both, flow_kg_s, feed, Sea_Pa) - Sea_Pa;
            Assert.Equal(halved_Pa, Both.Outlet_Pa(flow_kg_s, feed, Sea_Pa), 1e-4);

            // Above the service side's own pressure the reserve gives alone, and its spring is followed without a root.
            Assert.Equal(halved_Pa, Both.Outlet_Pa(flow_kg_s, feed, Sea_Pa, new FollowedRoot()), halved_Pa < service_Pa ? 1e-8 : 1e-6);
        }, iter: 1000);

    [Fact]
    public void What_the_reserve_adds_to_a_full_supply_is_what_plain_halving_gives()
        => Gen.Select(Gen.Double[0.05, 0.7], Gen.Double[2000, 60_000], Gen.Double[100_000, 400_000], Gen.Double[220, 310])
        .Sample((part, service_Pa, reserve_Pa, gas_K) =>
        {
            double rated_Pa = Sea_Pa + Plate.RatedInlet_Pa;
            SpringOrifice service = new(Plate.Intermediate_Pa, Plate.IntermediateDroop_Pa, Rated_kg_s, rated_Pa, Sea_Pa, RatingGas_K);
            FirstStages stages = new(service, service.WithSpring(7 * Psi_Pa, 1.5 * Psi_Pa));
            FeedPressures feed = new(Sea_Pa + service_Pa, Sea_Pa + reserve_Pa, gas_K);
            GasSupply supply = Feeding(Changeover, part * Rated_kg_s, 2000);
            supply.At(feed, Sea_Pa);
            SupplyPoint again = supply.At(feed, Sea_Pa);
            if (!again.IsFull || again.Reserve_kg_s <= 0) return;
            double halved_Pa = BetweenByHalving_Pa(stages, supply.Demand_kg_s, feed, Sea_Pa);
            Assert.Equal(stages.Reserve_kg_s(feed, halved_Pa, Sea_Pa), again.Reserve_kg_s, 1e-11 * supply.Demand_kg_s);
        }, iter: 1000);
}
