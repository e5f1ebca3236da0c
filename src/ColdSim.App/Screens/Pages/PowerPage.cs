using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>The 12 V side: a row a night with what ran out first and who drew what, and the chosen night in words and figures.</summary>
/// <param name="Report">A run of a rig with a battery.</param>
/// <param name="Units">The units to print.</param>
/// <param name="Night">Index of the night.</param>
internal sealed record PowerPage(RunReport Report, UnitStyle Units, int Night = 0) : IPage
{
    private const int Top = 2;

    // With fewer nights in sight no row is left blank.
    private const int NightsBeforeBlanks = 3;

    public char Key => '9';

    public string Title => "power";

    public IReadOnlyList<string> Help { get; } =
    [
        "POWER",
        "  How many watt-hours the 12 V side drew in each night, the",
        "  lowest charge, how long voltage was gone, and who drew",
        "  them. Given is what solar, shore and generator brought to",
        "  the battery's side.",
        "  Fails first is the cause that came first in that night:",
        "  battery, gas, furnace or water.",
        "  Voltage goes while some charge is left: how much, decide",
        "  the battery's kind and how cold it is. Where the screen is",
        "  tall enough: charge over the night, and what is drawn and",
        "  comes in; the pointer is where charge is lowest.",
    ];

    public IReadOnlyList<KeyBinding> Keys => KeyBindings.ChoosingNights;

    /// <summary>The cursor of all pages as it was seen last.</summary>
    public TimeCursor? Seen { get; init; }

    public TimeCursor? Cursor => TimeCursor.InNight(Report, Night, Seen);

    /// <summary>The page, where the rig has a battery; else none.</summary>
    public static IEnumerable<IPage> Of(RunReport report, UnitStyle units) => report.Scenario.Rig.Power is not null ? [new PowerPage(report, units)] : [];

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        NightReport night = Report.Nights[Night];
        string[] words = [.. PowerSheet.Words(night).SelectMany(l => Wrap.Lines(l, rest: "  ", width: Math.Max(20, width)))];
        string[] table = [.. PowerSheet.Table(night.Power!)];
        PageElements.Head(sheet, Report.Scenario.Title, ClockText.NightShort(night));

        // Head, the row below it, the nights' heading and the foot.
        int room = height - 4 - words.Length - table.Length;
        bool blanks = room - 2 >= Math.Min(Report.Nights.Count, NightsBeforeBlanks);
        int rows = Math.Clamp(blanks ? room - 2 : room, 1, Report.Nights.Count);
        IReadOnlyList<string> nights = PowerSheet.Nights(Report.Nights, Night, PageElements.FirstRow(Night, rows, Report.Nights.Count), rows);
        string[] between = blanks ? [""] : [];
        string[] all = [.. nights, .. between, .. words, .. between, .. table];
        int shown = Math.Clamp(height - Top - 1, 0, all.Length);
        for (int i = 0; i < shown; i++)
            sheet.Put(0, Top + i, CellText.Cut(CellText.SingleWidth(all[i]), width), all[i].StartsWith('>') ? CellStyle.Strong : CellStyle.Plain);
        PowerSheet.DrawCurves(sheet, Report, Night, Top + shown, height - 1 - Top - shown);
        PageElements.Foot(sheet, shown < all.Length ? "more on a taller screen" : "", Keys);
        return sheet;
    }

    public IPage Update(PageMessage message) => message is PageMessage.UnitsChanged units
        ? this with { Units = units.Units }
        : this with { Seen = message is PageMessage.Opened { At: { } at } ? at : Cursor, Night = NightChoice.Update(message, Night, Report.Nights.Count) };
}
