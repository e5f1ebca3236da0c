using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Pictures;

/// <summary>The axes of the strips; they hold for all nights of a run, so that nights compare at a glance.</summary>
internal sealed class NightScales
{
    // Where pressure and temperature share a strip, each has the other's part of it free.
    private const double Below = 0.6, Above = 1.6;

    private readonly NightCurves[] _nights;

    public NightScales(RunReport report, UnitStyle units)
    {
        RunSeries series = report.Series;
        Units = units;
        _nights = [.. report.Nights.Select(n => new NightCurves(report, n, units))];
        Range outside = Over(series, series.Outside_K, units.TemperatureIn), inside = Over(series, series.Inside_K, units.TemperatureIn);
        Range set = Over(series, series.SetPoint_K, units.TemperatureIn);
        (HasInside, HasSetPoint) = (inside.IsAny, set.IsAny);
        Range air = outside.And(inside).And(set).And(Measured(report, units.TemperatureIn, MeasuredQuantity.Inside));
        Air = ValueAxis.Around(air.Low, air.High, units.TemperatureUnit);
        Range liquid = Over(series, series.Liquid_K, units.TemperatureIn).And(Measured(report, units.TemperatureIn, MeasuredQuantity.Liquid, MeasuredQuantity.Wall));
        Range pressure = Over(series, series.CylinderPressure_Pa, units.PressureIn).And(Measured(report, units.PressureIn, MeasuredQuantity.Pressure));
        Liquid = ValueAxis.Around(liquid.Low - (liquid.High - liquid.Low) * Below, liquid.High, units.TemperatureUnit);
        Pressure = ValueAxis.Around(Math.Min(0, pressure.Low), pressure.High * Above, units.PressureUnit);
        Left = ValueAxis.Around(0, Over(series, series.Propane_kg, units.MassIn).High, units.MassUnit);
        Gas = ValueAxis.Around(0, MostGas(), units.PowerUnit);
    }

    public UnitStyle Units { get; }

    /// <summary>The curves of a night.</summary>
    public NightCurves CurvesOf(NightReport night) => _nights[night.Number - 1];

    public bool HasInside { get; }

    public bool HasSetPoint { get; }

    public ValueAxis Air { get; }

    public ValueAxis Gas { get; }

    public ValueAxis Liquid { get; }

    public ValueAxis Pressure { get; }

    public ValueAxis Left { get; }

    // A warm full cylinder can give many times what is asked; the strip then stops at twice the demand.
    private double MostGas()
    {
        Range asked = Range.None, kept = Range.None;
        foreach (NightCurves curves in _nights)
        {
            asked = curves.Asked.Aggregate(asked, (r, p) => r.With(p.Y));
            kept = curves.KeptUp.Aggregate(kept, (r, p) => r.With(p.Y));
        }

        double most = asked.IsAny && asked.High > 0 ? Math.Max(asked.High, Math.Min(kept.High, asked.High * 2)) : kept.High;
        return double.IsFinite(most) ? Math.Max(most, 0) : 1;
    }

    private static Range Measured(RunReport report, Func<double, double> read, params IReadOnlyList<MeasuredQuantity> quantities)
        => MeasuredComparison.InRun(report).Rows.Where(r => quantities.Contains(r.Measurement.Quantity)).Aggregate(Range.None, (all, r) => all.With(read(r.Measurement.Value)));

    private static Range Over(RunSeries series, double[] samples, Func<double, double> read)
    {
        Range all = Range.None;
        for (int i = 0; i < series.Count; i++)
            all = all.With(read(samples[i]));
        return all;
    }

    private readonly record struct Range(double Low, double High)
    {
        public static Range None { get; } = new(double.NaN, double.NaN);

        public bool IsAny => !double.IsNaN(Low);

        public Range With(double value) => !double.IsFinite(value) ? this
            : IsAny ? new(Math.Min(Low, value), Math.Max(High, value)) : new(value, value);

        public Range And(Range other) => other.IsAny ? With(other.Low).With(other.High) : this;
    }
}
