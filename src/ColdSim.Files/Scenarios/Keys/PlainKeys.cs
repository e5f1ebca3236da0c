using System.Globalization;

namespace ColdSim.Files.Scenarios.Keys;

/// <summary>A key that holds a text.</summary>
internal sealed class TextKey(string name, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    /// <summary>All that is accepted, where it is a closed list.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>What is accepted, in words.</summary>
    public string Accepts { get; init; } = "";

    /// <summary>What is written, where "text" does not say it.</summary>
    public string Form { get; init; } = "text";

    /// <summary>A text such as somebody would write.</summary>
    public required string Such { get; init; }

    public override string Kind => Form;

    public override string Limits => Words.Count > 0 ? string.Join(", ", Words.Select(w => $"`{w}`")) : Accepts;

    public override string Example => $"\"{Such}\"";
}

/// <summary>A key that is true or false.</summary>
internal sealed class FlagKey(string name, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public FlagKey(string name, bool otherwise, string meaning)
        : this(name, KeyDefault.Called(otherwise ? 1 : 0, otherwise ? "true" : "false"), meaning)
    {
    }

    public bool IsTrueByDefault => Default.Si == 1;

    public override string Kind => "true or false";

    public override string Example => IsTrueByDefault ? "false" : "true";
}

/// <summary>A key that holds a number without a unit in quotes.</summary>
internal sealed class NumberKey(string name, double low, double high, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public double Low => low;

    public double High => high;

    /// <summary>What it counts, such as "K per km"; empty where it is a plain number.</summary>
    public string Unit { get; init; } = "";

    public override string Kind => Unit.Length == 0 ? "number" : "number, " + Unit;

    public override string Limits => string.Create(CultureInfo.InvariantCulture, $"{low} to {high}");

    public override string Example => (Default.Si ?? (low + high) / 2).ToString(CultureInfo.InvariantCulture);
}

/// <summary>A key that holds a whole number.</summary>
internal sealed class WholeKey(string name, int low, int high, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public int Low => low;

    public int High => high;

    public override string Kind => "whole number";

    public override string Limits => string.Create(CultureInfo.InvariantCulture, $"{low} to {high}");

    public override string Example => ((int)(Default.Si ?? low)).ToString(CultureInfo.InvariantCulture);
}

/// <summary>A key that holds one of a few words.</summary>
internal abstract class ChoiceKey(string name, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public abstract IEnumerable<string> Words { get; }

    /// <summary>The words, and others that are understood.</summary>
    public abstract IEnumerable<string> Understood { get; }

    public string Accepted => string.Join(", ", Words.Select(w => $"\"{w}\""));

    public override string Kind => string.Join(", ", Words.Select(w => w == "|" ? "a pipe in quotes" : $"`\"{w}\"`"));

    public override string Example => $"\"{Words.First()}\"";

    /// <summary>Words that mean their places in a list.</summary>
    public static (string Word, int Value)[] Numbered(IEnumerable<string> words)
    {
        string[] all = [.. words];
        (string Word, int Value)[] choices = new (string, int)[all.Length];
        for (int i = 0; i < all.Length; i++)
            choices[i] = (all[i], i);
        return choices;
    }
}

/// <summary>A key that holds one of a few words, each of which means a value.</summary>
/// <remarks>An array, read by loops: queries and comparers over a value type of ours are compiled at every start, for each such type anew.</remarks>
internal sealed class ChoiceKey<T>(string name, KeyDefault otherwise, string meaning, params (string Word, T Value)[] choices)
    : ChoiceKey(name, otherwise, meaning)
    where T : struct
{
    /// <summary>A choice of which one value holds where nothing is chosen.</summary>
    public ChoiceKey(string name, T otherwise, string meaning, params (string Word, T Value)[] choices)
        : this(name, KeyDefault.Of(Word(choices, otherwise)), meaning, choices)
        => Otherwise = otherwise;

    public ReadOnlySpan<(string Word, T Value)> Choices => choices;

    /// <summary>Other words that people have for the choices; understood, and not shown.</summary>
    /// <remarks>Null, not an empty array, which the runtime would make and compile for each type of choice.</remarks>
    public (string Word, T Value)[]? OtherWords { get; init; }

    /// <summary>The value where nothing is chosen; null where there is no single one.</summary>
    public T? Otherwise { get; }

    public override IEnumerable<string> Words => choices.Select(c => c.Word);

    public override IEnumerable<string> Understood => choices.Concat(OtherWords ?? []).Select(c => c.Word);

    public string WordOf(T value) => Word(choices, value);

    /// <summary>The value that a word means, in whatever case it is written; null where it means none.</summary>
    public T? ValueOf(string written) => ValueOf(choices, written) ?? (OtherWords is { } others ? ValueOf(others, written) : null);

    private static T? ValueOf((string Word, T Value)[] choices, string written)
    {
        foreach ((string word, T value) in choices)
        {
            if (word.Equals(written, StringComparison.OrdinalIgnoreCase))
                return value;
        }

        return null;
    }

    private static string Word((string Word, T Value)[] choices, T value)
    {
        foreach ((string word, T meant) in choices)
        {
            if (meant.Equals(value))
                return word;
        }

        throw new InvalidOperationException($"No word means {value}.");
    }
}
