using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Supply;
using ColdSim.Physics.MoistAir;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Supply;

public class GasSupplyTests
{
    private const double Sea_Pa = StandardAtmosphere.SeaLevel_Pa;
    private const double HeatingValue_J_kg = 50.33e6;

    private static readonly RegulatorSpecification Plate = new();
    private static readonly TwoStageRegulator Regulator = new(Plate, HeatingValue_J_kg);

    private static readonly Gen<GasLoad[]> Loads =
        Gen.Select(Gen.Double[0.3e-5, 4e-4], Gen.Double[1000, 2700]).Select((flow, full_Pa) => new GasLoad(flow, full_Pa)).Array[1, 4];

    private static GasSupply Open(params GasLoad[] loads)
    {
        GasSupply supply = new(Regulator, loads);
        for (int i = 0; i < loads.Length; i++) supply.Set(i, true);
        return supply;
    }

    [Fact]
    public void An_appliance_takes_by_the_square_root_of_pressure_up_to_its_full_gas()
    {
        GasLoad load = new(1e-4, 2400);
        Assert.Equal(0, load.Satisfied_frac(0));
        Assert.Equal(0, load.Satisfied_frac(-5));
        Assert.Equal(0.5, load.Satisfied_frac(600), 1e-12);
        Assert.Equal(1, load.Satisfied_frac(2400));
        Assert.Equal(1, load.Satisfied_frac(3000));
    }

    [Fact]
    public void Flow_balances_regulator_and_appliances()
        => Gen.Select(Loads, Gen.Double[60_000, 600_000], Gen.Double[65_000, 104_000], Gen.Double[220, 310]).Sample((loads, cylinder_Pa, air_Pa, gas_K) =>
        {
            GasSupply supply = Open(loads);
            SupplyPoint point = supply.At(cylinder_Pa, air_Pa, gas_K);
            double slack = 1e-6 * supply.Demand_kg_s;
            Assert.Equal(point.Flow_kg_s, Enumerable.Range(0, loads.Length).Sum(i => supply.Taken_kg_s(i, point)), slack);
            double highestFull_Pa = loads.Max(l => l.FullPressure_Pa);
            if (point.IsFull)
            {
                Assert.Equal(supply.Demand_kg_s, point.Flow_kg_s, 1e-15);
                Assert.True(Regulator.Flow_kg_s(highestFull_Pa, cylinder_Pa, air_Pa, gas_K) >= supply.Demand_kg_s - slack);
                Assert.True(supply.Delivery_Pa(point, cylinder_Pa, air_Pa, gas_K) >= highestFull_Pa - 2);
            }
            else
            {
                Assert.InRange(point.Delivery_Pa, 0, highestFull_Pa);
                Assert.Equal(point.Flow_kg_s, Regulator.Flow_kg_s(point.Delivery_Pa, cylinder_Pa, air_Pa, gas_K), slack);
            }
        }, iter: 10_000);

    [Fact]
    public void Cached_solution_stays_correct_while_gas_and_air_drift()
        => Gen.Select(Loads, Gen.Double[90_000, 400_000], Gen.Double[-60, 60], Gen.Double[-3000, 3000]).Sample((loads, cylinder_Pa, drift_K, drift_Pa) =>
        {
            GasSupply kept = Open(loads);
            kept.At(cylinder_Pa, 90_000, 260);
            double gas_K = 260 + drift_K, air_Pa = 90_000 + drift_Pa;
            SupplyPoint now = kept.At(cylinder_Pa, air_Pa, gas_K), anew = Open(loads).At(cylinder_Pa, air_Pa, gas_K);
            return Math.Abs(now.Flow_kg_s - anew.Flow_kg_s) <= 1e-6 * kept.Demand_kg_s;
        }, iter: 5000);

