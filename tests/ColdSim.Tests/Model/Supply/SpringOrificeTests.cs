using ColdSim.Model.Supply;
using ColdSim.Physics.Flow;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Supply;

/// <summary>One stage alone: where it opens, what it loses before it, where it shuts, and the pressures found from a flow.</summary>
public class SpringOrificeTests
{
    private const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;
    private const double RatingGas_K = 288.15;
    private const double Rated_kg_s = 1e-3;
    private const double Inlet_Pa = 400_000;

    // Wide open up to 40 kPa gauge, shut from 60.
    private static SpringOrifice Stage(double least_Pa = 0, double loss_Pa = 0) => new(50_000, 10_000, Rated_kg_s, Inlet_Pa, Sea_Pa, RatingGas_K, least_Pa, loss_Pa);

    // Weymouth: the fall of the squared pressure goes with the squared flow and the absolute temperature.
    private static double SquaredLoss_Pa2(double loss_Pa, double flow_kg_s, double gas_K)
        => ((Inlet_Pa + loss_Pa) * (Inlet_Pa + loss_Pa) - Inlet_Pa * Inlet_Pa) * Math.Pow(flow_kg_s / Rated_kg_s, 2) * gas_K / RatingGas_K;

    [Fact]
    public void It_passes_its_rated_flow_wide_open_at_sea_level()
    {
        Assert.Equal(Rated_kg_s, Stage().Flow_kg_s(Inlet_Pa, Sea_Pa + 40_000, Sea_Pa, RatingGas_K), 1e-15);

        // Not choked: rated at 200 kPa into 141, which a hole of the same size passes less of than into 100.
        SpringOrifice slow = new(50_000, 10_000, Rated_kg_s, 200_000, Sea_Pa, RatingGas_K);
        Assert.Equal(Rated_kg_s, slow.Flow_kg_s(200_000, Sea_Pa + 40_000, Sea_Pa, RatingGas_K), 1e-15);
        Assert.True(slow.Flow_kg_s(200_000, Sea_Pa, Sea_Pa, RatingGas_K) > 1.02 * Rated_kg_s);
    }

    [Theory]
    [InlineData(1.001, 1)]
    [InlineData(0.975, 0.75)]
    [InlineData(0.95, 0.5)]
    [InlineData(0.925, 0.25)]
    [InlineData(0.899, 0)]
    public void It_shuts_over_the_last_tenth_of_its_least_inlet(double part, double open_frac)
    {
        double inlet_Pa = Sea_Pa + part * 200_000;
        double whole_kg_s = Stage().Flow_kg_s(inlet_Pa, Sea_Pa + 20_000, Sea_Pa, 260);
        Assert.Equal(open_frac * whole_kg_s, Stage(least_Pa: 200_000).Flow_kg_s(inlet_Pa, Sea_Pa + 20_000, Sea_Pa, 260), 1e-12);
    }

    // The end of the pigtail is what the valve feels.
    [Theory]
    [InlineData(10_000)]
    [InlineData(40_000)]
    public void With_a_pigtail_it_shuts_by_the_pressure_that_is_left_at_its_end(double behind_Pa)
    {
        SpringOrifice lossy = Stage(least_Pa: 200_000, loss_Pa: 30_000), plain = Stage(least_Pa: 200_000);
        for (double gauge_Pa = 150_000; gauge_Pa < 260_000; gauge_Pa += 5000)
        {
            double inlet_Pa = Sea_Pa + gauge_Pa, flow_kg_s = lossy.Flow_kg_s(inlet_Pa, Sea_Pa + behind_Pa, Sea_Pa, 260);
            double end_Pa = Math.Sqrt(inlet_Pa * inlet_Pa - SquaredLoss_Pa2(30_000, flow_kg_s, 260));
            Assert.Equal(plain.Flow_kg_s(end_Pa, Sea_Pa + behind_Pa, Sea_Pa, 260), flow_kg_s, 1e-9);
            if (gauge_Pa <= 180_000) Assert.Equal(0, flow_kg_s);
        }
    }

    [Fact]
    public void A_pigtail_costs_squared_pressure_by_the_squared_flow_choked_or_not_and_partly_open()
        => Gen.Select(
            Gen.Double[1_000, 600_000], Gen.Double[0, 59_000], Gen.Double[500, 900_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310])
        .Sample((gauge_Pa, behind_Pa, loss_Pa, air_Pa, gas_K) =>
        {
            double inlet_Pa = air_Pa + gauge_Pa, outlet_Pa = air_Pa + behind_Pa;
            double flow_kg_s = Stage(loss_Pa: loss_Pa).Flow_kg_s(inlet_Pa, outlet_Pa, air_Pa, gas_K);
            if (inlet_Pa <= outlet_Pa)
            {
                Assert.Equal(0, flow_kg_s);
                return;
            }

            // The plain stage falls steeply where hardly any pressure is left, so that the squared pressures are compared there.
            double left_Pa2 = inlet_Pa * inlet_Pa - SquaredLoss_Pa2(loss_Pa, flow_kg_s, gas_K);
            Assert.True(left_Pa2 >= outlet_Pa * outlet_Pa * (1 - 1e-9));
            Assert.Equal(Stage().Flow_kg_s(Math.Sqrt(left_Pa2), outlet_Pa, air_Pa, gas_K), flow_kg_s, 1e-6 * Rated_kg_s);
        }, iter: 3000);

