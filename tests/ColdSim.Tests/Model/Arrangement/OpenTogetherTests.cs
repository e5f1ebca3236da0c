using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Supply;
using ColdSim.Physics.Propane;
using ColdSim.Tests.Model.Cylinder;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Arrangement;

public class OpenTogetherTests
{
    private static Rig Together(params CylinderSpecification[] cylinders)
        => new() { Cylinders = cylinders, Arrangement = new OpenTogether(), Appliances = [Draw(25_000)] };

    [Fact]
    public void Two_equal_ones_behave_as_one_of_twice_the_wall_and_twice_the_mass()
    {
        CylinderSpecification one = Bottle("20 lb", 0.7).Fixed(1.7);
        CylinderSpecification twice = one with
        {
            Volume_m3 = 2 * one.Volume_m3,
            MetalMass_kg = 2 * one.MetalMass_kg,
            Contents_kg = 2 * one.Contents_kg,
            OutsideDiameter_m = 0.4,
            Surroundings = one.Surroundings with { FixedConductance_W_K = 2 * 1.7 },
        };
        Trace two = Run(Together(one, one), Steady(-12), 6), big = Run(new Rig { Cylinders = [twice], Appliances = [Draw(25_000)] }, Steady(-12), 6);
        Assert.Equal(big.Last.Propane_kg, two.Last.Propane_kg, 1e-3 * big.Last.Propane_kg);
        Assert.Equal(big.Last.Liquid_K, two.Last.Liquid_K, 0.01);
        Assert.Equal(big.Given_J, two.Given_J, 1e-3 * big.Given_J);
        Assert.Equal(two.Last.Cylinders[0].Propane_kg, two.Last.Cylinders[1].Propane_kg, 1e-9);
    }

    // Gas that the regulator does not pass does not pass it from two cylinders either.
    [Fact]
    public void A_regulator_that_is_too_small_is_too_small_for_one_cylinder_and_for_two()
    {
        Rig one = new()
        {
            Cylinders = [BigTank()],
            Regulator = new RegulatorSpecification { RatedFlow_W = 95_000 * Btu_h },
            Appliances = [Draw(60_000), Draw(50_000)],
        };
        StepRecord alone = Run(one, Steady(0), 1).Steps[0];
        StepRecord both = Run(one with { Cylinders = [BigTank(), BigTank()], Arrangement = new OpenTogether() }, Steady(0), 1).Steps[0];
        Assert.InRange(alone.Given_W / alone.Asked_W, 0.9, 0.95);
        Assert.Equal(alone.Given_W, both.Given_W, 1e-4 * alone.Given_W);
    }

    [Fact]
    public void The_warmer_one_gives_more_and_both_keep_one_pressure()
    {
        CylinderSpecification sheltered = Bottle("20 lb", 0.7).Fixed(1), open = Bottle("20 lb", 0.7).Fixed(3);
        Trace run = Run(Together(sheltered, open), Steady(-5), 5);
        CylinderReadings last = run.Last.Cylinders;
        Assert.Equal(last[0].Pressure_Pa, last[1].Pressure_Pa, 50.0);
        Assert.True(last[1].Propane_kg < last[0].Propane_kg - 0.5);
    }

    [Fact]
    public void Vapour_goes_to_the_colder_one_and_condenses_there()
    {
        CylinderSpecification warm = Bottle("20 lb", 0.5).Fixed(2) with { InitialTemperature_K = 283.15 };
        CylinderSpecification cold = Bottle("20 lb", 0.5).Fixed(2) with { InitialTemperature_K = 253.15 };
        Rig rig = new() { Cylinders = [warm, cold], Arrangement = new OpenTogether() };
        Trace run = Run(rig, Steady(-5), 6);
        CylinderReadings last = run.Last.Cylinders;
        Assert.True(last[1].Propane_kg > cold.Contents_kg + 0.2, $"{last[0]} {last[1]}");
        Assert.Equal(warm.Contents_kg + cold.Contents_kg, last[0].Propane_kg + last[1].Propane_kg, 1e-9);
        Assert.Equal(last[0].Liquid_K, last[1].Liquid_K, 0.01);
        Assert.True(run.Result.Ledger.Closes);
    }

