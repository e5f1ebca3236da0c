using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Files.Disk;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Screens.Readings;

/// <summary>The part of the page that is shown.</summary>
internal enum ReadingsTab
{
    Log,
    Entry,
    Fit,
}

/// <summary>Readings of the cylinder: a form to write one down, the log with its predictions, and the fit.</summary>
internal sealed record ReadingsPage(Scenario Scenario, string? File, UnitStyle Units, TimeProvider Clock) : IPage
{
    private const int RowsOfAPage = 10;

    public char Key => '6';

    string IPage.Title => "readings";

    /// <summary>The files that were read for the run, which the log may not be.</summary>
    public FilesRead? Reads { get; init; }

    /// <summary>Writes a fit into the scenario and says where; null where the scenario has no file.</summary>
    public Func<FitReport, string>? TakeOver { get; init; }

    public ReadingsTab Tab { get; init; }

    public EntryForm Form { get; init; } = new();

    /// <summary>The log; null until it is read.</summary>
    public PredictedLog? Log { get; init; }

    /// <summary>The fit; null until it is asked for.</summary>
    public ReadingsFit? Fit { get; init; }

    /// <summary>Whether the predictions are those of the fitted coach.</summary>
    public bool WithFit { get; init; }

    /// <summary>First row of the log or the fit that is shown.</summary>
    public int Row { get; init; }

    /// <summary>The answer to the last key.</summary>
    public string Notice { get; init; } = "";

    public PageJob? DueJob { get; init; }

    /// <summary>Whether the reading in the form looks wrong, which was said; another Enter writes it down all the same.</summary>
    public bool IsDoubted { get; init; }

    /// <summary>Whether a reading is being written to the disk, which cannot be cancelled.</summary>
    public bool IsWriting { get; init; }

    public bool TakesText => Tab == ReadingsTab.Entry;

    public DateTimeOffset Now => LogEntry.Now(Clock, Scenario.Start.Offset);

    public IReadOnlyList<string> Help { get; } =
    [
        "READINGS",
        "  holds      what a reading means; ± one standard",
        "             uncertainty",
        "  predicted  what the simulator makes of the reading before",
        "  times      the difference in its standard errors; in the",
        "             strip, o where it is, > or < beyond it",
        "  F W A      far off; looks wrong; after a wrong one",
    ];

    public IReadOnlyList<KeyBinding> Keys => File is null ? [] : Tab == ReadingsTab.Entry ? KeysOfForm : Tab == ReadingsTab.Log ? [.. KeysOfLog, .. KeysOfPrediction]
        :
        [
            new("Enter", Fit is null ? "fit the coach to the readings" : "fit again", new PageMessage.Choose(), Fit is null ? "Enter fit" : "Enter fit again")
            {
                Cost = "runs it through the log many times, some seconds; Esc stops it",
            },
            new("←→", "the log", new PageMessage.Step(10), "← log"),
            .. Fit?.Report is null || TakeOver is null ? Array.Empty<KeyBinding>()
                : [new("t", "take the fit over into the scenario", new PageMessage.TakeOver(), "t take the fit over")],
            .. KeysOfPrediction,
        ];

    private static readonly IReadOnlyList<KeyBinding> KeysOfForm =
    [
        new("Enter", "write it down", new PageMessage.Choose(), "Enter write it down"),
        new("Esc", "to the log", new PageMessage.Close(), "Esc to the log"),
        new("↑↓", "another line, as Tab and Shift-Tab", new PageMessage.Rows(1), "Tab ↑↓ line"),
        new("←→", "choose, where there is a choice", new PageMessage.Step(10), "←→ choose"),
    ];

    private static readonly IReadOnlyList<KeyBinding> KeysOfLog =
    [
        new("Enter", "write a new reading", new PageMessage.Choose(), "Enter new reading"),
        new("←→", "the fit", new PageMessage.Step(10), "→ fit"),
    ];

