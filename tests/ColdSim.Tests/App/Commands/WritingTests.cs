using System.Globalization;
using ColdSim.App.Commands;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Tests.Files;
using ColdSim.Tests.Files.Disk;
using ColdSim.Tests.Files.Weather;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>Every file that a command writes: never over what it reads, never over what somebody else wrote, whole or not at all.</summary>
public sealed class WritingTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-").FullName;

    public WritingTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios))
            File.Copy(file, In(Path.GetFileName(file)));
        File.WriteAllText(In("station.epw"), Samples.Epw);
        File.WriteAllText(In("logger.csv"), "when,t\n2025-01-14T16:00Z,-5\n2025-01-14T17:00Z,-6\n2025-01-14T18:00Z,-7\n");
        File.WriteAllText(In("map.toml"), "time = \"when\"\nair = \"t\"\nair_unit = \"°C\"\n");
    }

    // The words of each kind of write; {out} is the file.
    public static TheoryData<string, string> Kinds => new()
    {
        { "run cold-snap.toml --csv {out}", "out.csv" },
        { "trip fortnight.toml --csv {out}", "out.csv" },
        { "compare cold-snap.toml --sizes 30lb --csv {out}", "out.csv" },
        { "limits cold-snap.toml --fills 50 --csv {out}", "out.csv" },
        { "weather station.epw --out {out}", "out.csv" },
        { "weather logger.csv --columns map.toml --out {out}", "out.csv" },
        { "report cold-snap.toml --out {out}", "out.html" },
        { "report cold-snap.toml --format md --out {out}", "out.md" },
        { "new {out}", "out.toml" },
        { "fit three-days.toml --out {out}", "out.toml" },
        { "fit three-days.toml --in-place", "three-days.toml" },
        { "log add three-days.toml --weight 38lb --at 2027-01-15T18:00-07:00 --checked", "three-days.log.csv" },
    };

    [Theory]
    [InlineData("run cold-snap.toml --csv", "cold-snap.toml", "cold-snap-weather.csv", "cold-snap.log.csv")]
    [InlineData("run three-days.toml --csv", "three-days.toml", "three-days.weather.csv", "three-days.log.csv")]
    [InlineData("run three-days.toml --no-log --csv", "three-days.log.csv")]
    [InlineData("trip fortnight.toml --csv", "fortnight.toml", "fortnight-1.csv", "fortnight-2.csv", "fortnight-3.csv")]
    [InlineData("compare cold-snap.toml --sizes 30lb --csv", "cold-snap.toml", "cold-snap-weather.csv")]
    [InlineData("limits cold-snap.toml --fills 50 --csv", "cold-snap.toml", "cold-snap-weather.csv")]
    [InlineData("report cold-snap.toml --out", "cold-snap.toml", "cold-snap-weather.csv")]
    [InlineData("report three-days.toml --format md --out", "three-days.toml", "three-days.weather.csv", "three-days.log.csv")]
    [InlineData("weather station.epw --out", "station.epw")]
    [InlineData("weather logger.csv --columns map.toml --out", "logger.csv", "map.toml")]
    [InlineData("fit three-days.toml --out", "three-days.toml", "three-days.weather.csv", "three-days.log.csv")]
    public void A_path_that_is_read_is_never_written(string words, params string[] inputs)
    {
        foreach (string input in inputs)
        {
            string? before = File.Exists(In(input)) ? File.ReadAllText(In(input)) : null;
            List<string> names = [In(input), In($"./{input}")];
            if (before is not null)
            {
                names.AddRange([In("linked-" + input), In("hard-" + input), In($"linked-folder/{input}")]);
                File.CreateSymbolicLink(In("linked-" + input), input);
                Unix.HardLink(In(input), In("hard-" + input));
                if (!Directory.Exists(In("linked-folder")))
                    File.CreateSymbolicLink(In("linked-folder"), _folder);
            }

            foreach (string name in names)
            {
                Shell shell = Run(2, $"{words} {{out}} --force", name);
                Assert.Contains($"'{name}'", shell.Error, StringComparison.Ordinal);
                Assert.Contains("never overwritten", shell.Error, StringComparison.Ordinal);
                Assert.Equal("", shell.Out);
                Assert.Equal(before, File.Exists(In(input)) ? File.ReadAllText(In(input)) : null);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_file_that_somebody_else_wrote_is_replaced_only_with_force(string words, string file)
    {
        if (words.StartsWith("log add", StringComparison.Ordinal))
        {
            File.WriteAllText(In(file), "my own notes\n");
            Assert.Contains("its first line is not a log's header", Run(2, words, "").Error, StringComparison.Ordinal);
            Assert.Equal("my own notes\n", File.ReadAllText(In(file)));
            return;
        }

        string target = words.Contains("--in-place", StringComparison.Ordinal) ? file + ".bak" : file;
        foreach (string mine in (string[])["my own notes\n", "time,air [°C]\n2025-01-14T16:00Z,-5\n", "# A ColdSim scenario, which I wrote\n", "\u007fELF\0\0"])
        {
            File.WriteAllText(In(target), mine);
            Shell shell = Run(2, words, In(target));
            Assert.Contains($"'{In(target)}' exists already", shell.Error, StringComparison.Ordinal);
            Assert.Contains("replace it with --force", shell.Error, StringComparison.Ordinal);
            Assert.Equal("", shell.Out);
            Assert.Equal(mine, File.ReadAllText(In(target)));
        }

        Run(0, words + " --force", In(target));
        Assert.NotEqual("\u007fELF\0\0", File.ReadAllText(In(target)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_file_of_our_own_is_replaced_without_asking_and_keeps_its_permissions(string words, string file)
    {
        Run(0, words, In(file));
        string first = File.ReadAllText(In(file));
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(In(file), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead);
        Run(0, words.Replace("38lb", "37lb", StringComparison.Ordinal), In(file));
        Assert.StartsWith(first[..20], File.ReadAllText(In(file)), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead, File.GetUnixFileMode(In(file)));
    }

    [Theory]
    [InlineData("cold-snap.toml")]
    [InlineData("changeover.toml")]
    [InlineData("mixed-gas.toml")]
    [InlineData("battery-first.toml")]
    [InlineData("blanket-or-second.toml")]
    [InlineData("breakfast-overload.toml")]
    public void The_csv_of_every_kind_of_rig_is_known_as_ours(string scenario)
    {
        Run(0, $"run {scenario} --no-log --csv {{out}}", In("out.csv"));
        Run(0, $"run {scenario} --no-log --csv {{out}}", In("out.csv"));
        Run(0, $"trip {scenario} --no-log --csv {{out}}", In("nights.csv"));
        Run(0, $"trip {scenario} --no-log --csv {{out}}", In("nights.csv"));
        Assert.Contains("does not look like the nights of a trip", Run(2, $"trip {scenario} --no-log --csv {{out}}", In("out.csv")).Error, StringComparison.Ordinal);
    }

    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Kinds))]
    public void A_disk_that_fails_at_any_step_leaves_every_file_as_it_was_and_no_draft(string words, string file)
    {
        foreach (bool there in (bool[])[false, true])
        {
            if (there)
                Run(0, words, In(file));
            SortedDictionary<string, string> before = Everything();
            bool appends = words.StartsWith("log add", StringComparison.Ordinal);
            foreach ((DiskStep step, long bytes) in Faults(appends))
            {
                FailingDisk disk = new(step, bytes);
                Shell shell = Run(2, words, In(file), new DiskFiles(disk));
                Assert.NotEqual(0, disk.Faults);
                Assert.Contains("cannot be written: the disk is full", shell.Error, StringComparison.Ordinal);
                Assert.DoesNotContain("runtime", shell.Error, StringComparison.Ordinal);
                Assert.DoesNotContain(".part", shell.Error, StringComparison.Ordinal);
                Assert.Equal(before, Everything());
            }
        }
    }

    [Theory]
    [InlineData("fit three-days.toml --in-place", "three-days.toml")]
    [InlineData("new {out}", "out.toml")]
    public void Where_the_second_of_two_files_fails_it_is_as_it_was_and_the_first_is_whole(string words, string second)
    {
        string? before = File.Exists(In(second)) ? File.ReadAllText(In(second)) : null;
        foreach ((DiskStep step, long bytes) in Faults(appends: false))
        {
            FailingDisk disk = new(step, bytes, files: 1);
            Assert.Contains($"'{In(second)}' cannot be written: the disk is full", Run(2, words, In(second), new DiskFiles(disk)).Error, StringComparison.Ordinal);
            Assert.NotEqual(0, disk.Faults);
            Assert.Equal(before, File.Exists(In(second)) ? File.ReadAllText(In(second)) : null);
            Assert.Equal(before ?? StarterScenario.WeatherText(), File.ReadAllText(In(before is null ? "out.weather.csv" : second + ".bak")));
            Assert.Empty(Directory.GetFiles(_folder, ".coldsim-*"));
        }
    }

    [Fact]
    public void An_edit_in_place_changes_nothing_but_the_fit_and_keeps_every_comment()
    {
        string scenario = In("three-days.toml"), before = File.ReadAllText(scenario);
        string noted = before.TrimEnd() + "\n\n# my note on the fit\n[fit]\n# inside it\nheat_loss_factor = 1.1\nheat_loss_error = 0.1 # mine too\n# below it\n\n# about the verdict\n[verdict]\ndawn = \"07:00\"\n# the last word\n";
        File.WriteAllText(scenario, noted);
        Run(0, "fit three-days.toml --in-place", "");
        string after = File.ReadAllText(scenario);
        foreach (string kept in (string[])["# my note on the fit\n", "# inside it\n", "# below it\n", "# about the verdict\n[verdict]\ndawn = \"07:00\"\n# the last word\n", before.TrimEnd()])
            Assert.Contains(kept, after, StringComparison.Ordinal);
        Assert.DoesNotContain("1.1\n", after, StringComparison.Ordinal);
        Assert.Equal(noted, File.ReadAllText(scenario + ".bak"));
        Run(0, "fit three-days.toml --in-place", "");
        Assert.Equal(after, File.ReadAllText(scenario));
        Assert.Equal(0, new Shell().Run("check", scenario));
    }

    [Fact]
    public void A_scenario_that_somebody_changes_meanwhile_is_not_written_over()
    {
        string scenario = In("three-days.toml");
        Shell shell = Run(2, "fit three-days.toml --in-place", "", new ChangedWhileRead(scenario));
        Assert.Contains("was changed by somebody else", shell.Error, StringComparison.Ordinal);
        Assert.EndsWith("# saved in an editor\n", File.ReadAllText(scenario), StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_that_is_the_weather_by_another_name_gets_no_reading()
    {
        File.Delete(In("three-days.log.csv"));
        File.CreateSymbolicLink(In("three-days.log.csv"), "three-days.weather.csv");
        string weather = File.ReadAllText(In("three-days.weather.csv"));
        Assert.Contains("three-days.log.csv", Run(2, "log add three-days.toml --weight 38lb", "").Error, StringComparison.Ordinal);
        Assert.Equal(weather, File.ReadAllText(In("three-days.weather.csv")));
    }

    [Fact]
    public void A_starter_in_which_something_was_changed_is_the_persons()
    {
        Run(0, "new {out}", In("trip.toml"));
        Run(0, "new {out}", In("trip.toml"));
        File.AppendAllText(In("trip.weather.csv"), "\n");
        Assert.Contains($"'{In("trip.weather.csv")}' exists already", Run(2, "new {out}", In("trip.toml")).Error, StringComparison.Ordinal);
        Run(0, "new {out} --force", In("trip.toml"));
        Assert.Equal(StarterScenario.WeatherText(), File.ReadAllText(In("trip.weather.csv")));
    }

    [Fact]
    public async Task A_pipe_and_a_device_are_written_to()
    {
        Run(0, "run cold-snap.toml --csv {out}", "/dev/null");
        Assert.Contains("'/dev/full' cannot be written: the disk is full", Run(2, "run cold-snap.toml --csv {out}", "/dev/full").Error, StringComparison.Ordinal);
        Unix.MakePipe(In("pipe"));
        Task<string> read = Task.Run(() => File.ReadAllText(In("pipe")));
        Run(0, "run cold-snap.toml --csv {out}", In("pipe"));
        Run(0, "run cold-snap.toml --csv {out}", In("whole.csv"));
        Assert.Equal(File.ReadAllText(In("whole.csv")), await read.WaitAsync(TimeSpan.FromSeconds(60)));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static (DiskStep Step, long Bytes)[] Faults(bool appends)
    {
        (DiskStep, long)[] steps = [(DiskStep.Write, 0), (DiskStep.Write, 1), (DiskStep.Write, 50), (DiskStep.Flush, 0)];
        return appends ? steps : [.. steps, (DiskStep.Rename, 0)];
    }

    private string In(string file) => Path.Combine(_folder, file);

    // Every file of the folder with what is in it.
    private SortedDictionary<string, string> Everything()
    {
        SortedDictionary<string, string> all = new(StringComparer.Ordinal);
        foreach (string file in Directory.GetFiles(_folder))
            all.Add(file, File.ReadAllText(file));
        return all;
    }

    private Shell Run(int code, string words, string output, IFiles? files = null)
    {
        Shell shell = new() { Files = files ?? new DiskFiles() };
        string[] split = [.. words.Split(' ').Select(w => w == "{out}" ? output : w == "30lb" ? "30 lb" : w == "38lb" ? "38 lb" : w == "37lb" ? "37 lb" : File.Exists(In(w)) ? In(w) : w)];
        int ended = shell.Run(split);
        Assert.True(code == ended, string.Create(CultureInfo.InvariantCulture, $"{words} {output}: {ended}\n{shell.Error}{shell.Out}"));
        return shell;
    }

    // Somebody saves the scenario once it has been read twice, for the run and for the edit.
    private sealed class ChangedWhileRead(string scenario) : DiskFiles
    {
        private int _opened;

        public override Stream Open(string path)
        {
            if (path != scenario)
                return base.Open(path);
            MemoryStream content = new(File.ReadAllBytes(path));
            if (++_opened == 2)
                File.AppendAllText(path, "# saved in an editor\n");
            return content;
        }
    }
}
