using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>A night over its hours: four strips of curves, the burner, the events, the clock. Axes hold for all nights, so that nights compare at a glance.</summary>
internal static class NightCurves
{
    /// <summary>The strips of a run: air, cylinder, gas drawn and gas left, top to bottom.</summary>
    public static IReadOnlyList<Strip> Strips(RunReport report, UnitStyle units)
    {
        RunSeries series = report.Series;
        return [Air(series, units), Cylinder(series, units), Gas(series, units), Left(series, CylinderWords.Gas(report.Scenario.Rig), units)];
    }

    private static Strip Air(RunSeries series, UnitStyle units)
    {
        Extent outside = All(series, series.Outside_K, units.TemperatureIn), inside = All(series, series.Inside_K, units.TemperatureIn);
        ValueAxis axis = inside.IsNone
            ? ValueAxis.Around(outside.Low, outside.High, units.TemperatureUnit)
            : ValueAxis.Around(Math.Min(outside.Low, inside.Low), Math.Max(outside.High, inside.High), units.TemperatureUnit);
        Curve air = new("outside", series.Outside_K, units.TemperatureIn, axis, Stroke.Dashes);
        return inside.IsNone
            ? new(air, Missing: "no coach")
            : new(air, new("inside", series.Inside_K, units.TemperatureIn, axis, Stroke.Line));
    }

    /// <summary>Pressure follows the liquid's temperature; the axes keep the two curves apart, temperature above and pressure below.</summary>
    private static Strip Cylinder(RunSeries series, UnitStyle units)
    {
        Extent liquid = All(series, series.Liquid_K, units.TemperatureIn);
        Extent pressure = All(series, series.CylinderPressure_Pa, units.PressureIn);
        return new(
            new("liquid", series.Liquid_K, units.TemperatureIn,
                ValueAxis.Around(liquid.Low - (liquid.High - liquid.Low) * 0.6, liquid.High, units.TemperatureUnit), Stroke.Line),
            new("pressure", series.CylinderPressure_Pa, units.PressureIn,
                ValueAxis.Around(Math.Min(0, pressure.Low), pressure.High * 1.6, units.PressureUnit), Stroke.Dashes));
    }

    /// <summary>A warm full cylinder can give many times what is asked; the strip then stops at twice the demand.</summary>
    private static Strip Gas(RunSeries series, UnitStyle units)
    {
        double asked = All(series, series.Asked_W, units.PowerIn).High, can = All(series, series.CanGiveNow_W, units.PowerIn).High;
        double high = asked > 0 ? Math.Max(asked, Math.Min(can, asked * 2)) : can;
        ValueAxis axis = ValueAxis.Around(0, Math.Max(high, 0), units.PowerUnit);
        return new(
            new("demand", series.Asked_W, units.PowerIn, axis, Stroke.Speckled),
            new("can give", series.CanGiveNow_W, units.PowerIn, axis, Stroke.Line));
    }

    private static Strip Left(RunSeries series, string gas, UnitStyle units)
        => new(new(gas, series.Propane_kg, units.MassIn,
            ValueAxis.Around(0, All(series, series.Propane_kg, units.MassIn).High, units.MassUnit), Stroke.Line));

    private static Extent All(RunSeries series, double[] samples, Func<double, double> read)
        => Curve.Over(samples, read, 0, series.Count);

    /// <summary>Draws the curves with the values at the cursor below or beside them.</summary>
    public static void Draw(Sheet sheet, NightLayout layout, NightView view)
    {
        int top = NightLayout.FirstStrip;
        for (int i = 0; i < view.Strips.Count; top += layout.StripRows[i++])
            StripDrawing.Draw(sheet, layout.Plot, top, layout.StripRows[i], view.Strips[i], view.Span, view.Minute);
        if (layout.ShowsBurner)
            Burner(sheet, layout.Plot, layout.BurnerRow, view);
        Events(sheet, layout.Plot, layout.EventRow, view);
        TimeAxis.DrawHours(sheet, layout.Plot, layout.ClockRow, view.Span, view.Minute, view.Report.Scenario.Start);
        if (layout.ReadoutBeside)
            Readout.DrawBeside(sheet, sheet.Width - NightLayout.ReadoutWidth, view);
        else
            Readout.DrawBelow(sheet, layout, view);
    }

    /// <summary>How much of each column's time the burner is lit: a blank for never, # for always.</summary>
    private static void Burner(Sheet sheet, PlotArea plot, int y, NightView view)
    {
        MinuteRange span = view.Span;
        RunSeries series = view.Report.Series;
        sheet.PutBefore(plot.Left - 1, y, "burner lit");
        if (view.Report.Scenario.Rig.Furnace is null)
        {
            sheet.Put(plot.Left, y, "no furnace");
            return;
        }

        for (int x = 0; x < plot.Columns; x++)
        {
            int from = span.From + x * span.Length / plot.Columns;
            int to = Math.Max(from + 1, span.From + (x + 1) * span.Length / plot.Columns);
            sheet.Put(plot.Left + x, y, Density(series.Burner_frac.AsSpan(from..to)));
        }

        Pointer(sheet, plot, y, view);
        sheet.Put(plot.Right + 2, y, $"{UnitStyle.Number(view.Current.BurnerTime.Hours, 1)} h");
    }

    /// <summary>A letter at each marked event, the graver where two fall on one column.</summary>
    private static void Events(Sheet sheet, PlotArea plot, int y, NightView view)
    {
        sheet.PutBefore(plot.Left - 1, y, "events");
        Pointer(sheet, plot, y, view);
        int at = view.Span.Column(view.Minute, plot.Columns);
        foreach (EventMark mark in view.Marks.OrderBy(m => m.Words.Rank))
        {
            int x = view.Span.Column(mark.Minute, plot.Columns);
            sheet.Put(plot.Left + x, y, mark.Words.Letter, x == at ? CellStyle.Pointer : CellStyle.Strong);
        }
    }

    private static void Pointer(Sheet sheet, PlotArea plot, int y, NightView view)
    {
        int x = plot.Left + view.Span.Column(view.Minute, plot.Columns);
        if (sheet[x, y].Glyph == ' ')
            sheet.Put(x, y, '┊');
        else
            sheet.Put(x, y, sheet[x, y].Glyph, CellStyle.Pointer);
    }

    private static char Density(ReadOnlySpan<double> lit)
    {
        double sum = 0;
        foreach (double part in lit)
            sum += part;
        return (sum / lit.Length) switch
        {
            >= 0.95 => '#',
            >= 0.6 => '+',
            >= 0.3 => '-',
            > 0 => '.',
            _ => ' ',
        };
    }
}
