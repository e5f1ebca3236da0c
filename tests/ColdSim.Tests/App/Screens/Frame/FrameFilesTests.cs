using ColdSim.App.Commands;
using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Readings;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Tests.App.Commands;
using Terminal.Gui.Input;
using Xunit;

namespace ColdSim.Tests.App.Screens.Frame;

/// <summary>Opening, reading again, editing, copying and writing files from the screen; on real files, with the program's own reader.</summary>
public sealed class FrameFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-screen-").FullName;
    private readonly ScreenFiles _files = new(TimeProvider.System, () => new DiskFiles());

    public FrameFilesTests()
    {
        foreach (string name in (string[])["cold-snap.toml", "changeover.toml"])
        {
            File.Copy(Shell.Demo(name), Path.Combine(_folder, name));
            foreach (string weather in Directory.GetFiles(Path.GetDirectoryName(Shell.Demo(name))!, "*.csv"))
                File.Copy(weather, Path.Combine(_folder, Path.GetFileName(weather)), overwrite: true);
        }

        foreach (string log in Directory.GetFiles(_folder, "*.log.csv"))
            File.Delete(log);
    }

    private string Trip => Path.Combine(_folder, "cold-snap.toml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private FrameView Opened() => _files.Open(Trip, CancellationToken.None).Frame(UnitStyle.Us);

    private static FrameView Pressed(FrameView view, params Key[] keys)
    {
        foreach (Key key in keys)
            view = PageKeys.Frame(key, view) is { } message ? view.Update(message) : view;
        return view;
    }

    private static Key[] Typed(string text) => [.. text.Select(c => new Key(c))];

    /// <summary>Does the jobs that are listed for the frame, its overlay and the open page, until there are none.</summary>
    private static FrameView Settled(FrameView view, Func<RunningJob, bool>? which = null)
    {
        while (((RunningJob?[])[view.Work, view.OverJob, view.Jobs[view.Open]]).FirstOrDefault(j => j is not null && which?.Invoke(j) != false) is { } running)
        {
            PageMessage ended;
            try
            {
                ended = new PageMessage.Completed(running.Job.Run(new Progress<int>(), CancellationToken.None));
            }
            catch (InvalidOperationException e)
            {
                ended = new PageMessage.Failed(e.Message);
            }

            view = view.Update(new FrameMessage.JobEnded(running.Job, ended));
        }

        return view;
    }

    private static string Drawn(FrameView view) => FrameSheet.Draw(view, 80, 24).ToString();

    private static void Replace(string path, string what, string by)
    {
        string text = File.ReadAllText(path);
        Assert.Contains(what, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(what, by, StringComparison.Ordinal));
    }

    [Fact]
    public void The_files_of_the_folder_are_listed_each_with_its_verdict_and_the_chosen_one_opens()
    {
        FrameView list = Pressed(Opened(), Key.O);
        Assert.Contains("> cold-snap.toml", Drawn(list), StringComparison.Ordinal);
        Assert.Contains("running…", Drawn(list), StringComparison.Ordinal);
        list = Settled(list);
        Assert.Contains("cold-snap.toml              FAILS", Drawn(list), StringComparison.Ordinal);
        Assert.Contains("changeover.toml             HOLDS", Drawn(list), StringComparison.Ordinal);
        FrameView other = Settled(Pressed(list, Key.CursorUp, Key.Enter));
        Assert.EndsWith("changeover.toml", other.Source!.File, StringComparison.Ordinal);
        Assert.Contains("Opened changeover.toml.", Drawn(other), StringComparison.Ordinal);
    }

    [Fact]
    public void A_faulty_file_is_told_with_its_place_and_what_was_open_stays()
    {
        Replace(Path.Combine(_folder, "changeover.toml"), "[furnace]", "[furnac]");
        FrameView list = Settled(Pressed(Opened(), Key.O));
        Assert.Contains("changeover.toml:", Drawn(list), StringComparison.Ordinal);
        FrameView other = Settled(Pressed(list, Key.CursorUp, Key.Enter));
        Assert.Contains("Opening changeover.toml: it could not be done.", Drawn(other), StringComparison.Ordinal);
        Assert.EndsWith("cold-snap.toml", Pressed(other, Key.Esc).Source!.File, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_on_the_disk_is_announced_and_read_with_page_night_and_time_kept()
    {
        FrameView view = Pressed(Opened(), Key.N, Key.CursorRight, new Key('4'));
        TimeCursor at = view.Cursor!;
        Assert.Null(view.Source!.Stamps.Changed());
        Replace(Trip, "title = \"", "title = \"Changed: ");
        Assert.Equal(Trip, view.Source!.Stamps.Changed());
        view = view.Update(new FrameMessage.FileChanged(Trip));
        view = Pressed(view, new Key('1'));
        Assert.Contains("cold-snap.toml was changed on the disk.  R read it", Drawn(view), StringComparison.Ordinal);
        view = Settled(Pressed(view, new Key('4'), Key.R.WithShift), j => j.Job.Description.StartsWith("Reading", StringComparison.Ordinal));
        Assert.Equal(('4', at), (view.Page.Key, view.Cursor));
        Assert.StartsWith("Changed: ", view.Report!.Scenario.Title, StringComparison.Ordinal);
        Assert.Null(view.ChangedFile);
        Assert.Null(view.Source!.Stamps.Changed());
    }

    [Fact]
    public void A_reading_added_on_its_page_moves_every_page()
    {
        FrameView view = Settled(Pressed(Opened(), new Key('6')));
        double before = view.Report!.Nights[^1].LeftAtEnd.Kilograms;
        DateTimeOffset start = view.Report.Scenario.Start;
        view = Pressed(view, [Key.Enter, .. Typed("40.1 lb"), Key.CursorDown, Key.CursorDown, Key.CursorDown, .. Typed(start.AddHours(3).ToString("yyyy-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture)), Key.Enter]);
        view = Settled(view);
        if (!File.Exists(LogFile.PathOf(Trip)))
            view = Settled(Pressed(view, Key.Enter));
        Assert.True(File.Exists(LogFile.PathOf(Trip)), Drawn(view));
        Assert.NotNull(view.Report!.Scenario.StartedFrom);
        Assert.NotEqual(before, view.Report.Nights[^1].LeftAtEnd.Kilograms);
        Assert.StartsWith("Written to cold-snap.log.csv", ((ReadingsPage)view.Page).Notice, StringComparison.Ordinal);
        Assert.Same(view.Report, Assert.IsType<WhyPage>(view.Pages.Single(p => p.Key == '4')).Report);
    }

    [Fact]
    public void The_form_asks_the_questions_of_new_says_what_is_wrong_and_opens_what_it_wrote()
    {
        string path = Path.Combine(_folder, "mine.toml");
        FrameView form = Pressed(Opened(), [Key.N.WithShift, .. Typed(path), Key.Enter, Key.Enter, Key.Enter, .. Typed("a bucket"), Key.CursorDown]);
        Assert.Contains("> Cylinders are", Drawn(form), StringComparison.Ordinal);
        Assert.NotEmpty(((NewForm)form.Over!).Faults);
        form = Pressed(form, [Key.CursorUp, .. Enumerable.Repeat(Key.Backspace, 8), .. Typed("30 lb half")]);
        form = Pressed(form, [.. Enumerable.Repeat(Key.Enter, 7)]);
        Assert.Empty(((NewForm)form.Over!).Faults);
        FrameView opened = Settled(form, j => j.Job.Description.StartsWith("Writing", StringComparison.Ordinal));
        Assert.Null(opened.Over);
        Assert.Equal(path, opened.Source!.File);
        Assert.Contains("30 lb", opened.Report!.Scenario.Rig.Cylinders[0].Name, StringComparison.Ordinal);
    }

    [Fact]
    public void The_form_overwrites_nothing()
    {
        FrameView form = Pressed(Opened(), [Key.N.WithShift, .. Typed(Trip), Key.End, Key.Enter]);
        string before = File.ReadAllText(Trip);
        FrameView refused = Settled(form, j => j.Job.Description.StartsWith("Writing", StringComparison.Ordinal));
        Assert.NotEmpty(((NewForm)refused.Over!).Faults);
        Assert.Equal(before, File.ReadAllText(Trip));
        Assert.Null(Pressed(refused, Key.Esc).Over);
    }

    [Fact]
    public void The_chosen_night_and_the_report_are_written_beside_the_scenario_and_only_over_their_like()
    {
        FrameView view = Settled(Pressed(Opened(), Key.N, Key.E.WithShift));
        string path = Path.Combine(_folder, $"cold-snap-night{view.Cursor!.Night + 1}.csv");
        Assert.Contains("written to", view.Notice, StringComparison.Ordinal);
        string[] rows = File.ReadAllLines(path);
        Assert.Equal((view.Report!.Nights[view.Cursor.Night].To - view.Report.Nights[view.Cursor.Night].From).TotalMinutes, rows.Length - 1);
        Assert.Contains("<svg", File.ReadAllText(Path.Combine(_folder, "cold-snap.html")), StringComparison.Ordinal);
        Assert.Equal(view.Notice, Settled(Pressed(view, Key.E.WithShift)).Notice);
        File.WriteAllText(path, "mine");
        Assert.Contains("could not be done", Drawn(Settled(Pressed(view, Key.E.WithShift))), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(path));
    }

    [Fact]
    public void The_sentence_goes_to_the_clipboard_and_the_file_to_the_editor()
    {
        FrameView copied = Pressed(Opened(), Key.Y);
        Assert.StartsWith("FAILS", Assert.IsType<TerminalEffect.Copy>(copied.Effect).Text, StringComparison.Ordinal);
        Assert.Contains("Copied: FAILS", Drawn(copied), StringComparison.Ordinal);
        Assert.Equal(new TerminalEffect.Edit(Trip), Pressed(Opened(), Key.E).Effect);
        FrameView demo = (_files.Open(Trip, CancellationToken.None) with { File = null }).Frame(UnitStyle.Us);
        Assert.Contains("no file of its own", Pressed(demo, Key.E).Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fit_is_taken_over_with_one_key_and_what_was_there_is_kept()
    {
        foreach (string file in Directory.GetFiles(Path.GetDirectoryName(Shell.Demo("three-days.toml"))!, "three-days*"))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)), overwrite: true);
        string path = Path.Combine(_folder, "three-days.toml"), before = File.ReadAllText(path);
        FrameView view = Settled(Pressed(_files.Open(path, CancellationToken.None).Frame(UnitStyle.Us), new Key('6')));
        view = Settled(Pressed(view, Key.CursorRight, Key.Enter, Key.Enter));
        Assert.Contains("t take the fit over", Drawn(view), StringComparison.Ordinal);
        view = Settled(Pressed(view, Key.T));
        Assert.Contains("[fit]", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(path + ".bak"));
        Assert.NotNull(view.Report!.Scenario.Fit);
    }

    [Fact]
    public void File_lists_and_forms_can_be_drawn_at_any_size()
    {
        foreach (Overlay over in (Overlay[])[Pressed(Opened(), Key.O).Over!, Pressed(Opened(), Key.N.WithShift).Over!])
        {
            foreach (int height in (int[])[1, 3, 10, 17, 24])
            {
                foreach (int width in (int[])[1, 40, 60, 80])
                    over.Draw(new Sheet(width, height), FrameSheet.Rows);
            }
        }
    }
}
