using BenchmarkDotNet.Attributes;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Propane;

namespace ColdSim.Benchmarks.Model;

/// <summary>What the parts of one step cost.</summary>
[MemoryDiagnoser]
public class PartBenchmarks
{
    private readonly CylinderBody _body = new(FourteenNights.Scenario.Rig.Cylinders[0]);
    private readonly WeatherSeries _weather = FourteenNights.Scenario.Weather;
    private readonly FrostLayer _frost = new(0.1, 0.001);
    private GasSupply _supply = null!;
    private WeatherSample _sample;
    private int _row;

    [GlobalSetup]
    public void Setup()
    {
        _sample = _weather.At(200_000, ref _row);
        _supply = new GasSupply(new TwoStageRegulator(new RegulatorSpecification(), 50.33e6), [new GasLoad(1.2e-4, 2615)]);
        _supply.Set(0, true);
    }

    [Benchmark]
    public double Saturation_table() => SaturationTable.At(251.3).DrawHeat_J_kg;

    [Benchmark]
    public double Reference_equation() => ReferenceEquation.At(251.3, 5).Pressure_Pa;

    [Benchmark]
    public double Cylinder_contents() => _body.Contents(20, 251.3).HeatCapacity_J_K;

    [Benchmark]
    public double Cylinder_film() => HeatCoupling.At(_body, _sample, 20, 251.3, _frost).Conductance_W_K;

    [Benchmark]
    public double Weather_sample() => _weather.At(201_234, ref _row).Air_K;

    [Benchmark]
    public double Supply_fed() => _supply.At(new FeedPressures(250e3, 0, 251), 85e3).Flow_kg_s;

    [Benchmark]
    public double Supply_starved() => _supply.At(new FeedPressures(86.5e3, 0, 231), 85e3).Flow_kg_s;
}
