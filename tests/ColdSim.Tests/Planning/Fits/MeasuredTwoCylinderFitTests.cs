using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using ColdSim.Tests.Files;
using Xunit;
using Xunit.Abstractions;

namespace ColdSim.Tests.Planning.Fits;

/// <summary>
/// Temperatures and pressures of two cylinders in a fit. Rig and log are invented: a big draw from cylinders that are more in the wind than
/// the scenario says, on a changeover; the left one is empty after a day and a half.
/// </summary>
public class MeasuredTwoCylinderFitTests(ITestOutputHelper output)
{
    private const double Truth = 0.6;
    private const int Hours = 60;

    // Eight in ten of the prior lie within so much of its middle, to both sides together.
    private const double PriorInterval = 2 * 1.2816 * 0.2;

    private static readonly Scenario Written = Drawn();

    private static readonly TrueRun True = TrueRun.Of(Written, FittedFactors.None.With(FitKind.WindExposure, Truth).Over(Written.Rig));

    private static readonly LogReading[] Weighed =
    [
        .. from i in Enumerable.Range(0, Hours / 6 + 1)
           from cylinder in Enumerable.Range(0, 2)
           select new LogReading
           {
               Line = 2 + 2 * i + cylinder,
               Cylinder = cylinder,
               Time = Written.Start.AddHours(6 * i),
               Reading = new WeightReading { Name = "weight", Scale_kg = True.Held_kg[6 * i][cylinder] + 10, Tare_kg = 10 },
           },
    ];

    private static readonly int[] Looked_h = [.. Enumerable.Range(4, Hours - 4).Where(h => h % 3 == 0)];

    private static readonly Measurement[] Temperatures = [.. Looked_h.SelectMany(h => new[] { At(h, 0), At(h, 1) })];

