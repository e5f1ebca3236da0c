using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Signs;
using ColdSim.App.Text;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.App.Screens.Tries;
using ColdSim.Tests.Planning.Explain;
using Snapshooter;
using Snapshooter.Xunit;
using Terminal.Gui.Input;
using Xunit;

namespace ColdSim.Tests.App.Screens.Pages;

public class BuyPageTests
{
    private static readonly Lazy<IPage> DoneOnce = new(() => Ended(Asked));

    private static IPage Before => BuyPage.Of(Explained.Demo.Report.Scenario, UnitStyle.Us).Update(new PageMessage.Resized(80, 23));

    private static IPage Asked => Before.Update(new PageMessage.Choose());

    private static IPage Done => DoneOnce.Value;

    public static TheoryData<int, int> Sizes => new() { { 80, 23 }, { 60, 16 } };

    [Fact]
    public void Nothing_is_run_until_it_is_asked_for_and_what_it_costs_is_said()
    {
        Assert.Null(Before.DueJob);
        Assert.Contains("60 limits", Assert.Single(Before.Keys).Cost, StringComparison.Ordinal);
        Assert.Contains("Enter compares 20 set-ups", Before.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.Equal(20, Asked.DueJob!.StepCount);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_comparison_looks_like_this(int width, int height)
        => Snapshot.Match(Done.Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Fact]
    public void The_verdict_and_the_rows_are_those_of_the_command()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("buy", Shell.ColdSnap, "--full"));
        string[] shown = Lines(Done);
        string[] said = [.. shell.Out.Split('\n').Select(l => l.TrimEnd()).TakeWhile(l => !l.StartsWith("Assumed", StringComparison.Ordinal)).Where(l => l.Length > 0)];
        Assert.True(said.Length > 25);
        Assert.Empty(said.Except(shown));
    }

    [Fact]
    public void A_comparison_that_is_stopped_can_be_asked_for_again()
    {
        IPage stopped = Asked.Update(new PageMessage.Cancelled());
        Assert.Null(stopped.DueJob);
        Assert.Contains("Stopped before it was done", stopped.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.NotNull(stopped.Update(new PageMessage.Choose()).DueJob);
    }

    [Fact]
    public void Each_unit_has_a_comparison_of_its_own()
    {
        IPage metric = Done.Update(new PageMessage.UnitsChanged(UnitStyle.Si));
        Assert.Contains("Enter compares", metric.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(Lines(metric.Update(new PageMessage.UnitsChanged(UnitStyle.Us))));
        IPage late = Asked.Update(new PageMessage.UnitsChanged(UnitStyle.Si)).Update(new PageMessage.Completed(Asked.DueJob!.Run(new Progress<int>(), CancellationToken.None)));
        Assert.Contains("Enter compares", late.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.Equal(Done.Draw(80, 23).ToString(), late.Update(new PageMessage.UnitsChanged(UnitStyle.Us)).Draw(80, 23).ToString());
    }

    [Fact]
    public void A_trip_is_refused_as_the_command_refuses_it()
    {
        using Bench bench = new("fortnight.toml");
        bench.Open('b').Send(new PageMessage.Choose());
        Assert.Contains("has stops or refills", bench.Drawn(), StringComparison.Ordinal);
        Assert.Null(bench.View.Page.DueJob);
    }

    [Fact]
    public void Both_letters_open_their_pages_from_any_page_and_the_row_names_them_only_then()
    {
        using Bench bench = new();
        string row = bench.Drawn().Split('\n')[0];
        Assert.DoesNotContain("buy", row, StringComparison.Ordinal);
        Assert.DoesNotContain("diagnose", row, StringComparison.Ordinal);
        Assert.Contains("[b buy]", bench.Open('b').Drawn().Split('\n')[0], StringComparison.Ordinal);
        Assert.Contains("[d diagnose]", bench.Open('d').Drawn().Split('\n')[0], StringComparison.Ordinal);
        bench.Send(new PageMessage.Close());
        Assert.Equal('1', bench.View.Page.Key);
    }

    [Fact]
    public void The_verdict_stays_whole_in_the_row_while_another_page_is_open()
    {
        using Bench bench = new();
        foreach (int width in (int[])[80, 60, 48])
            Assert.StartsWith(" 1 plan: FAILS", bench.Open('d').Drawn(width), StringComparison.Ordinal);
    }

    [Fact]
    public void In_the_form_letters_are_text_and_what_was_filled_in_stays_while_something_is_tried()
    {
        using Bench bench = new();
        bench.Open('d').Send([.. Enumerable.Repeat(new PageMessage.Rows(1), SignField.All.ToList().FindIndex(f => f.Name == "stove"))]);
        foreach (char c in "qfu")
            bench.Send(Assert.IsAssignableFrom<FrameMessage>(PageKeys.Frame(new Key(c), bench.View)));
        Assert.Equal("fades", ((DiagnosePage)bench.View.Page).Form.Of("stove"));
        bench.Send(new PageMessage.Close());
        Assert.Equal('1', bench.View.Page.Key);
        bench.Turn("cylinders").Open('d');
        DiagnosePage after = (DiagnosePage)bench.View.Page;
        Assert.Equal(bench.View.Report, after.Run);
        Assert.Equal("fades", after.Form.Of("stove"));
        Assert.True(after.Answer.HasAnswer);
    }

    private static IPage Ended(IPage page) => page.Update(new PageMessage.Completed(page.DueJob!.Run(new Progress<int>(), CancellationToken.None)));

    // Everything that can be scrolled to.
    private static string[] Lines(IPage page)
        => [.. page.Draw(80, 200).ToString().Split('\n').Select(l => l.TrimEnd())];
}
