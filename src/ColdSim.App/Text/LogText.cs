using ColdSim.Files.Logs;
using ColdSim.Model;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Text;

/// <summary>The log as a table: what each reading means and what was used between.</summary>
internal static class LogText
{
    public static IReadOnlyList<TextSection> Sections(string path, LogPrediction log, Scenario scenario, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections =
        [
            new($"{Path.GetFileName(path)}, {CylinderWords.All(scenario.Rig).TrimEnd(',')}", Table(log, scenario, units)),
            .. log.Rows.Any(r => r.Predicted is not null) ? [new TextSection("Predicted from the reading before", Predicted(log, scenario, units))] : Array.Empty<TextSection>(),
            .. log.Days.Count == 0 ? Array.Empty<TextSection>() : [DailyUseText.Section(log, scenario, units)],
            new("Taken", RunText.Points(
            [
                "each ± is one standard uncertainty; what sits in two readings alike, such as the tare's error, is not in the use between them",
                .. log.Rows.Any(r => r.Row.Used is { } used && used < -2 * r.Row.UsedUncertainty!.Value)
                    ? (IEnumerable<string>)["a use clearly below zero is a filling that the log does not say (--filled), or a wrong reading"] : [],
            ])),
        ];
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points(cautions)));
        return sections;
    }

    /// <summary>What a good entry means, such as "Tue 12 Jan 16:05, weight 69.0 lb: 40.0 lb of propane, give or take 0.5 lb".</summary>
    public static string Entry(LogEntry entry, Rig rig, UnitStyle units)
    {
        LogReading reading = EntryReader.Read(entry, rig).Reading!;
        ContentsEstimate held = reading.Reading.Estimate(GaugedCylinder.Of(rig.Cylinders[reading.Cylinder]));
        string which = rig.Cylinders.Count > 1 ? $"{entry.Cylinder}, " : "";
        return $"{ClockText.DayClock(entry.Time)}, {which}{entry.Method} {entry.Reading}: {units.Mass(held.Mass.Kilograms)} of propane, give or take {units.Mass(held.StandardUncertainty.Kilograms)}";
    }

    private static IReadOnlyList<string> Table(LogPrediction log, Scenario scenario, UnitStyle units)
    {
        if (log.Rows.Count == 0)
            return ["No readings."];
        List<IReadOnlyList<string>> rows = [];
        bool several = scenario.Rig.Cylinders.Count > 1;
        for (int i = 0; i < log.Rows.Count; i++)
        {
            LogRow row = log.Rows[i].Row;
            rows.Add(Row(row, log.Rows.Take(i).LastOrDefault(r => r.Row.Reading.Cylinder == row.Reading.Cylinder)?.Row, scenario, units, several));
        }

        return TextTable.Lines(
            [
                new(["line"]), new(["read"], Left: true), .. several ? [new TextColumn(["cylinder"], Left: true)] : Array.Empty<TextColumn>(),
                new(["method"], Left: true), new(["holds", units.MassUnit]), new(["±"]),
                new(["used", units.MassUnit]), new(["±"]), new(["per day", units.MassUnit]), new([""], Left: true),
            ],
            rows);
    }

    private static IReadOnlyList<string> Row(LogRow row, LogRow? before, Scenario scenario, UnitStyle units, bool several)
    {
        double days = before is null ? 0 : (row.Reading.Time - before.Reading.Time).TotalDays;
        return
        [
            UnitStyle.Number(row.Reading.Line, 0),
            ClockText.DayClock(row.Reading.Time.ToOffset(scenario.Start.Offset)),
            .. several ? [scenario.Rig.NameOf(row.Reading.Cylinder)] : Array.Empty<string>(),
            row.Reading.Reading.Name,
            Mass(row.Contents.Mass, units),
            Mass(row.Contents.StandardUncertainty, units),
            row.Used is { } used ? Mass(used, units) : "-",
            row.UsedUncertainty is { } error ? Mass(error, units) : "-",
            row.Used is { } u && days > 1.0 / 24 ? Mass(u / days, units) : "-",
            row.Reading.Filled ? "filled" : "",
        ];
    }

    private static IReadOnlyList<string> Predicted(LogPrediction log, Scenario scenario, UnitStyle units) =>
    [
        .. TextTable.Lines(
            [new(["line"]), new(["read"], Left: true), new(["holds", units.MassUnit]), new(["predicted", units.MassUnit]), new(["off", units.MassUnit]), new(["times"]), new([""], Left: true)],
            [
                .. log.Rows.Where(r => r.Predicted is not null).Select(r => (IReadOnlyList<string>)
                [
                    UnitStyle.Number(r.Row.Reading.Line, 0), ClockText.DayClock(r.Row.Reading.Time.ToOffset(scenario.Start.Offset)), Mass(r.Row.Contents.Mass, units),
                    Mass(r.Predicted!.Value, units), Mass(r.Off!.Value, units), UnitStyle.Number(r.Times!.Value, 1), MarkWords(r.Mark),
                ]),
            ]),
        .. Wrap.Lines($"by the simulator, {Parameters(scenario)}; times: in standard errors of the difference"),
    ];

    /// <summary>Which parameters a prediction is made with.</summary>
    public static string Parameters(Scenario scenario) => scenario.Fit is null ? "with the coach as the scenario says" : "with the coach as [fit] has it";

    /// <summary>What stands beside a reading.</summary>
    public static string MarkWords(ReadingMark mark) => mark switch
    {
        ReadingMark.Far => "far off",
        ReadingMark.LooksWrong => "looks wrong",
        ReadingMark.AfterWrong => "after a wrong one",
        _ => "",
    };

    private static string Mass(UnitsNet.Mass mass, UnitStyle units) => UnitStyle.Number(units.MassIn(mass.Kilograms), 2);
}
