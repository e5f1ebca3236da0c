using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Measurements;

public class MeasuredComparisonTests
{
    private static readonly Scenario Three = Demo("three-days.toml");

    private static readonly RunReport ThreeRun = NightRun.Of(Three);

    private static Scenario Demo(string name) => ScenarioReader.Read(Path.Combine(DocPage.Scenarios, name)).Scenario!;

    private static Measurement Value(MeasuredQuantity quantity, DateTimeOffset time, double value, bool rested = false, int line = 2) => new()
    {
        Line = line,
        Time = time,
        Quantity = quantity,
        Value = value,
        StandardError = Measurement.UsualError(quantity),
        Cylinder = Measurement.IsOfCylinder(quantity) ? 0 : null,
        Rested = rested,
    };

    private static RunReport With(RunReport run, params Measurement[] values) => run with { Scenario = run.Scenario with { Measurements = values } };

    private static UseLog Weighed(Scenario scenario, RunReport run, params int[] hours) => UseLog.Of(
        hours.Select(h => new LogReading
        {
            Line = 2 + h,
            Time = scenario.Start.AddHours(h),
            Reading = new WeightReading { Name = "weight", Scale_kg = run.Series.Propane_kg[60 * h] + 10, Tare_kg = 10 },
        }),
        scenario.Rig);

    [Fact]
    public void Values_that_the_run_has_itself_differ_by_less_than_a_burner_cycle()
    {
        DateTimeOffset t = Three.Start.AddHours(12);
        MeasuredComparison measured = MeasuredComparison.InRun(With(
            ThreeRun, Value(MeasuredQuantity.Inside, t, ThreeRun.Series.Inside_K[720]), Value(MeasuredQuantity.Liquid, t, ThreeRun.Series.Liquid_K[720]),
            Value(MeasuredQuantity.Pressure, t, ThreeRun.Series.CylinderPressure_Pa[720])));
        Assert.Equal(3, measured.Rows.Count);
        Assert.All(measured.Rows, r => Assert.InRange(r.Times!.Value, -1, 1));
        Assert.All(measured.Groups, g => Assert.Equal(MeasuredFinding.Agrees, g.Finding));
        Assert.Equal([MeasuredCause.Coach, MeasuredCause.Cylinder, MeasuredCause.Cylinder], measured.Groups.Select(g => g.Cause));
    }

    [Fact]
    public void A_value_is_compared_with_the_mean_of_half_an_hour_and_its_scatter_is_part_of_the_error()
    {
        DateTimeOffset t = Three.Start.AddHours(12);
        MeasuredRow row = MeasuredComparison.InRun(With(ThreeRun, Value(MeasuredQuantity.Inside, t, 290))).Rows[0];
        double[] around = ThreeRun.Series.Inside_K[705..736];
        double mean = around.Average(), scatter = Math.Sqrt(around.Average(x => (x - mean) * (x - mean)));
        Assert.Equal(mean, row.Computed!.Value.Value, 9);
        Assert.Equal(290 - mean, row.Difference!.Value, 9);
        Assert.Equal(Math.Sqrt(Math.Pow(Measurement.UsualError(MeasuredQuantity.Inside), 2) + scatter * scatter), row.StandardError!.Value, 6);
    }

    [Fact]
    public void Through_the_log_the_simulated_values_come_back_beside_readings_of_contents()
    {
        // Hour 30 lies after the last reading: the run goes on to the last value.
        Scenario scenario = Three with
        {
            Measurements =
            [
                Value(MeasuredQuantity.Liquid, Three.Start.AddHours(9), ThreeRun.Series.Liquid_K[540]),
                Value(MeasuredQuantity.Pressure, Three.Start.AddHours(20), ThreeRun.Series.CylinderPressure_Pa[1200]),
                Value(MeasuredQuantity.Inside, Three.Start.AddHours(30), ThreeRun.Series.Inside_K[1800]),
            ],
        };
        MeasuredComparison measured = MeasuredComparison.ThroughLog(scenario, Weighed(Three, ThreeRun, 0, 15, 24));
        Assert.Equal(3, measured.Rows.Count);
        Assert.All(measured.Rows, r => Assert.Equal(NotCompared.No, r.Why));
        Assert.All(measured.Rows, r => Assert.InRange(r.Times!.Value, -1, 1));
    }

    [Fact]
    public void Without_a_reading_of_contents_the_log_is_run_from_the_scenarios_start()
    {
        Measurement value = Value(MeasuredQuantity.Liquid, Three.Start.AddHours(9), ThreeRun.Series.Liquid_K[540]);
        MeasuredRow row = Assert.Single(MeasuredComparison.ThroughLog(Three with { Measurements = [value] }, Weighed(Three, ThreeRun)).Rows);
        Assert.InRange(row.Difference!.Value, -0.2, 0.2);
    }

