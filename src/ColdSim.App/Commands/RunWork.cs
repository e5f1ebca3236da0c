using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Advice;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Reports;

namespace ColdSim.App.Commands;

/// <summary>A run and, where it starts from a log's latest reading, what that says.</summary>
/// <param name="Report">The run.</param>
/// <param name="Forecast">From the reading on; null where there is none.</param>
/// <param name="Log">The log beside the simulator; null likewise.</param>
/// <param name="Advice">Why it fails, what to do and what it hangs on; null where that was not asked for.</param>
internal sealed record RunAnswer(RunReport Report, Forecast? Forecast = null, LogPrediction? Log = null, RunAdvice? Advice = null)
{
    /// <summary>What was measured beside what was computed; null where the log has nothing but readings of contents.</summary>
    public MeasuredComparison? Measured { get; init; }
}

/// <summary>One run of a scenario: the work of <c>run</c>, <c>tonight</c> and <c>view</c>.</summary>
internal static class RunWork
{
    /// <summary>The work.</summary>
    /// <param name="scenario">What is run.</param>
    /// <param name="failIfShort">Whether a night that does not hold is a failure.</param>
    /// <param name="latest">The reading that it starts from; null for none.</param>
    /// <param name="adviseIn">The units of a person who wants to know why it fails, what to do and what it hangs on, which takes further runs; null where nobody does.</param>
    /// <param name="detail">How much of the run is kept.</param>
    /// <param name="since">An earlier answer, of which is said what changed; null for none.</param>
    public static CommandWork<RunAnswer> Of(
        Scenario scenario, bool failIfShort = false, LatestReading? latest = null, UnitStyle? adviseIn = null, RunDetail detail = RunDetail.Curves,
        AnswerDigest? since = null) => new()
        {
            Answer = (done, cancel) => Find(scenario, latest, adviseIn, detail, done, cancel),
            Progress = done => done == 0 ? "" : $", {done} runs done",
            OnScreen = (a, units) => WithSince(WithNextHour(NightsAnswer.Of(a.Report, a.Advice, units), a.Report, units), Change(since, a), units),
            Ledgers = new("this run", a => LedgerLine.IfOpen(a.Report.Ledger)),
            Text = (a, to) => to.Write(Sections(a, latest, to.Units)),
            BesideJson = a => ScenarioFile.Assumed(a.Report.Scenario),
            Json = (a, stream) => JsonReport.Write(
                new RunDocument(a.Report, a is { Forecast: { } forecast, Log: { } log } ? new(a.Report, forecast, log) : null) { Since = Change(since, a), Measured = a.Measured }, stream),
            Fails = a => failIfShort && a.Report.Summary.Verdict != Verdict.Holds,
        };

    private static RunAnswer Find(Scenario scenario, LatestReading? latest, UnitStyle? adviseIn, RunDetail detail, IProgress<int> done, CancellationToken cancel)
    {
        RunReport report = NightRun.Of(scenario, detail, cancel);
        if (!report.Ledger.Closes)
            return new(report);
        RunAdvice? advice = adviseIn is { } units ? RunAdvice.Of(report, units.Grid, () => done.Report(1), cancel: cancel) : null;
        if (latest is null)
            return new(report, Advice: advice) { Measured = Measured(report, null, detail, cancel) };

        // Other nights than the scenario's may have been asked for.
        Forecast forecast = Forecast.Of(latest.Start with { Scenario = report.Scenario }, cancel);
        return new(report, forecast, LogPrediction.Of(latest.Before, latest.Log, null, cancel), advice) { Measured = Measured(report, latest, detail, cancel) };
    }

    // A short answer has no room for it, and no curves to compare with.
    private static MeasuredComparison? Measured(RunReport report, LatestReading? latest, RunDetail detail, CancellationToken cancel)
        => report.Scenario.Measurements.Count == 0 || detail == RunDetail.Answer ? null
            : latest is null ? MeasuredComparison.InRun(report) : MeasuredComparison.Of(report, MeasuredComparison.ThroughLog(latest.Before, latest.Log, cancel));

    private static AnswerChange? Change(AnswerDigest? since, RunAnswer answer) => since is null ? null : new(since, AnswerDigest.Of(answer.Report), []);

    private static Answer WithSince(Answer answer, AnswerChange? change, UnitStyle units)
        => change is null ? answer : answer with { Consequences = [.. ChangeText.Since(change, units), .. answer.Consequences] };

    // Who asks in the night wants the next hour first.
    private static Answer WithNextHour(Answer answer, RunReport report, UnitStyle units) => NextHour.Of(report) is not { } hour ? answer
        : answer with { Consequences = [.. NextHourText.Sentences(hour, units), .. answer.Consequences] };

    private static IReadOnlyList<TextSection> Sections(RunAnswer answer, LatestReading? latest, UnitStyle units)
    {
        IReadOnlyList<TextSection> sections = RunText.Sections(answer.Report, units, Cautions.Short);
        if (ActionText.Section(answer.Advice?.Plan, answer.Report.Scenario, units) is { } actions)
            sections = [sections[0], actions, .. sections.Skip(1)];
        if (answer.Measured is { Rows.Count: > 0 } measured)
            sections = [sections[0], MeasuredText.Section(measured, answer.Report.Scenario, units), .. sections.Skip(1)];
        if (latest is null || answer is not { Forecast: { } forecast, Log: { } log })
            return sections;
        return
        [
            sections[0], ForecastText.Section(forecast, latest.Start, answer.Report, units),
            .. log.Days.Count == 0 ? Array.Empty<TextSection>() : [LogText.DailyUse(log, answer.Report.Scenario, units)], .. sections.Skip(1),
        ];
    }
}
