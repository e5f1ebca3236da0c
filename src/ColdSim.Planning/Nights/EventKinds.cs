using ColdSim.Planning.Figures;

namespace ColdSim.Planning.Nights;

/// <summary>What a reported event is, in the words of the person's question.</summary>
public enum ReportedKind
{
    /// <summary>The burner lights.</summary>
    BurnerOn,

    /// <summary>The burner goes out, satisfied.</summary>
    BurnerOff,

    /// <summary>A try at ignition fails.</summary>
    IgnitionFailed,

    /// <summary>The flame is lost.</summary>
    FlameLost,

    /// <summary>The furnace locks out.</summary>
    Lockout,

    /// <summary>The furnace tries again by itself.</summary>
    LockoutRetry,

    /// <summary>Somebody resets the furnace.</summary>
    LockoutReset,

    /// <summary>Supply falls short of demand.</summary>
    ShortBegins,

    /// <summary>Supply meets demand again.</summary>
    ShortEnds,

    /// <summary>The last liquid boils off.</summary>
    LiquidGone,

    /// <summary>No liquid is left and an appliance is undersupplied.</summary>
    Dry,

    /// <summary>Inside falls to freezing.</summary>
    InsideFreezing,

    /// <summary>Inside rises above freezing.</summary>
    InsideThawed,

    /// <summary>Liquid fills the cylinder; the run ends.</summary>
    LiquidFull,

    /// <summary>The relief valve would open; the run ends.</summary>
    ReliefPressure,

    /// <summary>The weather ends before the run.</summary>
    WeatherEnds,

    /// <summary>Somebody changes to another cylinder; the value is what is left in the one that was shut, in kilograms.</summary>
    CylinderChanged,

    /// <summary>The reserve side begins to feed; the value is what is left on the service side, in kilograms.</summary>
    ReserveFeeds,

    /// <summary>The service side feeds alone again; the value is what is left in it, in kilograms.</summary>
    ServiceAlone,

    /// <summary>A cylinder is filled or exchanged; the value is what is in it afterwards, in kilograms.</summary>
    CylinderFilled,

    /// <summary>A cylinder passes 125 °F; the value is its temperature in kelvins.</summary>
    CylinderHot,

    /// <summary>Water begins to freeze; the event names where.</summary>
    WaterFreezes,

    /// <summary>It is ice through and through.</summary>
    WaterSolid,

    /// <summary>The last of that ice has thawed.</summary>
    WaterThawed,

    /// <summary>Damp begins to settle on the coach's coldest surface; the value is that surface's temperature in kelvins.</summary>
    DampSettles,

    /// <summary>The battery is flat and voltage is gone; the value is the charge left, per rated.</summary>
    VoltageGone,

    /// <summary>Voltage is back; the value is the charge, per rated.</summary>
    VoltageBack,

    /// <summary>The generator starts; the value is the charge, per rated.</summary>
    GeneratorStarts,

    /// <summary>The generator stops; the value is the charge, per rated.</summary>
    GeneratorStops,

    /// <summary>The generator stops for lack of gas.</summary>
    GeneratorStarved,

    /// <summary>Inside first falls to 50 °F in a night.</summary>
    InsideFifty,

    /// <summary>A shortage of gas ends because voltage is gone, so that nothing asks for gas any more.</summary>
    ShortStops,

    /// <summary>Somebody asleep wakes because inside is too cold.</summary>
    WokenByCold,

    /// <summary>Somebody stops resetting the furnace after resets in vain.</summary>
    ResetsGivenUp,

    /// <summary>Acid in the battery freezes; the value is the charge, per rated.</summary>
    BatteryFreezes,

    /// <summary>The battery has thawed; the value is the charge, per rated.</summary>
    BatteryThawed,

    /// <summary>The battery is too cold to give anything; the value is the charge, per rated.</summary>
    BatteryCutOut,
}

/// <summary>How a list of events folds repeats of a kind.</summary>
internal enum EventFold
{
    /// <summary>Each is listed.</summary>
    Never,

    /// <summary>None is listed: they are too many, and are only counted.</summary>
    OnlyCounted,

    /// <summary>Those that directly follow each other become one row with their number.</summary>
    InRows,

    /// <summary>Each is joined with its end, and spells that directly follow each other become one row with their whole length.</summary>
    Spells,

