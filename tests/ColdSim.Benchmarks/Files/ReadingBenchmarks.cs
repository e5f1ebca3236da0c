using System.Text;
using BenchmarkDotNet.Attributes;
using ColdSim.Files.Scenarios;

namespace ColdSim.Benchmarks.Files;

/// <summary>From text to a scenario that can be run.</summary>
[MemoryDiagnoser]
public class ReadingBenchmarks
{
    private sealed class StarterWeather : IWeatherSource
    {
        private readonly byte[] _bytes = Encoding.UTF8.GetBytes(StarterScenario.WeatherText());

        public bool TryOpen(string file, out Stream? stream, out string shown)
        {
            (stream, shown) = (new MemoryStream(_bytes), file);
            return true;
        }
    }

    private readonly string _text = StarterScenario.Text();
    private readonly StarterWeather _weather = new();

    [Benchmark]
    public bool Starter_scenario_with_its_weather() => ScenarioReader.ReadText(_text, "starter.toml", _weather).Scenario is not null;
}
