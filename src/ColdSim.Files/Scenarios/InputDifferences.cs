using System.Globalization;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Toml;
using ColdSim.Planning.Compare;

namespace ColdSim.Files.Scenarios;

/// <summary>The keys in which two scenario files differ, with both values as they are written; options are left out.</summary>
internal static class InputDifferences
{
    private const string Option = "option";

    /// <summary>The differences, in the order of the first file, then those that only the second has.</summary>
    /// <param name="first">The first file, which can be read.</param>
    /// <param name="second">The second.</param>
    /// <param name="open">Opens a file.</param>
    public static IReadOnlyList<InputDifference> Of(string first, string second, Func<string, Stream> open)
    {
        ArgumentNullException.ThrowIfNull(open);
        List<(string Key, string Value)> before = Values(first, open), after = Values(second, open);
        Dictionary<string, string> its = after.ToDictionary(v => v.Key, v => v.Value, StringComparer.Ordinal);
        List<InputDifference> differences = [];
        foreach ((string key, string value) in before)
        {
            bool given = its.Remove(key, out string? other);
            if (!given || other != value)
                differences.Add(new(key, value, other));
        }

        differences.AddRange(after.Where(v => its.ContainsKey(v.Key)).Select(v => new InputDifference(v.Key, null, v.Value)));
        return differences;
    }

    private static List<(string, string)> Values(string path, Func<string, Stream> open)
    {
        using Stream stream = open(path);
        TomlTree tree = TomlTree.Read(TomlFile.Read(stream), path, CylinderSection.Declared.Name);
        RenamedKeys.Apply(tree.Root);
        List<(string, string)> values = [];
        foreach ((string key, TomlEntry entry) in tree.Root.Entries)
        {
            if (key != Option)
                Add(key, entry.Value, values);
        }

        return values;
    }

    private static void Add(string name, TomlValue value, List<(string, string)> values)
    {
        switch (value)
        {
            case TomlTable table:
                foreach ((string key, TomlEntry entry) in table.Entries)
                    Add($"{name}.{key}", entry.Value, values);
                break;
            case TomlTables { Items: [TomlTable one] } when name == CylinderSection.Declared.Name:
                Add(name, one, values);
                break;
            case TomlTables tables:
                for (int i = 0; i < tables.Items.Count; i++)
                    Add(FormattableString.Invariant($"{name}.{i + 1}"), tables.Items[i], values);
                break;
            default:
                values.Add((name, Text(value)));
                break;
        }
    }

    private static string Text(TomlValue value) => value switch
    {
        TomlText text => text.Value,
        TomlNumber number => number.Written,
        TomlFlag flag => flag.Value ? "true" : "false",
        TomlDateOrTime { HasDate: true, HasTime: true, HasOffset: true } at => at.Value.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture),
        TomlDateOrTime { HasDate: true, HasTime: true } at => at.Value.ToString("yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture),
        TomlDateOrTime { HasDate: true } day => day.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        TomlDateOrTime clock => clock.Value.ToString("HH:mm:ss", CultureInfo.InvariantCulture),
        TomlList list => $"[{string.Join(", ", list.Items.Select(Text))}]",
        _ => "",
    };
}
