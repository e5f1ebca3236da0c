using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using ColdSim.Planning.Capacity;
using ColdSim.Tests.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Planning.Capacity;

public class LastingDrawTests
{
    private static double Fahrenheit(double f) => (f + ConversionFactors.ZeroFahrenheit_R) / 1.8;

    private static CapacityQuestion Question(string size, IReadOnlyList<double> lows_F, IReadOnlyList<double> fills, params CapacityTime[] times) => new()
    {
        Cylinder = StandardSize.Find(size)!.Full(),
        Lows_K = [.. lows_F.Select(Fahrenheit)],
        Fills_frac = fills,
        Times = times,
    };

    // Counts how long a draw gets all it asks for.
    private sealed class Fed : IRunObserver
    {
        public double Short_s { get; private set; } = double.PositiveInfinity;

        public double Pressure_Pa { get; private set; }

        public void Stepped(StepRecord record)
        {
            if (record.Given_W < 0.998 * record.Asked_W) Short_s = Math.Min(Short_s, record.From.Time_s);
            else if (double.IsInfinity(Short_s)) Pressure_Pa = record.To.CylinderPressure_Pa;
        }

        public void Happened(in SimulationEvent happened, in ColdSim.Model.Engine.Snapshot snapshot)
        {
        }
    }

    private static (Fed Watch, SimulationResult Result) Run(CapacityQuestion question, CapacityCell cell, double draw_W)
    {
        (WeatherSeries weather, DateTimeOffset start) = CapacityWeather.Of(question, cell.Time, cell.Low_K);
        DrawConditions conditions = new() { Rig = question.RigAt(cell.Fill_frac), Weather = weather, Start = start };
        Fed watch = new();
        SimulationSettings settings = new() { Start = start, Duration_s = cell.Time.Time_s, Step_s = 60, Undersupplied_frac = 0.95 };
        return (watch, new Simulation(conditions.With(draw_W), weather, settings).Run(watch));
    }

    [Theory]
    [InlineData("20 lb", 20, 0.4)]
    [InlineData("20 lb", -20, 1)]
    [InlineData("100 lb", 0, 0.2)]
    [InlineData("11 kg", 20, 0.1)]
    public void The_stated_draw_is_fed_for_its_time_and_one_that_is_2_percent_greater_is_not(string size, double low_F, double fill)
    {
        CapacityQuestion question = Question(size, [low_F], [fill], CapacityTime.Hours(1), CapacityTime.Hours(8), CapacityTime.Night);
        foreach (CapacityCell cell in CapacityTable.Of(question).Cells)
        {
            Assert.True(cell.Draw_W > 0);
            Assert.True(Run(question, cell, 0.999 * cell.Draw_W).Watch.Short_s >= cell.Time.Time_s, $"{cell}");
            Assert.True(Run(question, cell, 1.02 * cell.Draw_W).Watch.Short_s < cell.Time.Time_s, $"{cell}");
        }
    }

    [Fact]
    public void It_ends_where_the_regulator_is_just_fed_and_not_at_air_pressure()
    {
        CapacityQuestion question = Question("20 lb", [20, 0, -20], [1, 0.4], CapacityTime.Hours(1), CapacityTime.Hours(4));
        TwoStageRegulator regulator = new(question.Regulator, new Rig { Cylinders = [] }.Gas.PlateHeatingValue_J_kg);
        foreach (CapacityCell cell in CapacityTable.Of(question).Cells)
        {
            double flow_kg_s = cell.Draw_W / new Rig { Cylinders = [] }.Gas.PlateHeatingValue_J_kg;
            double needed_Pa = regulator.SufficientInlet_Pa(flow_kg_s, DrawConditions.UsualDelivery_Pa, Some.Sea_Pa, cell.Liquid_K) - Some.Sea_Pa;
            Assert.True(needed_Pa > DrawConditions.UsualDelivery_Pa);

            // A draw up to 1 % smaller than the greatest leaves a little above that.
            Assert.InRange(Run(question, cell, cell.Draw_W).Watch.Pressure_Pa - needed_Pa, -0.01 * needed_Pa, 0.25 * (needed_Pa + Some.Sea_Pa));
        }
    }

    [Fact]
    public void It_is_less_for_longer_colder_and_emptier()
    {
        double[] lows_F = [30, 10, -10, -30], fills = [1, 0.6, 0.3, 0.1];
        CapacityTime[] times = [CapacityTime.Hours(1), CapacityTime.Hours(4), CapacityTime.Hours(8), CapacityTime.Hours(16)];
        CapacityTable table = CapacityTable.Of(Question("30 lb", lows_F, fills, times));
        for (int t = 0; t < times.Length; t++)
        {
            for (int l = 0; l < lows_F.Length; l++)
            {
                for (int f = 0; f < fills.Length; f++)
                {
                    double here_W = table.At(t, l, f).Draw_W * (1 + 2 * LastingDraw.Tolerance_frac);
                    if (t + 1 < times.Length) Assert.True(table.At(t + 1, l, f).Draw_W < here_W);
                    if (l + 1 < lows_F.Length) Assert.True(table.At(t, l + 1, f).Draw_W < here_W);
                    if (f + 1 < fills.Length) Assert.True(table.At(t, l, f + 1).Draw_W < here_W);
                }
            }
        }
    }

