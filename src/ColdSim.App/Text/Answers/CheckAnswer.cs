using ColdSim.Planning;
using ColdSim.Planning.HeatLoss;

namespace ColdSim.App.Text.Answers;

/// <summary>A scenario that can be run, at a glance.</summary>
internal static class CheckAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="warnings">How many warnings it has, which are printed before.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(Scenario scenario, int warnings, UnitStyle units)
    {
        HeatLossBreakdown? loss = HeatLossBreakdown.Of(scenario);
        string good = warnings switch
        {
            _ when loss is not null && CheckText.IsTooSmall(loss) => "It can be run, but the furnace is too small for its coldest hour",
            0 => "Nothing is wrong with it",
            1 => "It can be run, with 1 warning",
            _ => $"It can be run, with {warnings} warnings",
        };
        return new()
        {
            Brief = OneLine.Of($"{good}: {scenario.Title}"),
            Verdict = $"{good}: {scenario.Title}.",
            Consequences =
            [
                .. loss is null ? [] : CheckText.Against(loss, units) is { } against ? [against] : Array.Empty<string>(),
                CheckText.Setting(scenario, units), CheckText.Weather(scenario, units),
            ],
            ToDo = "Do: run it with 'coldsim run'.",
            Table = loss is null ? null : Table(loss, units),
            AboutGuesses = scenario.Assumptions.Count == 0 ? "" : $"Assumed, because the file does not say it ({scenario.Assumptions.Count} in all):",
            Guesses = [.. units.InOwn(scenario.Assumptions.OrderBy(Place))],
            Caution = CautionLine.Estimate,
        };
    }

    // What the coach loses and what the cylinder holds decide most answers.
    private static int Place(string assumption) => assumption.StartsWith("coach", StringComparison.Ordinal) ? 0
        : assumption.StartsWith("cylinder", StringComparison.Ordinal) ? 1 : assumption.StartsWith("furnace", StringComparison.Ordinal) ? 2 : 3;

    private static AnswerTable Table(HeatLossBreakdown loss, UnitStyle units)
    {
        IReadOnlyList<string> lines = CheckText.HeatLoss(loss, units);
        int parts = loss.Items.Count;
        double[] share = [.. loss.Items.Select(i => i.Conductance_W_K)];
        return new(
            [lines[0]],
            [.. lines.Skip(1).Select((line, i) => new AnswerRow(line, i < parts ? share[i] : double.PositiveInfinity))],
            hidden => $"{hidden.Count} smaller parts more.");
    }
}
