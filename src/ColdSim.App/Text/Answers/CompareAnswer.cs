using ColdSim.Planning.Compare;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.App.Text.Answers;

/// <summary>A comparison as an answer: which option to take, what the rig as it is comes to, and the options side by side.</summary>
internal static class CompareAnswer
{
    private const int MostRows = 6, WidestName = 28, NarrowestName = 8;

    private const string Ground = "Over 105 lb of water, not to be carried; it has to be set on the ground.";

    /// <summary>The answer.</summary>
    /// <param name="comparison">What was run.</param>
    /// <param name="guesses">What the best option hangs on.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(Comparison comparison, IReadOnlyList<InputEffect> guesses, UnitStyle units)
    {
        ComparedRow best = comparison.Best;
        return new()
        {
            Brief = Wrap.Cut($"{(best.Holds ? "HOLDS with" : comparison.AnyHolds ? "Least harm:" : "FAILS with all; least harm:")} {Name(best)}, {Outcome(best, units)}", Wrap.Columns),
            Verdict = Verdict(comparison, units),
            Consequences = [.. Consequences(comparison, units)],
            Table = Options(comparison, units),
            AboutGuesses = $"Least certain of {Name(best)}, and how to measure it:",
            Guesses = GuessText.Lines(guesses, best.Option.Scenario, best.Holds, units),
            Caution = CautionLine.Estimate,
        };
    }

    private static string Verdict(Comparison comparison, UnitStyle units)
    {
        ComparedRow best = comparison.Best;
        ComparedRow[] tied = [.. comparison.Rows.TakeWhile(r => r.Rank == 1)];
        string which = tied.Length == 1 ? Name(best) : $"{string.Join(", ", tied.SkipLast(1).Select(Name))} and {Name(tied[^1])}";
        return best.Holds ? $"HOLDS with {(tied.Length == 1 ? "" : "each of ")}{which}: {Outcome(best, units)}."
            : $"{(comparison.AnyHolds ? "" : $"FAILS with all {comparison.Rows.Count}. ")}{which} {(tied.Length == 1 ? "does" : "do")} the least harm: {Outcome(best, units)}.";
    }

    private static IEnumerable<string> Consequences(Comparison comparison, UnitStyle units)
    {
        ComparedRow asItIs = comparison.Rows.First(r => r.Order == 0);
        if (asItIs.Rank > 1)
            yield return $"As it is: {Outcome(asItIs, units)}.";
        else if (asItIs.Holds)
            yield return "The rig as it is holds; nothing has to be changed.";
        int hold = comparison.Rows.Count(r => r.Holds);
        if (hold > 1)
            yield return $"{hold} of {comparison.Rows.Count} hold.";
    }

    private static string Outcome(ComparedRow row, UnitStyle units)
    {
        RunSummary summary = row.Summary;
        string inside = summary.InsideLow is { } low ? $", inside {units.WholeTemperature(low.Kelvins)} at the coldest" : "";
        return row.Holds ? $"{units.RoundMass(summary.LeftAtEnd.Kilograms)} left at the end{inside}"
            : row.StoppedByCylinder ? "the cylinder ends the run, too full or too hot"
            : $"{RunOutcomeText.Failure(summary)}{inside}";
    }

    private static AnswerTable Options(Comparison comparison, UnitStyle units)
    {
        IReadOnlyList<string> lines = TextTable.Fit(WidestName, NarrowestName, width => new FigureTable(ReportTable.CompareOnScreen, units)
        {
            Context = FigureContext.Of(comparison.Base),
        }.Lines(
            CompareFigures.Options, comparison.Rows,
            new FigureTable.Cells<ComparedRow>(new(["Option"], Left: true), -1, (r, _) => Wrap.Cut(Label(r), width)),
            new FigureTable.Cells<ComparedRow>(new([""], Left: true), 0, (r, _) => Short(r))));
        int head = lines.Count - comparison.Rows.Count;
        return new([.. lines.Take(head)], [.. lines.Skip(head).Select((line, i) => new AnswerRow(line, Importance(comparison.Rows, i)))], hidden => $"{hidden.Count} more.")
        {
            Title = $"{comparison.Base.Title}, {Nights(comparison)} from {ClockText.ShortDayClock(comparison.Base.Start)}:{(comparison.Rows.Any(r => r.Option.IsOnGround) ? $" * {units.InOwn(Ground)}" : "")}",
            Most = MostRows + 1,
        };
    }

    private static string Nights(Comparison comparison) => comparison.Rows.Max(r => r.Summary.Nights) is var nights && nights == 1 ? "1 night" : $"{nights} nights";

    private static string Short(ComparedRow row)
        => row.Holds ? "holds" : row.StoppedByCylinder ? "FAILS: stopped" : $"FAILS: {RunOutcomeText.ShortFailure(row.Summary)}";

    private static string Label(ComparedRow row) => $"{Name(row, quoted: false)}{(row.Option.IsOnGround ? " *" : "")}";

    private static string Name(ComparedRow row) => Name(row, quoted: true);

    private static string Name(ComparedRow row, bool quoted) => row.Order == 0 ? (quoted ? "the rig as it is" : "as it is") : quoted ? $"\"{row.Option.Name}\"" : row.Option.Name;

    // The rig as it is has to be seen beside the best.
    private static double Importance(IReadOnlyList<ComparedRow> rows, int place) => rows[place].Order == 0 ? 1e6 : -place;
}
