using System.Globalization;
using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>The nights as a page of the frame.</summary>
/// <param name="View">What is shown.</param>
/// <param name="CoolDown">How long is left if the furnace stopped at the cursor; null while nobody asks.</param>
internal sealed record NightPage(NightView View, Pending<CoolDown>? CoolDown = null) : IPage
{
    private static readonly IReadOnlyList<KeyBinding> KeysOfCurves =
    [
        new("←→", "10 minutes; with Shift or Ctrl 1", new PageMessage.Step(10), "←→ 10 min"),
        new("Tab", "next event of the run; Shift-Tab the one before", new PageMessage.NextEvent(1), "Tab event"),
        .. KeyBindings.OfNights,
        new("↑↓", "an hour back, an hour on", new PageMessage.Rows(1), "↑↓ hour"),
        new("l", "list of the night's events", new PageMessage.ToggleList(), "l list"),
        new("g", "what scale, level and pressure gauge should show now", new PageMessage.ToggleGauges()),
        new("f", "if the furnace stopped now: how long until freezing", new PageMessage.AskHeatStop(), "f if the furnace stopped"),
        new("Home End", "start, end of the night", new PageMessage.Last()),
    ];

    private static readonly IReadOnlyList<KeyBinding> KeysOfGauges =
    [
        new("←→", "10 minutes; with Shift or Ctrl 1", new PageMessage.Step(10), "←→ 10 min"),
        new("↑↓", "an hour back, an hour on", new PageMessage.Rows(1), "↑↓ hour"),
        new("g", "back to the curves", new PageMessage.ToggleGauges()),
        new("Esc", "back to the curves", new PageMessage.Close(), "Esc back"),
        .. KeyBindings.OfNights,
    ];

    private static readonly IReadOnlyList<KeyBinding> KeysOfEvents =
    [
        new("↑↓", "another event", new PageMessage.Rows(1), "↑↓ choose"),
        new("Enter", "put the time cursor on it", new PageMessage.Choose(), "Enter go there"),
        new("Esc", "back to the curves", new PageMessage.Close(), "Esc back"),
        .. KeyBindings.OfNights,
    ];

    public char Key => '1';

    public string Title => "nights";

    public IReadOnlyList<string> Help => NightHelp.Lines(View.Units);

    public IReadOnlyList<KeyBinding> Keys => View.Panel switch
    {
        NightPanel.Events => KeysOfEvents,
        NightPanel.Gauges => KeysOfGauges,
        _ => KeysOfCurves,
    };

    public PageJob? DueJob => CoolDown?.DueJob;

    /// <summary>Whether nothing is open over its curves, so that Esc goes back to where it came from.</summary>
    public bool IsAtRest => View.Panel == NightPanel.Curves && CoolDown is null;

    public TimeCursor Cursor => new(View.Night, View.Minute, View.Time);

    TimeCursor? IPage.Cursor => Cursor;

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        NightLayout layout = NightLayout.For(width, height, CylinderReadout.Rows(View));
        if (!layout.Fits)
        {
            TooSmall(sheet);
            return sheet;
        }

        Header(sheet, View);
        switch (View.Panel)
        {
            case NightPanel.Events:
                Events(sheet, View);
                break;
            case NightPanel.Gauges:
                GaugePanel.Draw(sheet, View, Keys);
                break;
            default:
                View.Picture.Draw(sheet, layout.Plot, NightLayout.FirstStrip, layout.Picture);
                if (layout.ReadoutBeside)
                    Readout.DrawBeside(sheet, sheet.Width - NightLayout.ReadoutWidth, View);
                else
                    Readout.DrawBelow(sheet, layout, View);
                PageElements.Foot(sheet, layout.Picture.StripRows.All(r => r > 0) ? "" : "more curves on a taller screen", Keys);
                break;
        }

