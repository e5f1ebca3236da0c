using System.CommandLine;
using ColdSim.App.Text.Answers;

namespace ColdSim.App.Commands;

/// <summary>The options that say how long an answer is wanted.</summary>
internal sealed class AnswerOptions
{
    public Option<bool> Full { get; } = new("--full")
    {
        Description = "Print everything: every night, events, assumptions, the ledger, all cautions.",
    };

    public Option<bool> Brief { get; } = new("--brief") { Description = "Print one line." };

    /// <summary>The length that is asked for.</summary>
    /// <exception cref="CommandFault">Both are given.</exception>
    public AnswerLength Of(ParseResult parsed)
    {
        bool full = parsed.GetValue(Full), brief = parsed.GetValue(Brief);
        if (full && brief)
            throw CommandFault.Input("coldsim: give --full or --brief, not both");
        return full ? AnswerLength.Full : brief ? AnswerLength.Brief : AnswerLength.Screen;
    }

    /// <summary>Whether the answer is for a person who wants to know what it hangs on, which takes further runs.</summary>
    public bool WantsAdvice(ParseResult parsed, Option<bool> json) => !parsed.GetValue(json) && Of(parsed) != AnswerLength.Brief;
}