    [Fact]
    public void It_is_the_same_however_many_cells_are_worked_out_at_once()
    {
        CapacityQuestion question = Question("20 lb", [20, 0], [1, 0.4], CapacityTime.Hours(4), CapacityTime.Night);
        Assert.Equal(CapacityTable.Of(question, workers: 1).Cells, CapacityTable.Of(question, workers: 4).Cells);
    }

    // Fixed conductance: liquid of one temperature that a constant draw cools and the air warms, stepped here by a tenth of a second without the engine.
    [Theory]
    [InlineData(4, 1.0, -10)]
    [InlineData(4, 0.3, -20)]
    [InlineData(8, 1.0, -20)]
    public void With_a_fixed_conductance_it_is_what_the_equation_of_one_warm_mass_gives(double hours, double fill, double air_C)
    {
        const double conductance_W_K = 4;
        StandardSize size = StandardSize.Find("20 lb")!;
        double air_K = air_C + ConversionFactors.ZeroCelsius_K;
        CapacityQuestion question = Question("20 lb", [air_K * 1.8 - ConversionFactors.ZeroFahrenheit_R], [fill], CapacityTime.Hours(hours));
        question = question with { Cylinder = question.Cylinder with { Surroundings = new() { FixedConductance_W_K = conductance_W_K } } };
        CapacityCell cell = CapacityTable.Of(question).Cells[0];

        double heating_J_kg = new Rig { Cylinders = [] }.Gas.HeatingValue_J_kg, draw_kg_s = cell.Draw_W / heating_J_kg;
        double mass_kg = fill * size.LegalFill_kg, t_K = air_K;
        const double step_s = 0.1;
        for (double time_s = 0; time_s < hours * 3600 - 0.5 * step_s; time_s += step_s)
        {
            TwoPhaseContents contents = new(mass_kg, size.Volume_m3, t_K);
            double heat_W = conductance_W_K * (air_K - t_K) - draw_kg_s * contents.DrawHeat_J_kg;
            t_K += step_s * heat_W / (contents.HeatCapacity_J_K + size.ShellMass_kg * 460);
            mass_kg -= step_s * draw_kg_s;
        }

        Assert.Equal(cell.Liquid_K, t_K, 0.02);
        Assert.Equal(cell.Left_kg, mass_kg, 1e-3);
        TwoStageRegulator regulator = new(question.Regulator, heating_J_kg);
        double needed_Pa = regulator.SufficientInlet_Pa(1.01 * draw_kg_s, DrawConditions.UsualDelivery_Pa, Some.Sea_Pa, t_K);
        Assert.InRange(PropaneSaturation.Pressure_Pa(t_K), 0.998 * needed_Pa, 1.12 * needed_Pa);
    }

    [Fact]
    public void Without_end_is_the_draw_whose_heat_of_evaporation_flows_in_at_the_liquid_that_just_feeds_it()
    {
        CapacityQuestion question = Question("20 lb", [20, -20], [1, 0.2], CapacityTime.WithoutEnd);
        question = question with { Cylinder = question.Cylinder with { Surroundings = new() { FixedConductance_W_K = 4 } } };
        Assert.All(CapacityTable.Of(question).Cells, c =>
        {
            double heating_J_kg = new Rig { Cylinders = [] }.Gas.HeatingValue_J_kg;
            double heat_W = c.Draw_W / heating_J_kg * new TwoPhaseContents(c.Contents_kg, question.Cylinder.Volume_m3, c.Liquid_K).DrawHeat_J_kg;
            Assert.Equal(4 * (c.Low_K - c.Liquid_K), heat_W, 0.01 * heat_W);
        });
    }

    [Fact]
    public void Without_gas_below_the_minimum_inlet_the_liquid_ends_near_the_pressure_on_the_plate()
    {
        CapacityQuestion question = Question("20 lb", [20, 0, -20], [1, 0.4], CapacityTime.Hours(1), CapacityTime.Hours(4), CapacityTime.WithoutEnd);
        CapacityQuestion shutting = question with { Regulator = question.Regulator with { ShutsBelowMinimum = true } };
        CapacityTable both = CapacityTable.Of(question), above = CapacityTable.Of(shutting);
        for (int i = 0; i < both.Cells.Count; i++)
        {
            Assert.InRange(both.Cells[i].AboveMinimumInlet_W, 0, both.Cells[i].Draw_W);
            Assert.Equal(above.Cells[i].Draw_W, both.Cells[i].AboveMinimumInlet_W, 0.02 * above.Cells[i].Draw_W);
            if (above.Cells[i].Draw_W <= 0) continue;

            // It shuts over the last tenth below that pressure.
            double end_Pa = PropaneSaturation.Pressure_Pa(above.Cells[i].Liquid_K) - Some.Sea_Pa;
            Assert.True(end_Pa > 0.9 * RegulatorSpecification.UsualMinimumInlet_Pa, $"{above.Cells[i]}: {end_Pa}");
        }
    }

    [Fact]
    public void What_a_cylinder_cannot_give_is_told_by_its_cause()
    {
        CapacityTable table = CapacityTable.Of(Question("100 lb", [60, -50], [1, 0.05], CapacityTime.Hours(1), CapacityTime.Hours(8)));
        Assert.Equal(CapacityEnd.Regulator, table.At(0, 0, 0).End);
        Assert.Equal(CapacityEnd.Emptied, table.At(1, 0, 1).End);
        Assert.Equal(0, table.At(0, 1, 0).Draw_W);
        Assert.All(table.Cells.Where(c => c.Draw_W > 0), c => Assert.True(c.Ledger!.Value.Closes));
    }
}
