using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Nodes;
using ColdSim.Model.Site;
using ColdSim.Physics.Freezing;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Appliances;

public class WaterHeaterTests
{
    private static Rig With(GasAppliance appliance, bool hookup = false)
        => new() { Cylinders = [BigTank()], Appliances = [appliance], Site = new SiteSpecification { Hookup = hookup } };

    [Fact]
    public void Heating_a_tank_takes_its_heat_and_no_more()
    {
        StorageWaterHeater heater = Everything.Heater() with { StandingLoss_W_K = 0, Initial_K = 283.15 };
        Trace run = Run(With(heater), Steady(-5), 3);
        double warmed_J = heater.Water_kg * Water.SpecificHeat_J_kgK * (heater.SetPoint_K + 0.5 * heater.Differential_K - 283.15);
        Assert.Equal(warmed_J, run.Given_J * heater.Efficiency_frac, warmed_J * 1e-4);
        Assert.Equal(heater.SetPoint_K + 0.5 * heater.Differential_K, run.Steps[^1].Node_K[0], 0.01);
    }

    // Recovery = input × efficiency / (8.34 lb/gal × rise), the trade's rule from memory: 12,000 × 0.78 / 834 = 11.2.
    [Theory]
    [Outside("common practice, no source", Field.Furnace, FromMemory = true)]
    [InlineData(12_000, 10, 11.2)]
    [InlineData(8_800, 6, 8.2)]
    public void Recovery_over_100_F_is_the_trade_s(double input_Btu_h, double gallons, double gallons_h)
    {
        const double gallon_kg = 3.785;
        StorageWaterHeater heater = Everything.Heater() with
        {
            Input_W = input_Btu_h * Btu_h,
            Water_kg = gallons * gallon_kg,
            StandingLoss_W_K = 0,
            Initial_K = 333.15 - 100 / 1.8,
            Differential_K = 0.2,
        };
        Trace run = Run(With(heater), Steady(0), 3);
        double hours = run.Steps.Last(s => s.Gas_W[1] > 0).To.Time_s / 3600;
        Assert.Equal(gallons_h, gallons / hours, 0.12);
    }

    [Fact]
    public void A_tank_that_nobody_heats_cools_along_an_exponential()
    {
        StorageWaterHeater heater = Everything.Heater() with { Hours = [Everything.At(3, 3.5)] };
        Trace run = Run(With(heater), Steady(5), 8);
        double expected_K = 278.15 + (heater.SetPoint_K - 278.15) * Math.Exp(-heater.StandingLoss_W_K * 8 * 3600 / (heater.Water_kg * Water.SpecificHeat_J_kgK));
        Assert.Equal(expected_K, run.Steps[^1].Node_K[0], 1e-6);
        Assert.Equal(0, run.Given_J);
    }

    // 150 to 400 Btu/h of standing loss are the trade's, from memory.
    [Fact]
    public void Standing_loss_by_default_is_within_the_trade_s()
        => Assert.InRange(Everything.Heater().StandingLoss_W_K * (333.15 - 293.15) / Btu_h, 150, 400);

    [Fact]
    public void Water_drawn_mixes_with_the_cold_that_comes_in()
    {
        StorageWaterHeater heater = Everything.Heater(new WaterDraw(Everything.At(16.5, 17), 0.02)) with { StandingLoss_W_K = 0, Hours = [Everything.At(3, 3.5)] };
        Trace run = Run(With(heater), Steady(5), 2, step_s: 60);
        double expected_K = heater.Cold_K + (heater.SetPoint_K - heater.Cold_K) * Math.Exp(-0.02 * 1800 / heater.Water_kg);
        Assert.Equal(expected_K, run.Steps[^1].Node_K[0], 1e-4);
    }

    [Fact]
    public void On_a_hookup_the_element_heats_and_no_gas_flows()
    {
        StorageWaterHeater heater = Everything.Heater() with { StandingLoss_W_K = 0, Initial_K = 283.15, ElectricInput_W = 1400 };
        Trace run = Run(With(heater, hookup: true), Steady(-5), 2);
        Assert.Equal(0, run.Given_J);
        Assert.Equal(283.15 + 1400 * 3600.0 / (heater.Water_kg * Water.SpecificHeat_J_kgK), run.Steps.First(s => Math.Abs(s.To.Time_s - 3600) < 1e-6).Node_K[0], 0.01);
        Assert.True(run.Result.Ledger.Closes);
    }

    [Fact]
    public void On_demand_burns_no_more_than_the_water_needs_and_no_more_than_its_plate()
    {
        OnDemandWaterHeater little = new() { Name = "shower", Input_W = 42_000 * Btu_h, Flow_kg_s = 0.063 };
        Assert.Equal(0.063 * 4190 * 32 / 0.8, little.InputAt_W(0), 1e-6);
        OnDemandWaterHeater much = little with { Flow_kg_s = 0.2 };
        Assert.Equal(42_000 * Btu_h, much.InputAt_W(0), 1e-6);
    }

    [Fact]
    public void Water_heater_that_is_shut_keeps_its_node_without_draws()
    {
        GasAppliance shut = Everything.Heater(Everything.Draws).Shut();
        Assert.True(shut.IsOff);
        Assert.NotNull(shut.Node);
        Assert.Empty(shut.Node!.Draws);
    }
}
