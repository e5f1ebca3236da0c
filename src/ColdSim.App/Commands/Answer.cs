using ColdSim.App.Text;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>Runs a scenario and prints what it says, as text or as JSON.</summary>
internal sealed class Answer(Host host, UnitStyle units, bool json, bool failIfShort)
{
    /// <summary>Where the curves go as well, or null.</summary>
    public string? CsvPath { get; init; }

    /// <summary>The log whose latest reading the scenario was moved to, or null.</summary>
    public FromLog? Latest { get; init; }

    public async Task<int> GiveAsync(Scenario scenario, CancellationToken cancel)
    {
        RunReport report = await CheckedRun.OfAsync(scenario, host, cancel).ConfigureAwait(false);
        (Forecast Forecast, LogPrediction Log)? ahead = Latest is null ? null : await AheadAsync(Latest, report, cancel).ConfigureAwait(false);
        if (json)
            Json(report, ahead?.Forecast, ahead?.Log);
        else
            RunText.Write(host.Out, Sections(report, ahead), host.OutIsTerminal && host.Color);
        await host.Out.FlushAsync(cancel).ConfigureAwait(false);
        if (CsvPath is not null)
            CsvFile.Write(host, CsvPath, "curves", writer => host.Parts.WriteCsv(report, writer), cancel);
        return failIfShort && report.Summary.Verdict != Verdict.Holds ? ExitCode.ShortOrDry : ExitCode.Done;
    }

    private async Task<(Forecast Forecast, LogPrediction Log)> AheadAsync(FromLog latest, RunReport report, CancellationToken cancel)
    {
        // Other nights than the scenario's may have been asked for.
        ForecastStart start = latest.Start with { Scenario = report.Scenario };
        Task<Forecast> work = Task.Run(() => Forecast.Of(start, cancel), cancel);
        await WaitingLine.UntilAsync(work, host).ConfigureAwait(false);
        return (await work.ConfigureAwait(false), await LogCommand.PredictAsync(latest.Before, latest.Log, host, cancel).ConfigureAwait(false));
    }

    private IReadOnlyList<TextSection> Sections(RunReport report, (Forecast Forecast, LogPrediction Log)? ahead)
    {
        IReadOnlyList<TextSection> sections = RunText.Sections(report, units, host.Parts.Cautions());
        if (Latest is null || ahead is not { } a)
            return sections;
        return
        [
            sections[0], ForecastText.Section(a.Forecast, Latest.Start, report, units),
            .. a.Log.Days.Count == 0 ? Array.Empty<TextSection>() : [LogText.DailyUse(a.Log, report.Scenario, units)], .. sections.Skip(1),
        ];
    }

    private void Json(RunReport report, Forecast? forecast, LogPrediction? log)
    {
        AssumedLines.Tell(host, report.Scenario.Assumptions);
        if (forecast is null || log is null)
            host.Parts.WriteJson(report, host.Output);
        else
            JsonReport.Write(new ForecastReport(report, forecast, log), host.Output);
    }
}
