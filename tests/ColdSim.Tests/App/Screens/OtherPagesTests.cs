using ColdSim.App.Screens;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Planning.Compare;
using ColdSim.Tests.Planning.Explain;
using ColdSim.Tests.Planning.Limits;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens;

public class OtherPagesTests
{
    private static readonly ComparedOption[] Options = [new("40 lb", SampleRun.Report.Scenario), new("100 lb", SampleRun.Report.Scenario)];

    public static TheoryData<int, int> Sizes => new() { { 80, 23 }, { 120, 39 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_trip_looks_like_this(int width, int height)
        => Snapshot.Match(Loaded(Trip).After(new PageMessage.NextEvent(1)).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Options_look_like_this(int width, int height)
        => Snapshot.Match(Loaded(OnSecondNight(Compared)).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_reason_looks_like_this(int width, int height)
        => Snapshot.Match(Loaded(Why).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Limits_look_like_this(int width, int height)
        => Snapshot.Match(Loaded(Limits).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Fact]
    public void Everything_can_be_drawn_at_any_size_in_any_state()
    {
        foreach (IPage page in (IPage[])[Trip, Compared, Why, Limits])
        {
            IPage loaded = Loaded(page);
            foreach (IPage state in (IPage[])[page, page.After(new PageMessage.Stopped()), page.After(new PageMessage.Failed("why")), loaded, loaded.After(new PageMessage.Turn(OpenPage.Events))])
            {
                foreach (int height in (int[])[0, 1, 5, 16, 20, 23, 39, 60])
                {
                    foreach (int width in (int[])[0, 1, 59, 80, 200])
                        Assert.Equal(height, state.Draw(width, height).Height);
                }
            }
        }
    }

    [Fact]
    public void Without_stops_options_or_a_furnace_a_page_says_how_to_get_there_and_wants_nothing()
    {
        RunReport bare = SampleRun.WithoutCoach;
        foreach ((IPage page, string says) in ((IPage, string)[])
        [
            (TripPage.Of(bare.Scenario, UnitStyle.Us), "[[refill]]"),
            (OptionsPage.Of(bare, [], UnitStyle.Us), "[[option]]"),
            (LimitsPage.Of(bare.Scenario, UnitStyle.Us), "[furnace]"),
        ])
        {
            Assert.Null(page.Wanted);
            Assert.Contains(says, page.Draw(80, 23).ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_was_stopped_starts_again_on_enter()
    {
        foreach (IPage page in (IPage[])[Trip, Compared, Why, Limits])
        {
            Assert.NotNull(page.Wanted);
            IPage stopped = page.After(new PageMessage.Stopped());
            Assert.Null(stopped.Wanted);
            Assert.Contains("Enter starts it again", stopped.Draw(80, 23).ToString(), StringComparison.Ordinal);
            Assert.Same(page.Wanted, stopped.After(new PageMessage.Choose()).Wanted);
            Assert.Contains("no luck", page.After(new PageMessage.Failed("no luck")).Draw(80, 23).ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_page_has_its_units()
    {
        foreach (IPage page in (IPage[])[Trip, Compared, Why, Limits])
        {
            string us = Loaded(page).Draw(80, 23).ToString(), si = Loaded(Loaded(page).After(new PageMessage.UnitsAre(UnitStyle.Si))).Draw(80, 23).ToString();
            Assert.Contains("°F", us, StringComparison.Ordinal);
            Assert.Contains("°C", si, StringComparison.Ordinal);
            Assert.DoesNotContain("°F", si, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Help_fits_the_least_width_and_keys_are_distinct()
    {
        IPage[] pages = [Trip, Compared, Why, Limits];
        Assert.All(pages.SelectMany(p => p.Help!), l => Assert.InRange(l.Length, 0, FrameSheet.LeastWidth));
        Assert.Equal("2345", string.Concat(pages.Select(p => p.Key)));
    }

    [Fact]
    public void The_base_and_the_best_are_marked_first_and_space_marks_others()
    {
        OptionsPage page = (OptionsPage)Loaded(Compared);
        Assert.Equal(0, page.Marked[0]);
        Assert.Equal(2, page.Marked.Count);
        int best = page.Marked[1];
        OptionsPage without = (OptionsPage)page.After(new PageMessage.First()).After(new PageMessage.Mark());
        Assert.Equal([0], without.Marked);
        OptionsPage third = (OptionsPage)page.After(new PageMessage.Rows(1)).After(new PageMessage.Mark());
        Assert.Equal(0, third.Marked[0]);
        Assert.NotEqual(best, third.Marked[1]);
        Assert.True(third.Wanted is { InPlace: true });
        Assert.Contains("(being run)", third.Draw(80, 23).ToString(), StringComparison.Ordinal);
        OptionsPage drawn = (OptionsPage)Loaded(third);
        Assert.NotNull(drawn.CurvesOf(1));
        Assert.Null(drawn.After(new PageMessage.Mark()).After(new PageMessage.Mark()).Wanted);
    }

    [Fact]
    public void Two_options_differ_by_stroke_and_letter()
    {
        string text = Loaded(OnSecondNight(Compared)).Draw(120, 39).ToString();
        foreach (string words in (string[])["A ⠒⠒⠒ as it is", "B ⠒ ⠒ 40 lb", "A inside", "B inside", "A liquid", "B left"])
            Assert.Contains(words, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Options_open_in_the_night_of_the_cursor_and_n_and_p_turn_the_night()
    {
        OptionsPage page = (OptionsPage)OnSecondNight(Loaded(Compared));
        Assert.Equal(1, page.Night);
        Assert.Equal(2, ((OptionsPage)page.After(new PageMessage.NextNight(1))).Night);
        Assert.Equal(2, ((OptionsPage)page.After(new PageMessage.NextNight(1)).After(new PageMessage.NextNight(1))).Night);
        Assert.Equal(page.Minute + 10, ((OptionsPage)page.After(new PageMessage.Step(10))).Minute);
    }

    [Fact]
    public void Beyond_an_early_end_a_curve_has_nothing()
    {
        RunReport early = Warmer();
        early.Series.Count = 60;
        OptionCurves curves = OptionCurves.Of(1, early);
        Assert.True(double.IsFinite(curves.Left_kg[59]));
        Assert.True(double.IsNaN(curves.Left_kg[60]));
        Assert.True(double.IsNaN(curves.Of(curves.Left_kg.Length + 10).Left_kg[^1]));
    }

    [Fact]
    public void The_shortage_under_the_cursor_is_explained_and_elsewhere_the_first()
    {
        RunReport report = Explained.Demo.Report;
        DateTimeOffset first = Shortages.First(report)!.Value;
        IPage far = Loaded(Why.After(At(report, report.Scenario.Start)));
        Assert.Contains("none near the cursor", far.Draw(120, 39).ToString(), StringComparison.Ordinal);
        IPage near = Loaded(Why.After(At(report, first)));
        Assert.Contains("the first shortage, under the cursor", near.Draw(120, 39).ToString(), StringComparison.Ordinal);

        DateTimeOffset later = report.Events.Last(e => e.Kind == ReportedKind.ShortBegins).Time;
        IPage last = near.After(At(report, later));
        Assert.NotNull(last.Wanted);
        string text = Loaded(last).Draw(120, 39).ToString();
        Assert.Contains("the shortage of", text, StringComparison.Ordinal);
        Assert.Contains("Enter first shortage", text, StringComparison.Ordinal);
        Assert.Contains("the first shortage", Loaded(last).After(new PageMessage.Choose()).Draw(120, 39).Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_scrolls_to_its_end_and_back_at_once()
    {
        IPage page = Loaded(Limits).After(new PageMessage.Sized(80, 23));
        string top = page.Draw(80, 23).ToString();
        IPage end = page.After(new PageMessage.Last());
        Assert.NotEqual(end.Draw(80, 23).ToString(), end.After(new PageMessage.Rows(-1)).Draw(80, 23).ToString());
        Assert.Equal(top, end.After(new PageMessage.First()).Draw(80, 23).ToString());
        Assert.StartsWith("The coldest night's low", page.After(new PageMessage.NextEvent(1)).Draw(80, 23).Row(2), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_cylinder_has_its_own_figures_on_the_nights()
    {
        RunReport report = FortnightStoryTests.Story.Value.Run;
        NightView view = NightView.Open(report, UnitStyle.Us);
        CylinderAtCursor[] each = [.. CylinderAtCursor.At(view)];
        Assert.Equal(report.Scenario.Rig.Cylinders.Count, each.Length);
        Assert.Contains("in use", each[0].State, StringComparison.Ordinal);
        foreach ((int width, int height) in ((int, int)[])[(80, 23), (120, 39)])
        {
            string text = NightPage.Draw(view, width, height).ToString();
            Assert.All(each, c => Assert.Contains(c.Left, text, StringComparison.Ordinal));
        }

        Assert.Empty(CylinderAtCursor.At(NightView.Open(SampleRun.Report, UnitStyle.Us)));
    }

    private static TripPage Trip => TripPage.Of(FortnightStoryTests.Story.Value.Run.Scenario, UnitStyle.Us);

    private static OptionsPage Compared => OptionsPage.Of(SampleRun.Report, Options, UnitStyle.Us);

    private static WhyPage Why => WhyPage.Of(Explained.Demo.Report, UnitStyle.Us);

    private static LimitsPage Limits => LimitsPage.Of(HandLimits.Chart.Scenario, UnitStyle.Us);

    private static IPage OnSecondNight(IPage page)
    {
        NightView second = NightView.Open(SampleRun.Report, UnitStyle.Us).After(new PageMessage.NextNight(1));
        return page.After(new PageMessage.Opened(new(second.Night, second.Minute, second.Time)));
    }

    private static PageMessage.Opened At(RunReport report, DateTimeOffset time)
        => new(new FrameCursor(0, NightSpan.MinuteAt(report, time), time));

    /// <summary>The page with all it wants, told here and now.</summary>
    private static IPage Loaded(IPage page)
    {
        while (page.Wanted is not null)
            page = page.After(new PageMessage.Done(FiguresFor(page)));
        return page;
    }

    // Figures made by hand, which the snapshots show; an explanation is a real one.
    private static object FiguresFor(IPage page) => page switch
    {
        TripPage => FortnightStoryTests.Story.Value,
        OptionsPage { All.Value: null } => HandRows.Several,
        OptionsPage options => OptionCurves.Of(options.Marked.First(m => options.Curves.All(c => c.Order != m)), Warmer()),
        WhyPage { At: { } at } => ColdSim.Planning.Explain.Explanation.Of(Explained.Demo.Report.Scenario, at),
        WhyPage => Explained.Demo,
        LimitsPage limits => HandLimits.Chart with { Axis = limits.Units.IsUs ? LimitAxis.Fahrenheit : LimitAxis.Celsius },
        _ => throw new ArgumentException(page.Title, nameof(page)),
    };

    [Fact]
    public void What_a_page_works_out_itself_is_what_it_shows()
    {
        Scenario demo = Explained.Demo.Report.Scenario;
        ComparedOption option = new("other start", demo with { Step_s = 120 });
        IPage compared = OptionsPage.Of(Explained.Demo.Report, [option], UnitStyle.Us);
        Assert.Equal(2, Assert.IsType<Comparison>(compared.Wanted!.Run(new Progress<int>(), CancellationToken.None)).Rows.Count);
        Assert.Throws<OperationCanceledException>(() => Limits.Wanted!.Run(new Progress<int>(), new CancellationToken(canceled: true)));
    }

    [Fact]
    public void Figures_with_an_open_ledger_are_not_shown()
    {
        LedgerBalance open = new(0, 2e-3, 0, 0, 0, 0, 0, 0);
        Assert.Same(PageFaults.Ledger, Assert.Throws<InvalidOperationException>(() => PageFaults.IfClosed("figures", default, open)).Message);
        Assert.Equal("figures", PageFaults.IfClosed("figures", [default]));
    }

    // The same nights with a cylinder that stays warmer.
    private static RunReport Warmer()
    {
        RunSeries of = SampleRun.Report.Series, s = new((of.Outside_K.Length - 1) * RunSeries.Spacing_s) { Count = of.Count };
        for (int i = 0; i < of.Count; i++)
        {
            s.Inside_K[i] = Math.Max(of.Inside_K[i], 288);
            s.Liquid_K[i] = of.Liquid_K[i] + 4;
            s.Propane_kg[i] = of.Propane_kg[i] + 5;
        }

        return SampleRun.Report with { Series = s };
    }
}
