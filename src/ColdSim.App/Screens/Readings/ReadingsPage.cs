using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Screens.Readings;

/// <summary>What of the readings is on the screen.</summary>
internal enum ReadingsPart
{
    Log,
    Entry,
    Fit,
}

/// <summary>Readings of the cylinder: a form to write one down, the log beside the simulator, and the fit.</summary>
internal sealed record ReadingsPage(Scenario Scenario, string? File, UnitStyle Units, TimeProvider Clock) : IPage
{
    private const int RowsOfAPage = 10;

    public char Key => '6';

    string IPage.Title => "readings";

    public ReadingsPart Part { get; init; }

    public EntryForm Form { get; init; } = new();

    /// <summary>The log; null until it is read.</summary>
    public ReadingsBook? Book { get; init; }

    /// <summary>The fit; null until it is asked for.</summary>
    public ReadingsFit? Fit { get; init; }

    /// <summary>Whether the log is shown beside the fitted coach.</summary>
    public bool WithFit { get; init; }

    /// <summary>First row of the log or the fit that is shown.</summary>
    public int Row { get; init; }

    /// <summary>An answer to what was last done.</summary>
    public string Notice { get; init; } = "";

    public PageWork? Wanted { get; init; }

    /// <summary>Whether a reading is being written to the disk, which nobody stops.</summary>
    public bool Writing { get; init; }

    public bool TakesText => Part == ReadingsPart.Entry;

    public DateTimeOffset Now => LogEntry.Now(Clock, Scenario.Start.Offset);

    public IReadOnlyList<string> Help { get; } =
    [
        "READINGS",
        "  Enter                 on the log: write a new reading",
        "  Left, Right           the log, the fit",
        "  Enter                 on the fit: make it; Esc stops it",
        "  Space                 predict with the fitted coach, or",
        "                        with the scenario's",
        "  Up, Down, PgUp, PgDn  scroll",
        "  In the form letters are text: Tab or Up, Down go from",
        "  line to line, Left, Right choose, Enter writes it down,",
        "  Esc goes to the log, F1 to F7 to the other pages.",
        "  holds      what a reading means; ± one standard",
        "             uncertainty",
        "  predicted  what the simulator makes of the reading before",
        "  times      the difference in its standard errors; in the",
        "             strip, o where it stands, > or < beyond it",
        "  F W A      far off; looks wrong; after a wrong one",
    ];

