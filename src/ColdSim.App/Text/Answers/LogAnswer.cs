using ColdSim.Planning;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Measurements;

namespace ColdSim.App.Text.Answers;

/// <summary>A log of readings as an answer: what is left, and whether the use is what the weather asks.</summary>
internal static class LogAnswer
{
    // A use that differs by more than this part from the simulator's is worth a fit.
    private const double WorthFitting_frac = 0.1;

    // A fit wants as many.
    private const int ReadingsToFit = 5;

    /// <summary>The answer.</summary>
    public static Answer Of(LogPrediction log, MeasuredComparison measured, Scenario scenario, UnitStyle units)
    {
        if (log.Rows.Count == 0)
        {
            return new()
            {
                Brief = measured.Rows.Count == 0 ? "The log has no readings." : "The log has no reading of what is left.",
                Verdict = measured.Rows.Count == 0 ? "The log has no readings." : "The log has no reading of what is left.",
                Consequences = [.. Measured(measured, units)],
                ToDo = "Do: add one with 'coldsim log add'.",
                Caution = CautionLine.Reading,
            };
        }

        string left = Left(log, scenario, units);
        DateTimeOffset last = log.Rows[^1].Row.Reading.Time.ToOffset(scenario.Start.Offset);
        return new()
        {
            Brief = OneLine.Of($"LEFT: {left}, read {ClockText.DayClock(last)}"),
            Verdict = $"LEFT: {left}, read {ClockText.DayClock(last)}.",
            Consequences = [.. Consequences(log, scenario, units), .. Measured(measured, units)],
            ToDo = ToDo(log),
            Table = Table(log, scenario, units),
            Caution = CautionLine.Reading,
        };
    }

    private static string Left(LogPrediction log, Scenario scenario, UnitStyle units) => string.Join(", ", Enumerable.Range(0, scenario.Rig.Cylinders.Count)
        .Select(i => (Place: i, Latest: log.Rows.LastOrDefault(r => r.Row.Reading.Cylinder == i)?.Row.Contents))
        .Where(c => c.Latest is not null)
        .Select(c => $"{units.Mass(c.Latest!.Mass.Kilograms)} in the {Name(scenario, c.Place)}, give or take {units.Mass(c.Latest.StandardUncertainty.Kilograms)}"));

    private static string Name(Scenario scenario, int place)
        => scenario.Rig.Cylinders.Count == 1 ? $"{CylinderWords.Names(scenario.Rig)} cylinder" : scenario.Rig.NameOf(place) + " one";

    private static double? OfExpected(LogPrediction log) => log.Predicted.Kilograms < 0.01 ? null : log.Used / log.Predicted;

    private static List<string> Consequences(LogPrediction log, Scenario scenario, UnitStyle units)
    {
        List<string> all = [];
        double days = log.Days.Sum(d => d.Covered.Hours) / 24;
        if (OfExpected(log) is { } part && days > 1.0 / 24)
        {
            string beside = Math.Abs(part - 1) < 0.005 ? "as much as" : $"{UnitStyle.Number(100 * Math.Abs(part - 1), 0)} % {(part > 1 ? "more" : "less")} than";
            all.Add($"You use {units.Mass(log.Used.Kilograms / days)} a day, {beside} this weather asks {LogText.Parameters(scenario)}.");
        }

        all.AddRange(FeedWords.Noticed(log.Log, scenario.Rig, scenario.Start.Offset));
        string[] wrong = [.. log.Rows.Where(r => r.Mark == ReadingMark.LooksWrong).Select(r => UnitStyle.Number(r.Row.Reading.Line, 0))];
        if (wrong.Length > 0)
            all.Add(wrong.Length == 1 ? $"The reading in line {wrong[0]} looks wrong." : $"The readings in lines {string.Join(", ", wrong)} look wrong.");
        return all;
    }

    // What differs clearly; else that nothing does.
    private static IEnumerable<string> Measured(MeasuredComparison measured, UnitStyle units)
    {
        if (measured.Rows.Count == 0)
            yield break;
        MeasuredGroup[] off = [.. measured.Groups.Where(g => g.Finding != MeasuredFinding.Agrees).OrderByDescending(g => Math.Abs(g.Mean / g.StandardError))];
        foreach (MeasuredGroup group in off.Take(1))
            yield return MeasuredWords.Sentence(group, units);
        string count = measured.Rows.Count == 1 ? "1 other value" : $"{UnitStyle.Number(measured.Rows.Count, 0)} other values";
        yield return off.Length > 0 || measured.Groups.Count == 0 ? $"--full has {count} of the log beside the run." : $"What else was measured agrees with the run ({count}, --full).";
    }

    private static string ToDo(LogPrediction log)
        => OfExpected(log) is { } part && Math.Abs(part - 1) > WorthFitting_frac && log.Rows.Count >= ReadingsToFit
            ? "Do: teach the file this coach with 'coldsim fit'; then 'coldsim run' says how long it lasts."
            : "Do: ask 'coldsim run' how long it lasts.";

    private static AnswerTable Table(LogPrediction log, Scenario scenario, UnitStyle units)
    {
        IReadOnlyList<LogLineReport> rows = LogReport.Of(log, scenario, []).Lines;
        IReadOnlyList<string> lines = LogText.Table(rows, units);
        int head = lines.Count - rows.Count;
        return new(
            [.. lines.Take(head)],
            [.. rows.Select((r, i) => new AnswerRow(lines[head + i], i + (r.Prediction.Mark == ReadingMark.LooksWrong ? rows.Count : 0)))],
            hidden => $"{hidden.Count} more with --full.")
        {
            Title = $"{scenario.Title}, ± one standard uncertainty:",
        };
    }
}
