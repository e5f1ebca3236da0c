namespace ColdSim.Files.Scenarios.Starters;

/// <summary>The files of a rig to begin with, and what is wrong with what was said of it.</summary>
public static class StarterFiles
{
    /// <summary>The files, weather first where it is written too.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="path">The scenario's file.</param>
    /// <param name="now">Now, by the clock of the place: given lows are of the nights from today on.</param>
    public static IReadOnlyList<(string Path, string Text)> Of(StarterRig rig, string path, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (rig.WeatherFile is { } there)
            return [(path, StarterRigText.Of(rig, there))];
        string name = Path.GetFileNameWithoutExtension(path) + ".weather.csv";
        string weather = rig.Lows.Count == 0 ? StarterScenario.WeatherText()
            : StarterWeather.Of(rig.Lows, new DateTimeOffset(now.Date.AddHours(12), now.Offset));
        return [(Path.Combine(Path.GetDirectoryName(path) ?? "", name), weather), (path, StarterRigText.Of(rig, name))];
    }

    /// <summary>What the scenario's own reader finds wrong, without places: nobody has seen the file yet.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="path">Where the scenario goes; a weather file is looked for beside it.</param>
    /// <param name="now">Now.</param>
    /// <param name="open">Opens files; null takes the disk's.</param>
    public static IReadOnlyList<string> Faults(StarterRig rig, string path, DateTimeOffset now, Func<string, Stream>? open = null)
    {
        ArgumentNullException.ThrowIfNull(rig);
        if (rig.Lows.Count > StarterWeather.MostNights)
            return [FormattableString.Invariant($"{rig.Lows.Count} lows; accepted: up to {StarterWeather.MostNights}")];
        IReadOnlyList<(string Path, string Text)> files = Of(rig, path, now);
        IWeatherSource folder = new FolderWeatherSource(Path.GetDirectoryName(path) ?? "", open);
        ReadResult read = ScenarioReader.ReadText(files[^1].Text, path, files.Count > 1 ? new Written(files[0].Text) : folder);
        return [.. read.Problems.Select(p => Quote.Of(p.What) + (p.Accepted is null ? "" : $"; {p.Accepted}"))];
    }

    /// <summary>The weather that will be written beside the scenario.</summary>
    private sealed class Written(string text) : IWeatherSource
    {
        public bool TryOpen(string file, out Stream? stream, out string shown)
        {
            (stream, shown) = (new MemoryStream(System.Text.Encoding.UTF8.GetBytes(text)), file);
            return true;
        }
    }
}
