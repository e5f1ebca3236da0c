using ColdSim.Planning.Figures;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text.Answers;

/// <summary>How long is left once the furnace stops, as an answer: the time that leaves the least before all others.</summary>
internal static class FreezeAnswer
{
    /// <summary>The answer.</summary>
    public static Answer Of(FreezeOutlook outlook, UnitStyle units)
    {
        CoolDown stop = outlook.Shortest ?? outlook.Stops[0];
        List<string> actions = Actions(stop, units);
        return new()
        {
            Brief = OneLine.Of($"If the furnace stops {ClockText.ShortDayClock(stop.At)}: {Freezes(stop)}"),
            Verdict = $"If the furnace stops on {ClockText.DayClock(stop.At)}, {Freezes(stop)}{Least(outlook)}.",
            Consequences = Consequences(stop, units),
            ToDo = actions.Count > 0 ? "Be ready for it:" : "",
            Actions = actions,
            Table = Table(outlook, units),
            AboutGuesses = GuessText.About,
            Guesses = Guesses(stop),
            Caution = stop.Water.Count > 0 ? CautionLine.Thaw : CautionLine.Alarms,
        };
    }

    // Of several times the verdict is the worst one, which has to be said.
    private static string Least(FreezeOutlook outlook)
        => outlook is { Stops.Count: > 1, Shortest: { } shortest } && Left_s(shortest) > 0 ? $": the least of {outlook.Stops.Count} times" : "";

    private static string Freezes(CoolDown stop)
    {
        if (stop.First is { } first)
        {
            return first.SolidAfter is { Seconds: <= 0 } ? $"{first.Name} is all ice already"
                : first.BeginsAfter is { Seconds: <= 0 } ? $"{first.Name} is freezing already"
                : $"{first.Name} begins to freeze after {RoughSpan.Of(first.BeginsAfter!.Value)}";
        }

        if (stop.Water.Count > 0)
            return $"no water freezes within {RoughSpan.Of(stop.Watched)}";
        return stop switch
        {
            { Inside: null } => "nothing in the file can freeze: it has no coach and no water",
            { FreezingAfter: { Seconds: > 0 }, FreezingEarliest: { } soonest, FreezingLatest: { } latest } when latest.Minutes - soonest.Minutes > 10
                => $"inside falls to freezing after {RoughSpan.Of(soonest)} to {RoughSpan.Of(latest)}",
            { FreezingAfter: null } => $"inside does not fall to freezing within {RoughSpan.Of(stop.Watched)}",
            { FreezingAfter.Seconds: <= 0 } => "inside is below freezing already",
            { FreezingAfter: { } after } => $"inside falls to freezing after {RoughSpan.Of(after)}",
        };
    }

    private static List<string> Consequences(CoolDown stop, UnitStyle units)
    {
        List<string> all = [];
        if (stop.First is { SolidAfter: { Seconds: > 0 } solid })
            all.Add($"It is all ice after {RoughSpan.Of(solid)}.");
        if (stop.Inside is not null && FreezeSentence.Inside(stop, units) is { } inside)
            all.Add(char.ToUpperInvariant(inside[0]) + inside[1..] + ".");
        string[] then = [.. stop.Water.Where(w => w.BeginsAfter is { Seconds: > 0 } && !ReferenceEquals(w, stop.First)).OrderBy(w => w.BeginsAfter!.Value.Seconds)
            .Select(w => $"{w.Name} after {RoughSpan.Of(w.BeginsAfter!.Value)}")];
        if (then.Length > 0)
            all.Add($"Next to freeze: {string.Join(", ", then)}.");
        string[] safe = [.. stop.Water.Where(w => w.BeginsAfter is null).Select(w => w.Name)];
        if (safe.Length > 0 && stop.First is not null)
            all.Add($"{string.Join(", ", safe)}: not within {RoughSpan.Of(stop.Watched)}.");
        return all;
    }

    private static List<string> Actions(CoolDown stop, UnitStyle units)
    {
        List<string> all = [];
        if (Left_s(stop) is not > 0)
            return all;
        string until = stop.First is { } first ? $"{first.Name} begins to freeze" : "inside is at freezing";
        if (stop.FiftyAfter is { Seconds: > 0 } fifty && Left_s(stop) - fifty.Seconds is > 0 and { } left_s)
            all.Add($"Set an alarm to {units.WholeTemperature(CoolDown.Fifty_K)} inside: it leaves {RoughSpan.Of(Duration.FromSeconds(left_s))} until {until}.");
        string[] drain = [.. stop.Water.Where(w => w.BeginsAfter is { Seconds: > 0 }).OrderBy(w => w.BeginsAfter!.Value.Seconds).Select(w => w.Name)];
        if (drain.Length > 0)
            all.Add($"Know how to drain {string.Join(", then ", drain)}.");
        all.Add("Have other heat that its plate allows inside, or a way to leave.");
        return all;
    }

    private static AnswerTable Table(FreezeOutlook outlook, UnitStyle units)
    {
        IReadOnlyList<string> lines = new FigureTable(ReportTable.HeatStops, units) { Gap = 2 }.Lines(FreezeFigures.Stops, outlook.Stops);
        int head = lines.Count - outlook.Stops.Count;
        return new(
            [.. lines.Take(head)],
            [.. outlook.Stops.Select((s, i) => new AnswerRow(lines[head + i], Importance(s)))],
            hidden => $"{hidden.Count} more with --full.")
        {
            Title = $"{outlook.Scenario.Title}, hours and minutes from when the furnace stops:",
        };
    }

    // The least time that is left first; what is frozen already can wait, for nothing can be done about it.
    private static double Importance(CoolDown stop) => Left_s(stop) is { } left_s ? left_s > 0 ? -left_s : -1e9 : -2e9;

    private static double? Left_s(CoolDown stop) => (stop.First?.BeginsAfter ?? (stop.Water.Count == 0 ? stop.FreezingAfter : null))?.Seconds;

    private static List<string> Guesses(CoolDown stop)
    {
        List<string> all = [];
        if (stop.Water.Count > 0)
            all.Add("how warm the water's place stays: hang a thermometer there one cold night.");
        if (stop.Inside is not null)
            all.Add("how fast inside cools: switch the furnace off for half an hour and watch.");
        return all;
    }
}
