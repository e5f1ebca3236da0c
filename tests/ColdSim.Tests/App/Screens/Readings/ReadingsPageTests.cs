using System.Text;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Readings;
using ColdSim.App.Text;
using ColdSim.Files.Disk;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using CsCheck;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Screens.Readings;

public sealed class ReadingsPageTests : IDisposable
{
    private const string Keys = "0123456789.,-+lbkginftus%°FC/;=\" ";
    private static readonly IProgress<int> Nobody = new Silent();
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public ReadingsPageTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios, "three-days*"))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
    }

    private string ScenarioPath => Path.Combine(_folder, "three-days.toml");

    private string Log => LogFile.PathOf(ScenarioPath);

    private ReadingsPage Opened() => Settled(ReadingsPage.Of(Scenario(), ScenarioPath, UnitStyle.Us, new FixedClock(new(2027, 1, 16, 14, 30, 0, TimeSpan.Zero))));

    private Scenario Scenario() => ScenarioReader.Read(ScenarioPath).Scenario!;

    /// <summary>Does what the page wants, as the frame would.</summary>
    private static ReadingsPage Settled(ReadingsPage page)
    {
        while (page.DueJob is { } work)
        {
            PageMessage ended;
            try
            {
                ended = new PageMessage.Completed(work.Run(Nobody, CancellationToken.None));
            }
            catch (IOException e)
            {
                ended = new PageMessage.Failed(e.Message);
            }

            page = (ReadingsPage)page.Update(ended);
        }

        return page;
    }

    private static ReadingsPage After(ReadingsPage page, params PageMessage[] messages)
        => messages.Aggregate(page, (p, m) => Settled((ReadingsPage)p.Update(m)));

    private static ReadingsPage Typed(ReadingsPage page, string text)
        => text.EnumerateRunes().Aggregate(page, (p, r) => (ReadingsPage)p.Update(new PageMessage.Typed(r)));

    private static PageMessage Enter => new PageMessage.Choose();

    private static PageMessage Right => new PageMessage.Step(10);

    private static PageMessage Tab => new PageMessage.NextEvent(1);

    // A page has a row less than the terminal: the frame's.
    private static void Match(ReadingsPage page, string name, int width, int height)
        => Snapshot.Match(page.Draw(width, height - FrameSheet.Rows).ToString(), SnapshotNameExtension.Create(name, width, height));

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_page_looks_like_this(int width, int height)
    {
        ReadingsPage page = Opened();
        Match(page, "log", width, height);
        page = Typed(After(page, Enter), "40.1 lb");
        Match(page, "entry", width, height);
        Match(Typed(page, "s of it"), "fault", width, height);
        page = page with { Tab = ReadingsTab.Fit, Fit = new(null, ["the log has 3 readings; at least 5 are needed"], null) };
        Match(page, "too little", width, height);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_fit_looks_like_this(int width, int height)
    {
        ReadingsPage page = After(Opened(), Right, Enter);
        Match(page, "fit", width, height);
        Assert.True(page.WithFit);
        Assert.NotNull(page.Fit?.Report);
        string drawn = page.Draw(width, height - FrameSheet.Rows).ToString();
        Assert.Contains("heat loss", drawn, StringComparison.Ordinal);
        Assert.Contains("from the readings", drawn, StringComparison.Ordinal);
        Assert.Contains("mostly assumed", drawn, StringComparison.Ordinal);
        Assert.Contains("┊", drawn, StringComparison.Ordinal);
        ReadingsPage log = After(page, new PageMessage.Step(-10));
        Assert.Contains("as just fitted", log.Draw(width, height).ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("as just fitted", After(log, new PageMessage.ToggleMark()).Draw(width, height).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_typed_means_pounds_at_once_and_enter_writes_it_as_the_command_does()
    {
        ReadingsPage page = Typed(After(Opened(), Enter), "40.1 lb");
        Assert.Equal("29.0 lb", page.Form.Tare);
        Assert.Contains("holds 11.1 ± 0.5 lb of propane", page.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.Contains("used since Fri 15 Jan 16:15: 4.5 lb", page.Draw(80, 23).ToString(), StringComparison.Ordinal);
        string before = File.ReadAllText(Log);
        page = After(page, Enter);
        Assert.Equal(before + "2027-01-16T07:30-07:00,40 lb,weight,40.1 lb,,tare=29.0 lb,\n", File.ReadAllText(Log));
        Assert.StartsWith("Written to three-days.log.csv: Sat 16 Jan 07:30, weight 40.1 lb: 11.1 lb of propane", page.Notice, StringComparison.Ordinal);
        Assert.Equal("", page.Form.Reading);
        Assert.Equal(8, page.Log!.Use.Rows.Count);
    }

    [Fact]
    public void A_log_that_the_run_reads_as_its_weather_gets_no_reading()
    {
        FilesRead reads = new();
        reads.Add(Path.Combine(_folder, "weather.csv"));
        File.CreateSymbolicLink(Path.Combine(_folder, "weather.csv"), Log);
        string before = File.ReadAllText(Log);
        ReadingsPage page = After(Typed(After(Opened() with { Reads = reads }, Enter), "40.1 lb"), Enter);
        Assert.Contains("is the same file as", page.Notice, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Log));
    }

    [Fact]
    public void A_reading_that_looks_wrong_is_written_by_a_second_enter_only_and_marked_as_checked()
    {
        string before = File.ReadAllText(Log);
        ReadingsPage page = After(Typed(After(Opened(), Enter), "60.1 lb"), Enter);
        Assert.StartsWith("This reading looks wrong: 31.1 lb left is 15.5 lb more than at the reading before it, line 8", page.Notice, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Log));
        ReadingsPage changed = After(Typed(page, "s").Update(new PageMessage.Backspace()) as ReadingsPage ?? page, Enter);
        Assert.Equal(before, File.ReadAllText(Log));
        After(changed, Enter);
        Assert.Equal(before + "2027-01-16T07:30-07:00,40 lb,weight,60.1 lb,,tare=29.0 lb; checked,\n", File.ReadAllText(Log));
    }

    [Fact]
    public void A_reading_that_cannot_be_right_is_left_out_and_named()
    {
        File.AppendAllText(Log, "2027-01-15T18:00-07:00,40 lb,weight,60.0 lb,,tare=29.0 lb,\n");
        ReadingsPage page = Opened();
        Assert.Equal(7, page.Log!.Use.Rows.Count);
        Assert.Contains("31.0 lb left is 15.4 lb more", page.Draw(200, 40).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("40.1", "has no unit")]
    [InlineData("4 lb", "of propane, less")]
    [InlineData("40 in", "")]
    [InlineData("forty", "")]
    public void A_fault_is_reported_in_words_and_nothing_is_written(string text, string words)
    {
        string before = File.ReadAllText(Log);
        ReadingsPage page = Typed(After(Opened(), Enter), text);
        Assert.Contains("Cannot be read yet:", page.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.Contains(words, page.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.Equal("Nothing was written.", After(page, Enter).Notice);
        Assert.Equal(before, File.ReadAllText(Log));
    }

    [Fact]
    public void Every_method_has_its_lines_and_a_level_needs_a_temperature()
    {
        ReadingsPage page = After(Opened(), Enter, new PageMessage.NextEvent(-1));
        Assert.Equal(FormField.Method, page.Form.Field);
        foreach (string method in LogMethods.All)
        {
            Assert.Equal(method, page.Form.Method);
            Assert.Equal(LogMethods.ReadsLevel(method), page.Form.Fields(page.Scenario.Rig).Contains(FormField.Temperature));
            page = After(page, Right);
        }

        page = Typed(After(page, Right, Tab), "9 in");
        Assert.Contains("no liquid temperature", page.Draw(80, 23).ToString(), StringComparison.Ordinal);
        Assert.Contains("lb of propane", Typed(After(page, Tab), "10 °F").Draw(80, 23).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_reading_is_marked_and_so_is_the_one_after()
    {
        string[] lines = File.ReadAllLines(Log);
        lines[4] = lines[4].Replace("54.2", "58.2", StringComparison.Ordinal);
        File.WriteAllLines(Log, lines);
        string drawn = Opened().Draw(120, 39).ToString();
        Assert.Contains("looks wrong", drawn, StringComparison.Ordinal);
        Assert.Contains("after a wrong one", drawn, StringComparison.Ordinal);
    }

    [Fact]
    public void Damaged_lines_are_reported_and_left_out_and_no_log_is_an_empty_one()
    {
        File.AppendAllText(Log, "torn\n");
        Assert.Contains("left out: ", Opened().Draw(80, 23).ToString(), StringComparison.Ordinal);
        File.Delete(Log);
        Assert.Contains("No readings yet", Opened().Draw(80, 23).ToString(), StringComparison.Ordinal);
        ReadingsPage demo = ReadingsPage.Of(Scenario(), null, UnitStyle.Us, TimeProvider.System);
        Assert.Null(demo.DueJob);
        Assert.Contains("The demo has no file", After(demo, Enter, Right, Tab).Draw(80, 23).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_that_cannot_be_written_keeps_the_form()
    {
        ReadingsPage page = Typed(After(Opened(), Enter), "40.1 lb");
        File.Delete(Log);
        Directory.CreateDirectory(Log);
        (ReadingsPage asked, PageMessage ended) = ((ReadingsPage)page.Update(Enter), new PageMessage.Failed("it cannot be written"));
        Assert.True(asked.IsWriting);
        Assert.Same(asked.DueJob, ((ReadingsPage)asked.Update(new PageMessage.Cancelled())).DueJob);
        ReadingsPage after = (ReadingsPage)asked.Update(ended);
        Assert.Equal("40.1 lb", after.Form.Reading);
        Assert.Equal("it cannot be written", after.Notice);
    }

    [Fact]
    public void A_fit_can_be_stopped()
    {
        ReadingsPage asked = (ReadingsPage)After(Opened(), Right).Update(Enter);
        Assert.NotNull(asked.DueJob);
        ReadingsPage stopped = (ReadingsPage)asked.Update(new PageMessage.Cancelled());
        Assert.Null(stopped.DueJob);
        Assert.Null(stopped.Fit);
        using CancellationTokenSource source = new();
        Assert.ThrowsAny<OperationCanceledException>(() => asked.DueJob!.Run(new Stopping(source), source.Token));
    }

    [Fact]
    public void Whatever_is_typed_nothing_throws_and_every_size_can_be_drawn()
    {
        ReadingsPage page = After(Opened(), Enter);
        Gen<int> scalar = Gen.OneOf(Gen.Int[0x20, 0x7e], Gen.Int[0x20, 0xd7ff], Gen.Int[0xe000, 0x10ffff], Gen.Int[0, Keys.Length - 1].Select(i => (int)Keys[i]));
        Gen<PageMessage> message = Gen.Frequency(
            (8, scalar.Select(v => (PageMessage)new PageMessage.Typed(new Rune(v)))),
            (1, Gen.Const((PageMessage)new PageMessage.Backspace())),
            (2, Gen.Int[-1, 1].Select(d => (PageMessage)new PageMessage.NextEvent(d == 0 ? 1 : d))),
            (1, Gen.Int[-1, 1].Select(d => (PageMessage)new PageMessage.Step(10 * d))));
        message.Array[0, 30].Sample(
            messages =>
            {
                ReadingsPage now = messages.Aggregate(page, (p, m) => (ReadingsPage)p.Update(m));
                foreach ((int width, int height) in ((int, int)[])[(60, 16), (80, 23), (120, 39), (1, 1), (0, 0)])
                    Assert.Equal(height, now.Draw(width, height).Height);
                (LogEntry? entry, _, IReadOnlyList<string> faults) = now.Form.Read(now.Scenario.Rig, now.Now);
                Assert.Equal(entry is null, faults.Count > 0);
            },
            iter: 400);
    }

    [Fact]
    public void The_frame_gives_letters_and_digits_to_the_form_and_six_opens_it()
    {
        FrameView view = new([Opened()], UnitStyle.Us);
        view = view.Update(new FrameMessage.ToPage(new PageMessage.Choose()));
        Assert.True(view.Page.TakesText);
        Assert.Equal('6', view.Page.Key);
        foreach (ReadingsTab part in Enum.GetValues<ReadingsTab>())
        {
            foreach (int height in (int[])[0, 1, 2, 5, 16, 23, 39])
                Assert.Equal(height, (Opened() with { Tab = part }).Draw(80, height).Height);
        }
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private sealed class Silent : IProgress<int>
    {
        public void Report(int value)
        {
        }
    }

    private sealed class Stopping(CancellationTokenSource source) : IProgress<int>
    {
        public void Report(int value) => source.Cancel();
    }
}
