using ColdSim.Model;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>Night by night what is in each of several cylinders, and what the blankets and the walks were.</summary>
internal static class EachCylinder
{
    /// <summary>Whether there is anything to say that one cylinder without a blanket would not.</summary>
    public static bool Applies(RunReport report)
        => report.Scenario.Rig.Cylinders.Count > 1 || report.Scenario.Rig.Cylinders.Any(c => c.Blanket is not null);

    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units)
    {
        Rig rig = report.Scenario.Rig;
        List<TextColumn> columns = [new(["Night"], Left: true)];
        for (int i = 0; i < rig.Cylinders.Count; i++)
            columns.Add(new([.. rig.NameOf(i).Split(' ', 2), "left", units.MassUnit]));
        columns.Add(new(["Walks"]));
        columns.Add(new(["Reserve", "starts"]));
        columns.Add(new(["Blankets", "Wh"]));
        columns.Add(new(["Hottest", units.TemperatureUnit]));
        List<IReadOnlyList<string>> rows = [];
        foreach (NightReport night in report.Nights)
        {
            rows.Add(
            [
                ClockText.NightShort(night),
                .. night.EachLeft.Select(left => units.MassNumber(left.Kilograms)),
                UnitStyle.Number(night.CylinderChanges, 0),
                UnitStyle.Number(night.ReserveStarts, 0),
                UnitStyle.Number(night.BlanketEnergy.WattHours, 0),
                units.TemperatureNumber(night.HottestCylinder.Kelvins),
            ]);
        }

        string dawn = report.Scenario.Criteria.Dawn.ToString("HH:mm", null);
        return [.. TextTable.Lines(columns, rows), .. Wrap.Lines($"Left at {dawn}, or at the end of what was run.")];
    }
}
