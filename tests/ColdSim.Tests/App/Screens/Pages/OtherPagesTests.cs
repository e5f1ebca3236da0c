using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Night;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Planning.Compare;
using ColdSim.Tests.Planning.Explain;
using ColdSim.Tests.Planning.Limits;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Pages;

public class OtherPagesTests
{
    private static readonly ComparedOption[] Options = [new("40 lb", SampleRun.Report.Scenario), new("100 lb", SampleRun.Report.Scenario)];

    public static TheoryData<int, int> Sizes => new() { { 80, 23 }, { 120, 39 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_trip_looks_like_this(int width, int height)
        => Snapshot.Match(Loaded(Trip).Update(new PageMessage.NextEvent(1)).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

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
    public void The_picture_of_limits_looks_like_this(int width, int height)
        => Snapshot.Match(LimitStrip.Draw(HandLimits.Chart, UnitStyle.Us, width).ToString(), SnapshotNameExtension.Create(width, height));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Limits_look_like_this(int width, int height)
        => Snapshot.Match(Loaded(Limits).Draw(width, height).ToString(), SnapshotNameExtension.Create(width, height));

    [Fact]
    public void The_trip_has_its_gas_over_all_days_with_each_refill_at_its_time_and_the_verdicts_beside()
    {
        string[] rows = Loaded(Trip).Draw(80, 23).ToString().Split('\n');
        int words = Array.FindIndex(rows, r => r.Contains("R1 filled", StringComparison.Ordinal));
        Assert.Contains("R2 ", rows[words], StringComparison.Ordinal);
        Assert.True(rows[words].IndexOf('╵', StringComparison.Ordinal) < rows[words].LastIndexOf('╵'));
        Assert.StartsWith("    days", rows[words + 1], StringComparison.Ordinal);
        Assert.Contains(rows[..words], r => r.Contains("gas left", StringComparison.Ordinal) && r.Contains('⠒', StringComparison.Ordinal));
        Assert.Contains(rows, r => r.StartsWith('>') && r.Contains(" holds", StringComparison.Ordinal));
    }

    [Fact]
    public void The_first_failure_of_a_trip_is_named_with_its_time_and_later_ones_are_marked()
    {
        RunReport run = SampleRun.Report;
        TripReport trip = new()
        {
            Trip = FortnightStoryTests.Story.Value.Trip,
            Run = run,
            Nights = [],
            Refills = [],
            Money = FortnightStoryTests.Story.Value.Money,
        };
        Sheet sheet = new(80, 8);
        TripPicture.Draw(sheet, 0, 8, trip, UnitStyle.Us, 0);
        NightReport[] failing = [.. run.Nights.Where(n => n.Verdict != Verdict.Holds)];
        string words = VerdictWords.Short(failing[0].Verdict).ToUpperInvariant(), clock = ClockText.ShortDayClock(failing[0].FirstFailure!.Value);
        Assert.Contains($"{words} {clock}", sheet.ToString(), StringComparison.Ordinal);
        Assert.Equal(failing.Length, sheet.ToString().Count(c => c == '╵'));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_axis_of_the_limits_has_the_ticks_of_the_strips(int width, int height)
    {
        ValueAxis axis = LimitScale.Axis(HandLimits.Chart, UnitStyle.Us);
        IPage page = Loaded(Limits).Update(new PageMessage.Resized(width, height));
        while (!page.Draw(width, height).ToString().Contains("fill of each cylinder", StringComparison.Ordinal))
            page = page.Update(new PageMessage.Rows(1));
        string text = page.Draw(width, height).ToString();
        IReadOnlyList<double> ticks = axis.Ticks(ValueAxis.MostTicks);
        Assert.All(ticks.SkipLast(1), t => Assert.Contains($"{ValueAxis.Number(t)}┤", text, StringComparison.Ordinal));
        Assert.Contains($"{ValueAxis.Number(ticks[^1])} °F┤", text, StringComparison.Ordinal);
        Assert.All("ox#+", mark => Assert.Contains(mark, text));
    }

    [Fact]
    public void Limits_differ_by_mark_and_with_a_blanket_by_stroke()
    {
        string text = LimitStrip.Draw(HandLimits.Chart, UnitStyle.Us, 80).ToString();
        foreach (string words in (string[])["⠒⠒⠒ o bare", "⠒ ⠒ x with blanket", "⠒⠒⠒ # second cylinder", "⠒ ⠒ + second and blankets"])
            Assert.Contains(words, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_can_be_drawn_at_any_size_in_any_state()
    {
        foreach (IPage page in (IPage[])[Trip, Compared, Why, Limits])
        {
            IPage loaded = Loaded(page);
            foreach (IPage state in (IPage[])[page, page.Update(new PageMessage.Cancelled()), page.Update(new PageMessage.Failed("why")), loaded, loaded.Update(new PageMessage.ToggleList())])
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
            Assert.Null(page.DueJob);
            Assert.Contains(says, page.Draw(80, 23).ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_was_stopped_starts_again_on_enter()
    {
        foreach (IPage page in (IPage[])[Trip, Compared, Why, Limits])
        {
            Assert.NotNull(page.DueJob);
            IPage stopped = page.Update(new PageMessage.Cancelled());
            Assert.Null(stopped.DueJob);
            Assert.Contains("Enter starts it again", stopped.Draw(80, 23).ToString(), StringComparison.Ordinal);
            Assert.Same(page.DueJob, stopped.Update(new PageMessage.Choose()).DueJob);
            Assert.Contains("no luck", page.Update(new PageMessage.Failed("no luck")).Draw(80, 23).ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_page_has_its_units()
    {
        foreach (IPage page in (IPage[])[Trip, Compared, Why, Limits])
        {
            string us = Loaded(page).Draw(80, 23).ToString(), si = Loaded(Loaded(page).Update(new PageMessage.UnitsChanged(UnitStyle.Si))).Draw(80, 23).ToString();
            Assert.Contains("°F", us, StringComparison.Ordinal);
            Assert.Contains("°C", si, StringComparison.Ordinal);
            Assert.DoesNotContain("°F", si, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Help_fits_the_least_width_and_keys_are_distinct()
    {
        IPage[] pages = [Trip, Compared, Why, Limits];
        Assert.All(pages.SelectMany(p => p.Help), l => Assert.InRange(l.Length, 0, FrameSheet.MinWidth));
        Assert.Equal("2345", string.Concat(pages.Select(p => p.Key)));
    }

    [Fact]
    public void The_base_and_the_best_are_marked_first_and_space_marks_others()
    {
        OptionsPage page = (OptionsPage)Loaded(Compared);
        Assert.Equal(0, page.Marked[0]);
        Assert.Equal(2, page.Marked.Count);
        int best = page.Marked[1];
        OptionsPage without = (OptionsPage)page.Update(new PageMessage.First()).Update(new PageMessage.ToggleMark());
        Assert.Equal([0], without.Marked);
        OptionsPage third = (OptionsPage)page.Update(new PageMessage.Rows(1)).Update(new PageMessage.ToggleMark());
        Assert.Equal(0, third.Marked[0]);
        Assert.NotEqual(best, third.Marked[1]);
        Assert.True(third.DueJob is { KeepsPageVisible: true });
        Assert.Contains("(being run)", third.Draw(80, 23).ToString(), StringComparison.Ordinal);
        OptionsPage drawn = (OptionsPage)Loaded(third);
        Assert.NotNull(drawn.CurvesOf(1));
        Assert.Null(drawn.Update(new PageMessage.ToggleMark()).Update(new PageMessage.ToggleMark()).DueJob);
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
        Assert.Equal(2, ((OptionsPage)page.Update(new PageMessage.NextNight(1))).Night);
        Assert.Equal(2, ((OptionsPage)page.Update(new PageMessage.NextNight(1)).Update(new PageMessage.NextNight(1))).Night);
        Assert.Equal(page.Minute + 10, ((OptionsPage)page.Update(new PageMessage.Step(10))).Minute);
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
        DateTimeOffset first = WhyPage.FirstShortage(report)!.Value;
        IPage far = Loaded(Why.Update(At(report, report.Scenario.Start)));
        Assert.Contains("none near the cursor", far.Draw(120, 39).ToString(), StringComparison.Ordinal);
        IPage near = Loaded(Why.Update(At(report, first)));
        Assert.Contains("the first shortage, under the cursor", near.Draw(120, 39).ToString(), StringComparison.Ordinal);

        DateTimeOffset later = report.Events.Last(e => e.Kind == ReportedKind.ShortBegins).Time;
        IPage last = near.Update(At(report, later));
        Assert.NotNull(last.DueJob);
        string text = Loaded(last).Draw(120, 39).ToString();
        Assert.Contains("the shortage of", text, StringComparison.Ordinal);
        Assert.Contains("Enter first shortage", text, StringComparison.Ordinal);
        Assert.Contains("the first shortage", Loaded(last).Update(new PageMessage.Choose()).Draw(120, 39).Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_scrolls_to_its_end_and_back_at_once()
    {
        IPage page = Loaded(Limits).Update(new PageMessage.Resized(80, 23));
        string top = page.Draw(80, 23).ToString();
        IPage end = page.Update(new PageMessage.Last());
        Assert.NotEqual(end.Draw(80, 23).ToString(), end.Update(new PageMessage.Rows(-1)).Draw(80, 23).ToString());
        Assert.Equal(top, end.Update(new PageMessage.First()).Draw(80, 23).ToString());
        Assert.StartsWith("The coldest night's low", page.Update(new PageMessage.NextEvent(1)).Draw(80, 23).Row(2), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_cylinder_is_shown_on_the_nights()
    {
        RunReport report = FortnightStoryTests.Story.Value.Run;
        NightView view = NightView.Open(report, UnitStyle.Us);
        CylinderReadout[] each = [.. CylinderReadout.At(view)];
        Assert.Equal(report.Scenario.Rig.Cylinders.Count, each.Length);
        Assert.Contains("in use", each[0].State, StringComparison.Ordinal);
        foreach ((int width, int height) in ((int, int)[])[(80, 23), (120, 39)])
        {
            string text = new NightPage(view).Draw(width, height).ToString();
            Assert.All(each, c => Assert.Contains(c.Left, text, StringComparison.Ordinal));
        }

        Assert.Empty(CylinderReadout.At(NightView.Open(SampleRun.Report, UnitStyle.Us)));
    }

    private static TripPage Trip => TripPage.Of(FortnightStoryTests.Story.Value.Run.Scenario, UnitStyle.Us);

    private static OptionsPage Compared => OptionsPage.Of(SampleRun.Report, Options, UnitStyle.Us);

    private static WhyPage Why => WhyPage.Of(Explained.Demo.Report, UnitStyle.Us);

    private static LimitsPage Limits => LimitsPage.Of(HandLimits.Chart.Scenario, UnitStyle.Us);

    private static IPage OnSecondNight(IPage page)
    {
        NightView second = NightView.Open(SampleRun.Report, UnitStyle.Us).Update(new PageMessage.NextNight(1));
        return page.Update(new PageMessage.Opened(new(second.Night, second.Minute, second.Time)));
    }

    private static PageMessage.Opened At(RunReport report, DateTimeOffset time)
        => new(new TimeCursor(0, MinuteRange.MinuteAt(report, time), time));

    /// <summary>The page with all it wants, from runs that other tests have at hand.</summary>
    private static IPage Loaded(IPage page)
    {
        while (page.DueJob is not null)
            page = page.Update(new PageMessage.Completed(AtHand(page)));
        return page;
    }

    private static object AtHand(IPage page) => page switch
    {
        TripPage => FortnightStoryTests.Story.Value,
        OptionsPage { Ranked.Value: null } => HandRows.Several,
        OptionsPage options => OptionCurves.Of(options.Marked.First(m => options.Curves.All(c => c.Order != m)), Warmer()),
        WhyPage { At: { } at } => ColdSim.Planning.Explain.Explanation.Of(Explained.Demo.Report.Scenario, ColdSim.Planning.Actions.AmountGrid.Us, at),
        WhyPage { Units.IsUs: true } => Explained.Demo,
        WhyPage => Explained.DemoMetric,
        LimitsPage limits => HandLimits.Chart with { Axis = limits.Units.IsUs ? ColdSim.Planning.Limits.LimitAxis.Fahrenheit : ColdSim.Planning.Limits.LimitAxis.Celsius },
        _ => throw new ArgumentOutOfRangeException(nameof(page)),
    };

    [Fact]
    public void A_job_returns_what_its_page_shows()
    {
        Scenario demo = Explained.Demo.Report.Scenario;
        ComparedOption option = new("other start", demo with { Step_s = 120 });
        IPage compared = OptionsPage.Of(Explained.Demo.Report, [option], UnitStyle.Us);
        Assert.Equal(2, Assert.IsType<Comparison>(compared.DueJob!.Run(new Progress<int>(), CancellationToken.None)).Rows.Count);
        Assert.Throws<OperationCanceledException>(() => Limits.DueJob!.Run(new Progress<int>(), new CancellationToken(canceled: true)));
    }

    [Fact]
    public void A_result_with_an_open_ledger_is_not_shown()
    {
        LedgerBalance open = new(0, 2e-3, 0, 0, 0, 0, 0, 0);
        Assert.Same(PageJob.OpenLedger, Assert.Throws<InvalidOperationException>(() => PageJob.IfClosed("figures", default, open)).Message);
        Assert.Equal("figures", PageJob.IfClosed("figures", [default]));
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
