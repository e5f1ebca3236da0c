using ColdSim.Files.Quantities;
using ColdSim.Planning.Compare;
using UnitsNet;

namespace ColdSim.App.Text.Answers;

/// <summary>Two answers beside each other in words: what differs in what was asked, and what came of it.</summary>
internal static class ChangeText
{
    private const int MostNights = 3;
    private const double Noticeable_K = 0.5, Noticeable_kg = 0.05;

    /// <summary>What changed since an earlier answer, the most important first.</summary>
    public static IEnumerable<string> Since(AnswerChange change, UnitStyle units)
    {
        (AnswerDigest before, AnswerDigest after) = (change.Before, change.After);
        yield return before.Verdict == after.Verdict
            ? $"Since the earlier answer, which started {ClockText.ShortDayClock(before.Start)}: still {Word(after.Verdict)}."
            : $"Since the earlier answer, which started {ClockText.ShortDayClock(before.Start)}: it said {Word(before.Verdict)}, now {Word(after.Verdict)}.";
        if (before.Title != after.Title)
            yield return $"It was of another scenario, {before.Title}.";
        if (before.ReadAt != after.ReadAt || Math.Abs(before.LeftAtStart.Kilograms - after.LeftAtStart.Kilograms) > Noticeable_kg)
            yield return $"It started with {units.RoundMass(before.LeftAtStart.Kilograms)}{Read(before)}, this one with {units.RoundMass(after.LeftAtStart.Kilograms)}{Read(after)}.";
        string[] weather = [.. change.Nights.Where(n => n is { Before: not null, After: not null }).Select(n => Weather(n, units)).OfType<string>()];
        yield return weather.Length == 0 ? "The weather of the nights in both is the same." : $"Weather: {Few(weather)}.";
        string[] nights = [.. change.Nights.Where(n => n is { Before: { } b, After: { } a } && b.Verdict != a.Verdict)
            .Select(n => $"{Day(n.Evening)} {Word(n.After!.Verdict)}, said {Word(n.Before!.Verdict)}")];
        if (nights.Length > 0)
            yield return $"Nights: {Few(nights)}.";
    }

    /// <summary>The keys in which two files differ, each with both values.</summary>
    public static IReadOnlyList<string> Inputs(AnswerChange change, UnitStyle units)
        => [.. change.Inputs.Select(i => $"{i.Key}: {Value(i.Before, units)} → {Value(i.After, units)}")];

    /// <summary>The nights of both as a table, with the heading first.</summary>
    public static AnswerTable Nights(AnswerChange change, UnitStyle units)
    {
        List<AnswerRow> rows = [];
        foreach (NightChange night in change.Nights)
        {
            double importance = night.Before?.Verdict != night.After?.Verdict ? 2 : night.After?.Verdict == "holds" ? 0 : 1;
            rows.Add(new(
                $"{Day(night.Evening),-10} {Two(night, n => Number(n.OutsideLow, units))}  {Two(night, n => n.InsideLow is { } low ? Number(low, units) : "-")}  "
                + $"{Two(night, n => n.LeftAtDawn is { } left ? units.MassNumber(left.Kilograms) : "-", 6)}  {Cell(night.Before is { } b ? Word(b.Verdict) : "-", 15)} {(night.After is { } a ? Word(a.Verdict) : "-")}",
                importance));
        }

        return new(
            [
                $"{"",-10} {"Outside",9}  {"Inside",9}  {"Left dawn",13}",
                $"{"Night",-10} {"1st",4} {"2nd",4}  {"1st",4} {"2nd",4}  {"1st",6} {"2nd",6}  {Cell("1st", 15)} 2nd",
            ],
            rows,
            hidden => $"{hidden.Count} more.")
        {
            Title = $"Lowest outside and inside in {units.TemperatureUnit}, left in {units.MassUnit}:",
        };
    }

    /// <summary>A verdict as it is read: the documents' words with spaces.</summary>
    public static string Word(string verdict) => verdict.Replace('_', ' ');

    private static string Weather(NightDigest before, NightDigest after, UnitStyle units)
    {
        double colder_K = before.OutsideLow.Kelvins - after.OutsideLow.Kelvins;
        return $"{Day(after.Evening)} {units.WholeDifference(Math.Abs(colder_K))} {(colder_K > 0 ? "colder" : "warmer")}, low {units.WholeTemperature(after.OutsideLow.Kelvins)}";
    }

    private static string? Weather(NightChange night, UnitStyle units)
        => Math.Abs(night.Before!.OutsideLow.Kelvins - night.After!.OutsideLow.Kelvins) < Noticeable_K ? null : Weather(night.Before, night.After, units);

    private static string Few(string[] parts)
        => string.Join("; ", parts.Take(MostNights)) + (parts.Length > MostNights ? FormattableString.Invariant($"; {parts.Length - MostNights} more") : "");

    private static string Read(AnswerDigest answer) => answer.ReadAt is { } at ? $" (log, {ClockText.ShortDayClock(at)})" : "";

    private static string Day(DateOnly evening) => evening.ToString("ddd d MMM", System.Globalization.CultureInfo.InvariantCulture);

    private static string Two(NightChange night, Func<NightDigest, string> figure, int width = 4)
        => $"{(night.Before is { } b ? figure(b) : "-").PadLeft(width)} {(night.After is { } a ? figure(a) : "-").PadLeft(width)}";

    private static string Cell(string text, int width) => text.PadRight(width);

    private static string Number(Temperature temperature, UnitStyle units) => UnitStyle.Number(units.TemperatureIn(temperature.Kelvins), 0);

    // As it is written, and in the person's units where those are others.
    private static string Value(string? written, UnitStyle units)
    {
        if (written is null)
            return "not given";
        string? own = QuantityText.TryParseTemperature(written, out Temperature temperature, out _) ? units.Temperature(temperature.Kelvins)
            : QuantityText.TryParseMass(written, out Mass mass, out _) ? units.Mass(mass.Kilograms)
            : QuantityText.TryParseSpeed(written, out Speed speed, out _) ? units.Speed(speed.MetersPerSecond)
            : QuantityText.TryParsePower(written, out Power power, out _) && (double)power.Watts >= 500 ? units.Power((double)power.Watts)
            : null;
        return own is null || written.EndsWith(own[(own.LastIndexOf(' ') + 1)..], StringComparison.Ordinal) ? written : own;
    }
}
