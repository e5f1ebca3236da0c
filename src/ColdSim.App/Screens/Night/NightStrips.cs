using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>The strips of a run: gas, inside, what is cold, and gas left. Axes hold for all nights, so that nights compare at a glance.</summary>
internal static class NightStrips
{
    // A warm cylinder can keep up many times what is asked; the strip stops at this multiple of the demand.
    private const double Headroom = 1.5;

    // Minutes between two values of what can be kept up.
    private const int SupplyEvery = 6;

    // The share of its gas with which a burner is not yet short, as the engine has it.
    private const double Enough_frac = 0.95;

    /// <summary>The strips, top to bottom.</summary>
    /// <param name="report">The run.</param>
    /// <param name="units">Units to read.</param>
    /// <param name="asItIs">The run as it is, drawn dotted, while <paramref name="report"/> is one that is tried; null where nothing is tried.</param>
    public static IReadOnlyList<Strip> Of(RunReport report, UnitStyle units, RunReport? asItIs = null)
    {
        RunSeries series = report.Series;
        RunSeries? before = asItIs?.Series;
        (IReadOnlyList<MeasuredMark> inside, IReadOnlyList<MeasuredMark> liquid) = Measured(report, units);
        return [Gas(series, before, units), Inside(series, before, inside, units), Cold(series, before, liquid, units), Left(series, before, units)];
    }

    /// <summary>What was measured inside, and of the liquid in the cylinder in use, which is the one that is drawn.</summary>
    private static (IReadOnlyList<MeasuredMark> Inside, IReadOnlyList<MeasuredMark> Liquid) Measured(RunReport report, UnitStyle units)
    {
        List<MeasuredMark> inside = [], liquid = [];
        foreach (Measurement measured in MeasuredComparison.Drawn(report))
        {
            int minute = MeasuredComparison.MinuteOf(report, measured);
            if (measured.Quantity == MeasuredQuantity.Inside)
                inside.Add(new(minute, units.TemperatureIn(measured.Value)));
            else if (measured.Quantity is MeasuredQuantity.Liquid or MeasuredQuantity.Wall)
                liquid.Add(new(minute, units.TemperatureIn(measured.Value)));
        }

        return (inside, liquid);
    }

    private static Extent With(this Extent range, IReadOnlyList<MeasuredMark> marks) => marks.Aggregate(range, (all, mark) => all.With(mark.Value));

    /// <summary>What is asked for against what can be kept up, both as gross heat.</summary>
    private static Strip Gas(RunSeries series, RunSeries? before, UnitStyle units)
    {
        double[] demand = HourlyMean.Of(series.Asked_W, series.Count), given = HourlyMean.Of(series.Given_W, series.Count);
        double[] supply = Supply(series);
        double[]? demandBefore = before is null ? null : HourlyMean.Of(before.Asked_W, before.Count);
        double[]? supplyBefore = before is null ? null : Supply(before);
        double asked = Range(units.PowerIn, demand, demandBefore).High, can = Range(units.PowerIn, supply, supplyBefore).High;
        ValueAxis axis = ValueAxis.Around(0, asked > 0 ? Math.Max(asked, Math.Min(can, asked * Headroom)) : Math.Max(can, 0), units.PowerUnit);
        return new(
            new("demand", demand, units.PowerIn, axis, Stroke.Line, CellStyle.Demand) { AsItIs = demandBefore, ShowsMean = true },
            new("kept up", supply, units.PowerIn, axis, Stroke.Dashes, CellStyle.Supply) { AsItIs = supplyBefore })
        {
            Gap = new("SHORT", demand, supply, given, i => i < series.Count && series.Given_W[i] < Enough_frac * series.Asked_W[i]),
        };
    }

    /// <summary>Inside, with freezing and the set point ruled; outside where there is no coach.</summary>
    private static Strip Inside(RunSeries series, RunSeries? before, IReadOnlyList<MeasuredMark> measured, UnitStyle units)
    {
        double[] inside = Run(series.Inside_K, series.Count);
        double[]? insideBefore = before is null ? null : Run(before.Inside_K, before.Count);
        double freezing = units.TemperatureIn(Harm.Freezing_K);
        Rule ice = new("freezing", CellStyle.Freezing, '─', '=', _ => freezing);
        if (!inside.Any(double.IsFinite))
            return Outside(series, before, units, Outsides(series, before, units)) with { Rules = [ice], Missing = "no coach" };
        Extent all = Range(units.TemperatureIn, inside, insideBefore, Run(series.SetPoint_K, series.Count)).With(measured);
        ValueAxis axis = ValueAxis.Around(all.Low, all.High, units.TemperatureUnit);
        return new(new("inside", inside, units.TemperatureIn, axis, Stroke.Line, CellStyle.Inside) { AsItIs = insideBefore })
        {
            Measured = measured,
            Rules = [ice, new("set point", CellStyle.SetPoint, '╌', '_', i => i < series.Count ? units.TemperatureIn(series.SetPoint_K[i]) : double.NaN)],
        };
    }

