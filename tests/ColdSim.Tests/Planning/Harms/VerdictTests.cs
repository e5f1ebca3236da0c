using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Model.Nodes;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Model;
using UnitsNet;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Planning.Harms;

/// <summary>Each verdict with a rig that has little else.</summary>
public class VerdictTests
{
    private static readonly Rig Warm = Heated() with { Cylinders = [BigTank()] };

    private static NightReport Night(Rig rig, double air_C, NightCriteria? criteria = null) => Rigs.Nights(rig, Steady(air_C, 30), 1, criteria).Nights[0];

    private static Rig WithBattery(double capacity_Ah, double left) => Heated() with
    {
        Cylinders = [Bottle("40 lb", left)],
        Power = new PowerSpecification { Battery = BatterySpecification.Of(BatteryChemistry.Agm, capacity_Ah * NominalVoltage.AmpereHour_J) },
    };

    private static ThermalNode Pipe(double outside_W_K, double inside_W_K) => new()
    {
        Name = "pipe",
        Water_kg = 0.5,
        Capacity_J_K = 2500,
        Outside_W_K = outside_W_K,
        Inside_W_K = inside_W_K,
        Initial_K = 285,
    };

    [Fact]
    public void A_warm_fed_night_holds_without_harm()
    {
        NightReport night = Night(Warm, -10);
        Assert.Equal(Verdict.Holds, night.Verdict);
        Assert.Null(night.FirstFailure);
        Assert.Equal((0, 0, 0, 0), (night.FreezingTime.Seconds, night.NoHeatTime.Seconds, night.ColdKelvinHours, night.ShortTime.Seconds));
    }

    [Fact]
    public void A_furnace_twice_as_large_as_the_load_is_not_too_small_however_deep_its_dips()
    {
        // A small, leaky coach whose air falls fast while the sensor lags and the furnace purges.
        Rig rig = Warm with { Coach = OneNode(90, 0.25e6), Furnace = Plated(19_250) };
        NightReport night = Night(rig, -25);
        Assert.True(night.InsideLow!.Value.DegreesCelsius < 19, $"{night.InsideLow}");
        Assert.Equal(Verdict.Holds, night.Verdict);
        Assert.Equal(0, night.ColdKelvinHours);
        Assert.Equal(0, night.NoHeatTime.Seconds);
    }

    [Fact]
    public void A_furnace_that_cannot_keep_the_set_point_with_all_its_gas_is_too_small()
    {
        NightReport night = Night(Heated(8000, 200) with { Cylinders = [BigTank()] }, -25);
        Assert.Equal(Verdict.FurnaceTooSmall, night.Verdict);
        Assert.True(night.FirstFailure > night.From && night.FirstFailure < night.To);
        Assert.True(night.ColdKelvinHours > 10);
        Assert.Equal(0, night.ShortTime.Seconds);
    }

    [Fact]
    public void A_coach_that_warms_up_after_the_set_point_rose_has_no_furnace_that_is_too_small()
    {
        NightReport night = Night(Warm with { Thermostat = Holding(20, 10), Coach = OneNode(110, 2e6) }, -5);
        Assert.True(night.InsideLow!.Value.DegreesCelsius < 12);
        Assert.Equal(Verdict.Holds, night.Verdict);
        Assert.Equal(0, night.ColdKelvinHours);
    }

    [Fact]
    public void A_cold_coach_that_is_just_heated_up_holds()
    {
        NightReport night = Night(Warm with { Coach = OneNode(110, 0.6e6, inside_C: 5) }, -5);
        Assert.Equal(Verdict.Holds, night.Verdict);
        Assert.Equal(0, night.ColdKelvinHours);
    }

    [Fact]
    public void A_cold_cylinder_with_liquid_left_makes_gas_short()
    {
        NightReport night = Night(Heated(30_000, 130) with { Cylinders = [Bottle("20 lb", 0.9)] }, -28);
        Assert.Equal(Verdict.GasShort, night.Verdict);
        Assert.Equal(night.FirstShort, night.FirstFailure);
        Assert.True(night.NoHeatTime.Hours > 1);
    }

