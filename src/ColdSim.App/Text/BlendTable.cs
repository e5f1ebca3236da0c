using ColdSim.Model;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>Night by night what a mixed gas is made of, and what of it would stay in the cylinder.</summary>
internal static class BlendTable
{
    /// <summary>Whether there is anything to say that propane alone would not.</summary>
    public static bool Applies(RunReport report) => report.Scenario.Rig.Gas.IsMixed;

    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units) =>
    [
        .. Table(report, report.Nights, units),
        .. Wrap.Lines("Parts by mass. What stays behind is liquid that at the night's coldest air has not the pressure to feed every appliance in full."),
        .. Wrap.Lines("Gauges and the propane table are for propane alone; of a mixed gas only the scale tells the mass."),
    ];

    /// <summary>The rows of some nights under their headings, without what is said below them.</summary>
    public static IReadOnlyList<string> Table(RunReport report, IReadOnlyList<NightReport> nights, UnitStyle units)
    {
        Rig rig = report.Scenario.Rig;
        (string Night, string Cylinder)[] of = [.. nights.SelectMany(n => n.Blends.Select((_, i) => (i == 0 ? ClockText.NightShort(n) : "", rig.NameOf(i))))];
        List<FigureTable.Cells<BlendReport>> own = [new(new(["Night"], Left: true), -2, (_, place) => of[place].Night)];
        if (rig.Cylinders.Count > 1)
            own.Add(new(new(["Cylinder"], Left: true), -1, (_, place) => of[place].Cylinder));
        return new FigureTable(ReportTable.Blends, units).Lines(NightFigures.Blends, [.. nights.SelectMany(n => n.Blends)], own);
    }
}
