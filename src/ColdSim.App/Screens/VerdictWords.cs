using System.Globalization;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens;

/// <summary>The night and how it went, in words.</summary>
internal static class VerdictWords
{
    public static string Which(NightView view)
    {
        NightReport told = view.Told;
        string last = told.To.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);
        string dates = told.From.Date == told.To.Date ? last
            : $"{told.From.ToString("ddd d MMM", CultureInfo.InvariantCulture)} to {last}";
        return $"night {told.Number} of {view.Report.Nights.Count}, {dates}";
    }

    /// <summary>The verdict first, the rest by weight, for as much of it as there is room.</summary>
    public static IEnumerable<string> Parts(NightView view)
    {
        NightReport told = view.Told;
        UnitStyle units = view.Units;
        if (!view.Report.Ledger.Closes)
            yield return "THE SUMS DO NOT CLOSE: do not trust this run";
        yield return Verdict(told);
        if (view.Night == view.Report.Nights.Count - 1 && Stop(view.Report.End) is string stop)
            yield return $"{stop} at {CursorWords.Clock(told.To)}";
        if (told.Verdict == RunsDry && told.FirstShort is DateTimeOffset first)
            yield return $"first short {CursorWords.Clock(first)}";
        if (told.Power is { } power)
            yield return $"battery {power.ChargeLow.Percent.ToString("0", CultureInfo.InvariantCulture)} % at its lowest";
        if (told.ShortTime.Minutes > 0)
            yield return $"short for {CursorWords.Minutes(told.ShortTime.Minutes)} in all";
        if (told.BelowSetPoint.Kelvins > view.Report.Scenario.Criteria.BelowSetPoint.Kelvins)
            yield return $"inside {units.Difference(told.BelowSetPoint.Kelvins)} under its set point";
        if (told.LeftAtDawn is UnitsNet.Mass dawn)
            yield return $"{units.Mass(dawn.Kilograms)} left at dawn";
        else
            yield return $"{units.Mass(told.LeftAtEnd.Kilograms)} left at the end";
        yield return $"{units.Mass(told.GasUsed.Kilograms)} used";
        yield return $"outside low {units.Temperature(told.OutsideLow.Kelvins)}";
        if (told.InsideLow is UnitsNet.Temperature inside)
            yield return $"inside low {units.Temperature(inside.Kelvins)}";
    }

    private const Verdict RunsDry = Planning.Nights.Verdict.RunsDry;

    private static string Verdict(NightReport told) => told.Verdict switch
    {
        Planning.Nights.Verdict.Holds => told.ShortTime.Minutes > 0 ? "HOLDS" : "HOLDS: all gas asked for is given",
        Planning.Nights.Verdict.RunsFlat => told.Power?.FlatAt is DateTimeOffset flat ? $"BATTERY FLAT at {CursorWords.Clock(flat)}" : "BATTERY FLAT",
        RunsDry => told.DryAt is DateTimeOffset dry ? $"RUNS DRY at {CursorWords.Clock(dry)}" : "RUNS DRY",
        _ => told.FirstShort is DateTimeOffset first ? $"RUNS SHORT from {CursorWords.Clock(first)}" : "RUNS SHORT",
    };

    private static string? Stop(RunEnd end) => end switch
    {
        RunEnd.WeatherEnded => "weather ends",
        RunEnd.LiquidFull => "STOPS: cylinder liquid full",
        RunEnd.ReliefPressure => "STOPS: relief valve would open",
        _ => null,
    };
}
