using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>Changes single keys of a scenario's text and leaves everything else, comments too, as it is.</summary>
/// <remarks>The changed text is read again like any other, so that a change is checked as if somebody had written it.</remarks>
internal static class ScenarioText
{
    /// <summary>The text with one key set.</summary>
    /// <param name="text">A scenario that parses.</param>
    /// <param name="key">Such as <c>cylinder.size</c>; its table is added at the end where it is not there.</param>
    /// <param name="value">As TOML writes it: <c>"30 lb"</c> with its quotes, <c>3</c>, <c>["22:00-06:00"]</c>.</param>
    public static string With(string text, string key, string value)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrEmpty(key);
        ArgumentException.ThrowIfNullOrEmpty(value);
        TomlSplice splice = new(text);
        splice.Set(key.Split('.'), value);
        return splice.Text;
    }
}
