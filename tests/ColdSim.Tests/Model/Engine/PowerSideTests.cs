using ColdSim.Model;
using ColdSim.Model.Blanket;
using ColdSim.Model.Electrical;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Model.Numerics;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class PowerSideTests
{
    private static readonly GeneratorSpecification Set = new() { Rated_W = 2800 };

    private static PowerSpecification Bank(double capacity_Ah, BatteryChemistry chemistry = BatteryChemistry.Agm) => new()
    {
        Battery = BatterySpecification.Of(chemistry, capacity_Ah * NominalVoltage.AmpereHour_J),
    };

    private static Rig Powered(PowerSpecification power) => Heated() with { Cylinders = [BigTank()], Power = power };

    private static double Drawn_Wh(Trace run, int place)
        => run.Steps.Sum(s => s.Power!.Load_W[place] * (s.To.Time_s - s.From.Time_s)) / 3600;

    private static WeatherSeries SunAfterDark(Func<double, double> air_C, double sun_W_m2) => new(
        [.. Enumerable.Range(0, 25).Select(h => new WeatherRow(Start.AddHours(h), Zero_K + air_C(h), 2, Sun_W_m2: h < 12 ? 0 : sun_W_m2))],
        new WeatherDefaults(), new SiteSpecification());

    // On from the purge before the flame to the purge after it; a call within that purge begins anew.
    private static double FanTime_s(Trace run)
    {
        double[] on_s = [.. run.Times_s(EventKind.BurnerOn).Select(t => t - 17)];
        double[] off_s = [.. run.Times_s(EventKind.BurnerOff).Select(t => t + 90)];
        double end_s = run.Last.Time_s, sum_s = 0;
        for (int i = 0; i < on_s.Length; i++)
            sum_s += Math.Min(i < off_s.Length ? off_s[i] : end_s, i + 1 < on_s.Length ? on_s[i + 1] : end_s) - on_s[i];
        return sum_s;
    }

    [Fact]
    public void A_furnace_fan_draws_its_current_while_it_purges_and_burns_and_nothing_else()
    {
        Rig rig = Powered(Bank(500));
        rig = rig with { Furnace = rig.Furnace! with { FanCurrent_A = 3.4 } };
        Trace run = Run(rig, Steady(-12), 14);
        Assert.True(run.Times_s(EventKind.BurnerOn).Length > 10);
        Assert.Equal(3.4 * 12 * FanTime_s(run) / 3600, Drawn_Wh(run, PowerSpecification.FanPlace), 0.05);
    }

    [Fact]
    public void A_fan_that_is_not_stated_draws_what_is_usual_for_its_furnace()
        => Assert.Equal(FurnaceSpecification.UsualFanCurrent_A(20_000 * Btu_h) * 12, Run(Powered(Bank(500)), Steady(-12), 3).Steps.Max(s => s.Power!.Load_W[PowerSpecification.FanPlace]), 1e-9);

    [Fact]
    public void A_step_in_which_the_fan_stops_flows_as_one_to_its_stop_and_one_from_it()
    {
        Rig rig = Powered(Bank(100) with { Loads = [new ElectricLoad { Name = "lights", Power_W = 20 }] });
        Quartic air_K = new(-2, 1.5, -0.4, 0.1);
        PowerSide whole = new(rig), parts = new(rig);
        foreach (PowerSide side in (PowerSide[])[whole, parts])
        {
            side.Begin(null);
            side.SetClock(20 * 3600);
        }

        whole.TakeLoads(fanRuns: true, blankets_W: 0, fanRuns_s: 120);
        whole.SetTemperatures(Zero_K + 15, air_K, 300);
        PowerIntegrals all = whole.Accept(300);

        parts.TakeLoads(fanRuns: true, blankets_W: 0);
        parts.SetTemperatures(Zero_K + 15, air_K.Over(0, 0.4), 120);
        PowerIntegrals with = parts.Accept(120);
        parts.TakeLoads(fanRuns: false, blankets_W: 0);
        parts.SetTemperatures(Zero_K + 15 + air_K.At(0.4), air_K.Over(0.4, 0.6), 180);
        PowerIntegrals without = parts.Accept(180);
        Assert.Equal(rig.FurnaceFan_W * 120 + 20 * 300, all.Load_J, 1e-9);
        Assert.Equal(with.Load_J + without.Load_J, all.Load_J, 1e-9);
        Assert.Equal(with.Loss_J + without.Loss_J, all.Loss_J, 1e-9);
        Assert.Equal(parts.Stored_J, whole.Stored_J, 1e-6);
    }

    [Fact]
    public void A_generator_starts_at_the_same_instants_in_long_steps_as_in_short()
    {
        PowerSpecification power = Bank(60) with { Generator = Set, Loads = [new ElectricLoad { Name = "lights", Power_W = 20 }] };
        double[] Starts_s(double step_s) => Run(Powered(power), Steady(-12), 30, step_s).Times_s(EventKind.GeneratorStarts);
        double[] wanted_s = Starts_s(5), got_s = Starts_s(600);
        Assert.True(wanted_s.Length >= 2);
        Assert.Equal(wanted_s.Length, got_s.Length);
        Assert.All(wanted_s.Zip(got_s), t => Assert.Equal(t.First, t.Second, 5.0));
    }

    [Fact]
    public void Furnace_board_is_dead_and_demands_no_gas_without_voltage()
    {
        Trace run = Run(Powered(Bank(20)), Steady(-12), 14);
        double gone_s = run.First_s(EventKind.VoltageGone);
        Assert.InRange(gone_s, 3600, 10 * 3600);
        Assert.DoesNotContain(run.Events, e => e.Time_s > gone_s && e.Kind is EventKind.BurnerOn or EventKind.IgnitionFailed or EventKind.ShortBegins or EventKind.Lockout);
        StepRecord[] after = [.. run.Steps.Where(s => s.From.Time_s >= gone_s)];
        Assert.All(after, s => Assert.True(s.Asked_W == 0 && s.Given_W == 0 && !s.Undersupplied && s.Power!.Load_W.Sum() == 0 && !s.Power.Live));
        Assert.True(run.Last.Inside_K < Zero_K + 10);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }

    [Fact]
    public void Voltage_is_gone_when_the_usable_charge_is_used_up()
    {
        Rig rig = Powered(Bank(20, BatteryChemistry.LithiumIronPhosphate)) with { Furnace = null, Thermostat = null, Coach = null };
        rig = rig with { Power = rig.Power! with { Loads = [new ElectricLoad { Name = "lights", Power_W = 6 }], Battery = rig.Power.Battery with { Inside = false } } };
        // At 25 °C 90 % of 20 Ah at half an ampere, below the twenty-hour rate: 36 h.
        Assert.Equal(36 * 3600, Run(rig, Steady(25), 40).First_s(EventKind.VoltageGone), 1);
        // At -15 °C it gives 65 % of that.
        Assert.Equal(0.65 * 36 * 3600, Run(rig, Steady(-15), 40).First_s(EventKind.VoltageGone), 1);
    }

    [Fact]
    public void Voltage_that_comes_back_lights_the_furnace_again()
    {
        PowerSpecification power = Bank(20) with { Panels = [new SolarPanelSpecification { Rated_W = 400 }] };
        Trace run = Run(Powered(power), Changing(_ => -5, 40, 1, sun_W_m2: 0), 2);
        Assert.False(run.Has(EventKind.VoltageGone));
        // Dark first, then the sun.
        run = Run(Powered(power), SunAfterDark(_ => -12, 400), 20);
        double back_s = run.First_s(EventKind.VoltageBack);
        Assert.True(back_s > run.First_s(EventKind.VoltageGone));
        Assert.Contains(run.Events, e => e.Kind == EventKind.BurnerOn && e.Time_s > back_s);
        Assert.True(run.Result.Ledger.Closes);
    }

    [Fact]
    public void A_frozen_lithium_bank_takes_no_sun()
    {
        PowerSpecification power = Bank(50, BatteryChemistry.LithiumIronPhosphate) with { Panels = [new SolarPanelSpecification { Rated_W = 400 }] };
        power = power with { Battery = power.Battery with { Inside = false, InitialCharge_frac = 0.5 } };
        Rig rig = new() { Cylinders = [BigTank()], Power = power };
        Assert.Equal(0.5, Run(rig, Changing(_ => -3, sun_W_m2: 300), 10).Steps[^1].Power!.Charge_frac, 1e-12);
        Assert.True(Run(rig, Changing(_ => 4, sun_W_m2: 300), 10).Steps[^1].Power!.Charge_frac > 0.8);
    }

    [Fact]
    public void Shore_power_carries_everything_and_fills_the_bank()
    {
        PowerSpecification power = Bank(20);
        Rig rig = Powered(power with { Battery = power.Battery with { InitialCharge_frac = 0.52 } }) with { Site = new SiteSpecification { Hookup = true } };
        Trace run = Run(rig, Steady(-12), 24);
        Assert.False(run.Has(EventKind.VoltageGone));
        Assert.True(run.Steps[^1].Power!.Charge_frac > 0.99);
    }

    [Fact]
    public void A_generator_starts_on_a_low_bank_and_burns_gas_by_its_load()
    {
        Rig rig = Powered(Bank(60) with { Generator = Set });
        Trace run = Run(rig, Steady(-12), 24);
        Assert.True(run.Has(EventKind.GeneratorStarts) && run.Has(EventKind.GeneratorStops));
        Assert.False(run.Has(EventKind.VoltageGone));
        double mean_W = run.Steps.Where(s => s.Power!.GeneratorRuns).Average(s => s.Gas_W[^1]);
        Assert.InRange(mean_W, Set.IdleInput_W, Set.Input_W(1000));
        Assert.All(run.Steps.Where(s => !s.Power!.GeneratorRuns), s => Assert.Equal(0, s.Gas_W[^1]));
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }

    [Fact]
    public void A_generator_starved_of_gas_dies_and_the_shortage_is_gas()
    {
        Rig rig = Powered(Bank(30) with { Generator = Set }) with { Cylinders = [Bottle("5 lb", 0.15).Fixed(2)] };
        Trace run = Run(rig, Steady(-30), 14);
        Assert.True(run.Has(EventKind.ShortBegins));
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }

    [Fact]
    public void A_blanket_on_the_battery_goes_off_with_it_and_one_on_shore_power_does_not_draw_on_it()
    {
        BlanketSpecification blanket = new() { Power_W = 60, Off_K = 310, On_K = 305 };
        Rig rig = new() { Cylinders = [Bottle() with { Blanket = blanket }], Power = Bank(20) };
        Trace run = Run(rig, Steady(-12), 10);
        double gone_s = run.First_s(EventKind.VoltageGone);
        Assert.Equal(60, run.Steps[0].Power!.Load_W[PowerSpecification.BlanketsPlace]);
        Assert.All(run.Steps.Where(s => s.From.Time_s >= gone_s), s => Assert.Equal(0, s.Blanket_W));
        Rig shore = rig with { Cylinders = [Bottle() with { Blanket = blanket with { Supply = BlanketSupply.ShorePower } }], Site = new SiteSpecification { Hookup = true } };
        run = Run(shore, Steady(-12), 10);
        Assert.All(run.Steps, s => Assert.Equal((60, 0), (s.Blanket_W, s.Power!.Load_W[PowerSpecification.BlanketsPlace])));
    }

    [Fact]
    public void A_draw_that_needs_voltage_is_out_without_it()
    {
        Rig rig = new()
        {
            Cylinders = [Bottle()],
            Appliances = [Draw(1500) with { NeedsPower = true }, Draw(1000)],
            Power = Bank(4) with { Loads = [new ElectricLoad { Name = "board", Power_W = 12 }] },
        };
        Trace run = Run(rig, Steady(-5), 10);
        double gone_s = run.First_s(EventKind.VoltageGone);
        Assert.Equal(2500 * Btu_h, run.Steps[0].Given_W, 1e-6);
        Assert.All(run.Steps.Where(s => s.From.Time_s >= gone_s), s => Assert.Equal(1000 * Btu_h, s.Given_W, 1e-6));
    }

    [Fact]
    public void A_run_that_goes_on_has_the_charge_where_the_one_before_left_it()
    {
        Rig rig = Powered(Bank(20));
        Simulation first = new(rig, Steady(-12), Settings(14), new Ledger());
        Trace trace = new();
        first.Run(trace);
        Assert.False(first.State().Power!.Live);
        Trace next = new();
        new Simulation(rig, Steady(-12), Settings(2) with { From = first.State() }, new Ledger()).Run(next);
        Assert.All(next.Steps, s => Assert.False(s.Power!.Live));
        Assert.Equal(trace.Steps[^1].Power!.Charge_frac, next.Steps[0].Power!.Charge_frac, 1e-9);
    }

    [Fact]
    public void A_flat_bank_without_hysteresis_is_disconnected_and_charged_in_turns_of_a_minute()
    {
        PowerSpecification power = Bank(20) with { Loads = [new ElectricLoad { Name = "pump", Power_W = 2000 }] };
        Rig rig = new()
        {
            Cylinders = [Bottle()],
            Power = power with { Battery = power.Battery with { Reconnect_frac = 0 } },
            Site = new SiteSpecification { Hookup = true },
        };
        Trace run = Run(rig, Steady(-5), 2);
        double[] gone_s = run.Times_s(EventKind.VoltageGone), back_s = run.Times_s(EventKind.VoltageBack);
        Assert.InRange(gone_s.Length, 20, 120);
        for (int i = 0; i < back_s.Length; i++) Assert.True(back_s[i] - gone_s[i] >= 60 - 1e-9, $"{gone_s[i]} to {back_s[i]}");
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }

    [Fact]
    public void Electric_ledger_closes_for_random_banks()
    {
        int gone = 0, back = 0, generated = 0;
        Gen.Select(
            Gen.Select(Gen.Enum<BatteryChemistry>(), Gen.Double[5, 100], Gen.Double[0.3, 1], Gen.Bool),
            Gen.Select(Gen.Double[0, 800], Gen.Double[100, 500], Gen.Double[0, 60], Gen.Bool),
            Gen.Select(Gen.Double[-35, 5], Gen.Double[0, 12])).Sample((bank, with, sky) =>
            {
                PowerSpecification power = Bank(bank.Item2, bank.Item1) with
                {
                    Panels = [new SolarPanelSpecification { Rated_W = 1 + with.Item1 }],
                    Loads = [new ElectricLoad { Name = "lights", Power_W = with.Item3, Hours = [new ClockWindow(17 * 3600, 1 * 3600)] }],
                    Generator = with.Item4 ? Set : null,
                };
                power = power with { Battery = power.Battery with { InitialCharge_frac = bank.Item3, Inside = bank.Item4 } };
                Trace run = Run(Powered(power), SunAfterDark(h => sky.Item1 + sky.Item2 * Math.Sin(h / 4), with.Item2), 20);
                Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
                Assert.True(run.Steps.Count < 20_000, $"{run.Steps.Count} steps");
                Assert.All(run.Steps, s => Assert.InRange(s.Power!.Charge_frac, 0, 1 + 1e-9));
                if (run.Has(EventKind.VoltageGone)) Interlocked.Increment(ref gone);
                if (run.Has(EventKind.VoltageBack)) Interlocked.Increment(ref back);
                if (run.Has(EventKind.GeneratorStarts)) Interlocked.Increment(ref generated);
            }, iter: 160);
        Assert.True(gone > 2 && back > 0 && generated > 2, $"Too tame: {gone} gone, {back} back, {generated} generated.");
    }
}