    [Fact]
    public void More_cylinder_pressure_never_gives_any_appliance_less()
        => Gen.Select(Loads, Gen.Double[90_000, 400_000], Gen.Double[0, 0.2], Gen.Double[65_000, 104_000]).Sample((loads, cylinder_Pa, more, air_Pa) =>
        {
            GasSupply supply = Open(loads);
            SupplyPoint low = supply.At(cylinder_Pa, air_Pa, 250), high = supply.At(cylinder_Pa * (1 + more), air_Pa, 250);
            return Enumerable.Range(0, loads.Length).All(i => supply.Taken_kg_s(i, high) >= supply.Taken_kg_s(i, low) - 1e-6 * supply.Demand_kg_s);
        }, iter: 5000);

    [Fact]
    public void The_pressure_at_which_appliances_take_a_flow_is_the_inverse_of_what_they_take()
        => Gen.Select(Loads, Gen.Double[0, 1]).Sample((loads, part) =>
        {
            GasSupply supply = Open(loads);
            double flow_kg_s = part * supply.Demand_kg_s;
            double delivery_Pa = supply.DeliveryAtFlow_Pa(flow_kg_s);
            return Math.Abs(loads.Sum(l => l.Full_kg_s * l.Satisfied_frac(delivery_Pa)) - flow_kg_s) <= 1e-12 * supply.Demand_kg_s;
        }, iter: 5000);

    [Fact]
    public void Below_air_pressure_nothing_flows_and_a_shut_valve_takes_nothing()
    {
        GasSupply supply = Open(new GasLoad(1e-4, 2600), new GasLoad(1e-5, 2600));
        SupplyPoint none = supply.At(95_000, Sea_Pa, 230);
        Assert.Equal(0, none.Flow_kg_s);
        Assert.Equal(0, supply.LowestSatisfied_frac(none));
        supply.Set(0, false);
        Assert.False(supply.IsOpen(0));
        SupplyPoint point = supply.At(500_000, Sea_Pa, 260);
        Assert.Equal(0, supply.Taken_kg_s(0, point));
        Assert.Equal(1e-5, point.Flow_kg_s);
        supply.Set(1, false);
        Assert.Equal(Regulator.LockUp_Pa, supply.Delivery_Pa(supply.At(500_000, Sea_Pa, 260), 500_000, Sea_Pa, 260));
    }

    [Fact]
    public void Opening_one_more_appliance_never_gives_the_others_more()
        => Gen.Select(Loads, Gen.Double[100_000, 300_000]).Sample((loads, cylinder_Pa) =>
        {
            GasSupply all = Open(loads), fewer = Open(loads);
            fewer.Set(loads.Length - 1, false);
            SupplyPoint a = all.At(cylinder_Pa, Sea_Pa, 250), f = fewer.At(cylinder_Pa, Sea_Pa, 250);
            return Enumerable.Range(0, loads.Length - 1).All(i => all.Taken_kg_s(i, a) <= fewer.Taken_kg_s(i, f) + 1e-6 * all.Demand_kg_s);
        }, iter: 3000);

    [Fact]
    public void A_flow_at_the_sufficient_inlet_changes_without_a_jump()
        => Gen.Select(Loads, Gen.Double[65_000, 104_000]).Sample((loads, air_Pa) =>
        {
            GasSupply supply = Open(loads);
            double least_Pa = Regulator.SufficientInlet_Pa(supply.Demand_kg_s, loads.Max(l => l.FullPressure_Pa), air_Pa, 250);
            if (double.IsInfinity(least_Pa)) return;
            Assert.Equal(1, supply.At(least_Pa - 2, air_Pa, 250).Flow_kg_s / supply.Demand_kg_s, 1e-3);
            Assert.True(supply.At(least_Pa + 5, air_Pa, 250).IsFull);
        }, iter: 3000);

