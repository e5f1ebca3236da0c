using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>One sentence on why the best is the best, in the numbers of these runs.</summary>
internal static class CompareSentence
{
    public static string Of(Comparison comparison, UnitStyle units)
    {
        ComparedRow best = comparison.Best;
        ComparedRow[] tied = [.. comparison.Rows.TakeWhile(r => r.Rank == 1)];
        if (tied.Length == comparison.Rows.Count)
            return $"{Same(tied, units)} What was changed makes no difference that counts in these nights.";
        string start = comparison.AnyHolds ? "" : "Nothing here holds all nights. ";
        if (tied.Length > 1)
        {
            string first = !comparison.AnyHolds ? "None of them is enough"
                : tied[0].Order == 0 ? "Nothing has to be changed" : "Take whichever is easiest";
            return $"{start}{Names(tied)} come out the same: with each, {Goes(best, units, withLeft: false)}. {first}.";
        }

        ComparedRow next = comparison.Rows[tied.Length];
        string place = comparison.AnyHolds ? "is best" : "does the least harm";
        return $"{start}{Name(best, first: true)} {place}: {Why(best, next, units)}.";
    }

    private static string Why(ComparedRow best, ComparedRow next, UnitStyle units)
    {
        string other = Name(next, first: false), also = InsideAlso(best, next, units);
        RunSummary a = best.Summary, b = next.Summary;
        if (next.StoppedByCylinder && !best.StoppedByCylinder)
            return $"{Goes(best, units)}; {other}, next, ends early, its cylinder too full or too hot";
        if (best.Holds && !next.Holds)
            return $"{Goes(best, units)}; with {other}, next, {Goes(next, units)}";
        return Ranking.Between(best, next) switch
        {
            Criterion.FreezingHours => $"{Freezing(best)} for {ClockText.Span(a.FreezingTime)}, against {ClockText.Span(b.FreezingTime)} with {other}{also}",
            Criterion.Lowest => $"at the coldest it is {units.Temperature(a.Lowest!.Value.Kelvins)}, against {units.Temperature(b.Lowest!.Value.Kelvins)} with {other}",
            Criterion.NoHeatHours => $"there is no heat for {ClockText.Span(a.NoHeatTime)}, against {ClockText.Span(b.NoHeatTime)} with {other}{also}",
            Criterion.ColdKelvinHours => $"it is less cold, {DegreeHours(best, units)} below the set point, against {DegreeHours(next, units)} with {other}{also}",
            Criterion.ShortMinutes => $"gas is short for {ClockText.Span(a.ShortTime)}, against {ClockText.Span(b.ShortTime)} with {other}{also}",
            Criterion.Margin => $"{Both(best, next)}, and the gas left lasts {Nights(best.NightsOfGasLeft)}, against {Nights(next.NightsOfGasLeft)} with {other}",
            Criterion.Cost => $"{Both(best, next)}, and it costs {Cost(best)}, against {Cost(next)} with {other}",
            Criterion.Work => $"{Both(best, next)}, and cylinders are changed {Times(a)}, against {Times(b)} with {other}",
            _ => $"{Both(best, next)}, and it takes {Gas(best, units)} of gas, against {Gas(next, units)} with {other}",
        };
    }

    private static string Both(ComparedRow best, ComparedRow next)
        => best.Holds && next.Holds ? "all nights hold with it and with the next" : "it does as much harm as the next";

    private static string InsideAlso(ComparedRow best, ComparedRow next, UnitStyle units)
        => best.Summary.InsideLow is null || next.Summary.InsideLow is null
            ? "" : $"; inside falls to {Inside(best, units)}, against {Inside(next, units)}";

    private static string Freezing(ComparedRow row)
        => row.Option.Scenario.Rig.Water.Any(w => w.Water_kg > 0) ? "water or inside is frozen" : "inside is below freezing";

    /// <summary>How an option goes, as a clause: the nights that hold, or what fails first, and the harm.</summary>
    private static string Goes(ComparedRow row, UnitStyle units, bool withLeft = true)
    {
        RunSummary summary = row.Summary;
        if (row.StoppedByCylinder)
            return "the run ends early, the cylinder too full or too hot";
        if (!row.Holds)
            return $"{VerdictWords.Clause(summary.Verdict)} on {When(row)}{Harm(row, units)}";
        string nights = summary.Nights == 1 ? "the night holds" : $"all {summary.Nights} nights hold";
        string left = withLeft ? $" with {units.Mass(summary.LeftAtEnd.Kilograms)} left at the end" : "";
        string inside = summary.InsideLow is null ? "" : $"inside never below {Inside(row, units)}";
        return $"{nights}{left}{(inside == "" ? "" : left == "" ? $", with {inside}" : $" and {inside}")}";
    }

    private static string Harm(ComparedRow row, UnitStyle units)
    {
        RunSummary summary = row.Summary;
        List<string> parts = [];
        if (summary.NoHeatTime.Minutes >= 1) parts.Add($"no heat for {ClockText.Span(summary.NoHeatTime)}");
        if (summary.ShortTime.Minutes >= 1) parts.Add($"gas short for {ClockText.Span(summary.ShortTime)}");
        if (summary.VoltageGone.Minutes >= 1) parts.Add($"no voltage for {ClockText.Span(summary.VoltageGone)}");
        if (summary.InsideLow is not null) parts.Add($"inside down to {Inside(row, units)}");
        return string.Concat(parts.Select(p => ", " + p));
    }

    private static string Same(ComparedRow[] rows, UnitStyle units) => rows.Length switch
    {
        1 => $"There is nothing to compare with: {Goes(rows[0], units, withLeft: false)}.",
        2 => $"Both come out the same: with each, {Goes(rows[0], units, withLeft: false)}.",
        _ => $"All {rows.Length} come out the same: with each, {Goes(rows[0], units, withLeft: false)}.",
    };

    private static string Names(ComparedRow[] rows)
        => string.Join(", ", rows[..^1].Select((r, i) => Name(r, first: i == 0))) + " and " + Name(rows[^1], first: false);

    private static string Name(ComparedRow row, bool first)
        => row.Order == 0 ? (first ? "The rig as it is" : "the rig as it is") : $"\"{row.Option.Name}\"";

    private static string When(ComparedRow row) => row.Summary.FirstFailure is { } at ? ClockText.DayClock(at) : "no day";

    private static string Inside(ComparedRow row, UnitStyle units)
        => $"{UnitStyle.Number(units.TemperatureIn(row.Summary.InsideLow!.Value.Kelvins), 0)} {units.TemperatureUnit}";

    private static string DegreeHours(ComparedRow row, UnitStyle units)
        => $"{UnitStyle.Number(units.DifferenceIn(row.Summary.ColdKelvinHours), 0)} {units.TemperatureUnit} times hours";

    private static string Nights(double nights) => double.IsInfinity(nights) ? "for ever" : $"{UnitStyle.Number(nights, 1)} more nights";

    private static string Cost(ComparedRow row) => row.Cost is { } cost ? UnitStyle.Number(cost, 0) : "an unknown sum";

    private static string Times(RunSummary summary) => summary.CylinderChanges == 1 ? "once" : $"{summary.CylinderChanges} times";

    private static string Gas(ComparedRow row, UnitStyle units) => $"{UnitStyle.Number(units.MassIn(row.Summary.GasUsed.Kilograms), 1)} {units.MassUnit}";
}
