using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Night;

public class NightPageTests
{
    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 120, 40 }, { 200, 60 }, { 60, 16 }, { 60, 50 }, { 115, 20 } };

    private static NightView View(int night, UnitStyle? units = null, RunReport? report = null)
    {
        NightView view = NightView.Open(report ?? SampleRun.Report, units ?? UnitStyle.Us);
        for (int n = 0; n < night; n++)
            view = view.Update(new PageMessage.NextNight(1));
        return view;
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_night_that_runs_short_looks_like_this(int width, int height)
        => Snapshot.Match(new NightPage(View(0).Update(new PageMessage.NextEvent(1))).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Fact]
    public void The_night_that_runs_dry_looks_like_this() => Snapshot.Match(new NightPage(View(2, UnitStyle.Si)).Draw(80, 24).ToString());

    [Fact]
    public void A_cylinder_without_a_coach_looks_like_this()
        => Snapshot.Match(new NightPage(View(1, report: SampleRun.WithoutCoach)).Draw(80, 24).ToString());

    [Fact]
    public void The_event_list_looks_like_this()
        => Snapshot.Match(new NightPage(View(1).Update(new PageMessage.ToggleList())).Draw(80, 24).ToString());

    [Fact]
    public void Everything_can_be_drawn_at_any_size()
    {
        foreach (NightPanel page in Enum.GetValues<NightPanel>())
        {
            NightView view = View(1) with { Panel = page };
            foreach (int height in (int[])[0, 1, 2, 15, 16, 17, 18, 20, 23, 24, 25, 33, 34, 40, 70])
            {
                foreach (int width in (int[])[0, 1, 10, 59, 60, 79, 80, 81, 115, 116, 160, 300])
                    Assert.Equal(height, new NightPage(view).Draw(width, height).Height);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_rows_add_up(int width, int height)
    {
        NightLayout layout = NightLayout.For(width, height);
        int below = layout.ReadoutBeside ? 0 : 1 + 12 / layout.ReadoutColumns;
        Assert.True(layout.Fits);
        Assert.Equal(height - 1, layout.ClockRow + 1 + below);
        Assert.All(layout.Picture.StripRows, r => Assert.True(r is 0 or >= 2));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_axis_keeps_labels_and_curves_apart(int width, int height)
    {
        NightLayout layout = NightLayout.For(width, height);
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            Sheet sheet = new NightPage(View(1, units)).Draw(width, height);
            for (int y = NightLayout.FirstStrip; y < NightLayout.FirstStrip + layout.Picture.BurnerRow; y++)
            {
                Assert.Contains(sheet[layout.Plot.Left - 1, y].Glyph, "┤│");
                Assert.Equal(' ', sheet[layout.Plot.Right, y].Glyph);
            }
        }
    }

    [Fact]
    public void Every_axis_label_and_every_name_is_shown_whole_at_80_columns()
    {
        foreach (UnitStyle units in (UnitStyle[])[UnitStyle.Us, UnitStyle.Si])
        {
            NightView view = View(1, units);
            string text = new NightPage(view).Draw(80, 24).ToString();
            foreach (Curve curve in view.Strips.SelectMany(s => s.Curves))
            {
                Assert.Contains(curve.Name, text, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Names_at_the_ends_are_in_the_order_of_their_curves_at_any_height()
    {
        NightView view = View(1);
        for (int height = 24; height < 60; height++)
        {
            NightLayout layout = NightLayout.For(90, height);
            string[] right = [.. Enumerable.Range(NightLayout.FirstStrip + layout.Picture.StripRows[0] + layout.Picture.StripRows[1], layout.Picture.StripRows[2])
                .Select(y => new NightPage(view).Draw(90, height).Row(y)[(layout.Plot.Right + 1)..])];
            int outside = Array.FindIndex(right, r => r.Contains(" outside", StringComparison.Ordinal));
            int liquid = Array.FindIndex(right, r => r.Contains("liquid", StringComparison.Ordinal));
            Assert.InRange(outside, 0, liquid - 1);
        }
    }

    [Fact]
    public void Readings_do_not_run_into_each_other_at_80_columns()
    {
        NightView view = View(1, UnitStyle.Si);
        string text = new NightPage(view).Draw(80, 24).ToString();
        foreach (ReadoutValue reading in ReadoutValue.At(view).SelectMany(r => r))
            Assert.Matches($@"(^|\s){System.Text.RegularExpressions.Regex.Escape($"{reading.Brief} {reading.Value}")}(\s|$)", text);
    }

    [Fact]
    public void A_small_terminal_shows_the_size_that_is_needed()
        => Assert.Equal("terminal too small\nnow 59x20, needs 60x16\nq quits", new NightPage(View(0)).Draw(59, 20).ToString().TrimEnd());

    [Fact]
    public void A_title_cannot_smuggle_escapes_or_wide_glyphs_in()
    {
        RunReport report = SampleRun.Report with { Scenario = SampleRun.Report.Scenario with { Title = "a\u001b[31m\t雪🏕é" } };
        Assert.StartsWith("a␛[31m␉??é  ", new NightPage(View(0, report: report)).Draw(80, 24).Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void Sums_that_do_not_close_come_before_the_verdict()
    {
        RunReport report = SampleRun.Report with { Ledger = new(0, double.NaN, 0, 0, 0, 0, 0, 0) };
        Assert.StartsWith("THE SUMS DO NOT CLOSE", new NightPage(View(0, report: report)).Draw(80, 24).Row(1), StringComparison.Ordinal);
    }

    [Fact]
    public void Help_holds_every_caution_and_fits_the_least_width()
    {
        string help = string.Join(' ', NightHelp.Lines(UnitStyle.Us).Select(l => l.Trim()));
        Assert.All(UnitStyle.Us.InOwn(Cautions.Lines), c => Assert.Contains(c, help, StringComparison.Ordinal));
        Assert.All(NightHelp.Lines(UnitStyle.Us), l => Assert.InRange(l.Length, 0, Sheet.MinWidth));
    }
}
