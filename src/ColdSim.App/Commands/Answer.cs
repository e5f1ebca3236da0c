using ColdSim.App.Text;
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

    /// <summary>The log's latest reading that the scenario was moved to, or null.</summary>
    public LogRow? Latest { get; init; }

    public async Task<int> GiveAsync(Scenario scenario, CancellationToken cancel)
    {
        RunReport report = await CheckedRun.OfAsync(scenario, host, cancel).ConfigureAwait(false);
        if (json)
            Json(report);
        else
            RunText.Write(host.Out, Sections(report, cancel), host.OutIsTerminal && host.Color);
        await host.Out.FlushAsync(cancel).ConfigureAwait(false);
        if (CsvPath is not null)
            CsvFile.Write(host, CsvPath, "curves", writer => host.Parts.WriteCsv(report, writer), cancel);
        return failIfShort && report.Summary.Verdict != Verdict.Holds ? ExitCode.ShortOrDry : ExitCode.Done;
    }

    private IReadOnlyList<TextSection> Sections(RunReport report, CancellationToken cancel)
    {
        IReadOnlyList<TextSection> sections = RunText.Sections(report, units, host.Parts.Cautions());
        return Latest is null ? sections
            : [sections[0], ForecastText.Section(Forecast.Of(report.Scenario, Latest, cancel), report, units), .. sections.Skip(1)];
    }

    private void Json(RunReport report)
    {
        foreach (string assumption in report.Scenario.Assumptions)
            host.Error.WriteLine($"assumed: {assumption}");
        host.Out.Flush();
        host.Parts.WriteJson(report, host.Output);
    }
}
