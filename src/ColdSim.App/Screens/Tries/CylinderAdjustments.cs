using ColdSim.App.Text;
using ColdSim.Model;
using ColdSim.Model.Cylinder;

namespace ColdSim.App.Screens.Tries;

/// <summary>The cylinders; their keys are made by <see cref="CylinderPlan"/>.</summary>
internal static class CylinderAdjustments
{
    private const double LargestBlanket_W = 400, BlanketStep_W = 25, FirstBlanket_W = 100;

    /// <summary>All of them.</summary>
    public static IEnumerable<Adjustment> Of() =>
    [
        new("fill", "gas in cylinders")
        {
            AsItIs = p => new CylinderPlan(p).AllUntouched_kg,
            Show = (kg, p) => $"{p.Units.RoundMass(kg)} ({UnitStyle.Number(100 * kg / new CylinderPlan(p).AllLegal_kg, 0)} %)",
            Grid = p => new(
                p.Units.IsUs ? 1 : 0.5, Math.Floor(p.Units.MassIn(new CylinderPlan(p).AllLegal_kg) * 10 + 1e-6) / 10, p.Units.IsUs ? 1 : 0.5, p.Units.MassIn, p.Units.Kilograms),
        },
        new("size", "cylinder size")
        {
            AsItIs = p => SizeNow(p),
            Show = (at, p) => At(p, at) ?? p.Scenario.Rig.Cylinders[0].Name,
            Grid = p => ValueGrid.Counts(0, CylinderPlan.Sizes(p.Scenario).Count - 1),
        },
        new("number", "cylinders")
        {
            AsItIs = p => p.Scenario.Rig.Cylinders.Count,
            Show = (count, _) => UnitStyle.Number(count, 0),
            Grid = p => ValueGrid.Counts(p.Scenario.Rig.Cylinders.Count, Rig.MostCylinders),
        },
        new("joined", "joined")
        {
            AsItIs = p => new CylinderPlan(p).Kind,
            Show = (_, p) => CylinderPlan.Kinds[new CylinderPlan(p).Kind ?? 0],
            Grid = p => ValueGrid.Counts(0, CylinderPlan.Kinds.Count - 1),
            WhyOff = _ => "one alone",
        },
        new("blanket", "blanket on each")
        {
            AsItIs = p => p.Scenario.Rig.Cylinders[0].Blanket?.Power_W,
            Show = (power_W, _) => $"{UnitStyle.Number(power_W, 0)} W",
            Grid = _ => new(0, LargestBlanket_W, BlanketStep_W, v => v, v => v),
            TurnedOn = _ => FirstBlanket_W,
        },
        new("hours", "blanket's hours")
        {
            AsItIs = p => HasBlanket(p) ? HoursNow(p) : null,
            Show = (at, _) => at < 0 ? "the file's" : CylinderPlan.BlanketHours[(int)at] is { Length: > 0 } span ? span : "always",
            Grid = _ => ValueGrid.Counts(0, CylinderPlan.BlanketHours.Count - 1),
            WhyOff = _ => "no blanket",
            IsEasierHigh = false,
        },
    ];

    private static bool HasBlanket(TryPlace place) => place.Settings["blanket"] is > 0 || (place.Settings["blanket"] is null && place.Scenario.Rig.Cylinders[0].Blanket is not null);

    // Hours that are none of the list's lie before it.
    private static double HoursNow(TryPlace place) => place.Scenario.Rig.Cylinders[0].Blanket is { Hours.Count: > 0 } ? -1 : 0;

    // A size that is none of the common ones lies between the two next to it.
    private static double SizeNow(TryPlace place)
    {
        IReadOnlyList<StandardSize> sizes = CylinderPlan.Sizes(place.Scenario);
        double volume_m3 = place.Scenario.Rig.Cylinders[0].Volume_m3;
        for (int i = 0; i < sizes.Count; i++)
        {
            if (Math.Abs(sizes[i].Volume_m3 / volume_m3 - 1) < 0.001)
                return i;
            if (sizes[i].Volume_m3 > volume_m3)
                return i - 0.5;
        }

        return sizes.Count - 0.5;
    }

    private static string? At(TryPlace place, double at) => at == Math.Floor(at) ? CylinderPlan.Sizes(place.Scenario)[(int)at].Name : null;
}
