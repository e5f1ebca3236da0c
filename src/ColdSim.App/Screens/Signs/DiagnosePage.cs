using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Files.Signs;
using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Signs;

/// <summary>Why the furnace gives no heat: a form of what is seen and heard, and the causes that it speaks for.</summary>
/// <param name="Run">The run, of whose rig it speaks.</param>
/// <param name="Units">Units to print.</param>
internal sealed record DiagnosePage(RunReport Run, UnitStyle Units) : IPage
{
    /// <summary>The smallest page that is drawn.</summary>
    public const int MinWidth = 40, MinHeight = 9;

    public char Key => 'd';

    public string Title => "diagnose";

    public bool IsInRow => false;

    public bool TakesText => true;

    public (int Width, int Height) Least => (MinWidth, MinHeight);

    /// <summary>What was filled in.</summary>
    public SignForm Form { get; init; } = new();

    /// <summary>The minute of the run that the air and the recent use are offered of.</summary>
    public required RunMoment Moment { get; init; }

    /// <summary>The answer to what can be read of the form.</summary>
    public required DiagnosisReport Answer { get; init; }

    /// <summary>What cannot be read.</summary>
    public IReadOnlyList<SignFault> Faults { get; init; } = [];

    /// <summary>When that minute is.</summary>
    public DateTimeOffset At => Run.Scenario.Start.AddMinutes(Moment.Minute);

    public IReadOnlyList<string> Help { get; } =
    [
        "DIAGNOSE",
        "  Left what is seen and heard, right the causes with their",
        "  odds, what speaks for and against each, the next test and",
        "  what never to do. What is left empty is not weighed.",
        "  Outside air and the last 8 hours are those of the run at",
        "  the time cursor until something else is filled in.",
        "  Smell of gas and signs of CO come before all else.",
    ];

    public IReadOnlyList<KeyBinding> Keys { get; } =
    [
        new("↑↓", "another line, as Tab and Shift-Tab", new PageMessage.Rows(1), "↑↓ line"),
        new(
            "←→", "choose a state, where there are some; a letter chooses the one that begins with it", new PageMessage.Step(10), "←→ choose"),
        new("Enter", "the line of the next test", new PageMessage.Choose(), "Enter next test"),
        new("Home End", "first, last line", new PageMessage.Last()),
        new("Esc", "back to the plan; what was filled in stays", new PageMessage.Close(), "Esc back"),
    ];

    /// <summary>The form with nothing filled in, at the run's coldest minute until it is opened at another.</summary>
    public static DiagnosePage Of(RunReport run, UnitStyle units)
    {
        DiagnosisQuestion nothing = new() { Rig = DiagnosisRig.Of(run.Scenario.Rig) };
        return new DiagnosePage(run, units)
        {
            Moment = RunMoment.Coldest(run.Scenario.Rig, run.Series),
            Answer = new() { Question = nothing, Model = new CylinderExpectation(nothing.Rig), Causes = [], Tests = [], Expected = [] },
        };
    }

    /// <summary>What the run says of a line that is empty; empty where it says nothing.</summary>
    public string Offered(string name) => name switch
    {
        SignField.Air => Units.WholeTemperature(Moment.Air_K),
        SignField.Use when Moment.Lit_frac is { } lit_frac => RecentUse.Nearest(lit_frac).Word,
        _ => "",
    };

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        DiagnoseSheet.Draw(sheet, this);
        return sheet;
    }

    public IPage Update(PageMessage message) => message switch
    {
        PageMessage.UnitsChanged units => (this with { Units = units.Units }).Worked(),
        PageMessage.Opened { At: { } at } => (this with { Moment = RunMoment.At(Run.Scenario.Rig, Run.Series, at.Minute) }).Worked(),
        PageMessage.Opened => Worked(),
        PageMessage.Rows rows => this with { Form = Form.On(Form.Row + Math.Sign(rows.Count)) },
        PageMessage.NextEvent next => this with { Form = Form.On(Form.Row + next.Direction) },
        PageMessage.First => this with { Form = Form.On(0) },
        PageMessage.Last => this with { Form = Form.On(-1) },
        PageMessage.Choose => Answer.Tests.Count == 0 ? this : this with { Form = Form.To(DiagnosisWords.OptionOf(Answer.Tests[0])) },
        PageMessage.Step step => With(Form.Chosen(Math.Sign(step.Minutes))),
        PageMessage.Typed typed => With(Form.Typed(typed.Character)),
        PageMessage.Backspace => With(Form.WithoutLast()),
        _ => this,
    };

    public IPage After(IPage before)
        => before is DiagnosePage was ? (this with { Form = was.Form, Moment = MomentAs(was) }).Worked() : this;

    // The same minute of the clock in the other run.
    private RunMoment MomentAs(DiagnosePage was)
        => RunMoment.At(Run.Scenario.Rig, Run.Series, (int)(was.At - Run.Scenario.Start).TotalMinutes);

    private DiagnosePage With(SignForm form) => form == Form ? this : (this with { Form = form }).Worked();

    private DiagnosePage Worked()
    {
        if (Form.Emergency != Emergency.None)
            return this with { Answer = DiagnosisReport.Of(new() { Emergency = Form.Emergency }), Faults = [] };
        Dictionary<string, string> given = Form.Given;
        foreach (string name in (string[])[SignField.Air, SignField.Use])
        {
            if (!given.ContainsKey(name) && Offered(name) is { Length: > 0 } offered)
                given[name] = offered;
        }

        SignReader reader = new(given, Run.Scenario);
        DiagnosisQuestion question = reader.Question();
        if (reader.Faults.Count > 0)
        {
            // The rest is weighed while a line is still being typed.
            foreach (SignFault fault in reader.Faults)
                given.Remove(fault.Name);
            question = new SignReader(given, Run.Scenario).Question();
        }

        return this with { Answer = DiagnosisReport.Of(question), Faults = reader.Faults };
    }
}
