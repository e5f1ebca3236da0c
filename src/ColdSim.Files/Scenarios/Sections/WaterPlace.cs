using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Nodes;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Where water may be: inside, outside, or in a bay.</summary>
/// <param name="bays">The bays, in the order in which they are written.</param>
internal sealed class WaterPlace(IReadOnlyList<ThermalNode> bays)
{
    private const string Inside = "inside", Outside = "outside";

    /// <summary>The key that says where something is.</summary>
    public static TextKey Key(string meaning) => new("where", KeyDefault.Needed, meaning)
    {
        Form = $"`\"{Inside}\"`, `\"{Outside}\"`, or the name of a bay",
        Such = Inside,
    };

    /// <summary>Reads where something is.</summary>
    /// <returns>The place of its bay; -1 for inside, -2 for outside and where it is not said.</returns>
    public int Read(SectionReader section, TextKey key)
    {
        string[] words = [Inside, Outside, .. bays.Select(b => b.Name)];
        string accepted = "accepted: " + string.Join(", ", words.Select(w => $"\"{Quote.Of(w)}\""));
        if (!section.Has(key))
            section.Lacks(key, accepted);
        if (section.Get(key)?.Trim() is not { } where)
            return -2;
        int place = Array.FindIndex(words, w => where.Equals(w, StringComparison.OrdinalIgnoreCase));
        if (place < 0)
            section.Reading.Report(section.ValuePlace(key), $"'where' is \"{Quote.Of(where)}\"", accepted, NearestName.Of(where, words));
        return place switch
        {
            0 => -1,
            < 0 or 1 => -2,
            _ => place - 2,
        };
    }

    /// <summary>The node with its conductance to what is around it there.</summary>
    public static ThermalNode At(ThermalNode node, int place, double conductance_W_K) => place switch
    {
        -1 => node with { Inside_W_K = conductance_W_K },
        < -1 => node with { Outside_W_K = conductance_W_K },
        _ => node with { Bay = place, Bay_W_K = conductance_W_K },
    };
}
