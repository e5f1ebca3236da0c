using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>The answer to "if the furnace stopped now", over the lower rows of the nights.</summary>
internal static class HeatStopBand
{
    // The header, and two rows of the curves.
    private const int LeastAbove = 4;

    /// <param name="sheet">The sheet of the nights.</param>
    /// <param name="readoutBeside">Whether the readout is beside the curves; it is not covered, with its cautions.</param>
    /// <param name="view">What they show.</param>
    /// <param name="answer">The answer, or why there is none yet.</param>
    public static void Draw(Sheet sheet, bool readoutBeside, NightView view, Pending<CoolDown> answer)
    {
        int width = readoutBeside ? sheet.Width - NightLayout.ReadoutWidth : sheet.Width;
        IReadOnlyList<string> lines = Wrap.Lines(CellText.SingleWidth(Text(view, answer)), width);
        int rows = Math.Min(lines.Count, sheet.Height - 2 - LeastAbove), top = sheet.Height - 1 - rows;
        sheet.Put(0, top - 1, "── if the furnace stopped now ".PadRight(width, '─'), CellStyle.Strong);
        for (int i = 0; i < rows; i++)
        {
            string line = i == rows - 1 && rows < lines.Count ? lines[i] + " …" : lines[i];
            sheet.Put(0, top + i, CellText.Cut(line, width).PadRight(width));
        }

        sheet.Put(0, sheet.Height - 1, new string(' ', sheet.Width));
        sheet.Put(0, sheet.Height - 1, CellText.Join([answer.DueJob is null ? "Esc close" : "Esc stop", "? keys", "q quit", "←→ closes it and moves on"], "  ", sheet.Width));
    }

    private static string Text(NightView view, Pending<CoolDown> answer)
        => answer.Value is { } stop ? FreezeSentence.If(stop, view.Units) : answer.DueJob is not null ? "Working out how long is left…" : answer.Status;

    /// <summary>The job that works out how long is left when the furnace stops at an instant.</summary>
    public static PageJob CreateJob(Scenario scenario, DateTimeOffset at) => new(
        $"Finding how long is left when the furnace stops on {ClockText.DayClock(at)}",
        (_, cancel) =>
        {
            try
            {
                return FreezeOutlook.Of(scenario, [at], cancel).Stops[0];
            }
            catch (TimeOutsideRunException)
            {
                throw new InvalidOperationException("nothing is known of the weather after that instant.");
            }
            catch (CannotRunException e)
            {
                throw new InvalidOperationException(e.Message);
            }
            catch (LedgerOpenException)
            {
                throw new InvalidOperationException(PageJob.OpenLedger);
            }
        })
    { KeepsPageVisible = true };
}
