using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Who drew what gas in a night: a strip for each over its hours, below them each one's mass and share, and what a mixed gas is made of.</summary>
/// <param name="Report">The run.</param>
/// <param name="Units">Units to print.</param>
/// <param name="Night">Index of the night.</param>
internal sealed record GasPage(RunReport Report, UnitStyle Units, int Night = 0) : IPage
{
    private const int LeastRows = 3;
    private const int LeastStrip = 2;
    private const int MostStrip = 9;

    // For a key and "water heater".
    private const int NameMargin = 19;
    private const int LongestName = 14;

    // Head, foot, a blank row each side of the strips and their clock.
    private const int Around = 5;

    public char Key => '8';

    public string Title => "gas";

    public IReadOnlyList<string> Help =>
    [
        "GAS",
        "  Who took what gas, as gross heat: a strip for each that",
        "  took any, each on an axis of its own, as the mean of the",
        "  hour around. Where there is no room for all, those that",
        "  took most.",
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
        string[] consumers = [.. WhoDrew.Masses(night.GasByAppliance, Units)];
        string[] blend = BlendTable.Applies(Report) ? ["", .. BlendTable.Table(Report, [night], Units)] : [];
        string[] table = consumers.Length + blend.Length + Around + LeastRows <= height ? [.. consumers, .. blend] : consumers;
        PageElements.Head(sheet, Report.Scenario.Title, ClockText.NightShort(night));
        int y = Strips(sheet, night, Math.Max(LeastRows, height - Around - table.Length)) + 1;
        foreach (string line in table.Select(CellText.SingleWidth).Take(Math.Max(0, height - 1 - y)))
            sheet.Put(0, y++, CellText.Cut(line, width));
        PageElements.Foot(sheet, "", Keys);
        return sheet;
    }

    /// <summary>Draws a strip for each that took gas in the night; returns the row after their clock.</summary>
    private int Strips(Sheet sheet, NightReport night, int rows)
    {
        const int top = 2;
        PlotArea plot = PlotArea.Across(sheet.Width, NameMargin);
        if (plot.Columns <= 0)
            return top;
        IReadOnlyList<int> places = WhoDrew.Places(Report.Scenario.Rig);
        int[] shown = [.. Enumerable.Range(0, Math.Min(places.Count, night.GasByAppliance.Count))
            .Where(i => night.GasByAppliance[i].Gas.Kilograms > 0).OrderByDescending(i => night.GasByAppliance[i].Gas.Kilograms)
            .Take(Math.Max(1, rows / LeastStrip)).Order()];
        MinuteRange span = MinuteRange.Of(Report, Night);
        int minute = span.Clamp(Cursor?.Minute ?? span.From), y = top;
        int each = shown.Length == 0 ? 0 : Math.Min(MostStrip, rows / shown.Length);
        foreach (int i in shown)
        {
            double[] mean_W = HourlyMean.Of(Report.Series.Gas_W[places[i]], Report.Series.Count);
            ValueAxis axis = ValueAxis.Around(0, Curve.Over(mean_W, Units.PowerIn, 0, mean_W.Length).High, Units.PowerUnit);
            string name = CellText.Cut(CellText.SingleWidth(night.GasByAppliance[i].Name), LongestName);
            StripDrawing.Draw(sheet, plot, y, each, new(new(name, mean_W, Units.PowerIn, axis, Stroke.Line, CellStyle.Demand) { ShowsMean = true }), span, minute);
            y += each;
        }

        TimeAxis.DrawHours(sheet, plot, y, span, minute, Report.Scenario.Start);
        return y + 1;
    }

    public IPage Update(PageMessage message) => message is PageMessage.UnitsChanged units
        ? this with { Units = units.Units }
        : this with { Seen = message is PageMessage.Opened { At: { } at } ? at : Cursor, Night = NightChoice.Update(message, Night, Report.Nights.Count) };
}
