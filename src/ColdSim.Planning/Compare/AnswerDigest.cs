using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Compare;

/// <summary>A night of an answer, in the figures that are compared with another answer's.</summary>
/// <param name="Evening">The calendar day on whose evening it begins.</param>
/// <param name="Verdict">How it went, in the word of the documents.</param>
/// <param name="OutsideLow">The coldest outside.</param>
/// <param name="InsideLow">The coldest inside; null without a coach.</param>
/// <param name="LeftAtDawn">What was left at dawn; null where the run did not reach it.</param>
/// <param name="FirstShort">When gas was first too little; null where it was not.</param>
public sealed record NightDigest(DateOnly Evening, string Verdict, Temperature OutsideLow, Temperature? InsideLow, Mass? LeftAtDawn, DateTimeOffset? FirstShort);

/// <summary>An answer in what is compared with another: of a run, or of a document that an earlier run wrote.</summary>
/// <param name="Title">The scenario's title.</param>
/// <param name="Start">When the run started.</param>
/// <param name="Verdict">How the whole run went, in the word of the documents.</param>
/// <param name="LeftAtStart">What was in the cylinders at the start.</param>
/// <param name="ReadAt">When the log's reading that it started from was made; null where it started as the scenario says.</param>
/// <param name="Nights">Night by night.</param>
public sealed record AnswerDigest(string Title, DateTimeOffset Start, string Verdict, Mass LeftAtStart, DateTimeOffset? ReadAt, IReadOnlyList<NightDigest> Nights)
{
    /// <summary>The digest of a run.</summary>
    /// <param name="report">The run.</param>
    public static AnswerDigest Of(RunReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new(
            report.Scenario.Title,
            report.Scenario.Start,
            ReportWords.Verdicts[report.Summary.Verdict].Key,
            report.Summary.LeftAtStart,
            report.Scenario.StartedFrom?.Read,
            [.. report.Nights.Select(n => new NightDigest(n.Evening, ReportWords.Verdicts[n.Verdict].Key, n.OutsideLow, n.InsideLow, n.LeftAtDawn, n.FirstShort))]);
    }
}

/// <summary>A key that two scenarios give differently.</summary>
/// <param name="Key">Its whole name.</param>
/// <param name="Before">Its value in the first, as written; null where it is not given there.</param>
/// <param name="After">Its value in the second; null likewise.</param>
public sealed record InputDifference(string Key, string? Before, string? After);

/// <summary>A night in two answers.</summary>
/// <param name="Evening">Its evening.</param>
/// <param name="Before">In the first; null where that does not have it.</param>
/// <param name="After">In the second; null likewise.</param>
public sealed record NightChange(DateOnly Evening, NightDigest? Before, NightDigest? After);

/// <summary>Two answers beside each other: what differs in what was asked, and in what came of it.</summary>
/// <param name="Before">The first.</param>
/// <param name="After">The second.</param>
/// <param name="Inputs">The keys in which their scenarios differ; none where only the answers are known.</param>
public sealed record AnswerChange(AnswerDigest Before, AnswerDigest After, IReadOnlyList<InputDifference> Inputs)
{
    /// <summary>The nights of either, in order.</summary>
    public IReadOnlyList<NightChange> Nights
    {
        get
        {
            SortedSet<DateOnly> evenings = [.. Before.Nights.Select(n => n.Evening), .. After.Nights.Select(n => n.Evening)];
            return [.. evenings.Select(e => new NightChange(e, Before.Nights.FirstOrDefault(n => n.Evening == e), After.Nights.FirstOrDefault(n => n.Evening == e)))];
        }
    }
}
