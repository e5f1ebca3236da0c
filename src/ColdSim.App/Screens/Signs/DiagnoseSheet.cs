using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Signs;

namespace ColdSim.App.Screens.Signs;

/// <summary>Draws the form with the answer beside it, or below it where the screen is narrow; an emergency takes all of it.</summary>
internal static class DiagnoseSheet
{
    private const string Heading = "Why does the furnace give no heat?";
    private const int WideFrom = 72, FormWidth = 37, AnswerAt = 39, ValueAt = 16, LeastRoom = 4;

    // Fewer rows have no room for the question.
    private const int QuestionFrom = 16, QuestionRows = 2;

    // With fewer rows all lines of the form scroll.
    private const int PinnedFrom = 6;

    // Of a narrow page the form takes one row in so many.
    private const int FormShare = 3;

    public static void Draw(Sheet sheet, DiagnosePage page)
    {
        string at = $"run of {ClockText.DayClock(page.At)}";
        PageElements.Head(sheet, Heading, Heading.Length + at.Length + 2 <= sheet.Width ? at : "");
        string[] keys = [.. page.Keys.Select(k => k.Brief).Where(b => b.Length > 0), "F1 help", "Ctrl-Q quit"];
        sheet.Put(0, sheet.Height - 1, CellText.Join(keys, "  ", sheet.Width));
        if (page.Form.Emergency != Planning.Diagnosis.Emergency.None)
            Emergency(sheet, page);
        else
            FormAndAnswer(sheet, page);
    }

    private static void FormAndAnswer(Sheet sheet, DiagnosePage page)
    {
        int end = sheet.Height - 1;
        if (sheet.Height >= QuestionFrom)
        {
            end -= QuestionRows;
            PageElements.Paragraph(sheet, end, page.Form.Field.Question, QuestionRows);
        }

        int rows = end - 1;
        if (sheet.Width >= WideFrom)
        {
            Form(sheet, page, rows, FormWidth);
            Lines(sheet, Answer(page, sheet.Width - AnswerAt, rows), AnswerAt, 1, rows);
            return;
        }

        int form = Math.Max(1, rows / FormShare), answer = rows - form;
        Form(sheet, page, form, sheet.Width);
        Lines(sheet, Answer(page, sheet.Width, answer), 0, 1 + form, answer);
    }

    // What comes before all else stays in sight; the other lines scroll below it.
    private static void Form(Sheet sheet, DiagnosePage page, int rows, int width)
    {
        int pinned = rows >= PinnedFrom ? SignField.SafetyLines : 0, scrolled = rows - pinned, count = SignField.All.Count - pinned;
        for (int i = 0; i < pinned; i++)
            Line(sheet, 1 + i, width, i, page);
        int first = PageElements.FirstRow(page.Form.Row - pinned, scrolled, count), last = Math.Min(count, first + scrolled) - 1;
        for (int i = first; i <= last; i++)
        {
            int y = 1 + pinned + i - first;
            Line(sheet, y, width, pinned + i, page);
            if ((i == first && first > 0) || (i == last && last < count - 1))
                sheet.Put(width - 1, y, i == first ? '↑' : '↓');
        }
    }

    private static void Line(Sheet sheet, int y, int width, int place, DiagnosePage page)
    {
        SignField field = SignField.All[place];
        bool here = place == page.Form.Row;
        sheet.Put(0, y, here ? "> " : "  ", CellStyle.Strong);
        sheet.Put(2, y, field.Label, here ? CellStyle.Strong : CellStyle.Plain);
        Value(sheet, y, Math.Max(LeastRoom, width - ValueAt - 2), field, page, here);
    }

    private static void Value(Sheet sheet, int y, int room, SignField field, DiagnosePage page, bool here)
    {
        string value = CellText.SingleWidth(page.Form.Of(field.Name)), offered = page.Offered(field.Name);
        if (value.Length == 0)
        {
            string empty = offered.Length > 0 ? $"{offered}, by the run"
                : here && field.TakesText ? $"such as {field.Sample}" : field.Empty;
            int indent = here && field.TakesText ? 2 : 0;
            if (indent > 0)
                sheet.Put(ValueAt, y, ' ', CellStyle.Pointer);
            sheet.Put(ValueAt + indent, y, CellText.Cut(empty, room - indent), here && indent == 0 ? CellStyle.Pointer : CellStyle.Plain);
            return;
        }

        // A long text shows its end, where it is typed.
        string shown = value.Length < room ? value : "…" + value[^(room - 2)..];
        bool isChoice = here && !field.TakesText;
        sheet.Put(ValueAt, y, shown, isChoice ? CellStyle.Pointer : CellStyle.Strong);
        if (here && field.TakesText)
            sheet.Put(ValueAt + shown.Length, y, ' ', CellStyle.Pointer);
    }

    private static IReadOnlyList<AnswerLine> Answer(DiagnosePage page, int width, int rows)
    {
        AnswerLine[] faults =
        [
            .. page.Faults.SelectMany(f => CellText.Wrap($"{LabelOf(f)}: {CellText.SingleWidth(f.What)}", width))
                .Select(l => new AnswerLine(l, Stressed: true)),
        ];
        return [.. faults, .. DiagnosePanel.Of(page.Answer, page.Units, width, Math.Max(1, rows - faults.Length))];
    }

    private static string LabelOf(SignFault fault) => SignField.All.FirstOrDefault(f => f.Name == fault.Name)?.Label ?? fault.Name;

    // Nothing else is answered before that; how to take it back is said last.
    private static void Emergency(Sheet sheet, DiagnosePage page)
    {
        int rows = sheet.Height - 3;
        Lines(sheet, DiagnosePanel.Of(page.Answer, page.Units, Math.Min(sheet.Width, Text.Wrap.Columns), rows), 0, 1, rows);
        SignField said = SignField.All.First(f => page.Form.Of(f.Name).Length > 0);
        string back = page.Form.Field == said ? "← takes it back" : "↑↓ to its line, then ← takes it back";
        sheet.Put(0, sheet.Height - 2, CellText.Cut($"{(page.Form.Field == said ? ">" : " ")} {said.Label}: yes; {back}", sheet.Width));
    }

    private static void Lines(Sheet sheet, IReadOnlyList<AnswerLine> lines, int x, int top, int rows)
    {
        for (int i = 0; i < Math.Min(rows, lines.Count); i++)
        {
            string text = CellText.Cut(CellText.SingleWidth(lines[i].Text), sheet.Width - x);
            sheet.Put(x, top + i, text, lines[i].Stressed ? CellStyle.Strong : CellStyle.Plain);
        }
    }
}
