using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>How one kind of event is marked and told.</summary>
/// <param name="Letter">Its mark on the event row, different for every kind.</param>
/// <param name="Legend">A word or two beside the letter.</param>
/// <param name="Sentence">What happened.</param>
/// <param name="Rank">The higher wins where two fall on one place.</param>
internal sealed record EventWords(char Letter, string Legend, string Sentence, int Rank)
{
    /// <summary>The kinds that get a mark; the burner going on and off has its own strip.</summary>
    public static IReadOnlyList<ReportedKind> Marked { get; } =
        [.. Enum.GetValues<ReportedKind>().Where(k => k is not (ReportedKind.BurnerOn or ReportedKind.BurnerOff))];

    public static EventWords Of(ReportedKind kind) => kind switch
    {
        ReportedKind.BurnerOn => new('o', "burner on", "the burner lights", 0),
        ReportedKind.BurnerOff => new('c', "burner off", "the burner goes out, satisfied", 0),
        ReportedKind.IgnitionFailed => new('i', "no ignition", "a try at ignition fails", 4),
        ReportedKind.FlameLost => new('x', "flame lost", "the flame is lost", 5),
        ReportedKind.Lockout => new('L', "lockout", "the furnace locks out", 9),
        ReportedKind.LockoutRetry => new('a', "tries again", "furnace tries again by itself", 2),
        ReportedKind.LockoutReset => new('r', "reset", "somebody resets the furnace", 2),
        ReportedKind.ShortBegins => new('S', "short", "supply falls short of demand", 8),
        ReportedKind.ShortEnds => new('s', "short ends", "supply meets demand again", 3),
        ReportedKind.LiquidGone => new('G', "liquid gone", "the last liquid boils off", 7),
        ReportedKind.Dry => new('D', "dry", "the cylinder is dry", 11),
        ReportedKind.InsideFreezing => new('F', "freezing", "inside falls to freezing", 10),
        ReportedKind.InsideThawed => new('t', "thawed", "inside rises above freezing", 1),
        ReportedKind.LiquidFull => new('V', "liquid full", "liquid full: the run ends", 12),
        ReportedKind.ReliefPressure => new('P', "relief", "relief opens: the run ends", 12),
        ReportedKind.CylinderChanged => new('C', "changed", "somebody changes cylinders", 6),
        ReportedKind.ReserveFeeds => new('R', "reserve", "the reserve side feeds too", 6),
        ReportedKind.ServiceAlone => new('u', "service", "the service side feeds alone again", 2),
        ReportedKind.CylinderFilled => new('f', "filled", "a cylinder is filled or exchanged", 7),
        ReportedKind.CylinderHot => new('H', "too hot", "a cylinder passes 125 °F (52 °C)", 12),
        ReportedKind.WaterFreezes => new('w', "water freezes", "water begins to freeze", 9),
        ReportedKind.WaterSolid => new('I', "all ice", "water is all ice", 10),
        ReportedKind.WaterThawed => new('m', "ice thawed", "the last ice has thawed", 2),
        ReportedKind.DampSettles => new('d', "damp", "damp settles on the coldest surface", 1),
        ReportedKind.VoltageGone => new('B', "battery flat", "the battery is flat, voltage is gone", 11),
        ReportedKind.VoltageBack => new('b', "voltage back", "voltage is back", 3),
        ReportedKind.GeneratorStarts => new('E', "generator", "the generator starts", 3),
        ReportedKind.GeneratorStops => new('e', "gen. stops", "the generator stops", 2),
        ReportedKind.GeneratorStarved => new('X', "gen. starved", "the generator dies for want of gas", 6),
        ReportedKind.WeatherEnds => new('W', "weather ends", "weather ends: the run ends", 6),
        _ => new('?', kind.ToString(), kind.ToString(), 0),
    };
}
