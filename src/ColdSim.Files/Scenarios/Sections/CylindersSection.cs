using ColdSim.Files.Toml;
using ColdSim.Model;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[cylinder]</c> for one, <c>[[cylinder]]</c> for several.</summary>
internal static class CylindersSection
{
    /// <summary>The cylinders in the order written; empty where one of them is faulty.</summary>
    public static IReadOnlyList<CylinderSpecification> Read(SectionReader root)
    {
        if (root.Value("cylinder") is not TomlTables tables)
        {
            SectionReader one = root.Section("cylinder");
            if (!one.Present)
                root.Reading.Missing(one.Place, "the scenario has no [cylinder]");
            return CylinderSection.Read(one, "cylinder") is { } cylinder ? [cylinder] : [];
        }

        IReadOnlyList<SectionReader> sections = root.Sections("cylinder");
        if (sections.Count > Rig.MostCylinders)
            root.Reading.Report(sections[Rig.MostCylinders].Place, FormattableString.Invariant($"{sections.Count} cylinders"), FormattableString.Invariant($"accepted: up to {Rig.MostCylinders}"));
        CheckNames(root.Reading, tables);
        List<CylinderSpecification> cylinders = [];
        for (int i = 0; i < sections.Count; i++)
        {
            string called = sections.Count == 1 ? "cylinder" : FormattableString.Invariant($"cylinder {i + 1}");
            if (CylinderSection.Read(sections[i], called) is { } cylinder)
                cylinders.Add(cylinder);
        }
        return cylinders.Count == sections.Count ? cylinders : [];
    }

    private static void CheckNames(Reading reading, TomlTables tables)
    {
        Dictionary<string, TextPlace> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (TomlTable table in tables.Items)
        {
            if (table.Entries.GetValueOrDefault("name")?.Value is not TomlText name)
                continue;
            if (!names.TryAdd(name.Value.Trim(), name.Place))
                reading.Report(name.Place, $"two cylinders are called \"{name.Value.Trim()}\"", FormattableString.Invariant($"the first stands in line {names[name.Value.Trim()].Line}"));
        }
    }
}
