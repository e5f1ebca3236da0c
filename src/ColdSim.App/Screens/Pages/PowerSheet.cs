using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Screens.Pages;

/// <summary>Draws the page of the 12 V side: a row a night, and one night in words, in a table and over its hours.</summary>
internal static class PowerSheet
{
    private const int LongestName = 24;

    // A blank row, a strip and the clock.
    private const int LeastRows = LeastStrip + 2;

    private const int LeastStrip = 4;
    private const int MostStrip = 9;
    private const int LeastColumns = 12;

    /// <summary>A heading and some nights.</summary>
    /// <param name="nights">All nights.</param>
    /// <param name="chosen">Index of the one that is marked.</param>
    /// <param name="first">Index of the first to show.</param>
    /// <param name="rows">How many to show.</param>
    public static IReadOnlyList<string> Nights(IReadOnlyList<NightReport> nights, int chosen, int first, int rows)
    {
        IReadOnlyList<string> lines = TextTable.Lines(
            [new(["  Night"], Left: true), new(["Verdict"], Left: true), new(["Drawn Wh"]), new(["Lowest"]), new(["No voltage"])],
            [.. nights.Select((n, i) => (IReadOnlyList<string>)
            [
                $"{(i == chosen ? '>' : ' ')} {ClockText.NightShort(n)}", ReportWords.Verdicts[n.Verdict].Text, UnitStyle.Number(n.Power!.DrawnInAll.WattHours, 0),
                Percent(n.Power.ChargeLow),
                n.Power.VoltageGone.Seconds > 0 ? ClockText.Span(n.Power.VoltageGone) : "-",
            ])]);
        return [lines[0], .. lines.Skip(1 + first).Take(rows)];
    }

    /// <summary>A name, watt-hours and a share for each who draws.</summary>
    public static IReadOnlyList<string> Table(NightPower power)
    {
        double all_J = power.DrawnInAll.Joules;
        return TextTable.Lines(
            [new(["Drawn by"], Left: true), new(["Wh"]), new(["Share"])],
            [.. power.Drawn.Select(d => (IReadOnlyList<string>)
            [
                CellText.Cut(d.Name, LongestName), UnitStyle.Number(d.Energy.WattHours, 0), $"{UnitStyle.Number(all_J > 0 ? d.Energy.Joules / all_J * 100 : 0, 0)} %",
            ])]);
    }

    /// <summary>One night in words: what ran out first, the charge, the voltage, and what came in.</summary>
    public static IReadOnlyList<string> Words(NightReport night)
    {
        NightPower power = night.Power!;
        return [$"Fails first: {First(night)}.", Charge(power), Voltage(power), Given(power)];
    }

    /// <summary>Watt-hours, with their unit.</summary>
    private static string WattHours(Energy energy) => $"{UnitStyle.Number(energy.WattHours, 0)} Wh";

    private static string First(NightReport night)
        => night.Verdict == Verdict.Holds ? "nothing" : $"{VerdictWords.Clause(night.Verdict)}{On(night.FirstFailure)}";

    private static string Charge(NightPower power)
        => $"Charge: lowest {Percent(power.ChargeLow)} on {ClockText.DayClock(power.ChargeLowAt)}, {Percent(power.ChargeAtEnd)} at the end.";

    private static string Voltage(NightPower power)
        => power.FlatAt is { } flat ? $"Voltage: gone from {ClockText.DayClock(flat)}, for {ClockText.Span(power.VoltageGone)} in all." : "Voltage: never gone.";

    private static string Given(NightPower power)
    {
        string ran = power.GeneratorTime.Seconds > 0 ? $" in {ClockText.Span(power.GeneratorTime)}" : "";
        return $"Given: solar {WattHours(power.Solar)}, shore {WattHours(power.Shore)}, generator {WattHours(power.Generator)}{ran}.";
    }

    private static string On(DateTimeOffset? time) => time is { } at ? $" on {ClockText.DayClock(at)}" : "";

    private static string Percent(Ratio part) => $"{UnitStyle.Number(part.Percent, 0)} %";

    /// <summary>A night over its hours, with the pointer where charge is lowest: charge alone, or also what is drawn and comes in where there is room.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="report">The run.</param>
    /// <param name="night">Index of the night.</param>
    /// <param name="top">First row, which stays blank.</param>
    /// <param name="rows">How many rows there are.</param>
    public static void DrawCurves(Sheet sheet, RunReport report, int night, int top, int rows)
    {
        PlotArea plot = PlotArea.Across(sheet.Width);
        if (rows < LeastRows || plot.Columns < LeastColumns || report.Series.Power is not { } power) return;
        MinuteRange span = MinuteRange.Of(report, night);
        int lowest = span.Clamp(MinuteRange.MinuteAt(report, report.Nights[night].Power!.ChargeLowAt));
        int strips = rows - 2 >= 2 * LeastStrip ? 2 : 1;
        int each = Math.Min(MostStrip, (rows - 2) / strips);
        int y = top + 1;
        foreach (Strip strip in Strips(report.Series, power).Take(strips))
        {
            StripDrawing.Draw(sheet, plot, y, each, strip, span, lowest);
            y += each;
        }

        TimeAxis.DrawHours(sheet, plot, y, span, lowest, report.Scenario.Start);
    }

    // Axes hold for all nights, so that nights compare at a glance.
    private static IEnumerable<Strip> Strips(RunSeries series, PowerSeries power)
    {
        yield return new(new("charge", power.Charge_frac, f => f * 100, new ValueAxis(0, 100, "%"), Stroke.Line, CellStyle.Charge));
        double[] drawn_W = HourlyMean.Of(power.Drawn_W, series.Count), given_W = HourlyMean.Of(power.Given_W(), series.Count);
        ValueAxis axis = ValueAxis.Around(0, Curve.Over(drawn_W, w => w, 0, series.Count).With(Curve.Over(given_W, w => w, 0, series.Count)).High, "W");
        yield return new(
            new("drawn", drawn_W, w => w, axis, Stroke.Line, CellStyle.PowerDrawn) { ShowsMean = true }, new("comes in", given_W, w => w, axis, Stroke.Dashes, CellStyle.PowerGiven) { ShowsMean = true });
    }
}