    /// <summary>Turns to and fro that directly follow each other become one row with their number.</summary>
    Turns,

    /// <summary>Those of a night become one row with their number.</summary>
    OnceANight,
}

/// <summary>All that is declared of a kind of event: its key, its words, its mark in a report, and how it is folded.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Key">What documents have. A promise to programs: kinds may be added, no key is changed.</param>
/// <param name="Text">What a list has; <c>{name}</c> is the cylinder, <c>{left}</c> the mass that the event carries, <c>{node}</c> the bay, pipe or tank.</param>
/// <param name="Letter">Its mark below a report's pictures and in its list, different for every kind.</param>
/// <param name="Legend">A word or two below the screen's curves.</param>
/// <param name="Sentence">What happened, for the screen.</param>
/// <param name="Rank">The higher wins where two fall on one place.</param>
internal sealed record EventKindWords(ReportedKind Kind, string Key, string Text, char Letter, string Legend, string Sentence, int Rank)
{
    /// <summary>What a list has where there are several cylinders; as for one where null.</summary>
    public string? TextOfSeveral { get; init; }

    /// <summary>How repeats are folded.</summary>
    public EventFold Fold { get; init; }

    /// <summary>Whether it stays in the list when the rounds of lockout and reset of a night are folded.</summary>
    public bool StaysInRounds { get; init; }
}

