using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>Two runs, and what differs in their files.</summary>
/// <param name="First">Of the first file.</param>
/// <param name="Second">Of the second.</param>
/// <param name="Change">What differs.</param>
internal sealed record ComparedFiles(RunReport First, RunReport Second, AnswerChange Change);

/// <summary>The work of <c>compare</c> with two files.</summary>
internal static class CompareFiles
{
    /// <summary>The work.</summary>
    /// <param name="first">The first file and its scenario.</param>
    /// <param name="second">The second file and its scenario.</param>
    /// <param name="failIfShort">Whether it is a failure that neither holds.</param>
    /// <param name="host">Where the command runs.</param>
    public static CommandWork<ComparedFiles> Work((string Path, Scenario Scenario) first, (string Path, Scenario Scenario) second, bool failIfShort, Host host)
    {
        IReadOnlyList<InputDifference> inputs = InputDifferences.Of(first.Path, second.Path, host.Files.Open);
        (string firstName, string secondName) = Names(first.Path, second.Path);
        return new()
        {
            Answer = (done, cancel) =>
            {
                RunReport before = NightRun.Of(first.Scenario, cancel);
                done.Report(1);
                RunReport after = NightRun.Of(second.Scenario, cancel);
                return new(before, after, new AnswerChange(AnswerDigest.Of(before), AnswerDigest.Of(after), inputs));
            },
            Ledgers = new("this comparison", c => [.. LedgerLine.IfOpen(c.First.Ledger, firstName), .. LedgerLine.IfOpen(c.Second.Ledger, secondName)]),
            OnScreen = (c, units) => ChangeAnswer.Of(c.Change, firstName, secondName, units),
            Text = (c, to) => to.Write(ChangeAnswer.Sections(c.Change, to.Units)),
            BesideJson = c => ScenarioFile.Assumed(c.Second.Scenario),
            Json = (c, stream) => JsonReport.Write(c.Change, stream),
            Fails = c => failIfShort && c.First.Summary.Verdict != Verdict.Holds && c.Second.Summary.Verdict != Verdict.Holds,
        };
    }

    // Without their folders where their names differ.
    private static (string, string) Names(string first, string second)
    {
        (string one, string other) = (Path.GetFileName(first), Path.GetFileName(second));
        return one == other ? (Quote.OfPath(first), Quote.OfPath(second)) : (Quote.OfPath(one), Quote.OfPath(other));
    }
}
