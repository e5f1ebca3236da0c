using System.Globalization;
using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;

namespace ColdSim.App.Screens.Tries;

/// <summary>The cylinders that are tried, all settings of them together: their number, size, fill, blankets and how they are joined.</summary>
/// <param name="place">What is tried.</param>
internal sealed class CylinderPlan(TryPlace place)
{
    /// <summary>How cylinders are joined, in the order in which that is stepped through.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["by hand", "changeover", "together"];

    /// <summary>When a blanket has power, in the order in which that is stepped through; the first is always.</summary>
    public static IReadOnlyList<string> BlanketHours { get; } = ["", "22:00-08:00", "00:00-08:00", "18:00-24:00", "02:00-06:00"];

    private const int ByHand = 0, Changeover = 1, Together = 2;

    private Scenario Scenario => place.Scenario;

    private IReadOnlyList<CylinderSpecification> Now => Scenario.Rig.Cylinders;

    /// <summary>How many there are.</summary>
    public int Count => (int)(place.Settings["number"] ?? Now.Count);

    /// <summary>The sizes that they can have: those of their own series.</summary>
    public static IReadOnlyList<StandardSize> Sizes(Scenario scenario)
        => scenario.Rig.Cylinders[0].Orientation == Orientation.Upright
            ? StandardSize.Uprights(scenario.Rig.Cylinders.All(c => c.Name.EndsWith(" kg", StringComparison.Ordinal)))
            : [.. StandardSize.All.Where(s => s.Orientation == Orientation.Horizontal)];

    /// <summary>The size that is tried; null for those that there are.</summary>
    private StandardSize? Size => place.Settings["size"] is { } at ? Sizes(Scenario)[(int)at] : null;

    /// <summary>The legal filling of one of them. [kg]</summary>
    private double Legal_kg(int i) => Size?.LegalFill_kg ?? Now[i < Now.Count ? i : 0].LegalFill_kg;

    /// <summary>The legal filling of all. [kg]</summary>
    public double AllLegal_kg => Enumerable.Range(0, Count).Sum(Legal_kg);

    /// <summary>What is in one of them without a fill that is tried: an added one, or one of another size, comes full. [kg]</summary>
    private double Untouched_kg(int i) => Size is not null || i >= Now.Count ? Legal_kg(i) : Now[i].Contents_kg;

    /// <summary>What is in all of them without a fill that is tried. [kg]</summary>
    public double AllUntouched_kg => Enumerable.Range(0, Count).Sum(Untouched_kg);

    /// <summary>How they are joined, by place in <see cref="Kinds"/>; null for one alone.</summary>
    public int? Kind
    {
        get
        {
            if (Count == 1)
                return null;
            int kind = (int?)place.Settings["joined"] ?? (Now.Count > 1 ? KindOf(Scenario.Rig.Arrangement) : Count == 2 ? Changeover : Together);
            return kind == Changeover && Count > 2 ? Scenario.Rig.Gas.IsMixed ? ByHand : Together : kind;
        }
    }

    /// <summary>A kind of arrangement by its place in <see cref="Kinds"/>.</summary>
    private static int KindOf(CylinderArrangement arrangement) => arrangement switch
    {
        AutomaticChangeover => Changeover,
        OpenTogether => Together,
        _ => ByHand,
    };

    /// <summary>The keys of all that is tried of the cylinders; none where nothing is.</summary>
    public IEnumerable<KeyChange> Changes()
    {
        for (int i = 0; i < Count; i++)
        {
            string cylinder = Count == 1 ? "cylinder" : string.Create(CultureInfo.InvariantCulture, $"cylinder.{Number(i)}");
            if (i >= Now.Count)
            {
                foreach (KeyChange copied in place.Draft.CylinderLike(1, Number(i)))
                    yield return copied;
            }

            if (Size is { } size)
                yield return new($"{cylinder}.size", $"\"{size.Name}\"");
            if (place.Settings["fill"] is { } all_kg)
                yield return new($"{cylinder}.left", Mass(Math.Min(1, all_kg / AllLegal_kg) * Legal_kg(i)));
            else if (Size is not null || i >= Now.Count)
                yield return new($"{cylinder}.left", "\"full\"");
            foreach (KeyChange change in Blanket(i, cylinder))
                yield return change;
        }

        if (Kind is { } kind && (place.Settings["joined"] is not null || Now.Count != Count))
            yield return new("arrangement.kind", $"\"{Kinds[kind]}\"");
    }

    private IEnumerable<KeyChange> Blanket(int i, string cylinder)
    {
        if (place.Settings["blanket"] is { } power_W)
        {
            yield return new($"{cylinder}.blanket.power", string.Create(CultureInfo.InvariantCulture, $"\"{power_W:0.##} W\""));
            if (Now[Math.Min(i, Now.Count - 1)].Blanket is null && Scenario.Rig.Site.Hookup)
                yield return new($"{cylinder}.blanket.supply", "\"shore\"");
        }

        if (place.Settings["hours"] is { } hours)
            yield return new($"{cylinder}.blanket.hours", BlanketHours[(int)hours] is { Length: > 0 } span ? $"[\"{span}\"]" : "[]");
    }

    // In the file they are numbered as written, here as they are used.
    private int Number(int i) => i < Now.Count ? Scenario.FilePlaceOf(i) + 1 : i + 1;

    private static string Mass(double kg) => string.Create(CultureInfo.InvariantCulture, $"\"{Math.Floor(kg * 1000) / 1000:0.###} kg\"");
}
