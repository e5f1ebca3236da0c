using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;

namespace ColdSim.Tests.Planning.Fits;

/// <summary>An invented log with a truth that is known: a coach as the scenario does not know it, read with the errors that people make.</summary>
/// <remarks>
/// The truth is an <see cref="InventedCoach"/>, run with a finer step.
/// </remarks>
internal sealed class SyntheticLog
{
    private const double Pound_kg = 0.45359237;

    /// <summary>What the person wrote.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The true coach.</summary>
    public required FittedFactors Truth { get; init; }

    /// <summary>What was read.</summary>
    public required IReadOnlyList<LogReading> Readings { get; init; }

    /// <summary>What was truly in the cylinder at each reading. [kg]</summary>
    public required IReadOnlyList<double> Mass_kg { get; init; }

    /// <summary>Invents one.</summary>
    /// <param name="seed">Of its random numbers.</param>
    /// <param name="days">How long.</param>
    /// <param name="filledAt">The reading at which the cylinder has just been filled; null where it never is.</param>
    public static SyntheticLog Of(int seed, int days = 6, int? filledAt = null)
    {
        InventedCoach coach = InventedCoach.Of(seed, days, [InventedCoach.Cylinder("100 lb")]);
        double[] times_s = [.. Enumerable.Range(0, 2 * days + 1).Select(i => i * 43_200 + (i == 0 ? 0 : 3600 * coach.Between(-1.5, 1.5)))];
        CylinderSpecification cylinder = coach.Scenario.Rig.Cylinders[0];
        double[] mass_kg = filledAt is not { } filled ? Run(coach.Made, coach.Air, times_s)
            : [.. Run(coach.Made, coach.Air, times_s[..filled]), .. Run(coach.Made, coach.Air, times_s[filled..])];
        double tare_kg = cylinder.Tare_kg * (1 + 0.015 * coach.Normal());
        return new()
        {
            Scenario = coach.Scenario,
            Truth = coach.Truth,
            Mass_kg = mass_kg,
            Readings = [.. times_s.Select((t, i) => Read(i, i == filledAt, InventedCoach.Start.AddSeconds(t), Math.Round((mass_kg[i] + tare_kg + 0.2 * Pound_kg * coach.Normal()) / Pound_kg, 1) * Pound_kg, cylinder))],
        };
    }

    /// <summary>The same log with one weighing off.</summary>
    public SyntheticLog Off(int index, double kg) => new()
    {
        Scenario = Scenario,
        Truth = Truth,
        Mass_kg = Mass_kg,
        Readings = [.. Readings.Select((r, i) => i != index ? r : r with { Reading = Weight(((WeightReading)r.Reading).Scale_kg + kg, Scenario.Rig.Cylinders[0]) })],
    };

    private static LogReading Read(int index, bool filled, DateTimeOffset time, double scale_kg, CylinderSpecification cylinder)
        => new() { Line = index + 2, Time = time, Filled = filled, Reading = Weight(scale_kg, cylinder), Note = "invented" };

    private static WeightReading Weight(double scale_kg, CylinderSpecification cylinder) => new() { Name = "weight", Scale_kg = scale_kg, Tare_kg = cylinder.Tare_kg };

    private static double[] Run(Rig rig, WeatherSeries weather, double[] times_s)
    {
        Watch watch = new([.. times_s.Select(t => t - times_s[0])], rig.Cylinders[0].Contents_kg);
        new Simulation(rig, weather, new SimulationSettings { Start = InventedCoach.Start.AddSeconds(times_s[0]), Duration_s = times_s[^1] - times_s[0], Step_s = 30, Undersupplied_frac = 0.95 }).Run(watch);
        return watch.Mass_kg;
    }

    private sealed class Watch(double[] times_s, double start_kg) : IRunObserver
    {
        private int _next;

        public double[] Mass_kg { get; } = [.. times_s.Select(_ => start_kg)];

        public void Stepped(StepRecord record)
        {
            while (_next < times_s.Length && times_s[_next] <= record.To.Time_s + 1e-6)
            {
                double x = Math.Clamp((times_s[_next] - record.From.Time_s) / (record.To.Time_s - record.From.Time_s), 0, 1);
                Mass_kg[_next++] = record.From.Propane_kg + x * (record.To.Propane_kg - record.From.Propane_kg);
            }
        }

        public void Happened(in SimulationEvent happened, in ColdSim.Model.Engine.Snapshot moment)
        {
        }
    }
}
