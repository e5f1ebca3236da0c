using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Night;

/// <summary>The cursor's time and the event nearest to it, in words.</summary>
internal static class CursorWords
{
    public static string Time(NightView view) => ClockText.WeekdayDateClock(view.Time);

    public static string Clock(DateTimeOffset time) => ClockText.ShortDayClock(time);

    /// <summary>The answer to the last key if there is one, else the nearest event of the night.</summary>
    public static string NearestEvent(NightView view)
    {
        if (view.Notice.Length > 0)
            return view.Notice;
        EventMark? nearest = view.Marks
            .OrderBy(m => Math.Abs(m.Minute - view.Minute)).ThenByDescending(m => m.Words.Rank).FirstOrDefault();
        return nearest is null ? "no event this night"
            : $"{ClockText.Clock(nearest.Event.Time)} {Sentence(nearest, view.Units)}, {Away(nearest.Minute - view.Minute)}";
    }

    /// <summary>What happened, and to which pipe or tank where it is one.</summary>
    public static string Sentence(EventMark mark, UnitStyle units)
    {
        string sentence = units.InOwn(mark.Words.Sentence);
        return mark.Event.Node is { } node ? $"{sentence}: {CellText.SingleWidth(node)}" : sentence;
    }

    /// <summary>A number of minutes in hours and minutes.</summary>
    public static string Minutes(double minutes)
    {
        int whole = (int)Math.Round(minutes);
        return whole == 0 && minutes > 0 ? "under 1 min" : whole < 60 ? $"{whole} min"
            : whole % 60 == 0 ? $"{whole / 60} h" : $"{whole / 60} h {whole % 60} min";
    }

    private static string Away(int minutes) => minutes == 0 ? "now"
        : minutes < 0 ? $"{Minutes(-minutes)} before" : $"{Minutes(minutes)} after";
}
