using System.Globalization;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>A scenario's tables with an option's keys in them; the scenario's own stay as they are.</summary>
internal static class OptionTree
{
    public static TomlTable Of(TomlTable root, IReadOnlyList<OptionKey> written, Reading reading)
    {
        TomlTable changed = Copy(root);
        IReadOnlyList<OptionKey> keys = IsOneCylinder(root) && written.Any(IsOfNumberedCylinder) ? [.. written.Select(OfTheFirst)] : written;
        if (keys.Any(k => k.Path is ["cylinder", var last] && CylinderShell.IsAnother(last)))
            ForgetCylinder(changed);
        foreach (OptionKey key in keys)
            MakeRoom(changed, key);
        foreach (OptionKey key in keys)
        {
            if (Owner(changed, key, reading) is { } owner)
                owner.Entries[key.Path[^1]] = key.Entry;
        }
        return changed;
    }

    private static bool IsOneCylinder(TomlTable root)
        => root.Entries.GetValueOrDefault("cylinder")?.Value is TomlTable or TomlTables { Items.Count: 1 };

    private static bool IsOfNumberedCylinder(OptionKey key) => key.Path is ["cylinder", var number, _, ..] && IsNumber(number);

    // Beside "cylinder.2.size" a plain "cylinder.size" is that of the cylinder that there is.
    private static OptionKey OfTheFirst(OptionKey key)
        => key.Path is ["cylinder", var next, ..] && !IsNumber(next) ? new OptionKey("cylinder.1" + key.Name["cylinder".Length..], key.Entry) : key;

    private static bool IsNumber(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out _);

    /// <summary>Place of a cylinder, from 0, by its number from 1 or by its name; null where there is none of that name.</summary>
    public static int? CylinderPlace(TomlTable root, string which)
        => int.TryParse(which, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number - 1
            : root.Entries.GetValueOrDefault("cylinder")?.Value is TomlTables many ? Find(many, which) : null;

    private static void ForgetCylinder(TomlTable root)
    {
        if (!root.Entries.TryGetValue("cylinder", out TomlEntry? entry) || entry.Value is not TomlTable table)
            return;
        root.Entries["cylinder"] = entry with { Value = WithoutShell(table) };
    }

    // "cylinder.2.size" makes a list of the one [cylinder], and adds to a list the cylinder after its last.
    private static void MakeRoom(TomlTable root, OptionKey key)
    {
        if (key.Path is not ["cylinder", string number, _, ..] || !int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int place))
            return;
        TomlEntry? entry = root.Entries.GetValueOrDefault("cylinder");
        List<TomlTable> items = entry?.Value switch
        {
            TomlTables many => [.. many.Items],
            TomlTable one => [one],
            _ => [],
        };
        if (entry is null || items.Count == 0)
            return;
        if (place == items.Count + 1)
            items.Add(new TomlTable(key.Entry.KeyPlace, "cylinder") { HasHeader = true });
        if (place >= 1 && place <= items.Count && key.Path is [_, _, var last] && CylinderShell.IsAnother(last))
            items[place - 1] = WithoutShell(items[place - 1]);
        root.Entries["cylinder"] = entry with { Value = new TomlTables(entry.Value.Place, items) };
    }

    // Another size is another cylinder, so nothing of the old one's plate is left.
    private static TomlTable WithoutShell(TomlTable cylinder)
    {
        TomlTable copy = Copy(cylinder);
        foreach (ScenarioKey key in CylinderShell.Keys)
            copy.Entries.Remove(key.Name);
        return copy;
    }

    /// <summary>The table that holds the key's last part; made where it is not there.</summary>
    private static TomlTable? Owner(TomlTable root, OptionKey key, Reading reading)
    {
        TomlTable table = root;
        string[] path = key.Path[..^1];
        for (int i = 0; i < path.Length; i++)
        {
            TomlEntry? there = table.Entries.GetValueOrDefault(path[i]);
            string name = string.Join('.', path[..(i + 1)]);
            switch (there?.Value)
            {
                case null:
                    table = Put(table, path[i], new TomlTable(key.Entry.KeyPlace, name) { HasHeader = true }, key.Entry.KeyPlace);
                    break;
                case TomlTable below:
                    table = Put(table, path[i], Copy(below), there.KeyPlace);
                    break;
                case TomlTables many:
                    string which = i + 1 < path.Length ? path[i + 1] : key.Path[^1];
                    if (i + 1 == path.Length || Find(many, which) is not { } item)
                    {
                        Unclear(key, name, which, many, reading);
                        return null;
                    }
                    TomlTables copies = new(many.Place, [.. many.Items]);
                    table.Entries[path[i]] = there with { Value = copies };
                    table = copies.Items[item] = Copy(many.Items[item]);
                    i++;
                    break;
                default:
                    reading.Report(key.Entry.KeyPlace, $"'{Quote.Of(key.Name)}': '{name}' is no table in the scenario");
                    return null;
            }
        }
        return table;
    }

    private static TomlTable Put(TomlTable owner, string key, TomlTable table, TextPlace place)
    {
        owner.Entries[key] = new TomlEntry(place, table);
        return table;
    }

    /// <summary>One of several tables, by its number from 1 or by its name.</summary>
    private static int? Find(TomlTables tables, string which)
    {
        if (int.TryParse(which, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
            return number >= 1 && number <= tables.Items.Count ? number - 1 : null;
        int named = tables.Items.FindIndex(t => NameOf(t) is { } name && name.Equals(which, StringComparison.OrdinalIgnoreCase));
        return named < 0 ? null : named;
    }

    private static string? NameOf(TomlTable table) => (table.Entries.GetValueOrDefault("name")?.Value as TomlText)?.Value.Trim();

    private static void Unclear(OptionKey key, string name, string which, TomlTables tables, Reading reading)
    {
        string[] names = [.. tables.Items.Select(NameOf).OfType<string>()];
        string byName = names.Length == 0 ? "" : ", or by name: " + string.Join(", ", names);
        int count = tables.Items.Count;
        string last = key.Path[^1];
        FormattableString accepted = count == 1 ? $"write \"{name}.1.{last}\"{byName}" : (FormattableString)$"write \"{name}.1.{last}\" to \"{name}.{count}.{last}\"{byName}";

        // A cylinder may be added.
        bool past = name != "cylinder" && int.TryParse(which, NumberStyles.None, CultureInfo.InvariantCulture, out _);
        string what = past ? FormattableString.Invariant($"'{Quote.Of(key.Name)}': the scenario has {count} [[{name}]], and an option adds none")
            : $"'{Quote.Of(key.Name)}' does not say which [[{name}]] is meant";
        reading.Report(key.Entry.KeyPlace, what, FormattableString.Invariant(accepted), NearestName.Of(which, names));
    }

    private static TomlTable Copy(TomlTable table)
    {
        TomlTable copy = new(table.Place, table.Name) { HasHeader = table.HasHeader };
        foreach ((string key, TomlEntry entry) in table.Entries)
            copy.Entries.Add(key, entry);
        return copy;
    }
}
