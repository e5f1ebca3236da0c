using System.Text;
using ColdSim.App.Screens.Pages;
using ColdSim.Planning.Diagnosis;

namespace ColdSim.App.Screens.Signs;

/// <summary>The form of signs while it is filled in. Text is kept as it is typed.</summary>
internal sealed record SignForm
{
    private const int Longest = 40;

    /// <summary>The line that is filled in.</summary>
    public int Row { get; init; }

    /// <summary>The value of each line; empty for what is not known.</summary>
    public IReadOnlyList<string> Values { get; init; } = [.. SignField.All.Select(_ => "")];

    /// <summary>The line that is filled in.</summary>
    public SignField Field => SignField.All[Row];

    /// <summary>The value of that line.</summary>
    public string Value => Values[Row];

    /// <summary>What comes before any other answer.</summary>
    public Emergency Emergency => Of(SignField.Smell).Length > 0 ? Emergency.GasSmell
        : Of(SignField.CarbonMonoxide).Length > 0 ? Emergency.CarbonMonoxide : Emergency.None;

    /// <summary>What was filled in, by name, without the emergencies.</summary>
    public Dictionary<string, string> Given
    {
        get
        {
            Dictionary<string, string> given = new(StringComparer.Ordinal);
            for (int i = 0; i < Values.Count; i++)
            {
                if (Values[i].Trim().Length > 0 && SignField.All[i].Name is not (SignField.Smell or SignField.CarbonMonoxide))
                    given[SignField.All[i].Name] = Values[i];
            }

            return given;
        }
    }

    /// <summary>The value of a line by its name.</summary>
    public string Of(string name) => Values[PlaceOf(name)];

    /// <summary>The form on another line; after the last comes the first.</summary>
    public SignForm On(int row) => this with { Row = (row % Values.Count + Values.Count) % Values.Count };

    /// <summary>The form on the line of a name; as it is where there is none.</summary>
    public SignForm To(string name) => PlaceOf(name) is >= 0 and int row ? On(row) : this;

    /// <summary>The next of the line's states, or the one before; between the last and the first it is empty.</summary>
    public SignForm Chosen(int direction)
    {
        string[] choices = ["", .. Field.States];
        int at = Math.Max(0, Array.IndexOf(choices, Value));
        return With(choices[(at + direction + choices.Length) % choices.Length]);
    }

    /// <summary>A character: text where the line takes text, else the next state that begins with it. A space is the next state.</summary>
    public SignForm Typed(Rune rune)
    {
        if (Field.TakesText)
        {
            string before = Field.States.Contains(Value) ? "" : Value;
            return Rune.IsControl(rune) || before.Length >= Longest ? this : With(before + rune);
        }

        if (rune.Value == ' ')
            return Chosen(1);
        string[] fitting = [.. Field.States.Where(s => s.StartsWith(rune.ToString(), StringComparison.OrdinalIgnoreCase))];
        return fitting.Length == 0 ? this : With(fitting[(Array.IndexOf(fitting, Value) + 1) % fitting.Length]);
    }

    /// <summary>The form without the last character of a text, or without the state that was chosen.</summary>
    public SignForm WithoutLast() => With(Field.States.Contains(Value) ? "" : TextEdit.WithoutLast(Value));

    private static int PlaceOf(string name)
    {
        for (int i = 0; i < SignField.All.Count; i++)
        {
            if (SignField.All[i].Name == name)
                return i;
        }

        return -1;
    }

    private SignForm With(string value)
        => value == Value ? this : this with { Values = [.. Values.Select((v, i) => i == Row ? value : v)] };
}