    [Fact]
    public void Values_in_the_runs_time_are_the_runs_and_earlier_ones_the_logs()
    {
        Measurement early = Value(MeasuredQuantity.Liquid, Three.Start.AddHours(9), 260), late = Value(MeasuredQuantity.Liquid, Three.Start.AddHours(30), 260, line: 3);
        Scenario scenario = Three with { Measurements = [late, early] };
        RunReport run = With(NightRun.Of(Three with { Start = Three.Start.AddHours(24) }), late, early);
        MeasuredComparison before = MeasuredComparison.ThroughLog(scenario, Weighed(Three, ThreeRun, 0, 24));
        MeasuredComparison all = MeasuredComparison.Of(run, before);
        Assert.Equal([2, 3], all.Rows.Select(r => r.Measurement.Line));
        Assert.Equal(before.Rows[0], all.Rows[0]);
        Assert.Equal(MeasuredComparison.InRun(run).Rows.Single(), all.Rows[1]);
    }

    [Fact]
    public void A_value_outside_the_weather_is_listed_and_not_compared()
    {
        Scenario scenario = Three with { Measurements = [Value(MeasuredQuantity.Inside, Three.Weather.Last.AddHours(3), 290), Value(MeasuredQuantity.Inside, Three.Weather.First.AddDays(-3), 290)] };
        MeasuredComparison measured = MeasuredComparison.ThroughLog(scenario, Weighed(Three, ThreeRun, 0, 15));
        Assert.Equal([NotCompared.NotRun, NotCompared.NotRun], measured.Rows.Select(r => r.Why));
        Assert.All(measured.Rows, r => Assert.Null(r.Difference));
        Assert.Empty(measured.Groups);
        Assert.Empty(MeasuredComparison.InRun(With(ThreeRun, [.. scenario.Measurements])).Rows);
    }

    [Fact]
    public void Inside_at_the_set_point_speaks_of_the_thermostat_and_below_it_of_the_coach()
    {
        Scenario cold = Three with { HeatStops = Three.Start.AddHours(8) };
        RunReport run = NightRun.Of(cold);
        MeasuredComparison measured = MeasuredComparison.InRun(With(
            run, Value(MeasuredQuantity.Inside, cold.Start.AddHours(5), 295), Value(MeasuredQuantity.Inside, cold.Start.AddHours(14), run.Series.Inside_K[840] - 5)));
        Assert.Equal([InsideState.Held, InsideState.Free], measured.Groups.Select(g => g.Inside));
        Assert.Equal(MeasuredFinding.Lower, measured.Groups[1].Finding);
    }

    [Fact]
    public void A_furnace_that_is_said_to_stop_is_out_in_the_logs_time_too()
    {
        Scenario cold = Three with { HeatStops = Three.Start.AddHours(8) };
        double inside_K = NightRun.Of(cold).Series.Inside_K[840];
        Scenario scenario = cold with { Measurements = [Value(MeasuredQuantity.Inside, cold.Start.AddHours(14), inside_K)] };
        MeasuredRow row = Assert.Single(MeasuredComparison.ThroughLog(scenario, Weighed(Three, ThreeRun, 0)).Rows);
        Assert.InRange(row.Difference!.Value, -0.3, 0.3);
    }

    [Fact]
    public void One_instrument_errs_the_same_way_so_its_own_error_does_not_shrink_with_the_number_of_its_values()
    {
        Measurement[] values = [.. Enumerable.Range(0, 20).Select(i => Value(MeasuredQuantity.Liquid, Three.Start.AddHours(8 + 0.1 * i), 262, line: i))];
        MeasuredGroup group = Assert.Single(MeasuredComparison.InRun(With(ThreeRun, values)).Groups);
        Assert.Equal(20, group.Count);
        Assert.True(group.StandardError >= Measurement.UsualError(MeasuredQuantity.Liquid));
    }

    [Fact]
    public void A_voltage_is_compared_at_rest_and_of_a_flooded_battery_alone()
    {
        Scenario scenario = Demo("battery-first.toml");
        Assert.Equal(BatteryChemistry.Flooded, scenario.Rig.Power!.Battery.Chemistry);
        RunReport run = NightRun.Of(scenario);
        DateTimeOffset t = scenario.Start.AddHours(3);
        double at_V = LeadAcidRestVoltage.AtCharge_V(run.Series.Power!.Charge_frac[180]);
        MeasuredComparison measured = MeasuredComparison.InRun(With(run, Value(MeasuredQuantity.Voltage, t, at_V, rested: true), Value(MeasuredQuantity.Voltage, t, at_V - 0.6, line: 3)));
        Assert.InRange(measured.Rows[0].Difference!.Value, -0.01, 0.01);
        Assert.Equal(NotCompared.NotAtRest, measured.Rows[1].Why);
        Rig lithium = scenario.Rig with
        {
            Power = scenario.Rig.Power with { Battery = scenario.Rig.Power.Battery with { Chemistry = BatteryChemistry.LithiumIronPhosphate } },
        };
        Assert.Equal(NotCompared.Chemistry, MeasuredRow.Of(Value(MeasuredQuantity.Voltage, t, 13, rested: true), null, lithium).Why);
        Assert.Equal(NotCompared.WithoutBattery, MeasuredRow.Of(Value(MeasuredQuantity.Voltage, t, 13, rested: true), null, Three.Rig).Why);
        Assert.Equal(NotCompared.WithoutCoach, MeasuredRow.Of(Value(MeasuredQuantity.Inside, t, 290), null, Three.Rig with { Coach = null }).Why);
    }
}
