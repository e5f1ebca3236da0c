namespace ColdSim.Files.Scenarios.Keys;

/// <summary>The declaration of a key of the scenario file: all that its reader, the page and a schema need to know of it.</summary>
/// <param name="name">As it is written.</param>
/// <param name="otherwise">What holds where it is left out.</param>
/// <param name="meaning">One line of explanation.</param>
internal abstract class ScenarioKey(string name, KeyDefault otherwise, string meaning)
{
    /// <summary>The usual line for a value that is assumed.</summary>
    public const string NotGiven = "{who}: {key} not given; assumed {value}";

    public string Name => name;

    public KeyDefault Default => otherwise;

    public string Meaning => meaning;

    /// <summary>What is written: "length", "true or false".</summary>
    public abstract string Kind { get; }

    /// <summary>What is accepted of that kind; empty where the kind says it.</summary>
    public virtual string Limits => "";

    /// <summary>A value as the file has it.</summary>
    public abstract string Example { get; }

    /// <summary>The default as the page shows it.</summary>
    public virtual string DefaultShown => otherwise.Words ?? NumberShown.Of(otherwise.Si ?? double.NaN);

    /// <summary>Whether the key must be written.</summary>
    public bool IsNeeded => ReferenceEquals(otherwise, KeyDefault.Needed);

    /// <summary>
    /// The line that names the default among the assumptions, with places for <c>{who}</c>, <c>{key}</c> and <c>{value}</c>; null where the default
    /// goes without saying.
    /// </summary>
    public string? Assumed { get; init; }

    /// <summary>The comment beside the key in a scenario to begin with.</summary>
    public string? Comment { get; init; }

    /// <summary>Between what its value usually lies; null where nothing within its limits is unusual.</summary>
    public UsualRange? Usual { get; init; }

    /// <summary>Keys of the same section without which this one is refused.</summary>
    public IReadOnlyList<string> GoesWith { get; init; } = [];

    /// <summary>Whether an option may not change it.</summary>
    public bool FixedForOptions { get; init; }

    /// <summary>The name that it had before, which is still read; null for none.</summary>
    public string? OldName { get; init; }

    /// <summary>The version of the format that has it first.</summary>
    public int Since { get; init; } = 1;

    /// <summary>The line that names what was assumed.</summary>
    /// <param name="who">Whose key it is.</param>
    /// <param name="value">The value; null for the default.</param>
    public string AssumedAs(string who, string? value)
    {
        if (Assumed is null)
            throw new InvalidOperationException($"The default of '{name}' is declared as one that goes without saying.");
        return Assumed.Replace("{who}", who, StringComparison.Ordinal).Replace("{key}", name, StringComparison.Ordinal)
            .Replace("{value}", value ?? DefaultShown, StringComparison.Ordinal);
    }
}
