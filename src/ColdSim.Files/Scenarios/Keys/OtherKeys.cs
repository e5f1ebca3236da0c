namespace ColdSim.Files.Scenarios.Keys;

/// <summary>A key that holds a price.</summary>
internal sealed class PriceKey(string name, bool each, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    /// <summary>The largest sum.</summary>
    public const double Most = 10_000;

    /// <summary>Whether a sum for an exchange is accepted.</summary>
    public bool Each => each;

    public override string Kind => each ? "price per mass, volume or exchange" : "price per mass or volume";

    public override string Limits => $"0 to {NumberShown.Of(Most)}";

    public override string Example => "\"1.20 per lb\"";
}

/// <summary>The forms of one value among several.</summary>
[Flags]
internal enum ItemForms
{
    /// <summary>None of them.</summary>
    None = 0,

    /// <summary>A text in quotes.</summary>
    Text = 1,

    /// <summary>A whole number.</summary>
    Whole = 2,

    Number = 4,

    /// <summary>A date without quotes.</summary>
    Date = 8,
}

/// <summary>A key that holds a list, or a value of more than one form.</summary>
internal sealed class ItemsKey(string name, ItemForms forms, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public ItemForms Forms => forms;

    /// <summary>Whether a list is accepted.</summary>
    public bool IsList { get; init; }

    /// <summary>Whether one value alone is accepted.</summary>
    public bool IsSingle { get; init; }

    /// <summary>What is accepted, in words.</summary>
    public string Accepts { get; init; } = "";

    /// <summary>What is written, in words.</summary>
    public required string Form { get; init; }

    /// <summary>A value as the file has it.</summary>
    public required string Such { get; init; }

    public override string Kind => Form;

    public override string Limits => Accepts;

    public override string Example => Such;
}

/// <summary>A key that holds a table of other sections' keys.</summary>
internal sealed class ChangesKey(string name, KeyDefault otherwise, string meaning) : ScenarioKey(name, otherwise, meaning)
{
    public override string Kind => "table";

    public override string Example => "{ \"cylinder.size\" = \"40 lb\" }";
}
