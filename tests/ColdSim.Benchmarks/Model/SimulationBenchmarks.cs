using BenchmarkDotNet.Attributes;
using ColdSim.Model.Engine;
using ColdSim.Planning;

namespace ColdSim.Benchmarks.Model;

/// <summary>The step loop alone: nobody watches.</summary>
[MemoryDiagnoser]
public class SimulationBenchmarks
{
    private sealed class Nobody : IRunObserver
    {
        public bool ReadsDelivery => false;

        public int Steps { get; private set; }

        public void Stepped(StepRecord record) => Steps++;

        public void Happened(in SimulationEvent happened, in Snapshot moment)
        {
        }
    }

    private static readonly Scenario Scenario = FourteenNights.Scenario;

    [Benchmark]
    public int Fourteen_nights_step_loop()
    {
        Nobody nobody = new();
        new Simulation(Scenario.Rig, Scenario.Weather, new SimulationSettings
        {
            Start = Scenario.Start,
            Duration_s = 13.83 * 86_400,
            Step_s = Scenario.Step_s,
            Undersupplied_frac = 0.95,
        }).Run(nobody);
        return nobody.Steps;
    }
}
