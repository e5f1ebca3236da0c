using System.Globalization;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The names of things whose rows and columns are known by them; what has none is given one that is free.</summary>
internal sealed class OwnNames
{
    private readonly HashSet<string> _taken = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes the names that are written, and reports those that are written twice.</summary>
    /// <param name="sections">The tables, each with its key.</param>
    /// <param name="what">What another of them is in messages.</param>
    /// <param name="fixedNames">Names of what is there and cannot be called otherwise.</param>
    public OwnNames(IEnumerable<(SectionReader Section, TextKey Key)> sections, string what, params IReadOnlyList<string> fixedNames)
    {
        _taken.UnionWith(fixedNames);
        foreach ((SectionReader section, TextKey key) in sections)
        {
            // What is no text is reported where the name is read.
            if (section.Value(key) is not TomlText name || _taken.Add(name.Value.Trim()))
                continue;
            bool isFixed = fixedNames.Contains(name.Value.Trim(), StringComparer.OrdinalIgnoreCase);
            section.Reading.Report(
                name.Place, $"'name' is \"{Quote.Of(name.Value)}\", and {(isFixed ? "the scenario's own" : "another")} {(isFixed ? name.Value.Trim() : what)} is called so", "accepted: a name of its own");
        }
    }

    /// <summary>The key of a thing that is called by its kind where it has no name.</summary>
    /// <param name="kind">What it is called then.</param>
    /// <param name="accepts">From what its name must differ.</param>
    public static TextKey Key(string kind, string accepts = "") => new("name", KeyDefault.Of($"\"{kind}\""), "what it is called") { Accepts = accepts, Such = "front " + kind };

    /// <summary>What it is called: its own name, or its kind, with a number from the second on.</summary>
    public static string Named(SectionReader section, TextKey key, string kind, int number) => section.Get(key) ?? (number == 1 ? kind : Numbered(kind, number));

    /// <summary>The same with a name that nothing else has.</summary>
    public string Of(SectionReader section, TextKey key, string kind, int number)
        => section.Get(key) ?? Free(number == 1 ? kind : Numbered(kind, number), kind, number);

    /// <summary>The same with a number from the first on.</summary>
    public string Counted(SectionReader section, TextKey key, string kind, int number) => section.Get(key) ?? Free(Numbered(kind, number), kind, number);

    private string Free(string name, string kind, int number)
    {
        while (!_taken.Add(name))
            name = Numbered(kind, ++number);
        return name;
    }

    private static string Numbered(string kind, int number) => string.Create(CultureInfo.InvariantCulture, $"{kind} {number}");
}
