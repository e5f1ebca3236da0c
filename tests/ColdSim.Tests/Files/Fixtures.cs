using System.Text;
using ColdSim.Files;
using ColdSim.Files.Scenarios;

namespace ColdSim.Tests.Files;

/// <summary>Small scenarios and weather for the readers' tests.</summary>
internal static class Fixtures
{
    /// <summary>Ten hours from 16:00 at -07:00.</summary>
    public const string Weather = """
        time,air [°C]
        2025-01-14T16:00-07:00,-5
        2025-01-14T17:00-07:00,-6
        2025-01-14T18:00-07:00,-7
        2025-01-14T19:00-07:00,-8
        2025-01-14T20:00-07:00,-9
        2025-01-14T21:00-07:00,-10
        """;

    /// <summary>The least that reads.</summary>
    public const string Least = """
        [weather]
        file = "w.csv"
        [cylinder]
        size = "20 lb"
        """;

    public static ReadResult Read(string scenario, string weather = Weather) => ScenarioReader.ReadText(scenario, "s.toml", new OneFile("w.csv", weather));

    /// <summary>The problems as lines.</summary>
    public static string[] Faults(string scenario, string weather = Weather) => [.. Read(scenario, weather).Problems.Select(p => p.ToString())];

    public sealed class OneFile(string name, string content) : IWeatherSource
    {
        public bool TryOpen(string file, out Stream? stream, out string shown)
        {
            bool there = file == name;
            stream = there ? new MemoryStream(Encoding.UTF8.GetBytes(content)) : null;
            shown = there ? file : "there is no such file";
            return there;
        }
    }
}
