using System.Globalization;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Gauges;
using UnitsNet;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>Readings of a cylinder as text: the answer first, then what it rests on.</summary>
internal static class GaugeText
{

    public static IReadOnlyList<TextSection> Sections(GaugeReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        GaugeQuestion question = report.Question;
        string title = question.Cylinder.Name == "own"
            ? $"Own {(question.Cylinder.Lies ? "tank, horizontal" : "cylinder, upright")}"
            : $"{question.Cylinder.Name} {(question.Cylinder.Lies ? "tank, horizontal" : "cylinder, upright")}";
        List<TextSection> sections = [new(title, [.. Answer(report, units).SelectMany(s => Wrap.Lines(s))])];
        if (report.Contents is { } contents)
            sections.Add(new("What that is, with one standard uncertainty", Figures(contents, report.Uncertainty!, units)));
        if (report.Estimates.Count > 1)
            sections.Add(new("Reading by reading", Readings(report, units)));
        foreach (ContentsEstimate estimate in report.Estimates.Take(report.Estimates.Count == 1 ? 1 : 0))
            sections.Add(new("Where the uncertainty comes from", Shares(estimate, units)));
        if (report.Contents is { } held && report.Pressure is null)
            sections.Add(new("The same mass at other temperatures", Drift(report, held, units)));
        sections.Add(new("Taken", RunText.Points(report.Assumptions, units)));
        sections.Add(new("Cautions", RunText.Points([.. report.Cautions, .. cautions], units)));
        return sections;
    }

    private static IEnumerable<string> Answer(GaugeReport report, UnitStyle units)
    {
        if (report.Pressure is { } finding)
        {
            foreach (string sentence in PressureSentences(report, finding, units))
                yield return sentence;
            yield break;
        }

        string which = report.Estimates.Count == 1 ? $"By its {report.Estimates[0].Reading} it holds" : $"By {report.Estimates.Count} readings together it holds";
        yield return $"{which} {Mass(report.Contents!.Mass, units)} of propane, give or take {Mass(report.Uncertainty!.Mass, units)} "
            + "(standard uncertainty; twice that covers 95 %).";
        if (report.Combined?.Disagreement is { } d)
        {
            yield return $"The readings disagree: {d.More} means {Mass(d.Gap, units)} more than {d.Less}, {UnitStyle.Number(d.Times, 1)} standard "
                + $"uncertainties of the difference. Likeliest reason: {Reason(d, units)} Settle that before trusting the mean.";
        }
    }

    private static string Reason(Disagreement d, UnitStyle units)
    {
        double off = d.CauseTimes * d.Cause.Uncertainty;
        string size = Size(d.Cause, Math.Abs(off), units);
        string amount = $"{size} {(d.Cause.Kind == InputKind.Temperature ? off < 0 ? "colder" : "warmer" : off < 0 ? "less" : "more")}";
        string times = $"({UnitStyle.Number(Math.Abs(d.CauseTimes), 1)} of its own)";
        return d.Cause.Name switch
        {
            "tare" when off > 0 => $"the tare is {amount} than stamped {times}, or ice, snow or a fitting stands on the scale.",
            "tare" => $"the tare is {amount} than stamped {times}.",
            "liquid temperature" => $"the liquid is {amount} than stated {times}; a draw chills it below the air.",
            "frost's edge" => $"the frost's edge of '{d.CauseReading}' is off by {size} {times}; frost climbs above the liquid.",
            "line" => $"the line of '{d.CauseReading}' is off by {size} {times}.",
            "coach off level" => $"the coach leans by {size} where '{d.CauseReading}' was read {times}.",
            "water capacity" or "outside diameter" => $"{d.Cause.Name} is {amount} than taken {times}: is it this size?",
            _ => $"{d.Cause.Name}{(d.CauseReading.Length > 0 ? $" of '{d.CauseReading}'" : "")} is off by {size} {times}.",
        };
    }

