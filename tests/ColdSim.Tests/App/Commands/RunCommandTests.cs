using System.Text.Json;
using ColdSim.App.Commands;
using ColdSim.Tests.Files.Disk;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public sealed class RunCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // Beside the demos, so that the weather is there.
    private static string Wrong => Shell.Demo("a.toml");

    private string In(string file) => Path.Combine(_folder, file);

    [Fact]
    public void Run_prints_the_sentences_the_table_and_the_ledger()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap, "--full"));
        Assert.Contains("runs short at 03:44 with 11.1 lb", shell.Out, StringComparison.Ordinal);
        Assert.Contains("Night by night", shell.Out, StringComparison.Ordinal);
        Assert.Contains("Energy closes to ", shell.Out, StringComparison.Ordinal);
        Assert.Contains("never sleep with a ventless heater", shell.Out, StringComparison.Ordinal);
        Assert.Equal("", shell.Error);
        Assert.DoesNotContain('\e', shell.Out);
    }

    [Fact]
    public void Run_prints_si_units_when_asked()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap, "--units", "si", "--full"));
        Assert.Contains("with 5.01 kg", shell.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("changeover.toml", false, 0)]
    [InlineData("changeover.toml", true, 0)]
    [InlineData("mixed-gas.toml", false, 0)]
    [InlineData("mixed-gas.toml", true, 1)]
    public void A_short_night_fails_only_when_asked(string demo, bool asked, int code)
        => Assert.Equal(code, new Shell().Run(["run", Shell.Demo(demo), .. asked ? ["--fail-if-short"] : Array.Empty<string>()]));

    [Fact]
    public void A_dry_night_fails_when_asked()
        => Assert.Equal(1, new Shell().Run("run", Shell.ColdSnap, "--fail-if-short"));

    [Fact]
    public void Json_is_all_there_is_on_standard_output()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("run", Shell.Demo("blanket-or-second.toml"), "--json"));
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Contains("warning: option 'shore blanket, no hookup'", shell.Error, StringComparison.Ordinal);
        Assert.Contains("assumed: coach: u of doors not given", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Nights_and_step_override_the_scenario()
    {
        Shell asWritten = new(), fine = new();
        Assert.Equal(0, asWritten.Run("run", Shell.ColdSnap, "--json", "--nights", "1"));
        Assert.Equal(0, fine.Run("run", Shell.ColdSnap, "--json", "--nights", "1", "--step", "7.5"));
        using JsonDocument document = JsonDocument.Parse(fine.Out);
        Assert.Equal(1, document.RootElement.GetProperty("nights").GetArrayLength());
        Assert.NotEqual(asWritten.Out, fine.Out);
    }

    [Theory]
    [InlineData("--nights", "0", "--nights takes a whole number from 1 to 400, not '0'")]
    [InlineData("--nights", "1.5", "--nights takes a whole number from 1 to 400, not '1.5'")]
    [InlineData("--nights", "abc", "--nights takes a whole number from 1 to 400, not 'abc'")]
    [InlineData("--step", "NaN", "--step takes a number from 1 to 600, not 'NaN'")]
    [InlineData("--step", "-4", "--step takes a number from 1 to 600, not '-4'")]
    [InlineData("--units", "imperial", "--units takes us or si, not 'imperial'")]
    public void A_wrong_value_names_what_is_accepted(string option, string value, string message)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("run", Shell.ColdSnap, option, value));
        Assert.Equal($"coldsim: {message}\nSee 'coldsim run --help'.\n", shell.Error);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void Problems_in_the_file_are_reported_one_a_line()
    {
        Shell shell = new() { Files = new HeldFiles { Texts = { [Wrong] = File.ReadAllText(Shell.ColdSnap) + "\n[cellar]\n\n[attic]\n" } } };
        Assert.Equal(2, shell.Run("run", Wrong));
        string[] lines = shell.Error.TrimEnd().Split('\n');
        Assert.All(lines[..^1], l => Assert.StartsWith($"{Wrong}:", l, StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Contains("[cellar]", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Contains("[attic]", StringComparison.Ordinal));
        Assert.Equal("coldsim: 2 problems; nothing was run", lines[^1]);
        Assert.Equal("", shell.Out);
    }

    [Fact]
    public void A_missing_file_is_named_with_its_nearest()
    {
        File.WriteAllText(In("trip.toml"), "");
        Shell shell = new();
        Assert.Equal(2, shell.Run("run", In("tirp.toml")));
        Assert.EndsWith($"did you mean '{In("trip.toml")}'?\n", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unexpected_exception_is_one_line()
    {
        Shell shell = new() { Terminal = true, Screen = (_, _, _) => throw new InvalidOperationException("two\nlines") };
        Assert.Equal(3, shell.Run("view", Shell.ColdSnap));
        Assert.Equal("coldsim: internal error: two lines (InvalidOperationException)\n", shell.Error);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("trip")]
    [InlineData("compare", "--sizes", "20 lb")]
    [InlineData("explain")]
    [InlineData("freeze")]
    [InlineData("limits", "--fills", "50")]
    public async Task An_interrupted_command_prints_nothing_and_leaves_no_file(string command, params string[] words)
    {
        Shell shell = new();
        string[] csv = command is "explain" or "freeze" ? [] : ["--csv", In("c.csv")];
        Assert.Equal(130, await shell.InterruptedAsync([command, Shell.ColdSnap, .. words, .. csv]));
        Assert.Equal("", shell.Out);
        Assert.EndsWith("coldsim: interrupted\n", shell.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Theory]
    [InlineData("curves", "time,", "run")]
    [InlineData("nights", "night from,", "trip")]
    [InlineData("table", "rank,", "compare", "--sizes", "20 lb")]
    [InlineData("limits", "set-up,", "limits", "--fills", "50")]
    public void Csv_is_written_whole_beside_the_report_and_never_over_the_scenario(string what, string heading, string command, params string[] words)
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run([command, Shell.ColdSnap, .. words, "--csv", In("c.csv")]));
        string written = File.ReadAllText(In("c.csv"));
        Assert.StartsWith(heading, written, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', written);
        Assert.Equal($"{what} written to {In("c.csv")}\n", shell.Error);
        Assert.NotEqual("", shell.Out);
        Assert.Equal(2, shell.Run([command, Shell.ColdSnap, .. words, "--csv", Shell.ColdSnap]));
        Assert.Contains("is an input of this run and is never overwritten", shell.Error, StringComparison.Ordinal);
        Assert.Equal(2, shell.Run([command, Shell.ColdSnap, .. words, "--csv", "/no/such/folder/c.csv"]));
        Assert.Contains("there is no folder '/no/such/folder'", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("compare", "--sizes", "20 lb")]
    public void Csv_that_fails_half_way_leaves_what_was_there(string command, params string[] words)
    {
        File.WriteAllText(In("c.csv"), "before");
        Shell shell = new() { Files = new DiskFiles(new FailingDisk(DiskStep.Write, 100)) };
        Assert.Equal(2, shell.Run([command, Shell.ColdSnap, .. words, "--csv", In("c.csv"), "--force"]));
        Assert.Equal($"coldsim: '{In("c.csv")}' cannot be written: the disk is full\n", shell.Error);
        Assert.Equal("before", File.ReadAllText(In("c.csv")));
        Assert.Single(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void Titles_are_bold_on_a_terminal()
    {
        Shell shell = new() { Terminal = true };
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap, "--full"));
        Assert.Contains("\e[1mNight by night\e[0m", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sign_of_life_is_for_terminals_only()
    {
        Shell shell = new() { Clock = new HastyClock() };
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap));
        Assert.Equal("", shell.Error);
        shell.Terminal = true;
        Assert.Equal(0, shell.Run("run", Shell.ColdSnap));
        Assert.StartsWith("\rrunning for 1 s", shell.Error, StringComparison.Ordinal);
        Assert.EndsWith("\r", shell.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("running for", shell.Out, StringComparison.Ordinal);
    }
}
