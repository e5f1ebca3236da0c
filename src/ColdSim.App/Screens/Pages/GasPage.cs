using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Who drew what gas in a night: a stacked strip over its hours, below it each one's mass and share, and what a mixed gas is made of.</summary>
/// <param name="Report">The run.</param>
/// <param name="Units">Units to print.</param>
/// <param name="Night">Index of the night.</param>
internal sealed record GasPage(RunReport Report, UnitStyle Units, int Night = 0) : IPage
{
    private const int LeastRows = 3;
    private const int Margin = 10;

    // Head, foot, a blank row each side of the strip, its axis and its clock.
    private const int Around = 6;

    public char Key => '8';

    public string Title => "gas";

    public IReadOnlyList<string> Help =>
    [
        "GAS",
        "  Who drew what gas, as gross heat. Each column is the mean",
        "  of its stretch of time; each letter is who takes that part",
        "  of the gas, from the bottom up as in the rows below.",
        .. BlendTable.Applies(Report) ? OfBlend : [],
    ];

    public IReadOnlyList<KeyBinding> Keys => KeyBindings.ChoosingNights;

    /// <summary>The cursor of all pages as it was seen last.</summary>
    public TimeCursor? Seen { get; init; }

    public TimeCursor? Cursor => TimeCursor.InNight(Report, Night, Seen);

    private static IReadOnlyList<string> OfBlend { get; } =
    [
        "  Of a blend, where there is room: its parts by mass, its",
        "  pressure and what is left, and what would stay behind at",
        "  the night's coldest air.",
    ];

    /// <summary>The page, where there is more than one burner on propane alone; else none.</summary>
    public static IEnumerable<IPage> Of(RunReport report, UnitStyle units)
        => WhoDrew.Applies(report) || BlendTable.Applies(report) ? [new GasPage(report, units)] : [];

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        NightReport night = Report.Nights[Night];
        string[] consumers = [.. WhoDrew.Table(night.GasByAppliance, Units)];
        string[] blend = BlendTable.Applies(Report) ? ["", .. BlendTable.Table(Report, [night], Units)] : [];
        string[] table = consumers.Length + blend.Length + Around + LeastRows <= height ? [.. consumers, .. blend] : consumers;
        PageElements.Head(sheet, Report.Scenario.Title, ClockText.NightShort(night));
        MinuteRange span = MinuteRange.Of(Report, Night);

        int rows = Math.Max(LeastRows, height - Around - table.Length);
        IReadOnlyList<string> strip = GasStack.Lines(
            Report.Series, WhoDrew.Places(Report.Scenario.Rig), Math.Max(1, span.From), span.To, width - Margin, rows, Units, Report.Scenario.Start);
        int y = 2;
        foreach (string line in strip.Concat(table.Select(CellText.SingleWidth)).Take(height - 3))
            sheet.Put(0, y++, CellText.Cut(line, width));
        PageElements.Foot(sheet, "", Keys);
        return sheet;
    }

    public IPage Update(PageMessage message) => message is PageMessage.UnitsChanged units
        ? this with { Units = units.Units }
        : this with { Seen = message is PageMessage.Opened { At: { } at } ? at : Cursor, Night = NightChoice.Update(message, Night, Report.Nights.Count) };
}