/// <summary>The kinds of events, one row each.</summary>
internal static class EventKinds
{
    /// <summary>All of them, in the order of the set.</summary>
    public static IReadOnlyList<EventKindWords> All { get; } =
    [
        new(ReportedKind.BurnerOn, "burner_on", "burner lights", 'o', "burner on", "the burner lights", 0) { Fold = EventFold.OnlyCounted },
        new(ReportedKind.BurnerOff, "burner_off", "burner goes out", 'c', "burner off", "the burner goes out, satisfied", 0) { Fold = EventFold.OnlyCounted },
        new(ReportedKind.IgnitionFailed, "ignition_failed", "ignition fails", 'i', "no ignition", "a try at ignition fails", 4) { Fold = EventFold.InRows },
        new(ReportedKind.FlameLost, "flame_lost", "flame lost", 'x', "flame lost", "the flame is lost", 5),
        new(ReportedKind.Lockout, "lockout", "furnace locks out", 'L', "lockout", "the furnace locks out", 9),
        new(ReportedKind.LockoutRetry, "lockout_retry", "furnace tries again", 'a', "tries again", "furnace tries again by itself", 2),
        new(ReportedKind.LockoutReset, "lockout_reset", "furnace reset by hand", 'r', "reset", "somebody resets the furnace", 2),
        new(ReportedKind.ShortBegins, "short_begins", "gas runs short", 'S', "short", "supply falls short of demand", 8) { Fold = EventFold.Spells },
        new(ReportedKind.ShortEnds, "short_ends", "gas is enough again", 's', "short ends", "supply meets demand again", 3),
        new(ReportedKind.LiquidGone, "liquid_gone", "last liquid boils off", 'G', "liquid gone", "the last liquid boils off", 7)
        {
            TextOfSeveral = "last liquid boils off in {name}",
            StaysInRounds = true,
        },
        new(ReportedKind.Dry, "dry", "cylinder dry", 'D', "dry", "the cylinder is dry", 11) { TextOfSeveral = "all cylinders dry", StaysInRounds = true },
        new(ReportedKind.InsideFreezing, "inside_freezing", "inside falls to freezing", 'F', "freezing", "inside falls to freezing", 10),
        new(ReportedKind.InsideThawed, "inside_thawed", "inside above freezing", 't', "thawed", "inside rises above freezing", 1),
        new(ReportedKind.LiquidFull, "liquid_full", "liquid fills the cylinder", 'V', "liquid full", "liquid full: the run ends", 12) { StaysInRounds = true },
        new(ReportedKind.ReliefPressure, "relief_pressure", "relief valve would open", 'P', "relief", "relief opens: the run ends", 12) { StaysInRounds = true },
        new(ReportedKind.WeatherEnds, "weather_ends", "weather ends", 'W', "weather ends", "weather ends: the run ends", 6) { StaysInRounds = true },
        new(ReportedKind.CylinderChanged, "cylinder_changed", "changed by hand to {name}, {left} left in the other", 'C', "changed", "somebody changes cylinders", 6),
        new(ReportedKind.ReserveFeeds, "reserve_feeds", "reserve feeds too, {left} left in service", 'R', "reserve", "the reserve side feeds too", 6) { Fold = EventFold.Turns },
        new(ReportedKind.ServiceAlone, "service_alone", "service side alone again", 'u', "service", "the service side feeds alone again", 2),
        new(ReportedKind.CylinderFilled, "cylinder_filled", "filled to {left}", 'f', "filled", "a cylinder is filled or exchanged", 7) { TextOfSeveral = "{name} filled to {left}" },
        new(ReportedKind.CylinderHot, "cylinder_hot", "cylinder passes 125 °F (52 °C)", 'H', "too hot", "a cylinder passes 125 °F (52 °C)", 12)
        {
            TextOfSeveral = "{name} passes 125 °F (52 °C)",
        },
        new(ReportedKind.WaterFreezes, "water_freezes", "{node}: water begins to freeze", 'w', "water freezes", "water begins to freeze", 9) { StaysInRounds = true },
        new(ReportedKind.WaterSolid, "water_solid", "{node}: water is all ice", 'I', "all ice", "water is all ice", 10) { StaysInRounds = true },
        new(ReportedKind.WaterThawed, "water_thawed", "{node}: the last ice has thawed", 'm', "ice thawed", "the last ice has thawed", 2),
        new(ReportedKind.DampSettles, "damp_settles", "damp settles on the coldest surface", 'd', "damp", "damp settles on the coldest surface", 1) { Fold = EventFold.OnceANight },
        new(ReportedKind.VoltageGone, "voltage_gone", "battery flat, voltage gone", 'B', "battery flat", "the battery is flat, voltage is gone", 11) { StaysInRounds = true },
        new(ReportedKind.VoltageBack, "voltage_back", "voltage is back", 'b', "voltage back", "voltage is back", 3) { StaysInRounds = true },
        new(ReportedKind.GeneratorStarts, "generator_starts", "generator starts", 'E', "generator", "the generator starts", 3),
        new(ReportedKind.GeneratorStops, "generator_stops", "generator stops", 'e', "gen. stops", "the generator stops", 2),
        new(ReportedKind.GeneratorStarved, "generator_starved", "generator stops: no gas", 'X', "gen. starved", "the generator stops: no gas", 6),
        new(ReportedKind.InsideFifty, "inside_fifty_fahrenheit", "inside falls to 50 °F (10 °C)", 'k', "50 °F inside", "inside falls to 50 °F (10 °C)", 4) { StaysInRounds = true },
        new(ReportedKind.ShortStops, "short_stops", "no gas asked for: no voltage", 'z', "no demand", "no gas is asked for, without voltage", 3),
        new(ReportedKind.WokenByCold, "woken_by_cold", "the cold wakes somebody", 'A', "woken", "the cold wakes somebody", 6) { StaysInRounds = true },
        new(ReportedKind.ResetsGivenUp, "resets_given_up", "nobody resets it any more", 'U', "given up", "nobody resets the furnace any more", 3) { StaysInRounds = true },
        new(ReportedKind.BatteryFreezes, "battery_freezes", "battery freezes", 'N', "battery ice", "the battery freezes", 10) { StaysInRounds = true },
        new(ReportedKind.BatteryThawed, "battery_thawed", "battery has thawed", 'n', "bat. thawed", "the battery has thawed", 2),
        new(ReportedKind.BatteryCutOut, "battery_cut_out", "battery too cold to give", 'K', "bat. cold", "the battery is too cold to give", 9) { StaysInRounds = true },
    ];

    /// <summary>Their keys.</summary>
    public static WordTable<ReportedKind> Words { get; } = All.Aggregate(new WordTable<ReportedKind>(), (words, kind) => words.With(kind.Kind, kind.Key, kind.Text));

    /// <summary>The kinds that lists and the screen's event row show; the burner has its own count and strip.</summary>
    public static IReadOnlyList<EventKindWords> Listed { get; } = [.. All.Where(k => k.Fold != EventFold.OnlyCounted)];

    /// <summary>Whether a shortage of gas ends with it.</summary>
    public static bool EndsShortage(ReportedKind kind) => kind is ReportedKind.ShortEnds or ReportedKind.ShortStops;

    /// <summary>The row of a kind.</summary>
    public static EventKindWords Of(ReportedKind kind) => All[(int)kind];
}
