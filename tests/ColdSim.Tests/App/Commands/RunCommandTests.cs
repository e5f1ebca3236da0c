using System.Text.Json;
using ColdSim.Planning;
using ColdSim.Tests.App.Text;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class RunCommandTests
{
    [Fact]
    public void Run_prints_the_sentences_the_table_and_the_ledger()
    {
        Shell shell = Shell.Ending(InventedRuns.HoldsThenShort);
        Assert.Equal(0, shell.Run("run", Shell.AnyFile));
        Assert.Contains("runs short at 03:12 with 4.4 lb", shell.Out, StringComparison.Ordinal);
        Assert.Contains("Night by night", shell.Out, StringComparison.Ordinal);
        Assert.Contains("Energy closes to 3e-10", shell.Out, StringComparison.Ordinal);
        Assert.Contains("An invented caution.", shell.Out, StringComparison.Ordinal);
        Assert.Equal("", shell.Error);
        Assert.DoesNotContain('\e', shell.Out);
    }

    [Fact]
    public void Run_prints_si_units_when_asked()
    {
        Shell shell = Shell.Ending(InventedRuns.HoldsThenShort);
        Assert.Equal(0, shell.Run("run", Shell.AnyFile, "--units", "si"));
        Assert.Contains("with 2.00 kg", shell.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, false, 0)]
    [InlineData(false, true, 0)]
    [InlineData(true, false, 0)]
    [InlineData(true, true, 1)]
    public void A_short_night_fails_only_when_asked(bool isShort, bool asked, int code)
    {
        Shell shell = Shell.Ending(isShort ? InventedRuns.HoldsThenShort : InventedRuns.Report([InventedRuns.Holds], []));
        Assert.Equal(code, shell.Run(asked ? ["run", Shell.AnyFile, "--fail-if-short"] : ["run", Shell.AnyFile]));
    }

    [Fact]
    public void A_dry_night_fails_when_asked()
        => Assert.Equal(1, Shell.Ending(InventedRuns.HoldsThenDry).Run("run", Shell.AnyFile, "--fail-if-short"));

    [Fact]
    public void Json_is_all_there_is_on_standard_output()
    {
        Shell shell = new() { Parts = Shell.AlgebraicState with { ReadScenario = _ => new(InventedRuns.Scenario, [], ["an odd thing"]) } };
        Assert.Equal(0, shell.Run("run", Shell.AnyFile, "--json"));
        Assert.Equal(Shell.Document, shell.Out);
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Contains("warning: an odd thing", shell.Error, StringComparison.Ordinal);
        Assert.Contains("assumed: wind 2 m/s", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Nights_and_step_override_the_scenario()
    {
        Scenario? run = null;
        Assert.Equal(0, Shell.Keeping(s => run = s).Run("run", Shell.AnyFile, "--nights", "3", "--step", "7.5"));
        Assert.Equal(3, run!.Nights);
        Assert.Equal(7.5, run.Step_s);
    }

    [Theory]
    [InlineData("--nights", "0", "--nights takes a whole number from 1 to 400, not '0'")]
    [InlineData("--nights", "1.5", "--nights takes a whole number from 1 to 400, not '1.5'")]
    [InlineData("--nights", "abc", "--nights takes a whole number from 1 to 400, not 'abc'")]
    [InlineData("--step", "NaN", "--step takes a number from 1 to 300, not 'NaN'")]
    [InlineData("--step", "-4", "--step takes a number from 1 to 300, not '-4'")]
    [InlineData("--units", "imperial", "--units takes us or si, not 'imperial'")]
    public void A_wrong_value_names_what_is_accepted(string option, string value, string message)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("run", Shell.AnyFile, option, value));
        Assert.Equal($"coldsim: {message}\nSee 'coldsim run --help'.\n", shell.Error);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void Problems_in_the_file_are_reported_one_a_line()
    {
        Shell shell = new()
        {
            Parts = Shell.AlgebraicState with { ReadScenario = _ => new(null, ["a.toml:1:2: one", "a.toml:3:4: two"], []) },
        };
        Assert.Equal(2, shell.Run("run", Shell.AnyFile));
        Assert.Equal("a.toml:1:2: one\na.toml:3:4: two\ncoldsim: 2 problems; nothing was run\n", shell.Error);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_missing_file_is_named_with_its_nearest()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "trip.toml"), "");
            Shell shell = new();
            Assert.Equal(2, shell.Run("run", Path.Combine(folder, "tirp.toml")));
            Assert.EndsWith($"did you mean '{Path.Combine(folder, "trip.toml")}'?\n", shell.Error, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_ledger_that_does_not_close_shows_nothing_of_the_run()
    {
        Shell shell = Shell.Ending(InventedRuns.HoldsThenShort with { Ledger = new(0, 2e-3, 0, 0, 0, 0, 0, 0) });
        Assert.Equal(3, shell.Run("run", Shell.AnyFile));
        Assert.Equal("", shell.Out);
        Assert.Contains("internal error: the ledger does not close", shell.Error, StringComparison.Ordinal);
        Assert.Contains("Energy closes to 2e-3", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ledger_of_no_number_does_not_close()
        => Assert.Equal(3, Shell.Ending(InventedRuns.HoldsThenShort with { Ledger = new(0, double.NaN, 0, 0, 0, 0, 0, 0) }).Run("run", Shell.AnyFile));

    [Fact]
    public void An_unexpected_exception_is_one_line()
    {
        Shell shell = new() { Parts = Shell.AlgebraicState with { Run = (_, _) => throw new InvalidOperationException("two\nlines") } };
        Assert.Equal(3, shell.Run("run", Shell.AnyFile));
        Assert.Equal("coldsim: internal error: two lines (InvalidOperationException)\n", shell.Error);
    }

    [Fact]
    public async Task An_interrupted_run_prints_nothing_and_leaves_no_file()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
        try
        {
            using CancellationTokenSource source = new();
            Shell shell = new()
            {
                Parts = Shell.AlgebraicState with
                {
                    Run = (_, cancel) =>
                    {
                        source.Cancel();
                        cancel.ThrowIfCancellationRequested();
                        return InventedRuns.HoldsThenShort;
                    },
                },
            };
            Assert.Equal(130, await shell.RunAsync(["run", Shell.AnyFile, "--csv", Path.Combine(folder, "c.csv")], source.Token));
            Assert.Equal("", shell.Out);
            Assert.Equal("coldsim: interrupted\n", shell.Error);
            Assert.Empty(Directory.GetFileSystemEntries(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Csv_writes_the_curves_beside_the_report()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
        try
        {
            string path = Path.Combine(folder, "c.csv");
            Shell shell = new();
            Assert.Equal(0, shell.Run("run", Shell.AnyFile, "--csv", path));
            Assert.Equal("time,invented\n", File.ReadAllText(path));
            Assert.Equal($"curves written to {path}\n", shell.Error);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Csv_that_fails_half_way_leaves_what_was_there()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
        try
        {
            string path = Path.Combine(folder, "c.csv");
            File.WriteAllText(path, "before");
            Shell shell = new()
            {
                Parts = Shell.AlgebraicState with
                {
                    WriteCsv = (_, writer) =>
                    {
                        writer.Write("half");
                        throw new IOException("disk full");
                    },
                },
            };
            Assert.Equal(2, shell.Run("run", Shell.AnyFile, "--csv", path));
            Assert.Equal("coldsim: disk full\n", shell.Error);
            Assert.Equal("before", File.ReadAllText(path));
            Assert.Single(Directory.GetFileSystemEntries(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Csv_never_overwrites_the_scenario()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("run", Shell.AnyFile, "--csv", Shell.AnyFile));
        Assert.Contains("would overwrite the scenario", shell.Error, StringComparison.Ordinal);
        Assert.Equal(2, shell.Run("run", Shell.AnyFile, "--csv", "/no/such/folder/c.csv"));
        Assert.Contains("there is no folder '/no/such/folder'", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Titles_are_bold_on_a_terminal()
    {
        Shell shell = new() { Terminal = true };
        Assert.Equal(0, shell.Run("run", Shell.AnyFile));
        Assert.Contains("\e[1mNight by night\e[0m", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_run_of_over_a_second_gives_a_sign_of_life_on_a_terminal_and_wipes_it()
    {
        Shell shell = new() { Terminal = true };
        shell.Parts = Shell.AlgebraicState with
        {
            Run = (_, _) =>
            {
                SpinWait.SpinUntil(() => shell.HasComplained, TimeSpan.FromSeconds(30));
                return InventedRuns.HoldsThenShort;
            },
        };
        Assert.Equal(0, await shell.RunAsync(["run", Shell.AnyFile], CancellationToken.None));
        Assert.StartsWith("\rrunning for 1 s", shell.Error, StringComparison.Ordinal);
        Assert.EndsWith("\r                   \r", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_of_under_a_second_gives_no_sign_of_life()
    {
        Shell shell = new() { Terminal = true };
        Assert.Equal(0, shell.Run("run", Shell.AnyFile));
        Assert.Equal("", shell.Error);
    }
}
