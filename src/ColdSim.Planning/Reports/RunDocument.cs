using ColdSim.Planning.Compare;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Reports.RunDocument>;

namespace ColdSim.Planning.Reports;

/// <summary>All that is reported of a run.</summary>
/// <param name="Run">The run.</param>
/// <param name="Forecast">Its spans, where it starts from the log's latest reading; else null.</param>
public sealed record RunDocument(RunReport Run, ForecastReport? Forecast)
{
    /// <summary>What changed since an earlier answer; null where none was given.</summary>
    public AnswerChange? Since { get; init; }

    /// <summary>What was measured beside what was computed, from the log's first reading on; null for the run's own time alone.</summary>
    internal MeasuredComparison? Measured { get; init; }

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> Figures { get; } =
    [
        Document.Text("title", d => d.Run.Scenario.Title, "the scenario's title"),
        Document.Time("start", d => d.Run.Scenario.Start, "when the run started"),
        Document.Word("end", d => d.Run.End, ReportWords.Ends, "why it ended"),
        Document.Group("furnace_stops", d => d.Run.CoolDown, FreezeFigures.Stops, "what happens after `furnace.stops_at`; null where the furnace does not stop", canBeAbsent: true),
        Document.Group("after_failure", d => AfterFailure.Of(d.Run), FreezeFigures.Stops, "what followed when gas first ran short or the voltage was first gone, to the end of that night; null where all nights hold, without a coach or with `furnace_stops`", canBeAbsent: true),
        Document.Group("next_hour", d => NextHour.Of(d.Run), NextHourFigures.All, "of `tonight --now`: the next hour; else null", canBeAbsent: true),
        Document.Group("since", d => d.Since, AnswerChangeFigures.All, "of `--since`: what changed since the earlier answer; else null", canBeAbsent: true),
        Document.Group("summary", d => d.Run.Summary, RunFigures.Summaries, "the whole run"),
        Document.Texts("cylinders", d => FigureContext.Of(d.Run.Scenario).Cylinders, "the cylinders' names, in the order in which they are used"),
        Document.Text("gas", d => d.Run.Scenario.Rig.Gas.Name, "the gas: `propane`, a grade's name, or `mixed gas`"),
        Document.Rows("nights", d => d.Run.Nights, NightFigures.All, "night by night, each from noon to noon"),
        Document.Rows("events", d => d.Run.Events, EventFigures.All, "what happened, in order"),
        Document.Group("ledger", d => new LedgerReport(d.Run.Ledger), RunFigures.Ledger, "what is left over when energy and mass are added up"),
        Document.Group("forecast", d => d.Forecast, ForecastFigures.All, "what the log's latest reading makes of the days ahead; null where the run does not start from it", canBeAbsent: true),
        LogStartFigures.In<RunDocument>(d => d.Run.Scenario),
        .. MeasuredFigures.In<RunDocument>(d => d.Measured ?? MeasuredComparison.InRun(d.Run), d => d.Run.Scenario),
        Document.Texts("assumptions", d => d.Run.Scenario.Assumptions, "what was assumed because the scenario does not say it"),
    ];
}
