using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text.Answers;

/// <summary>What readings of a cylinder mean, as an answer.</summary>
internal static class GaugeAnswer
{
    // 95 % of a normal distribution.
    private const double Twice = 2;

    /// <summary>The answer.</summary>
    public static Answer Of(GaugeReport report, UnitStyle units)
    {
        string verdict = report is { IsPressureAlone: true, Pressure: { } finding } ? GaugeText.PressureVerdict(report, finding, units) : Verdict(report, units);
        return new()
        {
            Brief = OneLine.Of(verdict),
            Verdict = verdict,
            Consequences = Consequences(report, units),
            Why = report is { IsPressureAlone: true, Pressure: { } judged } ? GaugeText.WhyNot(report, judged) ?? "" : "",
            ToDo = ToDo(report, units),
            Table = Table(report, units),
            AboutGuesses = GuessText.About,
            Guesses = Guesses(report, units),
            Caution = CautionLine.Reading,
        };
    }

    private static string Verdict(GaugeReport report, UnitStyle units)
    {
        string by = report.Estimates.Count == 1 ? $"by {report.Estimates[0].Reading}" : $"by {report.Estimates.Count} readings together";
        double off_kg = Twice * report.Uncertainty!.Mass.Kilograms;
        return $"{Mass(report.Contents!.Mass.Kilograms, off_kg, units)} of propane left, {by}, give or take {Mass(off_kg, off_kg, units)} (95 %).";
    }

    // As finely as the error lets it be known.
    private static string Mass(double kg, double off_kg, UnitStyle units)
    {
        double off = units.MassIn(off_kg);
        return $"{UnitStyle.Number(units.MassIn(kg), off >= 3 ? 0 : off >= 0.1 ? 1 : 2)} {units.MassUnit}";
    }

    private static List<string> Consequences(GaugeReport report, UnitStyle units)
    {
        List<string> all = [];
        if (report is { Contents: { } c, Uncertainty: { } u, IsPressureAlone: false })
        {
            string fire = c.AtFullFire is { } hours ? $", and {UnitStyle.Number(hours.Hours, 0)} h of the furnace at full fire" : "";
            all.Add($"That is {UnitStyle.Number(c.OfLegalFill.Percent, 0)} % of its legal fill, give or take {UnitStyle.Number(Twice * u.OfLegalFill.Percent, 0)} %{fire}.");
        }

        if (report is { IsPressureAlone: true, Pressure.LiquidTemperature: { } pure })
            all.Add($"If there is liquid, its surface is at {units.WholeTemperature(pure.Kelvins)}, full or nearly empty.");
        if (GaugeText.Disagree(report, units) is { } disagree)
            all.Add(disagree);
        if (PressureBesideText.Of(report, units) is { } pressure)
            all.Add(pressure);
        all.AddRange(units.InOwn(report.Cautions));
        return all;
    }

    private static string ToDo(GaugeReport report, UnitStyle units)
        => report.IsPressureAlone ? "Do: weigh it, which says how much there is: coldsim gauge weight."
            : report.Question.Liquid is { Source: TemperatureSource.PressureTooLow or TemperatureSource.PressureTooHigh } && report.Question.Readings.Any(r => r is not WeightReading)
                ? "Do: measure the liquid's temperature again, on the wall below the liquid's line; the levels depend on it."
            : report.Combined?.Repetition is { } next ? $"Do: {Settle(report, next)}{RepeatText.Of(report, next, units)}"
            : "";

    private static string Settle(GaugeReport report, Repetition next)
        => report.Combined!.Disagreement is not null && next.Reason != RepeatReason.Outlier ? "settle that before you trust the figure; " : "";

    private static AnswerTable? Table(GaugeReport report, UnitStyle units)
    {
        if (report.Contents is not { } contents)
            return null;
        if (report.Estimates.Count < 2)
        {
            IReadOnlyList<string> figures = GaugeText.Figures(contents, report.Uncertainty!, units);
            return new([], [.. figures.Select((line, i) => new AnswerRow(line, -i))], hidden => $"{hidden.Count} more with --full.")
            {
                Title = $"{GaugeText.Title(report.Question.Cylinder)}, ± one standard uncertainty:",
            };
        }

        IReadOnlyList<string> lines = GaugeText.Readings(report, units);
        int readings = report.Estimates.Count, head = lines.Count - readings - 1;
        IReadOnlyList<double> weights = report.Combined!.Weights;
        return new(
            [.. lines.Take(head)],
            [.. lines.Skip(head).Select((line, i) => new AnswerRow(line, i < readings ? weights[i] : double.PositiveInfinity))],
            hidden => $"{hidden.Count} readings more, which count less.")
        {
            Title = $"{GaugeText.Title(report.Question.Cylinder)}, ± one standard uncertainty:",
        };
    }

    private static IReadOnlyList<string> Guesses(GaugeReport report, UnitStyle units)
    {
        if (report.Estimates.Count != 1)
            return [];
        return
        [
            .. report.Estimates[0].Shares.Where(s => s.Change_kg != 0).OrderByDescending(s => Math.Abs(s.Change_kg)).Take(2).Select(s =>
                $"{s.Input.Name}, off by {GaugeText.Size(s.Input, s.Input.Uncertainty, units)}: {UnitStyle.Number(units.MassIn(Math.Abs(s.Change_kg)), 2)} "
                + $"{units.MassUnit}. {Measure(s.Input)}"),
        ];
    }

    /// <summary>How to make an input surer.</summary>
    internal static string Measure(StatedError input) => input.Name switch
    {
        "tare" => "Weigh the cylinder when it is surely empty: --tare-error.",
        "scale" => "Weigh a known weight: --scale-error.",
        "ice" => "Brush it off.",
        "accessories" => "Take them off and weigh again.",
        "liquid temperature" => "Measure it on the wall below the liquid's line.",
        "coach off level" => "Level the coach, or read two sides and combine.",
        "water capacity" => "Read it from the stamp: --water-capacity.",
        _ => "Read it again and combine: coldsim gauge combine.",
    };
}