    private static IReadOnlyList<string> Figures(ContentsFigures c, ContentsFigures u, UnitStyle units)
    {
        // Vapour alone is known to a few grams.
        int finer = u.Mass.Pounds < 0.05 ? 1 : 0;
        List<IReadOnlyList<string>> rows =
        [
            units.IsUs
                ? ["mass", Number(c.Mass.Pounds, 1 + finer), "±", Number(u.Mass.Pounds, 1 + finer), "lb"]
                : ["mass", Number(c.Mass.Kilograms, 2 + finer), "±", Number(u.Mass.Kilograms, 2 + finer), "kg"],
            units.IsUs
                ? ["liquid at 60 °F", Number(c.Volume.UsGallons, 2 + finer), "±", Number(u.Volume.UsGallons, 2 + finer), "gal"]
                : ["liquid at 16 °C", Number(c.Volume.Liters, 1 + finer), "±", Number(u.Volume.Liters, 1 + finer), "L"],
            ["of the legal fill", Number(c.OfLegalFill.Percent, finer), "±", Number(u.OfLegalFill.Percent, finer), "%"],
            units.IsUs
                ? ["gross heat", Thousands(c.Energy, finer), "±", Thousands(u.Energy, finer), "BTU"]
                : ["gross heat", Number(c.Energy.Megajoules, finer), "±", Number(u.Energy.Megajoules, finer), "MJ"],
        ];
        if (c.AtFullFire is { } hours)
            rows.Add(["furnace at full fire", Number(hours.Hours, 1), "±", Number(u.AtFullFire!.Value.Hours, 1), "h"]);
        return TextTable.Lines([new([], Left: true), new([]), new([]), new([]), new([], Left: true)], rows);
    }

    private static List<string> Readings(GaugeReport report, UnitStyle units)
    {
        CombinedEstimate combined = report.Combined!;
        WeighedEstimate[] rows = [.. WeighedEstimate.Of(report)];
        FigureTable.Cells<WeighedEstimate>[] columns = [.. new FigureTable(ReportTable.Gauges, units).Columns(GaugeFigures.Readings, rows)];
        List<string> lines =
        [
            .. TextTable.Lines([.. columns.Select(c => c.Heading)], [.. rows.Select((r, i) => (IReadOnlyList<string>)[.. columns.Select(c => c.Of(r, i))]), Together(combined, units)], gap: 2),
        ];
        if (combined.Disagreement is null)
            lines.Add("They agree within their errors.");
        return lines;
    }

    private static string[] Together(CombinedEstimate combined, UnitStyle units) =>
    [
        "together", Number(units.MassIn(combined.Mass.Kilograms), 2), Number(units.MassIn(combined.StandardUncertainty.Kilograms), 2), "", "",
    ];

    private static IReadOnlyList<string> Shares(ContentsEstimate estimate, UnitStyle units) => new FigureTable(ReportTable.GaugeErrors, units) { Gap = 2 }.Lines(
        GaugeFigures.Errors, [.. estimate.Shares.OrderByDescending(s => Math.Abs(s.Change_kg)).Select(s => new ErrorSource(s))]);

    private static List<string> Drift(GaugeReport report, ContentsFigures contents, UnitStyle units)
    {
        GaugeQuestion q = report.Question;
        IEnumerable<double> round_K = units.IsUs
            ? Enumerable.Range(-2, 8).Select(i => (20 * i + ZeroFahrenheit_R) / 1.8)
            : Enumerable.Range(-4, 9).Select(i => 10 * i + ZeroCelsius_K);
        double[] all_K = [.. round_K.Concat(q.Temperature_K is double t ? [t] : []).Order()];
        double[] distinct_K = [.. all_K.Where((t, i) => i == 0 || t - all_K[i - 1] > 0.01)];
        IReadOnlyList<ExpectedReading> rows = DriftTable.Of(
            q.Cylinder, contents.Mass, distinct_K.Select(t => UnitsNet.Temperature.FromKelvins(t)), q.Assumed_K);
        return
        [
            .. new FigureTable(ReportTable.Drift, units) { Gap = 2 }.Lines(
                GaugeFigures.Drifts, rows, new FigureTable.Cells<ExpectedReading>(new([""]), -1, (r, _) => IsNow(r, q) ? "*" : "")),
            .. Wrap.Lines(
                $"{(q.Temperature_K is null ? "" : "* now. ")}Uncorrected: a sensor that always reckons with {units.Temperature(q.Assumed_K)}. Pressure at sea level."),
        ];
    }

