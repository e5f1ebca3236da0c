using System.Globalization;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Gauges;
using UnitsNet;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>Readings of a cylinder as text, beside what their answer says.</summary>
internal static class GaugeText
{
    /// <summary>What goes below the answer: what it rests on, and what else has been read.</summary>
    public static IReadOnlyList<TextSection> Sections(GaugeReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections = [];
        if (report.Pressure is { } finding)
            sections.Add(new("What the pressure says", [.. PressureSentences(report, finding, units).SelectMany(s => Wrap.Lines(s))]));
        if (report is { Contents: { } contents, Estimates.Count: > 1 })
            sections.Add(new("What that is, with one standard uncertainty", Figures(contents, report.Uncertainty!, units)));
        foreach (ContentsEstimate estimate in report.Estimates.Take(report.Estimates.Count == 1 ? 1 : 0))
            sections.Add(new("Where the uncertainty comes from", Shares(estimate, units)));
        if (report.Contents is { } held && !report.IsPressureAlone)
            sections.Add(new("The same mass at other temperatures", Drift(report, held, units)));
        sections.Add(new("Assumed", RunText.Points(report.Assumptions, units)));
        sections.Add(new("Cautions", RunText.Points(cautions, units)));
        return sections;
    }

    /// <summary>What was read, such as "20 lb cylinder, upright".</summary>
    internal static string Title(GaugedCylinder cylinder)
    {
        string what = cylinder.Lies ? "tank, horizontal" : "cylinder, upright";
        return cylinder.Name == "own" ? $"Own {what}" : $"{cylinder.Name} {what}";
    }

    /// <summary>Which readings disagree and why that is likely; null where all agree.</summary>
    internal static string? Disagree(GaugeReport report, UnitStyle units) => report.Combined?.Disagreement is { } d
        ? $"The readings disagree: {d.More} means {Mass(d.Gap, units)} more than {d.Less}, {UnitStyle.Number(d.Times, 1)} times the uncertainty of that "
            + $"difference. Likeliest reason: {Reason(d, units)}"
        : null;

    private static string Reason(Disagreement d, UnitStyle units)
    {
        double off = d.CauseTimes * d.Cause.Uncertainty;
        string size = Size(d.Cause, Math.Abs(off), units);
        string amount = $"{size} {(d.Cause.Kind == InputKind.Temperature ? off < 0 ? "colder" : "warmer" : off < 0 ? "less" : "more")}";
        string times = $"({UnitStyle.Number(Math.Abs(d.CauseTimes), 1)} times its uncertainty)";
        return d.Cause.Name switch
        {
            "tare" when off > 0 => $"the tare is {amount} than stamped {times}, or ice, snow or a fitting is on the scale.",
            "tare" => $"the tare is {amount} than stamped {times}.",
            "liquid temperature" => $"the liquid is {amount} than stated {times}; a draw chills it below the air.",
            "frost's edge" => $"the frost's edge of '{d.CauseReading}' is off by {size} {times}; frost climbs above the liquid.",
            "line" => $"the line of '{d.CauseReading}' is off by {size} {times}.",
            "coach off level" => $"the coach leans by {size} where '{d.CauseReading}' was read {times}.",
            "water capacity" or "outside diameter" => $"{d.Cause.Name} is {amount} than assumed {times}: is it this size?",
            _ => $"{d.Cause.Name}{(d.CauseReading.Length > 0 ? $" of '{d.CauseReading}'" : "")} is off by {size} {times}.",
        };
    }

