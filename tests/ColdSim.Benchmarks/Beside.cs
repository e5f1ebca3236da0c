using System.Diagnostics;
using System.Globalization;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Engine;
using ColdSim.Planning;

namespace ColdSim.Benchmarks;

/// <summary>The step loop on the rig of `beside/one-rig.toml`, for the programs there that solve the same equations.</summary>
internal static class Beside
{
    private const int Runs = 200;

    /// <summary>Prints steps, least time and what the run came to.</summary>
    /// <param name="rig">The scenario.</param>
    public static int Run(string rig)
    {
        if (ScenarioReader.Read(rig).Scenario is not { } scenario)
            return 2;
        double nights_s = (scenario.Nights ?? 1) * 86_400.0;
        SimulationSettings settings = new() { Start = scenario.Start, Duration_s = nights_s, Step_s = scenario.Step_s, Undersupplied_frac = scenario.Criteria.Undersupplied.DecimalFractions };
        double least_ms = double.PositiveInfinity;
        Counter counter = new();
        RigState? end = null;
        for (int i = 0; i < Runs; i++)
        {
            counter = new Counter();
            Simulation simulation = new(scenario.Rig, scenario.Weather, settings);
            Stopwatch clock = Stopwatch.StartNew();
            simulation.Run(counter);
            least_ms = Math.Min(least_ms, clock.Elapsed.TotalMilliseconds);
            end = simulation.State();
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"steps {counter.Steps}, burner starts {counter.Starts}, least {least_ms:0.000} ms, {1e6 * least_ms / counter.Steps:0} ns a step, left {end!.Cylinders[0].Propane_kg:0.000000} kg, liquid {end.Cylinders[0].Liquid_K:0.0000} K, inside {end.Air_K:0.000} K"));
        return 0;
    }

    private sealed class Counter : IRunObserver
    {
        public int Steps { get; private set; }

        public int Starts { get; private set; }

        public void Stepped(StepRecord record) => Steps++;

        public void Happened(in SimulationEvent happened, in Snapshot snapshot)
        {
            if (happened.Kind == EventKind.BurnerOn)
                Starts++;
        }
    }
}