    [Fact]
    public void A_cylinder_burnt_to_its_last_liquid_is_gone()
    {
        NightReport night = Night(Heated() with { Cylinders = [Bottle("20 lb", 0.2)] }, 0);
        Assert.Equal(Verdict.GasGone, night.Verdict);
        Assert.NotNull(night.DryAt);
        Assert.True(night.FirstFailure <= night.DryAt);
    }

    [Fact]
    public void A_battery_that_ends_first_is_flat_and_its_hours_without_heat_count()
    {
        NightReport night = Night(WithBattery(20, 0.9), -12);
        Assert.Equal(Verdict.BatteryFlat, night.Verdict);
        Assert.Equal(night.Power!.FlatAt, night.FirstFailure);
        Assert.InRange(night.NoHeatTime.Hours, 3, night.Power.VoltageGone.Hours + 0.2);
        Assert.True(night.FreezingTime.Hours > 1);
        Assert.Equal(0, night.BelowSetPoint.Kelvins);
    }

    [Fact]
    public void A_furnace_made_to_stop_is_stopped_and_neither_gas_nor_battery()
    {
        Scenario scenario = Rigs.Scenario(Warm, Steady(-15, 30), 1) with { HeatStops = Start.AddHours(8) };
        NightReport night = NightRun.Of(scenario).Nights[0];
        Assert.Equal(Verdict.FurnaceStopped, night.Verdict);
        Assert.InRange((night.FirstFailure!.Value - Start.AddHours(8)).TotalMinutes, 0, 30);
        Assert.InRange(night.NoHeatTime.Hours, 11, 12);
        Assert.Equal(0, night.ShortTime.Seconds);
    }

    [Fact]
    public void Water_that_freezes_in_a_warm_fed_night_names_the_verdict()
    {
        NightReport night = Night(Warm with { Water = [Pipe(2, 0.2)] }, -15);
        Assert.Equal(Verdict.WaterFreezes, night.Verdict);
        Assert.Equal(night.Water[0].FreezesAt, night.FirstFailure);
        Assert.True(night.FreezingTime.Hours > 5);
        Assert.False(night.InsideForWater);
        Assert.True(night.Lowest < night.InsideLow);
    }

    [Fact]
    public void Water_that_is_still_frozen_fails_the_next_night_from_its_beginning()
    {
        NightReport second = Rigs.Nights(Warm with { Water = [Pipe(2, 0.2)] }, Steady(-15, 60), 2).Nights[1];
        Assert.Equal(Verdict.WaterFreezes, second.Verdict);
        Assert.Equal(second.From, second.FirstFailure);
        Assert.Equal(24, second.FreezingTime.Hours, 1e-6);
    }

    [Fact]
    public void Without_declared_water_inside_is_used_in_its_place()
    {
        NightReport night = Night(WithBattery(20, 0.9), -12);
        Assert.True(night.InsideForWater);
        Assert.Equal(night.InsideLow, night.Lowest);
    }

    [Fact]
    public void The_cause_that_came_first_names_the_verdict()
    {
        NightReport night = Night(WithBattery(20, 0.9) with { Water = [Pipe(0.05, 2)] }, -20);
        Assert.NotNull(night.Water[0].FreezesAt);
        Assert.Equal(Verdict.BatteryFlat, night.Verdict);
    }

    [Fact]
    public void A_rig_without_furnace_fails_only_by_gas_battery_and_water()
    {
        Rig rig = new() { Cylinders = [Bottle()], Coach = OneNode(60), Appliances = [Draw(1000)] };
        NightReport night = Night(rig, -15);
        Assert.True(night.InsideLow!.Value.DegreesCelsius < -5);
        Assert.Equal(Verdict.Holds, night.Verdict);
        Assert.Equal((0, 0), (night.NoHeatTime.Seconds, night.ColdKelvinHours));
        Assert.Equal(Verdict.WaterFreezes, Night(rig with { Water = [Pipe(0, 2)] }, -15).Verdict);
    }
}
