using System.Text;
using ColdSim.Files.Scenarios;

namespace ColdSim.App;

/// <summary>The demo scenario inside the program, so that it opens from any folder.</summary>
internal static class Demo
{
    public const string Name = "cold-snap.toml";

    /// <summary>The name of its weather file.</summary>
    public const string WeatherName = "cold-snap-weather.csv";

    private const string Folder = "scenarios/";

    public static string Scenario() => Text(Name);

    /// <summary>The text of its weather file.</summary>
    public static string Weather() => Text(WeatherName);

    private static string Text(string file)
    {
        using StreamReader reader = new(Open(file) ?? throw new InvalidOperationException($"this build holds no demo '{file}'"), Encoding.UTF8);
        return reader.ReadToEnd();
    }

    public static Stream? Open(string file) => typeof(Demo).Assembly.GetManifestResourceStream(Folder + file);
}

/// <summary>The demo's weather inside the program.</summary>
internal sealed class DemoWeather : IWeatherSource
{
    public bool TryOpen(string file, out Stream? stream, out string shown)
    {
        stream = Demo.Open(file);
        shown = stream is null ? "not built in" : file;
        return stream is not null;
    }
}
