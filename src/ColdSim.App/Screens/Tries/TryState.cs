using System.Globalization;
using System.Text;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Tries;

/// <summary>What is being tried: the settings, those before them, the run of the last that came through, and what is under way.</summary>
/// <param name="Bench">The scenario on the bench.</param>
/// <param name="Shown">The last run that came through.</param>
internal sealed record TryState(Workbench Bench, TriedRun Shown)
{
    private const int LongestEntry = 12;

    /// <summary>Nothing tried.</summary>
    public static TryState Of(Workbench bench) => new(bench, new TriedRun(TrySettings.None, bench.AsItIs));

    /// <summary>What is tried.</summary>
    public TrySettings Now { get; init; } = TrySettings.None;

    /// <summary>What was tried before, the latest last.</summary>
    public IReadOnlyList<TrySettings> Before { get; init; } = [];

    /// <summary>The run of what is tried, until it has come through.</summary>
    public Pending<TriedRun>? Run { get; init; }

    /// <summary>The search for the least that holds; null while there is none.</summary>
    public Pending<FoundLeast>? Search { get; init; }

    /// <summary>Whether the list takes the keys.</summary>
    public bool IsOpen { get; init; }

    /// <summary>The chosen row of the list.</summary>
    public int Row { get; init; }

    /// <summary>A value as far as it is typed.</summary>
    public string Entry { get; init; } = "";

    /// <summary>An answer to the last key; empty for none.</summary>
    public string Notice { get; init; } = "";

    /// <summary>The night that is looked at.</summary>
    public int Night { get; init; }

    /// <summary>The units of the page.</summary>
    public UnitStyle Units { get; init; } = UnitStyle.Us;

    /// <summary>Where adjustments are read.</summary>
    public TryPlace Place => Bench.Place(Now, Night, Units);

    /// <summary>The chosen adjustment.</summary>
    public Adjustment Chosen => Bench.Adjustments[Row];

    /// <summary>Whether the run of what is tried is still under way.</summary>
    public bool IsWorking => Run?.DueJob is not null;

    /// <summary>What has to be done; null for nothing.</summary>
    public PageJob? DueJob => Run?.DueJob ?? Search?.DueJob;

    /// <summary>What differs, in words; empty where nothing is tried.</summary>
    public string Difference => Shown.Settings.IsNone || Shown.Report is not { } report ? "" : TryDifference.Words(Bench.AsItIs, report, Units);

    /// <summary>The state after a message.</summary>
    public TryState Update(PageMessage message) => message switch
    {
        PageMessage.Completed { Result: TriedRun run } => Arrived(run),
        PageMessage.Completed { Result: FoundLeast found } => Found(found),
        PageMessage.Failed failed => this with { Run = null, Search = null, Now = Shown.Settings, Notice = failed.Reason },
        PageMessage.Cancelled => this with { Search = null, Notice = "stopped" },
        PageMessage.UndoTry => Before.Count == 0 ? this with { Notice = "nothing to undo" } : Trying(Before[^1]) with { Before = [.. Before.SkipLast(1)] },
        PageMessage.ResetTry => Now.IsNone ? this : Trying(TrySettings.None),
        PageMessage.ToggleTry => this with { IsOpen = !IsOpen, Entry = "", Notice = "" },
        _ when !IsOpen => this,
        PageMessage.Close => Entry.Length > 0 ? this with { Entry = "" } : this with { IsOpen = false, Notice = "" },
        PageMessage.Rows rows => At(Row + rows.Count),
        PageMessage.Pages pages => At(Row + 10 * pages.Count),
        PageMessage.First => At(0),
        PageMessage.Last => At(int.MaxValue),
        PageMessage.Step step => Turned(Math.Sign(step.Minutes), Math.Abs(step.Minutes) == 1 ? 10 : 1),
        PageMessage.Typed typed => Typed(typed.Character),
        PageMessage.Backspace => this with { Entry = Entry.Length > 0 ? Entry[..^1] : "" },
        PageMessage.Choose when Entry.Length > 0 => Entered(),
        PageMessage.Choose => this with { Search = new(LeastThatHolds.Job(Bench, Chosen, Now, Night, Units)), Notice = "" },
        _ => this,
    };

    /// <summary>Other settings, whose run begins; no settings are shown at once.</summary>
    public TryState Trying(TrySettings settings)
    {
        TryState trying = this with { Now = settings, Before = [.. Before, Now], Entry = "", Notice = "", Search = null };
        return settings.IsNone ? trying with { Run = null, Shown = new(settings, Bench.AsItIs) } : trying with { Run = new(Job(settings)) };
    }

    private PageJob Job(TrySettings settings)
    {
        (Workbench bench, int night, UnitStyle units) = (Bench, Night, Units);
        return new("Running what is tried", (_, cancel) => bench.Run(settings, night, units, cancel)) { KeepsPageVisible = true, IsUnasked = true };
    }

    // What cannot be run is taken back, and says why.
    private TryState Arrived(TriedRun run) => run.Settings != Now ? this
        : run.Report is null ? this with { Run = null, Now = Shown.Settings, Before = [.. Before.SkipLast(1)], Notice = run.Refusal }
        : this with { Run = null, Shown = run };

    private TryState Found(FoundLeast found)
        => (found.Value is { } value ? Trying(Now.With(found.Id, value)) : this) with { Search = null, Notice = found.Words };

    private TryState At(int row) => this with { Row = Math.Clamp(row, 0, Bench.Adjustments.Count - 1), Entry = "", Notice = "" };

    private TryState Turned(int direction, int steps)
    {
        double? value = null;
        TrySettings settings = Now;
        for (int i = 0; i < steps && Chosen.Next(Bench.Place(settings, Night, Units), direction) is { } next; i++)
        {
            value = next;
            settings = Now.With(Chosen.Id, next);
        }

        return value is not null ? Trying(settings)
            : this with { Notice = Chosen.Value(Place) is null ? $"{Chosen.Name}: {Chosen.WhyOff(Place)}" : $"{Chosen.Name}: no {(direction > 0 ? "more" : "less")}" };
    }

    private TryState Typed(Rune rune) => Entry.Length >= LongestEntry ? this : this with { Entry = Entry + rune, Notice = "" };

    private TryState Entered()
    {
        string number = new([.. Entry.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or '-' or '+')]);
        if (Chosen.Value(Place) is null && Chosen.TurnedOn(Place) is null)
            return this with { Entry = "", Notice = $"{Chosen.Name}: {Chosen.WhyOff(Place)}" };
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double shown))
            return this with { Entry = "", Notice = $"'{Entry}' is no number" };
        ValueGrid grid = Chosen.Grid(Place);
        return shown < grid.Low || shown > grid.High
            ? this with { Entry = "", Notice = $"accepted: {UnitStyle.Number(grid.Low, 0)} to {UnitStyle.Number(grid.High, 0)}" }
            : Trying(Now.With(Chosen.Id, grid.Within(shown)));
    }
}
