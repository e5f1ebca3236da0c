using ColdSim.Model;
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
    public static IReadOnlyList<string> Table(RunReport report, IEnumerable<NightReport> nights, UnitStyle units)
    {
        Rig rig = report.Scenario.Rig;
        bool several = rig.Cylinders.Count > 1;
        List<TextColumn> columns = [new(["Night"], Left: true)];
        if (several)
            columns.Add(new(["Cylinder"], Left: true));
        columns.AddRange(
        [
            new(["Propane", "first", "%"]), new(["Propane", "last", "%"]), new(["n-butane", "last", "%"]), new(["Isobutane", "last", "%"]),
            new(["Pressure", "last", units.PressureUnit]), new(["Left", "last", units.MassUnit]), new(["Stays", "behind", units.MassUnit]),
            new(["at", "air", units.TemperatureUnit]),
        ]);
        List<IReadOnlyList<string>> rows = [];
        foreach (NightReport night in nights)
        {
            for (int i = 0; i < night.Blends.Count; i++)
            {
                List<string> row = [i == 0 ? ClockText.NightShort(night) : ""];
                if (several)
                    row.Add(rig.NameOf(i));
                row.AddRange(Cells(night.Blends[i], units));
                rows.Add(row);
            }
        }

        return TextTable.Lines(columns, rows);
    }

    private static string[] Cells(BlendReport blend, UnitStyle units) =>
    [
        Percent(blend.AtStart.Propane), Percent(blend.AtEnd.Propane), Percent(blend.AtEnd.NormalButane), Percent(blend.AtEnd.Isobutane),
        UnitStyle.Number(units.PressureIn(blend.PressureAtEnd.Pascals), units.IsUs ? 1 : 0), units.MassNumber(blend.Left.Kilograms),
        blend.LeftBehind is { } behind ? units.MassNumber(behind.Kilograms) : "-",
        units.TemperatureNumber(blend.LeftBehindAt.Kelvins),
    ];

    private static string Percent(double part) => UnitStyle.Number(100 * part, 0);
}
