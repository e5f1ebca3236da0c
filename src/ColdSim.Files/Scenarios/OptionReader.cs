using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Toml;
using ColdSim.Planning;
using ColdSim.Planning.Compare;

namespace ColdSim.Files.Scenarios;

/// <summary><c>[[option]]</c>: for each, the scenario is read again with the option's keys in the place of its own.</summary>
/// <remarks>So every value goes through the same readers as the base's. What is wrong is reported at the option's own lines.</remarks>
internal sealed class OptionReader(Reading reading, TomlTable root, Func<SectionReader, Scenario?> read)
{
    private const int LongestName = 60;
    private const string AcceptedSet = "accepted: a table [option.set] of keys such as \"cylinder.size\" = \"40 lb\"";

    private static readonly TextKey Name = new("name", KeyDefault.Needed, "its row in the table; not \"as it is\", which is the scenario without changes")
    {
        Accepts = $"1 to {LongestName} characters, each option another",
        Such = "100 lb cylinder",
    };

    private static readonly ChangesKey Set = new("set", KeyDefault.Needed, "keys of this page with their new values");

    public static ScenarioSection Declared { get; } = new("option", TableForm.Many, "something to try, to be compared with the rest", [Name, Set])
    {
        FixedForOptions = true,
    };

    private readonly FileProblem[] _base = [.. reading.Problems];
    private readonly string[] _baseWarnings = [.. reading.Warnings];

    public IReadOnlyList<ComparedOption> Read()
    {
        List<ComparedOption> options = [];
        Dictionary<string, TextPlace> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (SectionReader section in new SectionReader(reading, root, ScenarioKeys.Root).Sections(Declared))
        {
            string? name = ReadName(section, names);
            List<OptionKey> keys = ReadSet(section);
            section.Finish();
            if (keys.Count > 0 && ReadChanged(name ?? "without a name", keys) is { } scenario && name is not null)
            {
                options.Add(new ComparedOption(name, scenario)
                {
                    OwnCylinders = OwnCylinders(keys),
                    ChangesTripOnly = keys.TrueForAll(k => k.Path[0] is "stop" or "refill"),
                });
            }
        }
        return options;
    }

    private string? ReadName(SectionReader section, Dictionary<string, TextPlace> names)
    {
        if (!section.Has(Name))
            section.Lacks(Name, "accepted: a text in quotes, the option's name in the table");
        if (section.Get(Name)?.Trim() is not { } name)
            return null;
        TextPlace place = section.ValuePlace(Name);
        if (name.Length is 0 or > LongestName || name.Any(char.IsControl))
            reading.Report(place, "'name' is empty, too long or more than a line", $"accepted: a text of 1 to {LongestName} characters");
        else if (name.Equals(ComparedOption.AsItIs, StringComparison.OrdinalIgnoreCase))
            reading.Report(place, $"'name' is \"{Quote.Of(name)}\", which is what the scenario without changes is called");
        else if (!names.TryAdd(name, place))
            reading.Report(place, $"'name' is \"{Quote.Of(name)}\", and another option is called so", FormattableString.Invariant($"it is first given in line {names[name].Line}"));
        else
            return name;
        return null;
    }

    private List<OptionKey> ReadSet(SectionReader section)
    {
        List<OptionKey> keys = [];
        switch (section.Value(Set))
        {
            case TomlTable set:
                Flatten(set, "", keys);
                if (set.Entries.Count == 0)
                    reading.Missing(set.Place, "the option changes nothing", AcceptedSet);
                break;
            case null when !section.Has(Set): section.Lacks(Set, AcceptedSet); break;
            case { } other: reading.Report(other.Place, $"'set' is {other.Kind}", AcceptedSet); break;
            default: break;
        }
        int faults = reading.Problems.Count;
        foreach (IGrouping<string, OptionKey> twice in keys.GroupBy(k => k.Name, StringComparer.Ordinal).Where(g => g.Count() > 1))
            reading.Report(twice.Last().Entry.KeyPlace, $"key '{Quote.Of(twice.Key)}' is given twice", FormattableString.Invariant($"it is first given in line {twice.First().Entry.KeyPlace.Line}"));
        foreach (OptionKey key in keys)
        {
            // All options go through the same nights and are judged the same way; else there would be nothing to compare.
            if (Fixed(key) is { } common)
                reading.Report(key.Entry.KeyPlace, $"an option may not change '{Quote.Of(common)}'", "all options have the scenario's own nights, weather file and verdict");
        }
        return reading.Problems.Count == faults ? keys : [];
    }