    private static bool IsNow(ExpectedReading reading, GaugeQuestion question)
        => question.Temperature_K is double now_K && Math.Abs(now_K - reading.Temperature.Kelvins) < 0.01;

    private static string Mass(Mass mass, UnitStyle units) => units.Mass(mass.Kilograms);

    internal static string Size(StatedError input, double si, UnitStyle units) => input.Kind switch
    {
        InputKind.Mass => $"{Number(units.MassIn(si), 2)} {units.MassUnit}",
        InputKind.Length => units.IsUs ? $"{Number(si / 0.0254, 2)} in" : $"{Number(si * 1000, 1)} mm",
        InputKind.Temperature => units.Difference(si),
        InputKind.Time => $"{Number(si * 1e6, 1)} µs",
        InputKind.Ratio => $"{Number(si * 100, 1)} %",
        InputKind.Angle => $"{Number(si * 180 / Math.PI, 1)}°",
        InputKind.Pressure => units.Pressure(si),
        _ => throw new ArgumentOutOfRangeException(nameof(input), input.Kind, null),
    };

    private static string Thousands(Energy energy, int finer)
    {
        double step = finer > 0 ? 100 : 1000;
        return (Math.Round(energy.BritishThermalUnits / step) * step).ToString("#,0", CultureInfo.InvariantCulture);
    }

    private static string Number(double value, int decimals) => UnitStyle.Number(value, decimals);

    /// <summary>What a cylinder's pressure says about its contents, and what it does not.</summary>
    private static IEnumerable<string> PressureSentences(GaugeReport report, PressureFinding finding, UnitStyle units)
    {
        yield return finding.Verdict switch
        {
            PressureVerdict.LiquidGone =>
                $"The liquid is gone: {units.Pressure(finding.Reading.Pascals)} is clearly below what liquid would keep up. "
                + $"{Vapour(report.Contents!.Mass.Kilograms, units)} of vapour is left, give or take {Vapour(report.Uncertainty!.Mass.Kilograms, units)}.",
            PressureVerdict.LighterGasOrAir =>
                "Cannot tell how much is left. The pressure is clearly above what this grade explains: lighter gas (ethane), or air left in the cylinder.",
            _ => "Cannot tell: neither how much is left nor whether there is liquid.",
        };
        yield return "";
        if (finding.LiquidTemperature is { } pure)
        {
            string ethane = finding.LiquidTemperatureWithEthane is { } lighter ? $", with 3 % ethane {units.Temperature(lighter.Kelvins)}" : "";
            yield return $"If there is liquid, its surface has {units.Temperature(pure.Kelvins)}{ethane}. That holds whether the cylinder is full or nearly empty: "
                + "while there is liquid, pressure says nothing about how much.";
        }

        if (finding is { ExpectedLow: { } low, ExpectedHigh: { } high })
        {
            yield return $"Liquid at {units.Temperature(report.Question.Temperature_K!.Value)}, as stated, would stand between "
                + $"{units.Pressure(low.Pascals)} and {units.Pressure(high.Pascals)}, its errors and the grade counted.";
        }

        if (finding.Verdict == PressureVerdict.CannotTell)
            yield return Why(report);
        if (finding.Verdict == PressureVerdict.LiquidGone)
            yield return "The same low pressure comes from what butane a long draw leaves behind; a scale decides.";
    }

    private static string Vapour(double kg, UnitStyle units) => $"{UnitStyle.Number(units.MassIn(kg), units.IsUs ? 2 : 3)} {units.MassUnit}";

    private static string Why(GaugeReport report) => report.Question switch
    {
        { Temperature_K: null } => "A judgement needs the liquid's temperature from something else (--temperature) and a cylinder at rest (--rested).",
        { Rested: false } => "A judgement needs a cylinder at rest (--rested): one that has just been drawn from is colder than the air, and low pressure then means cold.",
        _ => "The pressure is what liquid of that temperature may have.",
    };
}
