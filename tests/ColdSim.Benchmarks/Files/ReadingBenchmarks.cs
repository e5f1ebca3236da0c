using BenchmarkDotNet.Attributes;
using ColdSim.Files.Scenarios;

namespace ColdSim.Benchmarks.Files;

/// <summary>From text to a scenario that can be run.</summary>
[MemoryDiagnoser]
public class ReadingBenchmarks
{
    private sealed class StarterWeather : IWeatherSource
    {
        private readonly string _text = StarterScenario.WeatherText();

        public bool TryOpen(string file, out TextReader? reader, out string shown)
        {
            (reader, shown) = (new StringReader(_text), file);
            return true;
        }
    }

    private readonly string _text = StarterScenario.Text();
    private readonly StarterWeather _weather = new();

    [Benchmark]
    public bool Starter_scenario_with_its_weather() => ScenarioReader.ReadText(_text, "starter.toml", _weather).Scenario is not null;
}