    private int[] OwnCylinders(List<OptionKey> keys)
        => [.. keys.Select(key => key.Path switch
        {
            ["cylinder", var last] when CylinderSection.IsSizeOrContents(last) => 0,
            ["cylinder", var which, var last] when CylinderSection.IsSizeOrContents(last) => OptionTree.CylinderPlace(root, which),
            _ => null,
        }).OfType<int>().Distinct()];

    // What of a key is not for an option to change; of a stop, which is meant by number or name, the whole key.
    private static string? Fixed(OptionKey key)
    {
        if (key.Path is ["stop", _, "from" or "to" or "weather", ..])
            return key.Name;
        return ScenarioKeys.FixedForOptions.FirstOrDefault(c => key.Name == c || key.Name.StartsWith(c + ".", StringComparison.Ordinal));
    }

    // "cylinder.size" in quotes is one key with dots; without quotes TOML makes tables of it. Both mean the same here.
    private static void Flatten(TomlTable table, string before, List<OptionKey> keys)
    {
        foreach ((string key, TomlEntry entry) in table.Entries)
        {
            if (entry.Value is TomlTable below)
                Flatten(below, before + key + ".", keys);
            else if (entry.Value is not TomlBroken)
                keys.Add(new OptionKey(RenamedKeys.Now(before + key), entry));
        }
    }

    private Scenario? ReadChanged(string name, List<OptionKey> keys)
    {
        Reading again = reading.Again();

        // A base that is not whole makes no scenario with an option in it either; only the option's own faults are of interest then.
        again.Problems.AddRange(_base);
        TomlTable changed = OptionTree.Of(root, keys, again);
        Scenario? scenario = read(new SectionReader(again, changed, ScenarioKeys.Root));
        foreach (FileProblem problem in again.Problems.Except(_base))
            reading.Problems.Add(Owned(problem, name, keys));
        foreach (string warning in again.Warnings.Except(_baseWarnings))
            reading.Warnings.Add($"option '{Quote.Of(name)}': {warning}");
        return scenario;
    }

    // A fault may show at a line of the base that was right until the option changed something beside it.
    private FileProblem Owned(FileProblem problem, string name, List<OptionKey> keys)
    {
        string what = $"option '{Quote.Of(name)}': {problem.What}";
        if (problem.File != reading.File)
            return problem with { What = what };
        TextPlace place = new(problem.Line, problem.Column);
        if (keys.Exists(k => k.Entry.KeyPlace == place || Places(k.Entry.Value).Contains(place)))
            return problem with { What = what };
        OptionKey blamed = keys.Find(k => root.Entries.TryGetValue(k.Path[0], out TomlEntry? top) && Holds(top, place)) ?? keys[0];
        return problem with { What = what, Line = blamed.Entry.KeyPlace.Line, Column = blamed.Entry.KeyPlace.Column };
    }

    private static bool Holds(TomlEntry entry, TextPlace place) => entry.KeyPlace == place || Places(entry.Value).Contains(place);

    private static IEnumerable<TextPlace> Places(TomlValue value) => value switch
    {
        TomlTable table => [table.Place, .. table.Entries.Values.SelectMany(e => Places(e.Value).Prepend(e.KeyPlace))],
        TomlTables tables => tables.Items.SelectMany(Places),
        TomlList list => [list.Place, .. list.Items.SelectMany(Places)],
        _ => [value.Place],
    };
}

/// <summary>One key that an option sets.</summary>
/// <param name="Name">Dotted, from the top level.</param>
/// <param name="Entry">Its place and value as the option writes them.</param>
internal sealed record OptionKey(string Name, TomlEntry Entry)
{
    /// <summary>The name's parts.</summary>
    public string[] Path { get; } = Name.Split('.');
}
