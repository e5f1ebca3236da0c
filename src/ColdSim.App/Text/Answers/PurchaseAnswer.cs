using ColdSim.Planning.Purchases;

namespace ColdSim.App.Text.Answers;

/// <summary>What to buy, as an answer: a verdict in a sentence, then the set-ups side by side.</summary>
internal static class PurchaseAnswer
{
    private const int MostRows = 10;

    /// <summary>The answer.</summary>
    public static Answer Of(PurchaseReport report, UnitStyle units)
    {
        PurchaseRow best = report.Best;
        return new()
        {
            Brief = OneLine.Of($"{best.SetUp.Name}: {Outcome(best, report)}"),
            Verdict = $"{(best.Season.ShortNights == 0 ? "Best" : "None is fed every night; least bad")}: {best.SetUp.Name}, "
                + $"{Outcome(best, report)}.",
            Consequences = [.. Consequences(report, units)],
            Table = Table(report, units),
            Caution = CautionLine.Estimate,
        };
    }

    private static string Outcome(PurchaseRow row, PurchaseReport report)
    {
        string fed = row.Season.ShortNights == 0 ? $"fed on all {report.Season.Nights.Count} nights"
            : $"short on {row.Season.ShortNights} of {report.Season.Nights.Count} nights";
        string money = row.Season.Money is { } sum ? $", {report.Scenario.Prices.Currency}{UnitStyle.Number(sum, 0)} for gas" : "";
        return $"{fed}, {(row.Season.Refills == 1 ? "1 refill" : $"{row.Season.Refills} refills")}{money}";
    }

    private static IEnumerable<string> Consequences(PurchaseReport report, UnitStyle units)
    {
        PurchaseRow best = report.Best;
        yield return $"{PurchaseText.Record(report, units)}; it burns {units.RoundMass(report.Season.Nights.Average(n => n.Used_kg))} a "
            + "day.";
        string one = best.SetUp.Count == 1 ? "It weighs" : "Each weighs";
        yield return best.SetUp.Lift_kg > report.Carries_kg
            ? $"{one} {units.RoundMass(best.SetUp.Lift_kg)} full, more than the {units.RoundMass(report.Carries_kg)} that one person "
                + "should lift."
            : $"{one} {units.RoundMass(best.SetUp.Lift_kg)} full.";
        if (Heavier(report) is { } heavier)
            yield return $"If two lift {units.RoundMass(heavier.SetUp.Lift_kg)}: {heavier.SetUp.Name}, {heavier.Season.Refills} refills.";
        if (report.Rows.FirstOrDefault(r => r.SetUp.Count == 1 && r.Season.ShortNights > best.Season.ShortNights
            && !r.SetUp.Blanket) is { } single)
            yield return $"One {single.SetUp.Size.Name} alone is short on {single.Season.ShortNights} "
                + $"{(single.Season.ShortNights == 1 ? "night" : "nights")}.";
    }

    // What is too heavy for one person and spares at least a third of the ways to the filler.
    private static PurchaseRow? Heavier(PurchaseReport report) => report.Best.SetUp.Lift_kg > report.Carries_kg ? null
        : report.Rows.FirstOrDefault(r => r.SetUp.Lift_kg > report.Carries_kg && !r.SetUp.IsOnGround
            && r.Season.ShortNights <= report.Best.Season.ShortNights
            && 3 * r.Season.Refills <= 2 * report.Best.Season.Refills && report.Best.Season.Refills > 0);

    private static AnswerTable Table(PurchaseReport report, UnitStyle units)
    {
        IReadOnlyList<string> lines = PurchaseText.Table(report, units);
        int head = lines.Count - report.Rows.Count;
        return new(
            [.. lines.Take(head)], [.. report.Rows.Select((r, i) => new AnswerRow(lines[head + i], -i))],
                hidden => $"{hidden.Count} more with --full.")
        {
            Title = $"Coldest night fed by fill; days a filling at {string.Join(", ", report.Lows_K.Select(units.WholeTemperature))}:",
            Most = MostRows,
        };
    }
}
