using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Toml;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Drafts;

/// <summary>A scenario that is held open: read with changes that are only tried, and written with those that are kept.</summary>
/// <remarks>
/// A changed value goes through the same readers as a written one, so nothing that the file could not hold can be tried. The weather is read once. Every
/// call gives the same for the same changes, and calls from several threads do not disturb each other once the first has returned.
/// </remarks>
public sealed class ScenarioDraft
{
    private readonly string _name;
    private readonly TomlTree _tree;
    private readonly WeatherOnce _weather;

    /// <summary>Opens a scenario's text.</summary>
    /// <param name="text">The text in TOML.</param>
    /// <param name="name">Its name in messages.</param>
    /// <param name="weather">Opens the weather file it names.</param>
    /// <param name="instead">A weather file in place of the one that it names; null for that.</param>
    public ScenarioDraft(string text, string name, IWeatherSource weather, WeatherInstead? instead = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        (Text, _name, _tree, _weather) = (text, name, TomlTree.Read(text, name, CylinderSection.Declared.Name), new WeatherOnce(weather, null, instead));
        if (!_tree.IsBeyondBounds)
            RenamedKeys.Apply(_tree.Root);
    }

    /// <summary>The text as it was opened.</summary>
    public string Text { get; }

    /// <summary>A key's value as the file writes it; null where the file does not give it in a place where it can be changed.</summary>
    /// <param name="key">Its whole name.</param>
    public string? Written(string key)
    {
        ArgumentException.ThrowIfNullOrEmpty(key);
        return new TomlSplice(Text).Value(key.Split('.'));
    }

    /// <summary>A key's number, of a difference of temperature in kelvins; null where the file does not give it in a place where it can be changed.</summary>
    /// <param name="key">Its whole name.</param>
    public double? Number(string key)
    {
        string? written = Written(key)?.Trim('"', '\'');
        return written is null ? null : double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) ? number
            : SiText.Read(written, Dimension.TemperatureDifference, out double difference_K) is null ? difference_K : null;
    }

    /// <summary>The changes that make one more cylinder like one that the file has: shell, surroundings and blanket, not its name or what is in it.</summary>
    /// <param name="like">Number of the cylinder, from 1.</param>
    /// <param name="number">Number of the new one.</param>
    public IReadOnlyList<KeyChange> CylinderLike(int like, int number)
    {
        TomlSplice splice = new(Text);
        List<KeyChange> changes = [];
        void Copy(string below, IEnumerable<ScenarioKey> keys)
        {
            foreach (ScenarioKey key in keys)
            {
                string path = $"{below}{key.Name}";
                if (splice.Value($"{CylinderSection.Declared.Name}.{like}.{path}".Split('.')) is { } value)
                    changes.Add(new($"{CylinderSection.Declared.Name}.{number}.{path}", value));
            }
        }

        Copy("", CylinderSection.OfItsKind);
        foreach (ScenarioSection section in CylinderSection.Declared.Below)
            Copy($"{section.Name}.", section.Keys);
        return changes;
    }

    /// <summary>Reads the scenario with changes; of its options nothing is read.</summary>
    /// <param name="changes">Keys with other values; none for the scenario as it is written. The last of several for one key counts.</param>
    public ReadResult With(IReadOnlyList<KeyChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        if (_tree.IsBeyondBounds)
            return new ReadResult { Scenario = null, Problems = _tree.Problems, Warnings = [] };
        Reading reading = new(_name, _tree.HasSyntaxErrors);
        reading.Problems.AddRange(_tree.Problems);
        List<OptionKey> keys = [.. Last(changes).Select(c => KeyOf(c, reading)).OfType<OptionKey>()];
        TomlTable changed = keys.Count == 0 ? _tree.Root : OptionTree.Of(_tree.Root, keys, reading);
        Scenario? scenario = ScenarioReader.ReadTree(new SectionReader(reading, changed, ScenarioKeys.Root), _weather);
        return new ReadResult
        {
            Scenario = reading.Problems.Count == 0 ? scenario : null,
            Problems = FileProblem.InOrder(reading.Problems, _name),
            Warnings = reading.Warnings,
        };
    }

    /// <summary>The text with changes in place, comments kept.</summary>
    /// <param name="changes">Keys with other values.</param>
    /// <exception cref="InvalidOperationException">The file writes one of these keys in a way that cannot be changed in place, such as in an inline table.</exception>
    public string WrittenWith(IReadOnlyList<KeyChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        TomlSplice splice = new(Text);
        foreach (KeyChange change in Last(changes))
        {
            string[] path = change.Key.Split('.');
            if (path[0] == CylinderSection.Declared.Name && CylinderShell.IsAnother(path[^1]))
                ForgetShell(splice, path);
            splice.Set(path, change.Value);
        }

        // A key of an inline table would be given twice, or its table be opened twice.
        TomlTree after = TomlTree.Read(splice.Text, _name, CylinderSection.Declared.Name);
        return after.Problems.Count <= _tree.Problems.Count ? splice.Text
            : throw new InvalidOperationException($"{after.Problems[0].What}: the file writes it in a way that cannot be changed in place");
    }

    /// <summary>The text with the changes as one more option at its end.</summary>
    /// <param name="option">The option's name, which no other has.</param>
    /// <param name="changes">Keys with other values; at least one.</param>
    public string WrittenWithOption(string option, IReadOnlyList<KeyChange> changes)
    {
        ArgumentException.ThrowIfNullOrEmpty(option);
        ArgumentNullException.ThrowIfNull(changes);
        string end = Text.Length == 0 || Text.EndsWith('\n') ? "" : "\n";
        return $"{Text}{end}\n[[option]]\nname = {Quoted(option)}\n[option.set]\n{string.Concat(Last(changes).Select(c => $"\"{c.Key}\" = {c.Value}\n"))}";
    }

    private static string Quoted(string text)
        => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static IEnumerable<KeyChange> Last(IReadOnlyList<KeyChange> changes)
        => changes.Where((c, i) => !changes.Skip(i + 1).Any(later => later.Key == c.Key));

    // Another size is another cylinder: what the file says of the old one's plate does not hold for it.
    private static void ForgetShell(TomlSplice splice, string[] path)
    {
        foreach (ScenarioKey key in CylinderShell.Keys)
        {
            if (key.Name != path[^1])
                splice.Remove([.. path[..^1], key.Name]);
        }
    }

    private static OptionKey? KeyOf(KeyChange change, Reading reading)
    {
        TomlTree one = TomlTree.Read($"value = {change.Value}\n", change.Key);
        if (one.Problems.Count == 0 && one.Root.Entries.TryGetValue("value", out TomlEntry? entry))
            return new OptionKey(change.Key, entry);
        reading.Report(new TextPlace(1, 1), $"'{Quote.Of(change.Key)}' = {Quote.Of(change.Value)} is no value", "accepted: a value as the scenario file writes it");
        return null;
    }
}
