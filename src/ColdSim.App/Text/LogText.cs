using ColdSim.Planning;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Text;

/// <summary>The log as a table: what each reading means and what was used between.</summary>
internal static class LogText
{
    public static IReadOnlyList<TextSection> Sections(string path, UseLog log, Scenario scenario, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections =
        [
            new($"{Path.GetFileName(path)}, {scenario.Rig.Cylinders[0].Name} cylinder", Table(log, scenario, units)),
            new("Taken", RunText.Points(
            [
                "each ± is one standard uncertainty; what sits in two readings alike, such as the tare's error, is not in the use between them",
                .. log.Rows.Any(r => r.Used is { } used && used < -2 * r.UsedUncertainty!.Value)
                    ? (IEnumerable<string>)["a use clearly below zero is a filling that the log does not say (--filled), or a wrong reading"] : [],
            ])),
        ];
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points(cautions)));
        return sections;
    }

    private static IReadOnlyList<string> Table(UseLog log, Scenario scenario, UnitStyle units)
    {
        if (log.Rows.Count == 0)
            return ["No readings."];
        List<IReadOnlyList<string>> rows = [];
        for (int i = 0; i < log.Rows.Count; i++)
            rows.Add(Row(log.Rows[i], i == 0 ? null : log.Rows[i - 1], scenario, units));
        return TextTable.Lines(
            [
                new(["line"]), new(["read"], Left: true), new(["method"], Left: true), new(["holds", units.MassUnit]), new(["±"]),
                new(["used", units.MassUnit]), new(["±"]), new(["per day", units.MassUnit]), new([""], Left: true),
            ],
            rows);
    }

    private static IReadOnlyList<string> Row(LogRow row, LogRow? before, Scenario scenario, UnitStyle units)
    {
        double days = before is null ? 0 : (row.Reading.Time - before.Reading.Time).TotalDays;
        return
        [
            UnitStyle.Number(row.Reading.Line, 0),
            ClockText.DayClock(row.Reading.Time.ToOffset(scenario.Start.Offset)),
            row.Reading.Reading.Name,
            Mass(row.Contents.Mass, units),
            Mass(row.Contents.StandardUncertainty, units),
            row.Used is { } used ? Mass(used, units) : "-",
            row.UsedUncertainty is { } error ? Mass(error, units) : "-",
            row.Used is { } u && days > 1.0 / 24 ? Mass(u / days, units) : "-",
            row.Reading.Filled ? "filled" : "",
        ];
    }

    private static string Mass(UnitsNet.Mass mass, UnitStyle units) => UnitStyle.Number(units.MassIn(mass.Kilograms), 2);
}
