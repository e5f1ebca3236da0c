namespace ColdSim.Files.Scenarios.Keys;

/// <summary>How a section's table is written.</summary>
internal enum TableForm
{
    /// <summary><c>[name]</c>, once.</summary>
    One,

    /// <summary><c>[[name]]</c>, as often as there are such things.</summary>
    Many,

    /// <summary><c>[name]</c> for one, <c>[[name]]</c> for several.</summary>
    OneOrMany,
}

/// <summary>The declaration of a section of the scenario file.</summary>
/// <param name="name">The last part of its name.</param>
/// <param name="form">How its table is written.</param>
/// <param name="meaning">One line of explanation.</param>
/// <param name="keys">Its keys, in the order of the page.</param>
/// <param name="below">The sections below it.</param>
internal sealed class ScenarioSection(string name, TableForm form, string meaning, IReadOnlyList<ScenarioKey> keys, params IReadOnlyList<ScenarioSection> below)
{
    public string Name => name;

    public TableForm Form => form;

    public string Meaning => meaning;

    public IReadOnlyList<ScenarioKey> Keys => keys;

    public IReadOnlyList<ScenarioSection> Below => below;

    /// <summary>The most tables there may be; null where nothing limits them.</summary>
    public int? Most { get; init; }

    /// <summary>Whether every scenario has it.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Ways of saying the same, of which one is used: each is a list of keys or of sections below.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Ways { get; init; } = [];

    /// <summary>Whether an option may change none of its keys.</summary>
    public bool FixedForOptions { get; init; }

    /// <summary>All that may be written in its table, in the order of the alphabet.</summary>
    public IReadOnlyList<string> Names => [.. keys.Select(k => k.Name).Concat(below.Select(b => b.Name)).Order(StringComparer.Ordinal)];

    /// <summary>Whether a name may be written in its table.</summary>
    public bool Has(string its)
    {
        foreach (ScenarioKey key in keys)
        {
            if (key.Name == its)
                return true;
        }

        foreach (ScenarioSection section in below)
        {
            if (section.Name == its)
                return true;
        }

        return false;
    }
}