        if (CoolDown is not null)
            HeatStopBand.Draw(sheet, layout.ReadoutBeside, View, CoolDown);
        return sheet;
    }

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.AskHeatStop => AskHeatStop(),
        PageMessage.Cancelled => this with { CoolDown = null },
        PageMessage.Completed or PageMessage.Failed => this with { CoolDown = CoolDown?.Update(message) },
        PageMessage.Close when CoolDown is not null => this with { CoolDown = null },
        _ => Moved(View.Update(message)),
    };

    public PageMessage? Click(int x, int y, int width, int height)
    {
        NightLayout layout = NightLayout.For(width, height, CylinderReadout.Rows(View));
        int column = x - layout.Plot.Left;
        return View.Panel == NightPanel.Curves && layout.Fits && column >= 0 && column < layout.Plot.Columns && y <= layout.ClockRow
            ? new PageMessage.PointAt(View.Span.MinuteOf(column, layout.Plot.Columns)) : null;
    }

    // An answer holds only for its instant.
    private NightPage Moved(NightView view)
        => this with { View = view, CoolDown = view.Minute == View.Minute && view.Panel == NightPanel.Curves ? CoolDown : null };

    private NightPage AskHeatStop()
        => View.Panel != NightPanel.Curves || CoolDown is { Failure: "" } ? this
            : View.Report.Scenario.Rig.Furnace is null ? this with { View = View with { Notice = "this rig has no furnace that could stop" } }
            : this with { CoolDown = new(HeatStopBand.CreateJob(View.Report.Scenario, View.Time)) };

    private static void TooSmall(Sheet sheet)
    {
        sheet.Put(0, 0, "terminal too small");
        sheet.Put(0, 1, $"now {sheet.Width}x{sheet.Height}, needs {Sheet.MinWidth}x{Sheet.MinHeight}");
        sheet.Put(0, 2, "q quits");
    }

    private static void Header(Sheet sheet, NightView view)
    {
        string which = Which(view);
        sheet.PutBefore(sheet.Width, 0, which);
        sheet.Put(0, 0, CellText.Cut(CellText.SingleWidth(view.Report.Scenario.Title), sheet.Width - which.Length - 2), CellStyle.Strong);
        sheet.Put(0, 1, CellText.Cut(CellText.Join(VerdictParts(view), ", ", sheet.Width), sheet.Width), CellStyle.Strong);
    }

    private static string Which(NightView view)
    {
        NightReport night = view.Current;
        string last = night.To.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);
        string dates = night.From.Date == night.To.Date ? last
            : $"{night.From.ToString("ddd d MMM", CultureInfo.InvariantCulture)} to {last}";
        return $"night {night.Number} of {view.Report.Nights.Count}, {dates}";
    }

    /// <summary>The verdict first, the rest by weight, for as much of it as there is room.</summary>
    private static IEnumerable<string> VerdictParts(NightView view)
    {
        NightReport night = view.Current;
        UnitStyle units = view.Units;
        if (!view.Report.Ledger.Closes)
            yield return "THE SUMS DO NOT CLOSE: do not trust this run";
        yield return Heading(night);
        if (view.Night == view.Report.Nights.Count - 1 && Stop(view.Report.End) is string stop)
            yield return $"{stop} at {CursorWords.Clock(night.To)}";
        if (night.Verdict != Verdict.GasGone && night.DryAt is DateTimeOffset dry)
            yield return $"gas gone {CursorWords.Clock(dry)}";
        if (night.Verdict != Verdict.BatteryFlat && night.Power is { FlatAt: { } flat, VoltageGone.Minutes: >= 1 })
            yield return $"battery flat {CursorWords.Clock(flat)}";
        if (night.Power is { } power)
            yield return $"battery {power.ChargeLow.Percent.ToString("0", CultureInfo.InvariantCulture)} % at its lowest";
        if (night.ShortTime.Minutes > 0)
            yield return $"short for {CursorWords.Minutes(night.ShortTime.Minutes)} in all";
        if (night.BelowSetPoint.Kelvins > view.Report.Scenario.Criteria.BelowSetPoint.Kelvins)
            yield return $"inside {units.Difference(night.BelowSetPoint.Kelvins)} under its set point";
        if (night.LeftAtDawn is UnitsNet.Mass dawn)
            yield return $"{units.Mass(dawn.Kilograms)} left at dawn";
        else
            yield return $"{units.Mass(night.LeftAtEnd.Kilograms)} left at the end";
        yield return $"{units.Mass(night.GasUsed.Kilograms)} used";
        yield return $"outside low {units.Temperature(night.OutsideLow.Kelvins)}";
        if (night.InsideLow is UnitsNet.Temperature inside)
            yield return $"inside low {units.Temperature(inside.Kelvins)}";
    }

    private static string Heading(NightReport night) => night.Verdict == Verdict.Holds
        ? night.ShortTime.Minutes > 0 ? "HOLDS" : "HOLDS: all gas asked for is given"
        : $"{VerdictWords.Heading(night.Verdict)} {CursorWords.Clock(night.FirstFailure ?? night.From)}";

    private static string? Stop(RunEnd end) => end switch
    {
        RunEnd.WeatherEnded => "weather ends",
        RunEnd.LiquidFull => "STOPS: cylinder liquid full",
        RunEnd.ReliefPressure => "STOPS: relief valve would open",
        _ => null,
    };

    /// <summary>The night's events as a list to choose from.</summary>
    private static void Events(Sheet sheet, NightView view)
    {
        IReadOnlyList<EventMark> marks = view.Marks;
        int top = 4, rows = sheet.Height - top - 2;
        sheet.Put(0, 3, $"  {"when",-9}{"inside",9}{"liquid",9}{"cylinder",10}{"left",9}  what");
        if (marks.Count == 0)
            sheet.Put(0, top, "  no event this night");
        int first = Math.Clamp(view.Row - rows / 2, 0, Math.Max(0, marks.Count - rows));
        for (int i = first; i < Math.Min(marks.Count, first + rows); i++)
            sheet.Put(0, top + i - first, CellText.Cut(EventLine(marks[i], i == view.Row, view), sheet.Width), i == view.Row ? CellStyle.Pointer : CellStyle.Plain);
        if (marks.Count > rows)
            sheet.Put(0, sheet.Height - 2, $"  {view.Row + 1} of {marks.Count}");
        PageElements.Foot(sheet, "", KeysOfEvents);
    }

    private static string EventLine(EventMark mark, bool chosen, NightView view)
    {
        string inside = double.IsNaN(mark.Event.Inside_K) ? "none" : view.Units.Temperature(mark.Event.Inside_K);
        return $"{(chosen ? '>' : ' ')} {CursorWords.Clock(mark.Event.Time),-9}{inside,9}"
            + $"{view.Units.Temperature(mark.Event.Liquid_K),9}{view.Units.Pressure(mark.Event.CylinderPressure_Pa),10}"
            + $"{view.Units.Mass(mark.Event.Left_kg),9}  {CursorWords.Sentence(mark, view.Units)}";
    }
}
