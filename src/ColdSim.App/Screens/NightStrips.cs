using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens;

/// <summary>The four strips of a run, on axes that hold for all its nights so that nights compare at a glance.</summary>
internal static class NightStrips
{
    /// <summary>Air, cylinder, gas drawn and gas left, top to bottom.</summary>
    public static IReadOnlyList<Strip> Of(RunReport report, UnitStyle units)
    {
        RunSeries series = report.Series;
        return [Air(series, units), Cylinder(series, units), Gas(series, units), Left(series, GasWord.Of(report.Scenario.Rig), units)];
    }

    private static Strip Air(RunSeries series, UnitStyle units)
    {
        Extent outside = All(series, series.Outside_K, units.TemperatureIn), inside = All(series, series.Inside_K, units.TemperatureIn);
        ValueAxis axis = inside.IsNone
            ? ValueAxis.Around(outside.Low, outside.High, units.TemperatureUnit)
            : ValueAxis.Around(Math.Min(outside.Low, inside.Low), Math.Max(outside.High, inside.High), units.TemperatureUnit);
        Trace outsideTrace = new("outside", series.Outside_K, units.TemperatureIn, axis, Stroke.Dashes);
        return inside.IsNone
            ? new(outsideTrace, Missing: "no coach")
            : new(outsideTrace, new("inside", series.Inside_K, units.TemperatureIn, axis, Stroke.Line));
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
        => Trace.Over(samples, read, 0, series.Count);
}