    [Fact]
    public void Solving_allocates_nothing()
    {
        GasSupply supply = Open(new GasLoad(1.7e-4, 2600), new GasLoad(1e-5, 2400));

        // What is called for the first time may be prepared at the thread's expense, so short and full supply are both solved once before.
        double sum = Solved(110_000) + Solved(190_000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
            sum += Solved(95_000 + 100.0 * i);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.False(sum == 0);

        double Solved(double cylinder_Pa) => supply.Delivery_Pa(supply.At(cylinder_Pa, Sea_Pa, 232), cylinder_Pa, Sea_Pa, 232)
            + Regulator.Flow_kg_s(2000, cylinder_Pa, Sea_Pa, 232) + Regulator.SufficientInlet_Pa(1e-4, 2000, Sea_Pa, 232)
            + Regulator.Delivery_Pa(1e-4, cylinder_Pa, Sea_Pa, 232);
    }

    [Fact]
    public void A_draw_burns_in_its_hours_goes_out_at_low_pressure_and_is_tried_again_after_a_minute()
    {
        ConstantDraw draw = new() { Name = "refrigerator", Input_W = 400 };
        ApplianceControl control = new(draw, hookup: false);
        Assert.False(control.ValveOpen);
        control.SetClock(0);
        Assert.True(control.ValveOpen);
        Assert.False(control.Update(draw.MinimumPressure_Pa, 10));
        Assert.True(control.Update(draw.MinimumPressure_Pa - 1, 10));
        Assert.True(!control.ValveOpen && control.WantsGas);
        Assert.Equal(70, control.RetryAt_s);
        Assert.False(control.Update(0, 69.9));
        Assert.True(control.Update(0, 70));
        Assert.True(control.ValveOpen);
    }

    [Fact]
    public void Supply_after_many_valve_changes_equals_a_new_one()
        => Gen.Select(Loads, Gen.Select(Gen.Int[0, 3], Gen.Bool, Gen.Double[85_500, 140_000], Gen.Double[215, 300]).Array[1, 60]).Sample((loads, moves) =>
        {
            GasSupply moved = new(Regulator, loads);
            foreach ((int load, bool open, double cylinder_Pa, double gas_K) in moves)
            {
                moved.Set(load % loads.Length, open);
                GasSupply anew = new(Regulator, loads);
                for (int i = 0; i < loads.Length; i++) anew.Set(i, moved.IsOpen(i));
                SupplyPoint a = moved.At(cylinder_Pa, 85_000, gas_K), b = anew.At(cylinder_Pa, 85_000, gas_K);
                Assert.Equal(b.IsFull, a.IsFull);

                // The root is followed from the last one, so that the last digits of the pressures may differ. Flow goes with the root of the
                // delivery pressure, so where that is all but nothing its last digits are much of the flow.
                const double Pressure_Pa = 1e-11 * 140_000;
                Assert.Equal(b.Flow_kg_s, a.Flow_kg_s, b.IsFull ? 0 : b.Flow_kg_s * Math.Min(1, Pressure_Pa / b.Delivery_Pa));
                if (!b.IsFull) Assert.Equal(b.Delivery_Pa, a.Delivery_Pa, Pressure_Pa);
            }
        }, iter: 2000);

    [Fact]
    public void Demand_that_changes_while_its_valve_is_open_is_solved_again()
    {
        GasSupply supply = Open(new GasLoad(1e-5, 2400));
        Assert.True(supply.At(95_000, 85_000, 250).IsFull);
        supply.SetFull(0, 4e-4);
        Assert.Equal(Open(new GasLoad(4e-4, 2400)).At(95_000, 85_000, 250), supply.At(95_000, 85_000, 250));
        supply.SetFull(0, 1e-5);
        Assert.True(supply.At(95_000, 85_000, 250).IsFull);
    }

    [Fact]
    public void A_valve_that_moves_and_a_full_flow_that_changes_say_so()
    {
        GasSupply supply = new(Regulator, [new GasLoad(1e-5, 2400), new GasLoad(2e-5, 2600)]);
        Assert.False(supply.Set(0, false));
        Assert.True(supply.Set(0, true));
        Assert.False(supply.Set(0, true));
        Assert.False(supply.SetFull(0, 1e-5));
        Assert.True(supply.SetFull(0, 3e-5));
        Assert.Equal(3e-5, supply.Demand_kg_s, 1e-18);
        Assert.True(supply.SetFull(1, 4e-5));
        Assert.Equal(3e-5, supply.Demand_kg_s, 1e-18);
        Assert.True(supply.Set(1, true));
        Assert.Equal(7e-5, supply.Demand_kg_s, 1e-18);
        Assert.True(supply.Set(0, false));
        Assert.Equal(4e-5, supply.Demand_kg_s, 1e-18);
    }

    [Fact]
    public void Beyond_the_whole_demand_the_pressure_goes_on_with_the_squared_flow()
    {
        GasSupply supply = Open(new GasLoad(1e-4, 2000), new GasLoad(2e-4, 2600));
        Assert.Equal(2600, supply.DeliveryAtFlow_Pa(3e-4), 1e-9);
        Assert.Equal(4 * 2600, supply.DeliveryAtFlow_Pa(6e-4), 1e-9);
    }

    [Fact]
    public void A_supply_that_gives_all_delivers_at_what_the_regulator_holds_at_that_flow()
    {
        GasSupply supply = Open(new GasLoad(4e-4, 2400));
        SupplyPoint point = supply.At(500_000, Sea_Pa, 260);
        Assert.True(point.IsFull);
        Assert.Equal(Regulator.Delivery_Pa(4e-4, 500_000, Sea_Pa, 260), supply.Delivery_Pa(point, 500_000, Sea_Pa, 260));
        Assert.True(supply.Delivery_Pa(point, 500_000, Sea_Pa, 260) < Regulator.LockUp_Pa - 100);
    }

    [Fact]
    public void Without_a_flow_the_delivery_pressure_is_that_of_the_cylinder_up_to_lock_up_and_never_below_air()
    {
        GasSupply shut = new(Regulator, [new GasLoad(1e-4, 2400)]);
        SupplyPoint none = shut.At(500_000, Sea_Pa, 260);
        Assert.Equal((0.0, true), (none.Flow_kg_s, none.IsFull));
        Assert.Equal(1000, shut.Delivery_Pa(none, new FeedPressures(Sea_Pa + 1000, 0, 260), Sea_Pa), 1e-9);
        Assert.Equal(1500, shut.Delivery_Pa(none, new FeedPressures(Sea_Pa + 1000, Sea_Pa + 1500, 260), Sea_Pa), 1e-9);
        Assert.Equal(0, shut.Delivery_Pa(none, new FeedPressures(Sea_Pa - 1000, 0, 260), Sea_Pa));
    }

    [Fact]
    public void The_least_satisfied_of_the_open_appliances_is_the_one_that_needs_the_most_pressure()
    {
        GasSupply supply = Open(new GasLoad(4e-4, 1600), new GasLoad(1e-5, 2500), new GasLoad(1e-6, 3600));
        supply.Set(2, false);
        SupplyPoint point = new(2e-4, 400);
        Assert.Equal(0.4, supply.LowestSatisfied_frac(point), 1e-12);
        Assert.Equal(0.5 * 4e-4, supply.Taken_kg_s(0, point), 1e-15);
        Assert.Equal(1, supply.LowestSatisfied_frac(new SupplyPoint(4.1e-4, double.NaN)));
    }

    // Near the most that the second stage passes, a little thinner air or warmer gas needs very much more inlet pressure.
    [Fact]
    public void A_kept_solution_does_not_outlive_the_air_and_gas_in_which_the_second_stage_just_passes()
        => Gen.Select(Gen.Double[0.985, 1.015], Gen.Double[-500, 500], Gen.Double[-10, 10]).Sample((part, air_Pa, gas_K) =>
        {
            double demand_kg_s = part * Regulator.Flow_kg_s(2400, 900_000, 90_000, 260);
            GasSupply kept = Open(new GasLoad(demand_kg_s, 2400)), anew = Open(new GasLoad(demand_kg_s, 2400));
            kept.At(900_000, 90_000, 260);
            SupplyPoint now = kept.At(900_000, 90_000 + air_Pa, 260 + gas_K), first = anew.At(900_000, 90_000 + air_Pa, 260 + gas_K);
            Assert.Equal(first.Flow_kg_s, now.Flow_kg_s, 1e-6 * demand_kg_s);
            if (now.IsFull) Assert.True(Regulator.Flow_kg_s(2400, 900_000, 90_000 + air_Pa, 260 + gas_K) >= demand_kg_s * (1 - 1e-6));
        }, iter: 1000);

    // The thinnest air and warmest gas for which a solution is kept, and a demand that just passes there or just does not.
    [Fact]
    public void A_kept_solution_holds_to_the_end_of_the_air_and_gas_that_it_is_kept_for()
    {
        double most_kg_s = Regulator.Flow_kg_s(2400, 900_000, 89_500, 270);
        for (double part = 0.98; part < 1.02; part += 0.0005)
        {
            GasSupply kept = Open(new GasLoad(part * most_kg_s, 2400));
            kept.At(900_000, 90_000, 260);
            Assert.Equal(part < 1, kept.At(900_000, 89_500, 270).IsFull);
        }
    }

    [Fact]
    public void Two_appliances_of_one_flow_and_two_pressures_are_not_taken_for_each_other()
        => Gen.Select(Gen.Double[1e-4, 3e-4], Gen.Double[103_000, 200_000]).Sample((flow_kg_s, cylinder_Pa) =>
        {
            GasSupply supply = new(Regulator, [new GasLoad(flow_kg_s, 500), new GasLoad(flow_kg_s, 2700)]);
            foreach (int one in (int[])[0, 1, 0])
            {
                supply.Set(one, true);
                GasSupply anew = new(Regulator, [new GasLoad(flow_kg_s, 500), new GasLoad(flow_kg_s, 2700)]);
                anew.Set(one, true);
                SupplyPoint point = supply.At(cylinder_Pa, Sea_Pa, 250), fresh = anew.At(cylinder_Pa, Sea_Pa, 250);
                Assert.Equal(fresh.IsFull, point.IsFull);
                Assert.Equal(fresh.Flow_kg_s, point.Flow_kg_s, 1e-9);
                supply.Set(one, false);
            }
        }, iter: 1000);

    [Fact]
    public void Shut_valves_are_given_all_they_take_by_a_cylinder_without_pressure_too()
    {
        GasSupply shut = new(Regulator, [new GasLoad(1e-4, 2400)]);
        Assert.Equal((0.0, true), (shut.At(95_000, Sea_Pa, 250).Flow_kg_s, shut.At(95_000, Sea_Pa, 250).IsFull));
    }

    [Fact]
    public void A_cylinder_at_the_pressure_of_the_air_gives_nothing()
        => Assert.Equal(new SupplyPoint(0, 0), Open(new GasLoad(1e-4, 2400)).At(Sea_Pa, Sea_Pa, 250));

    // Whether all is given is decided by whether the pressure reaches the full one, so the whole demand has exactly that.
    [Fact]
    public void The_whole_demand_is_taken_at_exactly_the_highest_full_pressure_and_the_next_smaller_flow_hardly_below()
        => Loads.Sample(loads =>
        {
            GasSupply supply = Open(loads);
            double full_Pa = loads.Max(l => l.FullPressure_Pa);
            Assert.Equal(full_Pa, supply.DeliveryAtFlow_Pa(supply.Demand_kg_s));
            double flow_kg_s = supply.Demand_kg_s;
            for (int i = 0; i < 4; i++)
            {
                flow_kg_s = Math.BitDecrement(flow_kg_s);
                Assert.Equal(full_Pa, supply.DeliveryAtFlow_Pa(flow_kg_s), 1e-9 * full_Pa);
            }
        }, iter: 3000);

    // A cylinder that gives all high up against thin air does not in the valley.
    [Fact]
    public void A_kept_solution_is_not_taken_for_another_height()
        => Gen.Select(Loads, Gen.Double[0.01, 1], Gen.Bool).Sample((loads, part, down) =>
        {
            (double before_Pa, double after_Pa) = down ? (70_000.0, 100_000.0) : (100_000.0, 70_000.0);
            GasSupply kept = Open(loads), anew = Open(loads);
            kept.At(200_000, before_Pa, 260);
            double cylinder_Pa = after_Pa + 60_000 * part;
            SupplyPoint now = kept.At(cylinder_Pa, after_Pa, 260), first = anew.At(cylinder_Pa, after_Pa, 260);
            Assert.Equal(first.IsFull, now.IsFull);
            Assert.Equal(first.Flow_kg_s, now.Flow_kg_s, 1e-6 * kept.Demand_kg_s);
        }, iter: 1000);
}
