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
            return $"{All(tied.Length)} {Same(best, units)}: what was changed makes no difference that counts in these nights.";
        string start = comparison.AnyHolds ? "" : "Nothing here holds all nights. ";
        if (tied.Length > 1)
        {
            string first = tied[0].Order == 0 ? "so nothing has to be changed" : "take whichever is easiest";
            return $"{start}{Names(tied)} tie: each {Does(best, units, withLeft: false)}, the same to the minute, a tenth of a degree and ten grams; {first}.";
        }

        ComparedRow next = comparison.Rows[tied.Length];
        string place = comparison.AnyHolds ? "is best" : "does least badly";
        return $"{start}{Name(best, first: true)} {place}: {Why(best, next, units)}.";
    }

    private static string Why(ComparedRow best, ComparedRow next, UnitStyle units)
    {
        string other = Name(next, first: false);
        return Ranking.Between(best, next) switch
        {
            Criterion.Holds when next.StoppedByCylinder => $"it {Does(best, units)}, and {other}, next, ends early, its cylinder too full or too hot",
            Criterion.Holds => $"it {Does(best, units)}, and {other}, next, {Does(next, units)}",
            Criterion.ShortTime when Gone(best) || Gone(next) =>
                $"gas or voltage is wanting for {ClockText.Span(best.Summary.UnservedTime)} in all, against {ClockText.Span(next.Summary.UnservedTime)} with {other}{InsideAlso(best, next, units)}",
            Criterion.FirstShort when Gone(best) || Gone(next) => $"gas or voltage fails first on {When(best)}, with {other} on {When(next)} already",
            Criterion.ShortTime => $"gas is short for {ClockText.Span(best.Summary.ShortTime)} in all, against "
                + $"{ClockText.Span(next.Summary.ShortTime)} with {other}{InsideAlso(best, next, units)}",
            Criterion.FirstShort => $"gas runs short first on {When(best)}, with {other} on {When(next)} already",
            Criterion.InsideLow => $"{Both(best, next)}, and inside stays at {Inside(best, units)} or above, against {Inside(next, units)} with {other}",
            _ => $"{Both(best, next)}, inside is as warm, and it takes {Gas(best, units)} of gas, against {Gas(next, units)} with {other}",
        };
    }

    private static string Both(ComparedRow best, ComparedRow next)
        => best.Holds && next.Holds ? "all nights hold with it and with the next" : "it is short as long as the next and as late";

    private static string InsideAlso(ComparedRow best, ComparedRow next, UnitStyle units)
        => best.Summary.InsideLow is null || next.Summary.InsideLow is null
            ? "" : $"; inside falls to {Inside(best, units)}, against {Inside(next, units)}";

    private static string Does(ComparedRow row, UnitStyle units, bool withLeft = true)
    {
        RunSummary summary = row.Summary;
        string inside = summary.InsideLow is null ? "" : $" and inside {(row.Holds ? "never below" : "down to")} {Inside(row, units)}";
        if (row.Holds)
        {
            string nights = summary.Nights == 1 ? "the night" : $"all {summary.Nights} nights";
            string left = withLeft ? $" with {units.Mass(summary.LeftAtEnd.Kilograms)} left at the end" : "";
            return $"holds {nights}{left}{(left == "" ? inside.Replace(" and", ", with", StringComparison.Ordinal) : inside)}";
        }

        if (summary.Verdict == Verdict.RunsFlat)
            return $"has its battery flat on {ClockText.DayClock(summary.FlatAt!.Value)}, without voltage for {ClockText.Span(summary.VoltageGone)} in all{inside}";
        string what = summary.Verdict == Verdict.RunsDry ? $"is dry on {ClockText.DayClock(summary.DryAt!.Value)}"
            : summary.FirstShort is null ? "runs short" : $"runs short on {When(row)}";
        return $"{what}, short for {ClockText.Span(summary.ShortTime)} in all{inside}";
    }

    private static string Same(ComparedRow best, UnitStyle units)
        => best.Holds ? $"hold, with inside {(best.Summary.InsideLow is null ? "not looked at" : $"never below {Inside(best, units)}")}"
            : $"fall short alike, for {ClockText.Span(best.Summary.UnservedTime)} in all";

    private static string All(int count) => count switch { 1 => "There is nothing to compare with; the nights", 2 => "Both", _ => $"All {count}" };

    private static string Names(ComparedRow[] rows)
        => string.Join(", ", rows[..^1].Select((r, i) => Name(r, first: i == 0))) + " and " + Name(rows[^1], first: false);

    private static string Name(ComparedRow row, bool first)
        => row.Order == 0 ? (first ? "The rig as it is" : "the rig as it is") : $"\"{row.Option.Name}\"";

    private static bool Gone(ComparedRow row) => row.Summary.VoltageGone.Seconds > 0;

    private static string When(ComparedRow row) => row.Summary.FirstFailure is { } at ? ClockText.DayClock(at) : "no day";

    private static string Inside(ComparedRow row, UnitStyle units)
        => $"{UnitStyle.Number(units.TemperatureIn(row.Summary.InsideLow!.Value.Kelvins), 1)} {units.TemperatureUnit}";

    private static string Gas(ComparedRow row, UnitStyle units)
        => $"{UnitStyle.Number(units.MassIn(row.Summary.GasUsed.Kilograms), 2)} {units.MassUnit}";
}
