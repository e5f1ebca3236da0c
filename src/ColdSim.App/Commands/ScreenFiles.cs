using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Html;
using ColdSim.App.Text.Reports;
using ColdSim.Files.Disk;
using ColdSim.Files.Logs;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios.Starters;
using ColdSim.Planning.Advice;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Commands;

/// <summary>The scenario files of the screen, read as <c>view</c> reads them; what a command would print is kept from the screen's terminal.</summary>
/// <param name="Clock">By which files and readings are dated.</param>
/// <param name="Files">Opens the files of one reading, and keeps in mind which were read.</param>
/// <param name="WithLog">Whether logs are read.</param>
/// <param name="SkipDamaged">Whether damaged lines of a log are left out.</param>
internal sealed record ScreenFiles(TimeProvider Clock, Func<IFiles> Files, bool WithLog = true, bool SkipDamaged = false) : IScenarioFiles
{
    /// <summary>The file whose weather is replaced, and by which; null for none.</summary>
    public (string Scenario, string Weather)? Weather { get; init; }

    /// <summary>The weather file in place of a scenario's; null for that.</summary>
    public string? WeatherOf(string? path) => Weather is { } instead && instead.Scenario == path ? instead.Weather : null;

    public Opening Open(string path, CancellationToken cancel) => Told(host =>
    {
        FileStamps before = FileStamps.Of([path, LogFile.PathOf(path)]);
        StartedScenario started = ViewCommand.Shown(Read(path, UnitStyle.Us, host), UnitStyle.Us);
        Opening opening = ViewCommand.OpeningOf(started, NightRun.Of(started.Scenario, cancel), path, WeatherOf(path), host);
        return opening with { Files = this, Stamps = before.With(FileStamps.Of(host.Files.Reads.Paths)) };
    });

    public IReadOnlyList<string> Beside(string? open)
    {
        string folder = Path.GetDirectoryName(open) is { Length: > 0 } there ? there : ".";
        IFiles files = Files();
        if (!files.FolderExists(folder))
            return [];
        IEnumerable<string> scenarios = files.In(folder).Where(f => f.EndsWith(".toml", StringComparison.OrdinalIgnoreCase));
        return [.. scenarios.Select(f => folder == "." ? Path.GetFileName(f) : f).Order(StringComparer.Ordinal)];
    }

    public string Verdict(string path, UnitStyle units, CancellationToken cancel) => Told(host =>
    {
        RunReport report = NightRun.Of(Read(path, units, host).Scenario, cancel);
        return report.Ledger.Closes ? NightsAnswer.Of(report, null, units).Brief : "the ledger of this run does not close, so nothing of it is shown";
    });

    public IReadOnlyList<string> Faults(StarterRig rig, string path) => StarterFiles.Faults(rig, path, Clock.GetLocalNow(), Files().Open);

    public void Write(StarterRig rig, string path) => Told(host =>
    {
        CommandWork<string> work = NewCommand.Work(path, rig, force: false, host);
        work.Answer(new Progress<int>(), CancellationToken.None);
        return path;
    });

    public string Export(RunReport report, int night, string? open, UnitStyle units, IProgress<int> done, CancellationToken cancel) => Told(host =>
    {
        NightReport of = report.Nights[night];
        string name = Path.Combine(Path.GetDirectoryName(open) ?? "", Path.GetFileNameWithoutExtension(open ?? "demo"));
        string curves = FormattableString.Invariant($"{name}-night{of.Number}.csv"), page = name + ".html";
        if (open is not null)
            host.Files.Reads.Add(open);
        ReportContents contents = new(report, RunAdvice.Of(report, units.Grid, () => done.Report(1), cancel: cancel))
        {
            Measured = MeasuredComparison.InRun(report),
            Trip = report.Scenario.Trip is null ? null : TripRun.Of(report.Scenario, done, cancel: cancel),
        };
        ReportOrigin origin = new(Path.GetFileName(open ?? "the demo"), ReportFiles.Version, Clock.GetLocalNow());
        ReportDocument document = WholeReport.Of(contents, units, origin, Paper.Any);
        FileOutput<RunReport>[] files =
        [
            new(new OutputFile(curves, SeriesCsv.Kind, Force: false), (run, to) => SeriesCsv.Write(run, to, new CsvForm(units.IsUs, ','), of.From, of.To)),
            new(new OutputFile(page, HtmlPage.Kind, Force: false), (_, to) => to.Write(HtmlPage.Of(document, ReportFiles.Version))),
        ];
        foreach (FileOutput<RunReport> file in files)
            file.Save(report, host, cancel);
        return $"Night {of.Number} written to {curves}, the report to {page}.";
    });

    public string TakeOver(FitReport fit, string path) => Told(host =>
    {
        foreach (FileOutput<FitReport> file in FitCommand.InPlace(path, host))
            file.Save(fit, host, CancellationToken.None);
        return $"The fit is in {Path.GetFileName(path)} now; what was there is in {Path.GetFileName(path)}{FitCommand.Backup}.";
    });

    private StartedScenario Read(string path, UnitStyle units, Host host)
        => StartedScenario.Read(path, WithLog, SkipDamaged, units, host, Weather is { } instead && instead.Scenario == path ? instead.Weather : null);

    // Warnings are not shown on the screen; 'coldsim check' has them.
    private T Told<T>(Func<Host, T> ask)
    {
        using Host host = new(Stream.Null, TextWriter.Null) { Files = Files(), Clock = Clock };
        try
        {
            return ask(host);
        }
        catch (CommandFault e)
        {
            throw new InvalidOperationException(string.Join('\n', e.Lines));
        }
        catch (FileFaultException e)
        {
            // What follows the semicolon names options of the command line.
            throw new InvalidOperationException(e.Message.Split(';')[0]);
        }
    }
}
