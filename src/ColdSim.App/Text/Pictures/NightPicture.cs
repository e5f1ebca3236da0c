using ColdSim.Model.Engine;
using ColdSim.Physics.Units;
using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Pictures;

/// <summary>The strip chart of one night: air, gas, cylinder, what is left, and the battery where there is one.</summary>
internal static class NightPicture
{
    private const int Minute_s = 60;
    private const double Fill = 100;

    /// <summary>The picture.</summary>
    /// <param name="report">The run.</param>
    /// <param name="night">The night.</param>
    /// <param name="scales">The axes of all nights.</param>
    /// <param name="mostPoints">How many points a curve may have.</param>
    public static StripPicture Of(RunReport report, NightReport night, NightScales scales, int mostPoints)
    {
        NightCurves curves = scales.CurvesOf(night);
        List<PictureStrip> strips = [Air(curves, scales), Gas(curves, scales), Cylinder(curves, scales), Left(report, curves, scales)];
        if (report.Series.Power is { } power)
            strips.Add(new("Battery", new ValueAxis(0, Fill, "%"), [new("charge", curves.Minutes(power.Charge_frac, f => f * Fill), PictureStroke.Line)]));
        return new(
            $"night-{UnitStyle.Number(night.Number, 0)}", ClockText.NightName(night),
            $"Strip chart of {ClockText.NightName(night)}. {NightSentence.Of(night, report, scales.Units)}", curves.Start, curves.Length, strips)
        {
            Marks = [.. Marks(report, night, curves, scales.Units)],
            MostPoints = mostPoints,
        };
    }

    private static PictureStrip Air(NightCurves curves, NightScales scales)
    {
        RunSeries series = curves.Series;
        UnitStyle units = scales.Units;
        List<PictureCurve> all = [new("outside", curves.Minutes(series.Outside_K, units.TemperatureIn), PictureStroke.Dashes)];
        if (scales.HasInside)
            all.Add(new("inside", curves.Minutes(series.Inside_K, units.TemperatureIn), PictureStroke.Line));
        if (scales.HasSetPoint)
            all.Add(new("set point", curves.Minutes(series.SetPoint_K, units.TemperatureIn), PictureStroke.Dots));
        return new("Air", scales.Air, all)
        {
            Levels = [new(units.TemperatureIn(ConversionFactors.ZeroCelsius_K), "freezing")],
            Readings = [.. Readings("measured inside", curves.Measured(units.TemperatureIn, MeasuredQuantity.Inside))],
        };
    }

    private static PictureStrip Gas(NightCurves curves, NightScales scales)
    {
        UnitStyle units = scales.Units;
        IReadOnlyList<PicturePoint> asked = curves.Asked, kept = curves.KeptUp;
        return new(
            "Gas", scales.Gas,
            [
                new("asked", asked, PictureStroke.Line) { Decimals = units.IsUs ? 0 : 2 },
                new("can be kept up", kept, PictureStroke.Dashes) { Decimals = units.IsUs ? 0 : 2 },
            ])
        {
            Areas = [.. curves.Gaps("too little")],
            Spans = [.. curves.Shortages],
            SpanName = "short",
        };
    }

    /// <summary>Pressure follows the liquid's temperature; the axes keep the two curves apart.</summary>
    private static PictureStrip Cylinder(NightCurves curves, NightScales scales)
    {
        UnitStyle units = scales.Units;
        return new(
            "Cylinder", scales.Liquid,
            [
                new("liquid", curves.Minutes(curves.Series.Liquid_K, units.TemperatureIn), PictureStroke.Line) { Decimals = 0 },
                new("pressure", curves.Minutes(curves.Series.CylinderPressure_Pa, units.PressureIn), PictureStroke.Dashes)
                {
                    OnRight = true,
                    Decimals = units.IsUs ? 1 : 0,
                },
            ])
        {
            RightAxis = scales.Pressure,
            Readings =
            [
                .. Readings("measured liquid or wall", curves.Measured(units.TemperatureIn, MeasuredQuantity.Liquid, MeasuredQuantity.Wall)),
                .. Readings("measured pressure", curves.Measured(units.PressureIn, MeasuredQuantity.Pressure), onRight: true),
            ],
        };
    }

    private static IEnumerable<PictureReadings> Readings(string name, IReadOnlyList<PicturePoint> points, bool onRight = false)
        => points.Count == 0 ? [] : [new(name, points, onRight)];

    private static PictureStrip Left(RunReport report, NightCurves curves, NightScales scales)
    {
        IReadOnlyList<PicturePoint> left = curves.Minutes(curves.Series.Propane_kg, scales.Units.MassIn);
        return new("Left", scales.Left, [new(CylinderWords.Gas(report.Scenario.Rig), left, PictureStroke.Line) { Decimals = 1 }]);
    }

    private static IEnumerable<PictureMark> Marks(RunReport report, NightReport night, NightCurves curves, UnitStyle units)
    {
        foreach (EventRow row in EventRows.Of(report, units).Where(r => r.Event.Time >= night.From && r.Event.Time < night.To))
        {
            EventKindWords kind = EventKinds.Of(row.Event.Kind);
            double minute = (row.Event.Time - curves.Start).TotalSeconds / Minute_s;
            yield return new(minute, kind.Letter, $"{ClockText.Clock(row.Event.Time)} {row.What}", kind.Rank);
        }
    }
}
