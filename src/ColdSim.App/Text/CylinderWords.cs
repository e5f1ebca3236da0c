using ColdSim.Model;
using ColdSim.Model.Arrangement;

namespace ColdSim.App.Text;

/// <summary>What the cylinders of a rig are called, alone and together.</summary>
internal static class CylinderWords
{
    /// <summary>Such as "20 lb cylinder", or "20 lb and 30 lb cylinders, changed by hand".</summary>
    public static string All(Rig rig)
    {
        IReadOnlyList<string> names = rig.CylinderNames();
        if (names.Count == 1)
            return rig.Cylinders[0].Blanket is null ? names[0] + " cylinder" : $"{names[0]} cylinder{Blanket(rig, 0)},";
        return $"{string.Join(", ", names.SkipLast(1))} and {names[^1]} cylinders, {Arranged(rig.Arrangement)}{Blankets(rig)},";
    }

    /// <summary>Their names alone.</summary>
    public static string Names(Rig rig) => string.Join(" + ", rig.CylinderNames());

    /// <summary>How they are connected.</summary>
    public static string Arranged(CylinderArrangement arrangement) => arrangement switch
    {
        AutomaticChangeover => "on an automatic changeover",
        OpenTogether => "open together",
        _ => "one open at a time",
    };

    private static string Blanket(Rig rig, int i) => rig.Cylinders[i].Blanket is { Power_W: var power_W }
        ? $" under a blanket of {UnitStyle.Number(power_W, 0)} W" : "";

    private static string Blankets(Rig rig)
    {
        string[] under = [.. Enumerable.Range(0, rig.Cylinders.Count).Where(i => rig.Cylinders[i].Blanket is not null)
            .Select(i => $"{rig.NameOf(i)}{Blanket(rig, i)}")];
        return under.Length == 0 ? "" : "; " + string.Join(", ", under);
    }

    /// <summary>What the contents are called: "propane" for propane alone; a mixed gas is no propane, least of all when little but butane is left of it.</summary>
    public static string Gas(Rig rig) => rig.Gas.IsMixed ? "gas" : "propane";
}