    public static ReadingsPage Of(Scenario scenario, string? file, UnitStyle units, TimeProvider clock)
    {
        ReadingsPage page = new(scenario, file, units, clock);
        return file is null ? page : page.Loading(inPlace: false);
    }

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        ReadingsSheet.Draw(sheet, this);
        return sheet;
    }

    public IPage After(PageMessage message) => message switch
    {
        PageMessage.UnitsAre units => this with { Units = units.Units },
        PageMessage.Done { Figures: ReadingsBook book } => Loaded(book),
        PageMessage.Done { Figures: ReadingsFit fit } => this with { Fit = fit, Wanted = null, WithFit = fit.Prediction is not null, Notice = "" },
        PageMessage.Done { Figures: Written written }
            => (this with { Form = Form.Emptied(), Notice = written.Words, Writing = false, Fit = null, WithFit = false }).Loading(inPlace: true),
        PageMessage.Failed failed => this with { Wanted = null, Writing = false, Notice = failed.Why },
        PageMessage.Stopped => Writing ? this : this with { Wanted = null, Notice = "Stopped." },
        PageMessage.Sized or PageMessage.Opened => this,
        _ when File is null => this,
        _ => Part == ReadingsPart.Entry ? OnForm(message) : OnList(message),
    };

    /// <summary>The log beside the simulator as it is to be shown.</summary>
    public LogPrediction? Shown => WithFit && Fit?.Prediction is { } fitted ? fitted : Book?.Prediction;

    private ReadingsPage Loaded(ReadingsBook book)
    {
        string tare = Form.Tare.Length > 0 || book.Log.Rows.LastOrDefault(r => r.Reading.Reading is WeightReading) is not { } weighed ? Form.Tare
            : Units.Mass(((WeightReading)weighed.Reading.Reading).Tare_kg);
        return this with { Book = book, Wanted = null, Form = Form with { Tare = tare } };
    }

    private ReadingsPage Loading(bool inPlace)
    {
        (string file, Scenario scenario) = (File!, Scenario);
        return this with
        {
            Wanted = new PageWork("Reading the log and running the simulator from reading to reading", (finished, cancel) => ReadingsBook.Read(file, scenario, finished, cancel))
            {
                Parts = "stretches",
                InPlace = inPlace,
            },
        };
    }

    private ReadingsPage OnForm(PageMessage message)
    {
        EntryForm form = message switch
        {
            PageMessage.Typed typed => Form.Typed(typed.Character, Scenario.Rig),
            PageMessage.Erase => Form.Erased(),
            PageMessage.NextEvent next => Form.Next(next.Direction, Scenario.Rig),
            PageMessage.Rows rows => Form.Next(Math.Sign(rows.Count), Scenario.Rig),
            PageMessage.Step step => Form.Chosen(Math.Sign(step.Minutes), Scenario.Rig),
            _ => Form,
        };
        return message switch
        {
            PageMessage.Close => this with { Part = ReadingsPart.Log, Row = 0, Notice = "" },
            PageMessage.Choose => Writing ? this : Write(),
            _ => form == Form ? this : this with { Form = form, Notice = "" },
        };
    }

    private ReadingsPage Write()
    {
        if (Form.Reading.Trim().Length == 0)
            return this with { Notice = $"Nothing to write yet: type what was read, such as {Form.Sample}." };
        (LogEntry? entry, _, _) = Form.Read(Scenario.Rig, Now);
        if (entry is null)
            return this with { Notice = "Nothing was written." };
        (string file, Scenario scenario) = (File!, Scenario);
        return this with
        {
            Notice = "",
            Writing = true,
            Wanted = new PageWork("Writing the reading down", (_, _) =>
            {
                string path = LogFile.PathOf(file);
                LogFile.Append(path, [entry]);
                return new Written($"Written to {Path.GetFileName(path)}: {LogText.Entry(entry, scenario.Rig, UnitStyle.Us)}.");
            })
            {
                InPlace = true,
            },
        };
    }

    private ReadingsPage OnList(PageMessage message)
    {
        ReadingsPage At(int row) => this with { Row = Math.Clamp(row, 0, Math.Max(0, ReadingsSheet.Lines(this, ReadingsSheet.Wide).Count - 1)) };
        return message switch
        {
            PageMessage.Step => this with { Part = Part == ReadingsPart.Log ? ReadingsPart.Fit : ReadingsPart.Log, Row = 0, Notice = "" },
            PageMessage.Choose when Part == ReadingsPart.Log => Book is null ? Loading(inPlace: false) : this with { Part = ReadingsPart.Entry, Notice = "" },
            PageMessage.Choose => Wanted is null ? Fitting() : this,
            PageMessage.Mark when Fit?.Prediction is not null => this with { WithFit = !WithFit },
            PageMessage.Close => this with { Part = ReadingsPart.Log, Row = 0, Notice = "" },
            PageMessage.Rows rows => At(Row + rows.Count),
            PageMessage.Pages pages => At(Row + pages.Count * RowsOfAPage),
            PageMessage.First => At(0),
            PageMessage.Last => At(int.MaxValue),
            _ => this,
        };
    }

    private ReadingsPage Fitting()
    {
        if (Book is not { } book)
            return Loading(inPlace: false);
        Scenario scenario = Scenario;
        return this with
        {
            Notice = "",
            Wanted = new PageWork("Fitting the coach to the readings", (finished, cancel) => ReadingsFit.Of(scenario, book.Log, finished, cancel))
            {
                Parts = "runs through the log",
            },
        };
    }
}
