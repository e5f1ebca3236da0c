using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Actions;

namespace ColdSim.App.Screens.Plan;

/// <summary>Draws what would make all nights hold, a line each, over the lower part of the plan.</summary>
internal static class RemedySheet
{
    /// <summary>Draws it.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="page">What it shows.</param>
    /// <param name="list">The list.</param>
    /// <param name="top">Its first row.</param>
    /// <param name="foot">The row after its last.</param>
    /// <param name="width">Its columns.</param>
    public static void Draw(Sheet sheet, PlanPage page, RemedyList list, int top, int foot, int width)
    {
        for (int y = top; y < foot; y++)
            sheet.Put(0, y, new string(' ', width));
        if (list.Found.Value is not { Plan: { } plan })
        {
            PageElements.Paragraph(sheet, top, list.Found.DueJob is { } job ? $"{job.Description}…" : list.Found.Status, foot - top);
            return;
        }

        string said = plan.Spare is null ? ActionText.Introduction(plan) : $"All nights hold. {ActionText.Spare(plan, page.Units)}";
        top = PageElements.Paragraph(sheet, top, said.Length > 0 ? said : "Nothing was tried: the cylinder ends the run.", Math.Max(1, foot - top - 1), CellStyle.Strong);
        IReadOnlyList<PlannedAction> actions = list.Actions;
        for (int i = FirstShown(actions, list.Row, foot - top, page, width); i < actions.Count && top < foot; i++)
        {
            bool isChosen = i == list.Row;
            foreach (string line in Wrap.Lines(CellText.SingleWidth(ActionWords.Line(actions[i], page.Report.Scenario, page.Units)), width, isChosen ? "> " : "  ", "  ").Take(foot - top))
                sheet.Put(0, top++, CellText.Cut(line, width), isChosen ? CellStyle.Pointer : CellStyle.Plain);
        }
    }

    // So that the chosen one is whole.
    private static int FirstShown(IReadOnlyList<PlannedAction> actions, int chosen, int rows, PlanPage page, int width)
    {
        int first = chosen, used = 0;
        for (int i = chosen; i >= 0; i--)
        {
            used += Wrap.Lines(ActionWords.Line(actions[i], page.Report.Scenario, page.Units), width, "> ", "  ").Count;
            if (used > rows)
                break;
            first = i;
        }

        return first;
    }
}
