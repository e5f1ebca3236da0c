using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Tries;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Tests.App.Commands;
using CsCheck;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Tries;

public class TryTests
{
    private static readonly string[] Rigs = ["cold-snap.toml", "battery-first.toml", "which-cylinder.toml"];

    private static readonly PageMessage[] Keys =
    [
        new PageMessage.Rows(1), new PageMessage.Rows(-1), new PageMessage.Rows(3), new PageMessage.Step(10), new PageMessage.Step(-10), new PageMessage.Step(1),
        new PageMessage.Typed(new('5')), new PageMessage.Typed(new('-')), new PageMessage.Choose(), new PageMessage.UndoTry(), new PageMessage.Backspace(),
        new PageMessage.ResetTry(), new PageMessage.NextNight(1), new PageMessage.ToggleUnits(), new PageMessage.First(), new PageMessage.Last(),
    ];

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(40, 10)]
    public void A_second_cylinder_is_tried_and_holds(int width, int height)
    {
        using Bench bench = new();
        bench.Turn("number").Drawn(width, height).MatchSnapshot(SnapshotNameExtension.Create($"{width}x{height}"));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void After_any_keys_the_screen_says_what_the_shell_says_of_the_same_rig()
        => Gen.Select(Gen.Int[0, Rigs.Length - 1], Gen.Int[0, Keys.Length - 1].Array[4, 16]).Sample(
            drawn =>
            {
                using Bench bench = new(Rigs[drawn.Item1]);
                bench.Send(new PageMessage.ToggleTry());
                bench.Send([.. drawn.Item2.Select(k => Keys[k])]);
                string path = bench.Beside("as-tried.toml");
                File.WriteAllText(path, bench.Try.Bench.Draft.WrittenWith(bench.Changes));
                Shell shell = new();
                Assert.Equal(0, shell.Run("run", path, "--brief", "--no-log"));
                Assert.Equal(shell.Out.StartsWith("HOLDS", StringComparison.Ordinal), bench.Page.Title == "plan: holds");
                Assert.Equal(NightRun.Of(ScenarioReader.Read(path).Scenario!).Summary, bench.Page.Report.Summary);
            },
            iter: 20, threads: 1, seed: "0000Q7s2Wn41");

    [Fact]
    public void One_key_and_enter_try_what_makes_all_nights_hold()
    {
        using Bench bench = new();
        bench.Send(new PageMessage.AskRemedies(), new PageMessage.Choose());
        Assert.Equal("plan: holds", bench.Page.Title);
        Assert.Contains("As tried: holds, 38 lb left", bench.Drawn(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, bench.FromTheShell().Summary.Verdict);
    }

    [Fact]
    public void The_difference_is_said_in_words()
    {
        using Bench bench = new();
        Assert.Matches("^fails .* later, (no freezing inside|freezing .* later)", bench.Turn("night", -4).Try.Difference);
        Assert.StartsWith("holds, ", bench.Send(new PageMessage.ResetTry()).Turn("number").Try.Difference, StringComparison.Ordinal);
        Assert.Equal("", bench.Send(new PageMessage.ResetTry()).Try.Difference);
    }

    [Theory]
    [InlineData('4')]
    [InlineData('5')]
    [InlineData('2')]
    public void Other_pages_speak_of_what_is_tried_and_say_so_in_their_heading(char page)
    {
        using Bench bench = new();
        Assert.DoesNotContain("AS TRIED", bench.Open(page).Drawn(120, 40), StringComparison.Ordinal);
        bench.Open('1').Turn("number").Send(new PageMessage.Close()).Open(page);
        Assert.Contains("AS TRIED: cylinders 2", bench.Drawn(120, 40), StringComparison.Ordinal);
        Assert.StartsWith(" 1 plan: holds", bench.Drawn(120, 40), StringComparison.Ordinal);
    }

    [Fact]
    public void A_newer_key_drops_the_run_of_an_older_one_and_the_last_picture_stays_until_its_own_is_there()
    {
        using Bench bench = new();
        FrameView view = bench.Choose("night").View.Update(new FrameMessage.ToPage(new PageMessage.Step(-10)));
        PageJob older = view.Jobs[0]!.Job;
        Assert.Contains("Working", FrameSheet.Draw(view, 80, 24).ToString(), StringComparison.Ordinal);
        Assert.Contains("FAILS: gas short 03:44", FrameSheet.Draw(view, 80, 24).ToString(), StringComparison.Ordinal);
        view = view.Update(new FrameMessage.ToPage(new PageMessage.Step(-10)));
        Assert.NotSame(older, view.Jobs[0]!.Job);
        FrameView late = view.Update(new FrameMessage.JobEnded(older, new PageMessage.Completed(new TriedRun(TrySettings.None, null, "late"))));
        Assert.Same(view.Jobs[0]!.Job, late.Jobs[0]!.Job);
    }

    [Fact]
    public void A_try_is_saved_as_an_option_that_compare_and_the_file_know()
    {
        using Bench bench = new();
        string before = File.ReadAllText(bench.Path);
        bench.Turn("number").Send(new PageMessage.SaveTry());
        Assert.Contains("Save as option: cylinders 2_", bench.Drawn(), StringComparison.Ordinal);
        bench.Type("x").Send(new PageMessage.Choose());
        Assert.StartsWith(before, File.ReadAllText(bench.Path), StringComparison.Ordinal);
        ReadResult read = ScenarioReader.Read(bench.Path);
        Assert.Equal("cylinders 2x", Assert.Single(read.Options).Name);
        Assert.Equal(bench.Page.Report.Summary, NightRun.Of(read.Options[0].Scenario).Summary);
        bench.Send(new PageMessage.SaveTry()).Type("x").Send(new PageMessage.Choose());
        Assert.Contains("another", bench.Page.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_try_is_saved_into_the_scenario_with_its_comments_and_is_then_as_it_is()
    {
        using Bench bench = new();
        string[] comments = [.. File.ReadAllLines(bench.Path).Where(l => l.StartsWith('#'))];
        bench.Turn("number").Send(new PageMessage.SaveTry(), new PageMessage.NextEvent(1), new PageMessage.Choose());
        Assert.Equal(comments, File.ReadAllLines(bench.Path).Where(l => l.StartsWith('#')));
        Shell shell = new();
        Assert.Equal(0, shell.Run("run", bench.Path, "--brief"));
        Assert.StartsWith("HOLDS", shell.Out, StringComparison.Ordinal);
        Assert.True(bench.Try.Now.IsNone);
        Assert.Contains("saved into", bench.Drawn(), StringComparison.Ordinal);
        Assert.Equal("plan: holds", bench.Page.Title);
        Assert.DoesNotContain("AS TRIED", bench.Drawn(), StringComparison.Ordinal);
        bench.Turn("night", -1).Send(new PageMessage.SaveTry(), new PageMessage.NextEvent(1), new PageMessage.Choose());
        Assert.Contains("night = \"14.444 °C\"", File.ReadAllText(bench.Path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_try_is_written_as_a_new_scenario_and_never_over_another_file()
    {
        using Bench bench = new();
        bench.Turn("number").Send(new PageMessage.WriteTry(), new PageMessage.Choose());
        Assert.Contains($"written to {bench.Beside("cold-snap-tried.toml")}", bench.Page.Notice, StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, bench.FromTheShell(bench.Beside("cold-snap-tried.toml")).Summary.Verdict);
        bench.Turn("night", -1).Send(new PageMessage.WriteTry(), new PageMessage.Choose());
        Assert.Contains("exists already", bench.Page.Notice, StringComparison.Ordinal);
        Assert.Contains("night = \"59 °F\"", File.ReadAllText(bench.Beside("cold-snap-tried.toml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_scenario_that_somebody_else_changed_meanwhile_is_not_written_over()
    {
        using Bench bench = new();
        bench.Turn("number");
        File.AppendAllText(bench.Path, "# mine\n");
        string theirs = File.ReadAllText(bench.Path);
        bench.Send(new PageMessage.SaveTry(), new PageMessage.Choose());
        Assert.Contains("was changed by somebody else", bench.Page.Notice, StringComparison.Ordinal);
        Assert.Equal(theirs, File.ReadAllText(bench.Path));
    }

    [Fact]
    public void A_try_of_a_rig_with_a_log_starts_from_its_latest_reading()
    {
        using Bench bench = new("three-days.toml");
        double left_kg = bench.Page.Report.Summary.LeftAtStart.Kilograms;
        bench.Turn("night", -1);
        Assert.Equal(left_kg, bench.Page.Report.Summary.LeftAtStart.Kilograms, 1e-9);
        Assert.Equal(bench.Try.Bench.AsItIs.Scenario.Start, bench.Page.Report.Scenario.Start);
    }

    [Fact]
    public void Digits_set_a_value_while_the_list_is_open_and_turn_pages_otherwise()
    {
        using Bench bench = new();
        Assert.Equal(new FrameMessage.GoTo('5'), PageKeys.Frame(new('5'), bench.View));
        bench.Choose("night");
        Assert.IsType<PageMessage.Typed>(Assert.IsType<FrameMessage.ToPage>(PageKeys.Frame(new('5'), bench.View)).Message);
        bench.Type("5");
        Assert.IsType<PageMessage.Typed>(Assert.IsType<FrameMessage.ToPage>(PageKeys.Frame(new('0'), bench.View)).Message);
        bench.Send(new PageMessage.Close());
        Assert.True(bench.Try.IsOpen);
        Assert.False(bench.Send(new PageMessage.Close()).Try.IsOpen);
    }
}
