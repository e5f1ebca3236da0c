using System.Text;
using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Signs;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Planning.Diagnosis;
using ColdSim.Tests.Planning.Explain;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Signs;

public class DiagnosePageTests
{
    private static readonly RunReport Run = Explained.Demo.Report;

    private static readonly TimeCursor Shortage
        = TimeCursor.At(Run, 1, (int)(Run.Summary.FirstFailure!.Value - Run.Scenario.Start).TotalMinutes);

    private static DiagnosePage Empty => (DiagnosePage)DiagnosePage.Of(Run, UnitStyle.Us).Update(new PageMessage.Opened(Shortage));

    private static DiagnosePage Fading => Filled(Empty, ("stove", "fades"), ("furnace", "minutes"), ("left", "1/3"), ("regulator", "dry"));

    public static TheoryData<int, int> Sizes => new() { { 80, 23 }, { 120, 39 }, { 60, 16 }, { 40, 9 } };

    // What the form takes, without what the command knows beside a file.
    public static TheoryData<int> Cases
        => [.. Enumerable.Range(0, DiagnosisCase.All.Count).Where(i => i % 4 == 0 && Signs(i).All(s => SignField.All.Any(f => f.Name == s.Name)))];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_form_and_its_answer_look_like_this(int width, int height)
        => Snapshot.Match(Fading.Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_smell_of_gas_looks_like_this(int width, int height)
        => Snapshot.Match(Filled(Fading, ("smell", "yes")).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Fact]
    public void With_nothing_filled_in_it_guesses_nothing_and_says_what_to_look_at()
    {
        string text = Words(DiagnosePanel.Of(Empty.Answer, UnitStyle.Us, 41, 19));
        Assert.Contains("nothing is guessed", text, StringComparison.Ordinal);
        Assert.Contains("- Light the stove", text, StringComparison.Ordinal);
        Assert.Contains("Never:", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" to 1", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_form_gives_the_answer_that_the_command_gives(int number)
    {
        DiagnosePage page = Filled(Empty, Signs(number));
        Assert.Empty(page.Faults);
        List<string> words = ["diagnose", Shell.ColdSnap, "--json"];
        foreach (SignField field in SignField.All.Skip(2))
        {
            string value = page.Form.Of(field.Name).Length > 0 ? page.Form.Of(field.Name) : page.Offered(field.Name);
            if (value.Length > 0)
                words.AddRange([$"--{field.Name}", value]);
        }

        Shell shell = new();
        Assert.Equal(0, shell.Run([.. words]));
        using MemoryStream stream = new();
        JsonReport.Write(page.Answer, stream);
        Assert.Equal(shell.Out.Trim(), Encoding.UTF8.GetString(stream.ToArray()).Trim());
    }

    [Theory]
    [InlineData("smell", "A smell of gas: everybody out now")]
    [InlineData("co", "Signs of carbon monoxide: everybody out")]
    public void Smell_of_gas_and_carbon_monoxide_come_before_all_else_and_can_be_taken_back(string name, string verdict)
    {
        DiagnosePage urgent = Filled(Fading, (name, "yes"));
        string text = urgent.Draw(80, 23).ToString();
        Assert.Contains(verdict, text, StringComparison.Ordinal);
        Assert.DoesNotContain("Test next", text, StringComparison.Ordinal);
        Assert.DoesNotContain("stove", text, StringComparison.Ordinal);
        Assert.Empty(urgent.Answer.Causes);
        Assert.Contains("← takes it back", text, StringComparison.Ordinal);
        DiagnosePage back = (DiagnosePage)urgent.Update(new PageMessage.Step(-10));
        Assert.Equal(Fading.Answer.Causes[0].Cause, back.Answer.Causes[0].Cause);
    }

    [Fact]
    public void Safety_is_the_first_line_of_the_form()
        => Assert.Equal([SignField.Smell, SignField.CarbonMonoxide], SignField.All.Take(2).Select(f => f.Name));

    [Fact]
    public void Every_sign_and_reading_that_a_test_may_ask_for_has_its_line()
    {
        DiagnosisQuestion question = new() { Rig = DiagnosisRig.Of(Run.Scenario.Rig) };
        string[] asked = [.. DiagnosisReport.Ask(question).Select(DiagnosisWords.OptionOf).Distinct().Except(["elevation"])];
        Assert.NotEmpty(asked);
        Assert.Empty(asked.Except(SignField.All.Select(f => f.Name)));
    }

    [Fact]
    public void The_air_and_the_use_are_those_of_the_run_at_the_cursor_until_others_are_filled_in()
    {
        DiagnosePage page = Empty;
        double air_K = page.Run.Series.Outside_K[Shortage.Minute];
        Assert.Equal(UnitStyle.Us.WholeTemperature(air_K), page.Offered(SignField.Air));
        Assert.Equal(air_K, page.Answer.Question.Readings.Air_K!.Value, 0.3);
        double lit_frac = page.Run.Series.Burner_frac[(Shortage.Minute - 480)..Shortage.Minute].Average();
        Assert.Equal(RecentUse.Nearest(lit_frac).Word, page.Offered(SignField.Use));
        Assert.Equal(RecentUse.Find(page.Offered(SignField.Use))!.Use_frac, page.Answer.Question.Rig.Use_frac);

        DiagnosePage evening = (DiagnosePage)page.Update(new PageMessage.Opened(TimeCursor.At(page.Run, 0, 30)));
        Assert.NotEqual(page.Offered(SignField.Air), evening.Offered(SignField.Air));
        Assert.Equal("", evening.Offered(SignField.Use));
        Assert.Equal(255.37, Filled(page, ("air", "0 °F")).Answer.Question.Readings.Air_K!.Value, 0.01);
    }

    [Fact]
    public void A_text_that_cannot_be_read_is_named_with_what_is_accepted_and_the_rest_is_weighed()
    {
        DiagnosePage page = Filled(Fading, ("volts", "many"));
        Assert.Equal("volts", Assert.Single(page.Faults).Name);
        Assert.Contains("must be 0 to 20 V", page.Draw(120, 39).ToString(), StringComparison.Ordinal);
        Assert.Equal(Fading.Answer.Causes.Select(c => c.Probability_frac), page.Answer.Causes.Select(c => c.Probability_frac));
    }

    [Fact]
    public void Enter_goes_to_the_line_of_the_next_test_and_Tab_to_the_next_line()
    {
        DiagnosePage page = Fading, next = (DiagnosePage)page.Update(new PageMessage.Choose());
        Assert.Equal(DiagnosisWords.OptionOf(page.Answer.Tests[0]), next.Form.Field.Name);
        Assert.Equal(1, ((DiagnosePage)Empty.Update(new PageMessage.NextEvent(1))).Form.Row);
        Assert.Equal(SignField.All.Count - 1, ((DiagnosePage)Empty.Update(new PageMessage.Rows(-1))).Form.Row);
    }

    [Fact]
    public void A_letter_chooses_the_state_that_begins_with_it_and_Backspace_empties_the_line()
    {
        SignForm form = new SignForm().To("furnace").Typed(new Rune('s'));
        Assert.Equal("silent", form.Value);
        Assert.Equal("seconds", form.Typed(new Rune('s')).Value);
        Assert.Equal("", form.WithoutLast().Value);
        Assert.Equal("burns", form.WithoutLast().Chosen(-1).Value);
        Assert.Equal("-3", new SignForm().To("wall").Chosen(1).Typed(new Rune('-')).Typed(new Rune('3')).Value);
    }

    [Fact]
    public void What_was_filled_in_stays_when_the_files_are_read_again_and_when_something_is_tried()
    {
        DiagnosePage again = (DiagnosePage)DiagnosePage.Of(Run, UnitStyle.Us).After(Fading);
        Assert.Equal(Fading.Form.Given, again.Form.Given);
        Assert.Equal(Fading.At, again.At);
        Assert.Equal(Fading.Answer.Causes[0].Probability_frac, again.Answer.Causes[0].Probability_frac);
    }

    [Fact]
    public void The_likeliest_cause_and_what_never_to_do_are_shown_at_any_size()
    {
        DiagnosisReport answer = Fading.Answer;
        Assert.Equal(Cause.TooCold, answer.Causes[0].Cause);
        for (int width = 40; width <= 100; width += 6)
        {
            for (int rows = 5; rows <= 30; rows++)
            {
                IReadOnlyList<AnswerLine> lines = DiagnosePanel.Of(answer, UnitStyle.Us, width, rows);
                Assert.True(lines.Count <= rows && lines.All(l => l.Text.Length <= width), $"{width}x{rows}");
                Assert.Contains("too cold", Words(lines), StringComparison.Ordinal);
                Assert.Contains(CauseWords.Never(Cause.TooCold), Words(lines), StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Everything_can_be_drawn_at_any_size_and_in_plain_characters()
    {
        DiagnosePage fading = Fading;
        foreach (DiagnosePage page in (DiagnosePage[])[Empty, fading, Filled(fading, ("co", "yes")), Filled(Empty, ("volts", new string('x', 60)))])
        {
            foreach (int height in (int[])[0, 1, 5, 9, 16, 23, 39])
            {
                foreach (int width in (int[])[0, 1, 39, 40, 71, 72, 80, 200])
                {
                    Sheet sheet = page.Draw(width, height);
                    Assert.Equal(height, sheet.Height);
                    Assert.All(PlainSheet.Of(sheet).ToString(), c => Assert.InRange(c, '\n', '~'));
                }
            }
        }
    }

    [Fact]
    public void The_panel_has_the_words_of_the_commands_answer()
    {
        Answer answer = DiagnosisAnswer.Of(Fading.Answer, UnitStyle.Us);
        string text = Words(DiagnosePanel.Of(Fading.Answer, UnitStyle.Us, 80, 30));
        Assert.Contains(answer.Verdict, text, StringComparison.Ordinal);
        Assert.Contains(answer.Caution, text, StringComparison.Ordinal);
        Assert.Contains(answer.Actions[0], text, StringComparison.Ordinal);
        Assert.DoesNotContain("--", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Safety_stays_in_sight_while_the_other_lines_scroll()
    {
        string[] rows = Fading.Draw(80, 23).ToString().Split('\n');
        Assert.StartsWith("  smell of gas  no", rows[1], StringComparison.Ordinal);
        Assert.StartsWith("  CO, headache  no", rows[2], StringComparison.Ordinal);
        Assert.Contains(rows, r => r.StartsWith("> regulator", StringComparison.Ordinal));
    }

    private static (string Name, string Value)[] Signs(int number)
        => [.. DiagnosisCase.All[number].Signs.Where(s => s.Key != "cylinder").Select(s => (s.Key, s.Value))];

    private static string Words(IEnumerable<AnswerLine> lines) => string.Join(' ', lines.Select(l => l.Text.Trim()));

    private static DiagnosePage Filled(DiagnosePage page, params (string Name, string Value)[] values)
    {
        IPage filled = page;
        foreach ((string name, string value) in values)
        {
            DiagnosePage before = (DiagnosePage)filled;
            filled = before with { Form = before.Form.To(name) };
            if (((DiagnosePage)filled).Form.Field.TakesText)
            {
                foreach (Rune rune in value.EnumerateRunes())
                    filled = filled.Update(new PageMessage.Typed(rune));
                continue;
            }

            for (int i = 0; i <= before.Form.Field.States.Count + 10 && ((DiagnosePage)filled).Form.Value != value; i++)
                filled = filled.Update(new PageMessage.Step(10));
            Assert.Equal(value, ((DiagnosePage)filled).Form.Value);
        }

        return (DiagnosePage)filled;
    }
}