    private IReadOnlyList<KeyBinding> KeysOfPrediction =>
    [
        .. Fit?.Prediction is null ? Array.Empty<KeyBinding>() :
        [
            new(
                "Space", WithFit ? "predict with the scenario's coach" : "predict with the fitted coach", new PageMessage.ToggleMark(),
                WithFit ? "Space predict by the scenario" : "Space predict by the fit"),
        ],
        new("↑↓", "scroll", new PageMessage.Rows(1), "↑↓ scroll"),
    ];

    public static ReadingsPage Of(Scenario scenario, string? file, UnitStyle units, TimeProvider clock)
    {
        ReadingsPage page = new(scenario, file, units, clock);
        return file is null ? page : page.Loading(keepVisible: false);
    }

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        ReadingsSheet.Draw(sheet, this);
        return sheet;
    }

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.UnitsChanged units => this with { Units = units.Units },
        PageMessage.Completed { Result: PredictedLog log } => Loaded(log),
        PageMessage.Completed { Result: ReadingsFit fit } => this with { Fit = fit, DueJob = null, WithFit = fit.Prediction is not null, Notice = "" },
        PageMessage.Completed { Result: ReadingWritten written }
            => (this with { Form = Form.Cleared(), Notice = written.Notice, IsWriting = false, Fit = null, WithFit = false }).Loading(keepVisible: true),
        PageMessage.Completed { Result: FitTaken taken } => this with { DueJob = null, IsWriting = false, Notice = taken.Notice },
        PageMessage.Failed failed => this with { DueJob = null, IsWriting = false, Notice = failed.Reason },
        PageMessage.Cancelled => IsWriting ? this : this with { DueJob = null, Notice = "Stopped." },
        PageMessage.Resized or PageMessage.Opened => this,
        _ when File is null => this,
        _ => Tab == ReadingsTab.Entry ? OnForm(message) : OnList(message),
    };

    /// <summary>The predictions that are shown.</summary>
    public LogPrediction? Shown => WithFit && Fit?.Prediction is { } fitted ? fitted : Log?.Prediction;

    private ReadingsPage Loaded(PredictedLog log)
    {
        string tare = Form.Tare.Length > 0 || log.Use.Rows.LastOrDefault(r => r.Reading.Reading is WeightReading) is not { } weighed ? Form.Tare
            : Units.Mass(((WeightReading)weighed.Reading.Reading).Tare_kg);
        return this with { Log = log, DueJob = null, Form = Form with { Tare = tare } };
    }

    private ReadingsPage Loading(bool keepVisible)
    {
        (string file, Scenario scenario, UnitStyle units) = (File!, Scenario, Units);
        return this with
        {
            DueJob = new PageJob("Reading the log and running the simulator from reading to reading", (finished, cancel) => PredictedLog.Read(file, scenario, units, finished, cancel))
            {
                StepName = "stretches",
                KeepsPageVisible = keepVisible,
            },
        };
    }

    private ReadingsPage OnForm(PageMessage message)
    {
        EntryForm form = message switch
        {
            PageMessage.Typed typed => Form.Typed(typed.Character, Scenario.Rig),
            PageMessage.Backspace => Form.WithoutLast(),
            PageMessage.NextEvent next => Form.Next(next.Direction, Scenario.Rig),
            PageMessage.Rows rows => Form.Next(Math.Sign(rows.Count), Scenario.Rig),
            PageMessage.Step step => Form.Chosen(Math.Sign(step.Minutes), Scenario.Rig),
            _ => Form,
        };
        return message switch
        {
            PageMessage.Close => this with { Tab = ReadingsTab.Log, Row = 0, Notice = "", IsDoubted = false },
            PageMessage.Choose => IsWriting ? this : Write(),
            _ => form == Form ? this : this with { Form = form, Notice = "", IsDoubted = false },
        };
    }

    private ReadingsPage Write()
    {
        if (Form.Reading.Trim().Length == 0)
            return this with { Notice = $"Nothing to write yet: type what was read, such as {Form.Sample}." };
        (LogEntry? entry, _, _) = Form.Read(Scenario.Rig, Now);
        if (entry is null)
            return this with { Notice = "Nothing was written." };
        if (Doubts(entry) is { } doubts)
        {
            if (!IsDoubted)
                return this with { IsDoubted = true, Notice = $"This reading looks wrong: {doubts}. Enter again writes it down all the same, marked as checked." };
            entry = entry with { Details = [.. entry.Details, new LogDetail(LogMethods.Checked, "")] };
        }

        (string file, Scenario scenario, FilesRead? reads) = (File!, Scenario, Reads);
        return this with
        {
            Notice = "",
            IsDoubted = false,
            IsWriting = true,
            DueJob = new PageJob("Writing the reading down", (_, _) =>
            {
                string path = LogFile.PathOf(file);
                LogFile.Append(path, [entry], reads);
                return new ReadingWritten($"Written to {Path.GetFileName(path)}: {LogText.Entry(entry, scenario.Rig, UnitStyle.Us)}.");
            })
            {
                KeepsPageVisible = true,
            },
        };
    }

    private string? Doubts(LogEntry entry)
    {
        if (MeasuredMethod.Of(entry.Method) is not null)
            return null;
        IReadOnlyList<InconsistentReading> doubts = LogConsistency.Doubts(
            EntryReader.Read(entry, Scenario.Rig).Reading!, [.. (Log?.Use.Rows ?? []).Select(r => r.Reading)], Scenario, Clock.GetUtcNow());
        return doubts.Count == 0 ? null : string.Join("; ", doubts.Select(d => InconsistencyWords.Of(d, Scenario, Units)));
    }

    private ReadingsPage OnList(PageMessage message)
    {
        ReadingsPage At(int row) => this with { Row = Math.Clamp(row, 0, Math.Max(0, ReadingsSheet.Lines(this, ReadingsSheet.Wide).Count - 1)) };
        return message switch
        {
            PageMessage.Step => this with { Tab = Tab == ReadingsTab.Log ? ReadingsTab.Fit : ReadingsTab.Log, Row = 0, Notice = "" },
            PageMessage.Choose when Tab == ReadingsTab.Log => Log is null ? Loading(keepVisible: false) : this with { Tab = ReadingsTab.Entry, Notice = "" },
            PageMessage.Choose => DueJob is null ? StartFit() : this,
            PageMessage.ToggleMark when Fit?.Prediction is not null => this with { WithFit = !WithFit },
            PageMessage.TakeOver when Fit?.Report is { } fit && TakeOver is { } take && DueJob is null => Taking(fit, take),
            PageMessage.Close => this with { Tab = ReadingsTab.Log, Row = 0, Notice = "" },
            PageMessage.Rows rows => At(Row + rows.Count),
            PageMessage.Pages pages => At(Row + pages.Count * RowsOfAPage),
            PageMessage.First => At(0),
            PageMessage.Last => At(int.MaxValue),
            _ => this,
        };
    }

    /// <summary>The form, the part that is open and what was just said are kept.</summary>
    public IPage After(IPage before) => before is ReadingsPage was
        ? this with { Tab = was.Tab, Form = was.Form, Notice = was.Notice, DueJob = DueJob is null ? null : Loading(keepVisible: true).DueJob } : this;

    private ReadingsPage Taking(FitReport fit, Func<FitReport, string> take) => this with
    {
        Notice = "",
        IsWriting = true,
        DueJob = new PageJob("Writing the fit into the scenario", (_, _) => new FitTaken(take(fit))) { KeepsPageVisible = true },
    };

    private ReadingsPage StartFit()
    {
        if (Log is not { } log)
            return Loading(keepVisible: false);
        Scenario scenario = Scenario with { Measurements = [.. log.Measured.Rows.Select(r => r.Measurement)] };
        return this with
        {
            Notice = "",
            DueJob = new PageJob("Fitting the coach to the readings", (finished, cancel) => ReadingsFit.Of(scenario, log.Use, finished, cancel))
            {
                StepName = "runs through the log",
            },
        };
    }
}
