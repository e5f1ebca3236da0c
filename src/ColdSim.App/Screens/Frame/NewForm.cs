using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.Files.Scenarios.Starters;

namespace ColdSim.App.Screens.Frame;

/// <summary>The questions of <c>coldsim new</c> as a form: first the file's name, then those about the rig. What is left empty is not known.</summary>
/// <param name="Files">Checks and writes.</param>
/// <param name="Metric">Whether examples and defaults are metric.</param>
internal sealed record NewForm(IScenarioFiles Files, bool Metric) : Overlay
{
    private const int LongestAnswer = 200;

    private const int LongestLabel = 24;

    /// <summary>The questions about the rig.</summary>
    public IReadOnlyList<StarterQuestion> Questions { get; init; } = StarterQuestion.All(Metric);

    /// <summary>The file's name, then the answers.</summary>
    public IReadOnlyList<string> Answers { get; init; } = ["", .. StarterQuestion.All(Metric).Select(_ => "")];

    /// <summary>Which field is typed in.</summary>
    public int Field { get; init; }

    /// <summary>What is wrong, or why nothing was written.</summary>
    public IReadOnlyList<string> Faults { get; init; } = [];

    public override bool TakesText => true;

    /// <summary>Where the scenario goes.</summary>
    public string Path => Answers[0].Trim() is not { Length: > 0 } name ? "trip.toml" : System.IO.Path.HasExtension(name) ? name : name + ".toml";

    public override void Draw(Sheet sheet, int top)
    {
        sheet.Put(0, top, CellText.Cut("new scenario: leave empty what is not known; Enter on the last line writes and opens it", sheet.Width), CellStyle.Strong);
        int y = top + 1;
        int rows = Math.Max(1, sheet.Height - y - 5), first = Math.Clamp(Field - rows / 2, 0, Math.Max(0, Answers.Count - rows));
        for (int i = first; i < Math.Min(Answers.Count, first + rows); i++, y++)
        {
            string label = $"{(i == Field ? '>' : ' ')} {Label(i)}: ";
            sheet.Put(0, y, label, i == Field ? CellStyle.Strong : CellStyle.Plain);
            int room = Math.Max(4, sheet.Width - label.Length - 1);
            string answer = CellText.SingleWidth(Answers[i]);
            string shown = answer.Length <= room ? answer : "…" + answer[^(room - 1)..];
            sheet.Put(label.Length, y, shown, CellStyle.Strong);
            if (i == Field)
                sheet.Put(label.Length + shown.Length, y, ' ', CellStyle.Pointer);
            if (answer.Length == 0)
                sheet.Put(label.Length + (i == Field ? 2 : 0), y, CellText.Cut($"[{Default(i)}]", room - 2));
        }

        string question = Field == 0 ? "The file to write." : Questions[Field - 1].Text.Replace("\n", "", StringComparison.Ordinal);
        int end = PageElements.Paragraph(sheet, y + 1, question, 2);
        if (Faults.Count > 0)
            PageElements.Paragraph(sheet, end, string.Join(" ", Faults), Math.Max(1, sheet.Height - 1 - end), CellStyle.Strong);
        string enter = Field == Answers.Count - 1 ? "Enter write and open it" : "Enter next";
        sheet.Put(0, sheet.Height - 1, CellText.Join([enter, "Tab ↑↓ line", "Esc back, writes nothing", "Ctrl-Q quit"], "  ", sheet.Width));
    }

    public override OverlayStep Update(PageMessage message, int rows) => message switch
    {
        PageMessage.Close => new(null),
        PageMessage.Choose => Field < Answers.Count - 1 ? new(To(Field + 1)) : Finish(),
        PageMessage.Rows by => new(To(Field + Math.Sign(by.Count))),
        PageMessage.NextEvent by => new(To(Field + by.Direction)),
        PageMessage.First => new(To(0)),
        PageMessage.Last => new(To(Answers.Count - 1)),
        PageMessage.Typed typed when Answers[Field].Length < LongestAnswer => new(With(Answers[Field] + typed.Character)),
        PageMessage.Backspace => new(With(TextEdit.WithoutLast(Answers[Field]))),
        PageMessage.Failed failed => new(this with { Faults = failed.Reason.Split('\n') }),
        _ => new(this),
    };

    /// <summary>The rig of the answers.</summary>
    public StarterRig Rig()
    {
        StarterRig rig = StarterRig.Unknown(Metric);
        for (int i = 0; i < Questions.Count; i++)
        {
            if (!StarterQuestion.IsUnknown(Answers[i + 1]))
                rig = Questions[i].Put(rig, Answers[i + 1].Trim());
        }

        return rig;
    }

    private string Label(int field)
    {
        string label = field == 0 ? "file" : Questions[field - 1].Text.Split([':', ',', '(', '\n'])[0].Trim();
        return label.Length > LongestLabel ? label[..LongestLabel] : label;
    }

    private string Default(int field) => field == 0 ? "trip.toml" : Questions[field - 1].Default;

    private NewForm With(string answer) => this with { Answers = [.. Answers.Select((a, i) => i == Field ? answer : a)], Faults = [] };

    // What was just typed is looked at when its line is left.
    private NewForm To(int field) => this with
    {
        Field = (field + Answers.Count) % Answers.Count,
        Faults = Field > 0 && Answers[Field].Trim().Length > 0 ? Files.Faults(Rig(), Path) : [],
    };

    private OverlayStep Finish()
    {
        StarterRig rig = Rig();
        (IScenarioFiles files, string path) = (Files, Path);
        if (files.Faults(rig, path) is { Count: > 0 } faults)
            return new(this with { Faults = faults });
        return new(this, new FrameMessage.Start(new PageJob($"Writing {path} and opening it", (_, cancel) =>
        {
            files.Write(rig, path);
            return files.Open(path, cancel);
        })));
    }
}