    /// <summary>The contents in all that people count them in, a row each.</summary>
    internal static IReadOnlyList<string> Figures(ContentsFigures c, ContentsFigures u, UnitStyle units)
    {
        // Vapour alone is known to a few grams.
        int finer = u.Mass.Pounds < 0.05 ? 1 : 0;
        List<IReadOnlyList<string>> rows =
        [
            units.IsUs
                ? ["propane", Number(c.Mass.Pounds, 1 + finer), "±", Number(u.Mass.Pounds, 1 + finer), "lb"]
                : ["propane", Number(c.Mass.Kilograms, 2 + finer), "±", Number(u.Mass.Kilograms, 2 + finer), "kg"],
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

    /// <summary>The readings, a row each, and all together last.</summary>
    internal static IReadOnlyList<string> Readings(GaugeReport report, UnitStyle units)
    {
        CombinedEstimate combined = report.Combined!;
        WeighedEstimate[] rows = [.. WeighedEstimate.Of(report)];
        FigureTable.Cells<WeighedEstimate>[] columns = [.. new FigureTable(ReportTable.Gauges, units).Columns(GaugeFigures.Readings, rows)];
        return TextTable.Lines(
            [.. columns.Select(c => c.Heading)],
            [.. rows.Select((r, i) => (IReadOnlyList<string>)[.. columns.Select(c => c.Of(r, i))]), Together(combined, units, columns.Length)],
            gap: 2);
    }

    // The row below all readings has what they come to; its other columns are empty.
    private static string[] Together(CombinedEstimate combined, UnitStyle units, int columns) =>
    [
        "together", Number(units.MassIn(combined.Mass.Kilograms), 2), Number(units.MassIn(combined.StandardUncertainty.Kilograms), 2),
        .. Enumerable.Repeat("", columns - 3),
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
                $"{(q.Temperature_K is null ? "" : "* now. ")}Uncorrected: a sensor that always assumes {units.WholeTemperature(q.Assumed_K)}. Pressure at sea level."),
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

    /// <summary>What a cylinder's pressure says about its contents, in a sentence.</summary>
    internal static string PressureVerdict(GaugeReport report, PressureFinding finding, UnitStyle units) => finding.Verdict switch
    {
        Planning.Gauges.PressureVerdict.LiquidGone => $"EMPTY of liquid: {units.Pressure(finding.Reading.Pascals)} is clearly below what liquid would make. "
            + $"{Vapour(report.Contents!.Mass.Kilograms, units)} of vapour is left, give or take {Vapour(report.Uncertainty!.Mass.Kilograms, units)}.",
        Planning.Gauges.PressureVerdict.LighterGasOrAir =>
            "CANNOT TELL how much is left. The pressure is too high for this grade: lighter gas (ethane), or air in the cylinder.",
        _ => "CANNOT TELL: neither how much is left nor whether there is liquid.",
    };

    /// <summary>What would let a pressure be judged; null where it is judged.</summary>
    internal static string? WhyNot(GaugeReport report, PressureFinding finding) => finding.Verdict != Planning.Gauges.PressureVerdict.CannotTell ? null
        : report.Question switch
        {
            { Temperature_K: null } => "to judge a pressure, the liquid's temperature must be known from something else (--temperature) and the cylinder at rest (--rested).",
            { Rested: false } => "only a cylinder at rest (--rested) can be judged: one that was just used is colder than the air, and then makes less pressure.",
            _ => "the pressure is what liquid of that temperature may make.",
        };

    private static IEnumerable<string> PressureSentences(GaugeReport report, PressureFinding finding, UnitStyle units)
    {
        if (finding.LiquidTemperature is { } pure)
        {
            string ethane = finding.LiquidTemperatureWithEthane is { } lighter ? $", with 3 % ethane at {units.WholeTemperature(lighter.Kelvins)}" : "";
            yield return $"If there is liquid, its surface is at {units.WholeTemperature(pure.Kelvins)}{ethane}. That is so whether the cylinder is full or nearly "
                + "empty: while there is liquid, pressure says nothing about how much.";
        }

        if (finding is { ExpectedLow: { } low, ExpectedHigh: { } high })
        {
            yield return $"Liquid at {units.WholeTemperature(report.Question.Pressure!.Temperature_K!.Value)}, as given, would make {units.Pressure(low.Pascals)} to "
                + $"{units.Pressure(high.Pascals)}, with its errors and the grade counted.";
        }

        if (finding.Verdict == Planning.Gauges.PressureVerdict.LiquidGone)
            yield return "The butane that a long draw leaves behind makes as little pressure; a scale decides.";
    }

    private static string Vapour(double kg, UnitStyle units) => $"{UnitStyle.Number(units.MassIn(kg), units.IsUs ? 2 : 3)} {units.MassUnit}";
}
