using ColdSim.Planning.Advice;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.App.Text.Answers;

/// <summary>An explanation as an answer: what fails and why, what would hold, and which limit binds.</summary>
internal static class ExplainAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="explanation">What was found.</param>
    /// <param name="guesses">What it hangs on.</param>
    /// <param name="belowMinimum">What hangs on the gas below the regulator's minimum inlet; null where nothing does.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(Explanation explanation, IReadOnlyList<InputEffect> guesses, MinimumInletEffect? belowMinimum, UnitStyle units)
    {
        string state = ExplainText.Sentence(explanation, units);
        bool fails = explanation.Failed is not null;
        RunAdvice advice = new(fails && !explanation.AtTime ? explanation : null, explanation.Plan, guesses) { BelowMinimum = belowMinimum };
        Answer nights = NightsAnswer.Of(explanation.Report, advice, units);
        if (!fails || explanation.AtTime)
        {
            return nights with
            {
                Brief = explanation.AtTime ? Wrap.Cut(state, Wrap.Columns) : nights.Brief,
                Verdict = explanation.AtTime ? state : nights.Verdict,
                Consequences = explanation.AtTime ? [] : [.. nights.Consequences, state],
                Why = "",
                Table = explanation.AtTime ? null : nights.Table,
            };
        }

        return nights with { Table = explanation.Limit is { } limit ? Limits(limit) : nights.Table };
    }

    // What delays the shortage most is what binds.
    private static AnswerTable Limits(BindingLimit limit)
    {
        IReadOnlyList<string> lines = ExplainText.Sensitivities(limit);
        return new([lines[0]], [.. lines.Skip(1).Select((line, i) => new AnswerRow(line, Importance(limit.Eased[i])))], hidden => $"{hidden.Count} more do less.")
        {
            Title = $"Each limit eased by {UnitStyle.Number(limit.Part_frac * 100, 0)} % alone:",
        };
    }

    private static double Importance(LimitSensitivity eased) => !eased.Applies ? double.MinValue : eased.GoneAt_frac is { } gone ? 1e9 - gone : eased.Delay_s;
}