    private static Scenario Drawn()
    {
        Scenario three = ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "three-days.toml")).Scenario!;
        CylinderSpecification size = InventedCoach.Cylinder("100 lb"), cylinder = SizeSweep.Resized(three.Rig.Cylinders[0], size) with { Contents_kg = size.Contents_kg };
        return three with
        {
            Rig = three.Rig with
            {
                Cylinders = [cylinder with { Label = "left", Contents_kg = 32 }, cylinder with { Label = "right" }],
                Arrangement = new AutomaticChangeover(),
                Appliances = [new ConstantDraw { Name = "kiln", Input_W = 8000, HeatToCoach_frac = 0 }],
            },
        };
    }

    // A thermometer that shows half a kelvin too much, and is read half a kelvin off one way and the other.
    private static Measurement At(int hour, int cylinder, MeasuredQuantity quantity = MeasuredQuantity.Liquid) => new()
    {
        Line = 100 + 2 * hour + cylinder,
        Time = Written.Start.AddHours(hour),
        Quantity = quantity,
        Value = quantity == MeasuredQuantity.Pressure ? True.Pressure_Pa[hour][cylinder]
            : True.Liquid_K[hour][cylinder] + 0.5 + (hour % 2 == 0 ? 0.5 : -0.5),
        StandardError = quantity == MeasuredQuantity.Pressure ? 5000 : 0.6,
        Cylinder = cylinder,
    };

    private FitReport Fit(params Measurement[] measured)
    {
        FitReport fit = CoachFit.Of(Written with { Measurements = measured }, Weighed);
        output.WriteLine(Wind(fit) is { } wind ? $"{wind.Value:0.00}, {wind.Low:0.00} to {wind.High:0.00}, learned {wind.Learned_frac:0.00}" : "silent");
        output.WriteLine($"used {fit.MeasuredUsed}, unclear {string.Join(' ', fit.MeasuredUnclear)}, left out {string.Join(' ', fit.MeasuredLeftOut)}");
        output.WriteLine(string.Join("\n", fit.Feeds));
        return fit;
    }

    private static FitEstimate? Wind(FitReport fit) => fit.Estimates.FirstOrDefault(e => e.Kind == FitKind.WindExposure);

    [Fact]
    public void Weights_alone_say_nothing_of_wind_exposure_and_temperatures_of_the_liquids_narrow_it_about_the_truth()
    {
        Assert.Null(Wind(Fit()));
        FitEstimate wind = Wind(Fit(Temperatures))!;
        Assert.True(wind.High - wind.Low < 0.9 * PriorInterval);
        Assert.InRange(Truth, wind.Low, wind.High);
        Assert.InRange(wind.Value, Written.Rig.Cylinders[0].Surroundings.WindExposure_frac + 0.05, Truth + 0.05);
    }

    [Fact]
    public void Pressures_say_the_same_within_their_wider_error()
    {
        FitEstimate wind = Wind(Fit([.. Looked_h.SelectMany(h => new[] { At(h, 0, MeasuredQuantity.Pressure), At(h, 1, MeasuredQuantity.Pressure) })]))!;
        Assert.True(wind.High - wind.Low < 0.9 * PriorInterval);
        Assert.InRange(Truth, wind.Low, wind.High);
    }

    [Fact]
    public void Values_at_times_of_which_the_log_does_not_show_who_fed_are_left_out_and_named()
    {
        FitReport fit = Fit(Temperatures);
        DateTimeOffset doubted = fit.Feeds.First(f => f.Other is not null).From;
        Assert.Equal(Temperatures.Where(t => t.Time > doubted).Select(t => t.Line), fit.MeasuredUnclear);
        Assert.Equal(Temperatures.Count(t => t.Time <= doubted), fit.MeasuredUsed);
        Assert.InRange(fit.MeasuredUsed, 1, Temperatures.Length - 1);
    }

    [Fact]
    public void Each_value_is_compared_with_the_liquid_of_its_own_cylinder()
    {
        Scenario scenario = Written with { Measurements = Temperatures };
        UseLog log = UseLog.Of(Weighed, Written.Rig);
        double[] use_kg = [.. Enumerable.Range(0, Hours / 6).Select(i => True.Held_kg[6 * i].Sum() - True.Held_kg[6 * i + 6].Sum())];
        FitProblem problem = FitProblem.Of(scenario, log, FeedTracker.Of(Written.Rig, log, use_kg, 0.1));
        double[] values = new FitRun(problem).At(FittedFactors.None.With(FitKind.WindExposure, Truth)).Values[log.Rows.Count..];
        Assert.NotEmpty(values);
        for (int i = 0; i < values.Length; i++)
        {
            int hour = (int)(problem.Measured[i].Time - Written.Start).TotalHours, cylinder = problem.Measured[i].Cylinder;
            output.WriteLine($"{hour} h, {cylinder}: {values[i]:0.00} K, true {True.Liquid_K[hour][cylinder]:0.00} K");

            // The run may hold up to a twentieth of the filling more than the cylinder did, which is to move it by less than half of its error.
            Assert.Equal(True.Liquid_K[hour][cylinder], values[i], MeasuredErrors.Each_K / 2);
        }

        Assert.Contains(problem.Measured, m => True.Liquid_K[(int)(m.Time - Written.Start).TotalHours] is var both && both[1] - both[0] > 5);
    }

    // Each cylinder's liquid at each whole hour.
    private sealed class TrueRun : IRunObserver
    {
        public List<double[]> Held_kg { get; } = [];

        public List<double[]> Liquid_K { get; } = [];

        public List<double[]> Pressure_Pa { get; } = [];

        public static TrueRun Of(Scenario scenario, Rig rig)
        {
            TrueRun run = new();
            new Simulation(rig, scenario.Weather, new SimulationSettings
            {
                Start = scenario.Start,
                Duration_s = Hours * 3600,
                Step_s = scenario.Step_s,
                Undersupplied_frac = scenario.Criteria.Undersupplied.DecimalFractions,
            }).Run(run);
            return run;
        }

        public void Stepped(StepRecord record)
        {
            if (Held_kg.Count == 0)
                Add(in record.From);
            if (record.To.Time_s >= 3600 * Held_kg.Count - 1e-6)
                Add(in record.To);
        }

        public void Happened(in SimulationEvent happened, in ColdSim.Model.Engine.Snapshot moment)
        {
        }

        private void Add(in ColdSim.Model.Engine.Snapshot at)
        {
            Held_kg.Add([at.Cylinder(0).Propane_kg, at.Cylinder(1).Propane_kg]);
            Liquid_K.Add([at.Cylinder(0).Liquid_K, at.Cylinder(1).Liquid_K]);
            Pressure_Pa.Add([at.Cylinder(0).Pressure_Pa, at.Cylinder(1).Pressure_Pa]);
        }
    }
}
