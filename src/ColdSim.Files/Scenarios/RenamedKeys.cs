using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>Keys that had another name in older files: they are read by either, and never by both at once.</summary>
internal static class RenamedKeys
{
    // A table's name ends a key's path in an option, so each is known by the last name of its section.
    private static readonly ScenarioSection[] Sections = [SurroundingsSection.Declared, FitSection.Declared];

    /// <summary>Gives old names in a scenario's tables their present ones.</summary>
    /// <param name="root">The scenario's top level.</param>
    /// <param name="reading">Receives the faults; null where nobody asks for them.</param>
    public static void Apply(TomlTable root, Reading? reading = null)
    {
        switch (root.Entries.GetValueOrDefault(CylinderSection.Declared.Name)?.Value)
        {
            case TomlTable one: Below(one, reading); break;
            case TomlTables several:
                foreach (TomlTable cylinder in several.Items)
                    Below(cylinder, reading);
                break;
            default: break;
        }

        if (root.Entries.GetValueOrDefault(FitSection.Declared.Name)?.Value is TomlTable fit)
            Rename(fit, FitSection.Declared, reading);
    }

    /// <summary>A key of an option by its present name.</summary>
    /// <param name="path">The key with the tables before it, parted by dots.</param>
    public static string Now(string path)
    {
        foreach (ScenarioSection section in Sections)
        {
            foreach (ScenarioKey key in section.Keys)
            {
                if (key.OldName is { } old && path.EndsWith($"{section.Name}.{old}", StringComparison.Ordinal))
                    return path[..^old.Length] + key.Name;
            }
        }

        return path;
    }

    private static void Below(TomlTable cylinder, Reading? reading)
    {
        if (cylinder.Entries.GetValueOrDefault(SurroundingsSection.Declared.Name)?.Value is TomlTable surroundings)
            Rename(surroundings, SurroundingsSection.Declared, reading);
    }

    private static void Rename(TomlTable table, ScenarioSection declared, Reading? reading)
    {
        foreach (ScenarioKey key in declared.Keys)
        {
            if (key.OldName is not { } old || !table.Entries.Remove(old, out TomlEntry? entry))
                continue;
            if (!table.Entries.TryAdd(key.Name, entry))
                reading?.Report(entry.KeyPlace, $"'{old}' is the old name of '{key.Name}', which is there too", $"leave out '{old}'");
        }
    }
}