    // By hand: with nothing drawn and no heat the difference dies away as exp(-t/300 s); 37 % of it is left after 300 s and 14 % after 600.
    [Theory]
    [InlineData(300, 300, 0.368)]
    [InlineData(300, 600, 0.135)]
    [InlineData(120, 120, 0.368)]
    public void Pressures_that_differ_meet_with_the_time_constant_of_the_manifold(double meeting_s, double after_s, double left)
    {
        CylinderSpecification warm = Bottle("20 lb", 0.5).Fixed(0) with { InitialTemperature_K = 264.15 };
        CylinderSpecification cold = Bottle("20 lb", 0.5).Fixed(0) with { InitialTemperature_K = 262.15 };
        Rig rig = new() { Cylinders = [warm, cold], Arrangement = new OpenTogether { MeetingTime_s = meeting_s } };
        Trace run = Run(rig, Steady(-10), 1);
        StepRecord step = run.Steps.First(s => s.To.Time_s >= after_s);
        double start_Pa = PropaneSaturation.Pressure_Pa(264.15) - PropaneSaturation.Pressure_Pa(262.15);
        double exact = Math.Exp(-step.To.Time_s / meeting_s);
        Assert.Equal(left, Math.Exp(-after_s / meeting_s), 1e-3);
        Assert.Equal(exact, (step.To.Cylinders[0].Pressure_Pa - step.To.Cylinders[1].Pressure_Pa) / start_Pa, 0.01);
    }

    // By the first law alone: shut in and without heat from outside, energy and mass of both fix the one temperature they end at.
    [Fact]
    public void Two_that_differ_end_at_the_temperature_that_energy_and_mass_fix()
    {
        CylinderSpecification warm = Bottle("20 lb", 0.5).Fixed(0) with { InitialTemperature_K = 283.15 };
        CylinderSpecification cold = Bottle("20 lb", 0.4).Fixed(0) with { InitialTemperature_K = 253.15 };
        Trace run = Run(new Rig { Cylinders = [warm, cold], Arrangement = new OpenTogether() }, Steady(-5), 4);
        CylinderBody a = new(warm), b = new(cold);
        double energy_J = a.StoredEnergy_J(warm.Contents_kg, 283.15) + b.StoredEnergy_J(cold.Contents_kg, 253.15);
        double volume_m3 = warm.Volume_m3 + cold.Volume_m3, mass_kg = warm.Contents_kg + cold.Contents_kg;
        double low_K = 253.15, high_K = 283.15;
        for (int i = 0; i < 60; i++)
        {
            double t_K = 0.5 * (low_K + high_K);
            double stored_J = new TwoPhaseContents(mass_kg, volume_m3, t_K).InternalEnergy_J + (a.ShellHeat_J_K + b.ShellHeat_J_K) * t_K;
            if (stored_J < energy_J) low_K = t_K;
            else high_K = t_K;
        }

        Assert.Equal(low_K, run.Last.Cylinders[0].Liquid_K, 0.02);
        Assert.Equal(low_K, run.Last.Cylinders[1].Liquid_K, 0.02);
    }

    [Fact]
    public void An_empty_one_beside_a_full_one_only_takes_its_pressure()
    {
        CylinderSpecification empty = Bottle("20 lb", 0.9) with { Contents_kg = 0.1, InitialTemperature_K = 263.15 };
        Trace run = Run(Together(empty, Bottle("30 lb", 0.8)) with { Appliances = [Draw(8000)] }, Steady(-10), 8);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.False(run.Has(EventKind.ShortBegins));
        Assert.Equal(run.Last.Cylinders[1].Pressure_Pa, run.Last.Cylinders[0].Pressure_Pa, 500.0);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Ledger_closes_whatever_is_open_together()
        => Gen.Select(Gen.Double[0.03, 0.9], Gen.Double[0.03, 0.9], Gen.Double[-35, 10], Gen.Double[-10, 10], Gen.Double[2000, 60_000], Gen.Double[0.5, 5])
            .Sample((fillA, fillB, air_C, apart_K, draw_Btu_h, conductance_W_K) =>
            {
                double air_K = air_C + Zero_K;
                CylinderSpecification a = Bottle("20 lb", fillA).Fixed(conductance_W_K) with { InitialTemperature_K = air_K + apart_K };
                CylinderSpecification b = Bottle("30 lb", fillB) with { InitialTemperature_K = air_K };
                Trace run = Run(Together(a, b) with { Appliances = [Draw(draw_Btu_h)] }, Steady(air_C), 10);
                Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
                foreach (StepRecord step in run.Steps)
                {
                    Assert.True(step.To.Cylinders[0].Propane_kg >= 0 && step.To.Cylinders[1].Propane_kg >= 0);
                    Assert.InRange(step.To.Cylinders[0].Liquid_K, 195, 320);
                }
            }, iter: 300);
}
