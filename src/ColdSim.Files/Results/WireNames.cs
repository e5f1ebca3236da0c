using ColdSim.Model.Engine;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;

namespace ColdSim.Files.Results;

/// <summary>The words that verdicts, events and endings have in JSON. They are a promise: they may grow, not change.</summary>
internal static class WireNames
{
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.RunsShort => "runs_short",
        Verdict.RunsFlat => "runs_flat",
        Verdict.RunsDry => "runs_dry",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, null),
    };

    public static string Of(ReportedKind kind) => kind switch
    {
        ReportedKind.BurnerOn => "burner_on",
        ReportedKind.BurnerOff => "burner_off",
        ReportedKind.IgnitionFailed => "ignition_failed",
        ReportedKind.FlameLost => "flame_lost",
        ReportedKind.Lockout => "lockout",
        ReportedKind.LockoutRetry => "lockout_retry",
        ReportedKind.LockoutReset => "lockout_reset",
        ReportedKind.ShortBegins => "short_begins",
        ReportedKind.ShortEnds => "short_ends",
        ReportedKind.LiquidGone => "liquid_gone",
        ReportedKind.Dry => "dry",
        ReportedKind.InsideFreezing => "inside_freezing",
        ReportedKind.InsideThawed => "inside_thawed",
        ReportedKind.LiquidFull => "liquid_full",
        ReportedKind.ReliefPressure => "relief_pressure",
        ReportedKind.CylinderChanged => "cylinder_changed",
        ReportedKind.ReserveFeeds => "reserve_feeds",
        ReportedKind.ServiceAlone => "service_alone",
        ReportedKind.CylinderFilled => "cylinder_filled",
        ReportedKind.CylinderHot => "cylinder_hot",
        ReportedKind.WaterFreezes => "water_freezes",
        ReportedKind.WaterSolid => "water_solid",
        ReportedKind.WaterThawed => "water_thawed",
        ReportedKind.DampSettles => "damp_settles",
        ReportedKind.WeatherEnds => "weather_ends",
        ReportedKind.VoltageGone => "voltage_gone",
        ReportedKind.VoltageBack => "voltage_back",
        ReportedKind.GeneratorStarts => "generator_starts",
        ReportedKind.GeneratorStops => "generator_stops",
        ReportedKind.GeneratorStarved => "generator_starved",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    public static string Of(FirstOut first) => first switch
    {
        FirstOut.Nothing => "nothing",
        FirstOut.GasSupply => "gas_supply",
        FirstOut.Gas => "gas",
        FirstOut.Battery => "battery",
        _ => throw new ArgumentOutOfRangeException(nameof(first), first, null),
    };

    public static string Of(RunEnd end) => end switch
    {
        RunEnd.Complete => "complete",
        RunEnd.WeatherEnded => "weather_ended",
        RunEnd.LiquidFull => "liquid_full",
        RunEnd.ReliefPressure => "relief_pressure",
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, null),
    };

    public static string Of(SetUpKind kind) => kind switch
    {
        SetUpKind.Bare => "bare",
        SetUpKind.Blanket => "blanket",
        SetUpKind.SecondCylinder => "second_cylinder",
        SetUpKind.Both => "second_cylinder_and_blankets",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };

    public static string Of(LimitKind kind) => kind switch
    {
        LimitKind.Found => "found",
        LimitKind.HoldsAtColdest => "holds_at_coldest",
        LimitKind.NotAtWarmest => "not_at_warmest",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };
}
