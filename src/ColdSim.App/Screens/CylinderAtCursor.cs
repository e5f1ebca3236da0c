using ColdSim.App.Text;
using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;

namespace ColdSim.App.Screens;

/// <summary>Each cylinder's own values at the time cursor, where there are several or a blanket.</summary>
/// <param name="Name">What the cylinder is called.</param>
/// <param name="Left">Gas in it.</param>
/// <param name="Liquid">Temperature of its liquid and shell.</param>
/// <param name="Pressure">Its own pressure.</param>
/// <param name="State">Whether it feeds, and its blanket.</param>
internal sealed record CylinderAtCursor(string Name, string Left, string Liquid, string Pressure, string State)
{
    /// <summary>In order of place; none for a single cylinder without a blanket.</summary>
    public static IReadOnlyList<CylinderAtCursor> At(NightView view)
    {
        Rig rig = view.Report.Scenario.Rig;
        RunSeries s = view.Report.Series;
        if (!Applies(view))
            return [];
        UnitStyle u = view.Units;
        int i = view.Minute, blankets = rig.Cylinders.Count(c => c.Blanket is not null);
        List<CylinderAtCursor> all = [];
        for (int c = 0; c < rig.Cylinders.Count; c++)
        {
            CylinderSeries own = s.Cylinders[c];
            List<string> state = [];
            if (rig.Cylinders.Count > 1 && rig.Arrangement is OpenTogether)
                state.Add("open");
            else if (rig.Cylinders.Count > 1)
                state.Add(s.InUse[i] == c ? "in use" : "waits");
            // The blankets' power is known of all together.
            if (rig.Cylinders[c].Blanket is not null)
                state.Add(blankets == 1 ? $"blanket {UnitStyle.Number(s.Blanket_W[i], 0)} W" : $"blankets {UnitStyle.Number(s.Blanket_W[i], 0)} W in all");
            all.Add(new(Fitting.OneCellEach(rig.NameOf(c)), u.Mass(own.Propane_kg[i]), u.Temperature(own.Liquid_K[i]), u.Pressure(own.Pressure_Pa[i]), string.Join(", ", state)));
        }

        return all;
    }

    /// <summary>How many rows they take below the curves.</summary>
    public static int Rows(NightView view) => Applies(view) ? view.Report.Scenario.Rig.Cylinders.Count : 0;

    private static bool Applies(NightView view)
    {
        IReadOnlyList<CylinderSpecification> cylinders = view.Report.Scenario.Rig.Cylinders;
        return (cylinders.Count > 1 || cylinders.Any(c => c.Blanket is not null)) && view.Report.Series.Cylinders.Count == cylinders.Count;
    }
}
