using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>Who drew what gas in a night: a stacked strip over its hours, and below it each one's mass and share.</summary>
/// <param name="Report">The run.</param>
/// <param name="Units">To print.</param>
/// <param name="Night">Index of the night.</param>
internal sealed record GasPage(RunReport Report, UnitStyle Units, int Night = 0) : IPage
{
    private const int LeastRows = 3;
    private const int Margin = 10;

    public char Key => '8';

    public string Title => "gas";

    public IReadOnlyList<string> Help { get; } =
    [
        "GAS",
        "  Who drew what gas, as gross heat. Each column is the mean",
        "  of its stretch of time; each letter is who takes that part",
        "  of the gas, from the bottom up as in the rows below.",
        "  n, p                  next, previous night",
        "  Up, Down              the same",
    ];

    /// <summary>The page, where there is more to tell than one burner; else none.</summary>
    public static IEnumerable<IPage> Of(RunReport report, UnitStyle units) => WhoDrew.Applies(report) ? [new GasPage(report, units)] : [];

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        NightReport night = Report.Nights[Night];
        string[] table = [.. WhoDrew.Table(night.GasByAppliance, Units)];
        PageParts.Head(sheet, Report.Scenario.Title, ClockText.NightShort(night));
        NightSpan span = NightSpan.Of(Report, Night);

        // Head, foot, a blank row each side of the strip, its axis and its clock.
        int rows = Math.Max(LeastRows, height - 6 - table.Length);
        IReadOnlyList<string> strip = GasStack.Lines(
            Report.Series, WhoDrew.Places(Report.Scenario.Rig), Math.Max(1, span.From), span.To, width - Margin, rows, Units, Report.Scenario.Start);
        int y = 2;
        foreach (string line in strip.Concat(table.Select(Fitting.OneCellEach)).Take(height - 3))
            sheet.Put(0, y++, Fitting.Cut(line, width));
        PageParts.Foot(sheet, "n p night");
        return sheet;
    }

    public IPage After(PageMessage message) => message is PageMessage.UnitsAre units
        ? this with { Units = units.Units }
        : this with { Night = NightChoice.After(message, Night, Report.Nights.Count) };
}