    /// <summary>The liquid and the air from which it takes its heat: what lies between them drives it.</summary>
    private static Strip Cold(RunSeries series, RunSeries? before, IReadOnlyList<MeasuredMark> measured, UnitStyle units)
    {
        double[] liquid = Run(series.Liquid_K, series.Count);
        double[]? liquidBefore = before is null ? null : Run(before.Liquid_K, before.Count);
        Strip air = Outside(series, before, units, Outsides(series, before, units).With(Range(units.TemperatureIn, liquid, liquidBefore)).With(measured));
        return air with { Measured = measured, Second = new("liquid", liquid, units.TemperatureIn, air.First.Axis, Stroke.Line, CellStyle.Liquid) { AsItIs = liquidBefore } };
    }

    private static Strip Outside(RunSeries series, RunSeries? before, UnitStyle units, Extent range)
    {
        double[] outside = Run(series.Outside_K, series.Count);
        double[]? outsideBefore = before is null ? null : Run(before.Outside_K, before.Count);
        ValueAxis axis = ValueAxis.Around(range.Low, range.High, units.TemperatureUnit);
        return new(new Curve("outside", outside, units.TemperatureIn, axis, Stroke.Dashes, CellStyle.Outside)
        {
            AsItIs = outsideBefore is not null && !outsideBefore.AsSpan().SequenceEqual(outside) ? outsideBefore : null,
        });
    }

    private static Extent Outsides(RunSeries series, RunSeries? before, UnitStyle units)
        => Range(units.TemperatureIn, Run(series.Outside_K, series.Count), before is null ? null : Run(before.Outside_K, before.Count));

    private static Strip Left(RunSeries series, RunSeries? before, UnitStyle units)
    {
        double[] left = Run(series.Propane_kg, series.Count);
        double[]? leftBefore = before is null ? null : Run(before.Propane_kg, before.Count);
        return new(new("gas left", left, units.MassIn,
            ValueAxis.Around(0, Range(units.MassIn, left, leftBefore).High, units.MassUnit), Stroke.Line, CellStyle.GasLeft)
        { AsItIs = leftBefore });
    }

    private static Extent Range(Func<double, double> read, params ReadOnlySpan<double[]?> curves)
    {
        Extent all = Extent.None;
        foreach (double[]? curve in curves)
        {
            if (curve is not null)
                all = all.With(Curve.Over(curve, read, 0, curve.Length));
        }

        return all;
    }

    /// <summary>What can be kept up, found every few minutes and drawn straight between, because finding it takes longer than all else of a picture.</summary>
    private static double[] Supply(RunSeries series)
    {
        if (series.Outlook is not { } outlook)
            return Run(series.CanGiveWithoutEnd_W, series.Count);
        double[] supply = new double[series.Outside_K.Length];
        Array.Fill(supply, double.NaN);
        for (int i = 0; i < series.Count; i++)
        {
            if (i % SupplyEvery == 0 || i == series.Count - 1)
                supply[i] = outlook.CanGiveWithoutEnd_W(series, i);
            int from = i - SupplyEvery;
            for (int m = from + 1; i % SupplyEvery == 0 && from >= 0 && m < i; m++)
                supply[m] = supply[from] + (supply[i] - supply[from]) * (m - from) / SupplyEvery;
        }

        for (int m = (series.Count - 1) / SupplyEvery * SupplyEvery + 1; m < series.Count - 1; m++)
            supply[m] = supply[m - 1];
        return supply;
    }

    // After an early end there is no value, not zero.
    private static double[] Run(double[] samples, int count)
    {
        if (count >= samples.Length)
            return samples;
        double[] run = [.. samples];
        run.AsSpan(Math.Max(0, count)..).Fill(double.NaN);
        return run;
    }
}
