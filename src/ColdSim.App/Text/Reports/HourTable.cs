using ColdSim.App.Text.Pictures;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Reports;

/// <summary>The curves of a night at each full hour, for who cannot see the picture.</summary>
internal static class HourTable
{
    private const int Hour = 60, Coarse = 5;

    public static TextGrid Of(NightCurves curves, RunReport run, NightScales scales)
    {
        UnitStyle units = scales.Units;
        RunSeries series = curves.Series;
        int first = (int)Math.Round((curves.Start - run.Scenario.Start).TotalSeconds / RunSeries.Spacing_s);
        List<(TextColumn Heading, Func<int, string> Cell)> columns =
        [
            (new(["Time"], Left: true), m => ClockText.DayClock(curves.Start.AddMinutes(m))),
            (new(["Outside", units.TemperatureUnit]), m => Number(units.TemperatureIn(series.Outside_K[first + m]), 0)),
        ];
        if (scales.HasInside)
            columns.Add((new(["Inside", units.TemperatureUnit]), m => Number(units.TemperatureIn(series.Inside_K[first + m]), 0)));
        if (scales.HasSetPoint)
            columns.Add((new(["Set", "point", units.TemperatureUnit]), m => Number(units.TemperatureIn(series.SetPoint_K[first + m]), 0)));
        columns.AddRange(
        [
            (new(["Asked", units.PowerUnit]), m => Power(curves.Asked[m / Coarse].Y, units)),
            (new(["Can be", "kept up", units.PowerUnit]), m => Power(curves.KeptUp[m / Coarse].Y, units)),
            (new(["Liquid", units.TemperatureUnit]), m => Number(units.TemperatureIn(series.Liquid_K[first + m]), 0)),
            (new(["Pressure", units.PressureUnit]), m => Number(units.PressureIn(series.CylinderPressure_Pa[first + m]), units.IsUs ? 1 : 0)),
            (new(["Left", units.MassUnit]), m => Number(units.MassIn(series.Propane_kg[first + m]), units.IsUs ? 1 : 2)),
        ]);
        return new([.. columns.Select(c => c.Heading)], [.. Hours(curves).Select(m => (IReadOnlyList<string>)[.. columns.Select(c => c.Cell(m))])]);
    }

    private static IEnumerable<int> Hours(NightCurves curves)
    {
        int past = curves.Start.Minute;
        for (int m = past == 0 ? 0 : Hour - past; m <= curves.Length; m += Hour)
            yield return m;
    }

    private static string Number(double value, int decimals) => double.IsFinite(value) ? UnitStyle.Number(value, decimals) : "-";

    private static string Power(double value, UnitStyle units)
        => !double.IsFinite(value) ? "-" : units.IsUs ? UnitStyle.Number(UnitStyle.Hundreds(value), 0) : UnitStyle.Number(value, 2);
}