    [Fact]
    public void The_outlet_behind_a_pigtail_is_the_one_behind_what_the_pigtail_leaves()
        => Gen.Select(Gen.Double[0.01, 1.5], Gen.Double[20_000, 600_000], Gen.Double[500, 100_000], Gen.Double[220, 310]).Sample((part, gauge_Pa, loss_Pa, gas_K) =>
        {
            double inlet_Pa = Sea_Pa + gauge_Pa, left_Pa2 = inlet_Pa * inlet_Pa - SquaredLoss_Pa2(loss_Pa, part * Rated_kg_s, gas_K);
            double outlet_Pa = Stage(loss_Pa: loss_Pa).Outlet_Pa(part * Rated_kg_s, inlet_Pa, Sea_Pa, gas_K);
            double plain_Pa = left_Pa2 > 0 ? Stage().Outlet_Pa(part * Rated_kg_s, Math.Sqrt(left_Pa2), Sea_Pa, gas_K) : double.NaN;
            if (double.IsNaN(plain_Pa)) Assert.True(double.IsNaN(outlet_Pa));
            else Assert.Equal(plain_Pa, outlet_Pa, 1e-2);
        }, iter: 3000);

    [Fact]
    public void The_outlet_is_the_pressure_at_which_the_flow_passes_and_none_where_it_never_does()
        => Gen.Select(Gen.Double[0.001, 2], Gen.Double[-20_000, 600_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((part, gauge_Pa, air_Pa, gas_K) =>
        {
            SpringOrifice stage = Stage();
            double flow_kg_s = part * Rated_kg_s, inlet_Pa = air_Pa + gauge_Pa, most_kg_s = stage.Flow_kg_s(inlet_Pa, air_Pa, air_Pa, gas_K);
            double outlet_Pa = stage.Outlet_Pa(flow_kg_s, inlet_Pa, air_Pa, gas_K);
            if (flow_kg_s > most_kg_s * (1 + 1e-9))
            {
                Assert.True(double.IsNaN(outlet_Pa));
                return;
            }

            Assert.InRange(outlet_Pa, 0, 60_000);

            // While it regulates, to a thousandth of the spring's band.
            double less_kg_s = stage.Flow_kg_s(inlet_Pa, air_Pa + outlet_Pa + 25, air_Pa, gas_K), more_kg_s = stage.Flow_kg_s(inlet_Pa, air_Pa + outlet_Pa - 25, air_Pa, gas_K);
            Assert.InRange(flow_kg_s, less_kg_s * (1 - 1e-6), more_kg_s * (1 + 1e-6));
        }, iter: 5000);

    [Fact]
    public void The_least_inlet_is_the_one_at_which_the_flow_passes_pigtail_or_not()
        => Gen.Select(Gen.Double[0.01, 1.5], Gen.Double[0, 55_000], Gen.Bool, Gen.Double[220, 310]).Sample((part, behind_Pa, lossy, gas_K) =>
        {
            SpringOrifice stage = Stage(loss_Pa: lossy ? 20_000 : 0);
            double inlet_Pa = stage.LeastInlet_Pa(part * Rated_kg_s, Sea_Pa + behind_Pa, Sea_Pa, gas_K, 5e6);
            Assert.Equal(part * Rated_kg_s, stage.Flow_kg_s(inlet_Pa, Sea_Pa + behind_Pa, Sea_Pa, gas_K), 2e-5 * Rated_kg_s);
            Assert.Equal(double.PositiveInfinity, stage.LeastInlet_Pa(part * Rated_kg_s, Sea_Pa + 60_000, Sea_Pa, gas_K, 5e6));
        }, iter: 2000);

    // Backwards its spring counts for nothing: the hole is open.
    [Fact]
    public void The_squared_flow_is_that_of_the_flow_and_backwards_that_of_the_open_hole()
        => Gen.Select(Gen.Double[105_000, 900_000], Gen.Double[0, 1], Gen.Double[220, 310]).Sample((inlet_Pa, part, gas_K) =>
        {
            double outlet_Pa = Sea_Pa + part * 80_000, perPressure = 1 / Math.Sqrt(Orifice.GasConstant_J_kgK * gas_K);
            double flow_kg_s = Stage().Flow_kg_s(inlet_Pa, outlet_Pa, Sea_Pa, gas_K), squared = Stage().SquaredFlow(inlet_Pa, outlet_Pa, Sea_Pa, perPressure);
            if (outlet_Pa <= inlet_Pa)
            {
                Assert.Equal(flow_kg_s * flow_kg_s, squared, 1e-13 * Rated_kg_s * Rated_kg_s);
                return;
            }

            double hole_kg_s = Rated_kg_s / Orifice.MassFlux_kg_m2s(Inlet_Pa, RatingGas_K, Sea_Pa + 55_000) * Orifice.MassFlux_kg_m2s(outlet_Pa, gas_K, inlet_Pa);
            Assert.Equal(-hole_kg_s * hole_kg_s, squared, 1e-12 * Rated_kg_s * Rated_kg_s);
        }, iter: 2000);

    [Fact]
    public void Fed_by_one_inlet_it_passes_what_it_passes_at_that_inlet()
        => Gen.Select(Gen.Double[90_000, 900_000], Gen.Double[0, 100_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((inlet_Pa, behind_Pa, air_Pa, gas_K) =>
        {
            FedOrifice fed = Stage().FedBy(inlet_Pa, air_Pa, gas_K);
            Assert.Equal(Stage().Flow_kg_s(inlet_Pa, air_Pa + behind_Pa, air_Pa, gas_K), fed.Flow_kg_s(air_Pa + behind_Pa), 1e-12 * Rated_kg_s);
        }, iter: 2000);

    // Flow and squared loss both go with the squared end pressure: end² (1 + k c²) = inlet², c the flow per end pressure.
    [Fact]
    public void What_passes_at_the_speed_of_sound_behind_a_pigtail_has_a_closed_form()
    {
        for (double loss_Pa = 2000; loss_Pa < 80_000; loss_Pa *= 1.3)
        {
            for (double behind_Pa = 1000; behind_Pa < 59_000; behind_Pa += 1900)
            {
                double inlet_Pa = 500_000 + 3 * behind_Pa, gas_K = 220 + 1e-3 * behind_Pa;
                double open_frac = Math.Min(1, (60_000 - behind_Pa) / 20_000);
                double perPressure = open_frac * Rated_kg_s / Inlet_Pa * Math.Sqrt(RatingGas_K / gas_K);
                double flow_kg_s = perPressure * inlet_Pa / Math.Sqrt(1 + SquaredLoss_Pa2(loss_Pa, perPressure, gas_K));
                Assert.Equal(1, Stage(loss_Pa: loss_Pa).Flow_kg_s(inlet_Pa, Sea_Pa + behind_Pa, Sea_Pa, gas_K) / flow_kg_s, 1e-14);
            }
        }
    }

    [Fact]
    public void Wide_open_and_slower_than_sound_the_outlet_is_found_to_many_digits()
        => Gen.Select(Gen.Double[0, 39_900], Gen.Double[0.7, 0.999], Gen.Double[65_000, 104_000], Gen.Double[220, 310])
        .Sample((behind_Pa, ratio, air_Pa, gas_K) =>
        {
            double inlet_Pa = (air_Pa + behind_Pa) / ratio, flow_kg_s = Stage().Flow_kg_s(inlet_Pa, air_Pa + behind_Pa, air_Pa, gas_K);
            Assert.Equal(behind_Pa, Stage().Outlet_Pa(flow_kg_s, inlet_Pa, air_Pa, gas_K), 1e-5);
        }, iter: 2000);

    // An inlet about lock-up: the orifice's flow falls to nothing within the spring's band.
    [Fact]
    public void The_outlet_is_found_also_where_the_inlet_is_hardly_above_it()
    {
        for (double gauge_Pa = 40_000; gauge_Pa < 64_000; gauge_Pa += 250)
        {
            for (double part = 0.002; part < 1; part *= 1.15)
            {
                SpringOrifice stage = Stage();
                double inlet_Pa = Sea_Pa + gauge_Pa, flow_kg_s = part * stage.Flow_kg_s(inlet_Pa, Sea_Pa, Sea_Pa, 260);
                double outlet_Pa = Sea_Pa + stage.Outlet_Pa(flow_kg_s, inlet_Pa, Sea_Pa, 260);
                double less_kg_s = stage.Flow_kg_s(inlet_Pa, outlet_Pa + 25, Sea_Pa, 260);
                double more_kg_s = stage.Flow_kg_s(inlet_Pa, outlet_Pa - 25, Sea_Pa, 260);
                Assert.InRange(flow_kg_s, less_kg_s, more_kg_s);
            }
        }
    }

    [Fact]
    public void The_most_that_it_passes_has_an_outlet_and_a_least_inlet()
    {
        double most_kg_s = Stage().Flow_kg_s(Inlet_Pa, Sea_Pa, Sea_Pa, 260);
        Assert.InRange(Stage().Outlet_Pa(most_kg_s, Inlet_Pa, Sea_Pa, 260), 0, 40_000);
        Assert.Equal(Inlet_Pa, Stage().LeastInlet_Pa(most_kg_s, Sea_Pa, Sea_Pa, 260, Inlet_Pa));
    }
}
