using ColdSim.Model.Nodes;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Where water may stand: inside, outside, or in a bay.</summary>
/// <param name="bays">The bays, in the order in which they are written.</param>
internal sealed class WaterPlace(IReadOnlyList<ThermalNode> bays)
{
    private const string Inside = "inside", Outside = "outside";

    /// <summary>Reads where something is.</summary>
    /// <returns>The place of its bay; -1 for inside, -2 for outside and where it is not said.</returns>
    public int Read(SectionReader section)
    {
        string accepted = "accepted: " + string.Join(", ", ((string[])[Inside, Outside, .. bays.Select(b => b.Name)]).Select(w => $"\"{w}\""));
        if (!section.Has("where"))
            section.Lacks("where", accepted);
        if (section.Text("where")?.Trim() is not { } where)
            return -2;
        if (where.Equals(Inside, StringComparison.OrdinalIgnoreCase))
            return -1;
        if (where.Equals(Outside, StringComparison.OrdinalIgnoreCase))
            return -2;
        for (int i = 0; i < bays.Count; i++)
        {
            if (where.Equals(bays[i].Name, StringComparison.OrdinalIgnoreCase))
                return i;
        }
        section.Reading.Report(section.Value("where")!.Place, $"'where' is \"{where}\"", accepted, NearestName.Of(where, [Inside, Outside, .. bays.Select(b => b.Name)]));
        return -2;
    }

    /// <summary>The node with its conductance to what is around it there.</summary>
    public static ThermalNode At(ThermalNode node, int place, double conductance_W_K) => place switch
    {
        -1 => node with { Inside_W_K = conductance_W_K },
        < -1 => node with { Outside_W_K = conductance_W_K },
        _ => node with { Bay = place, Bay_W_K = conductance_W_K },
    };
}
