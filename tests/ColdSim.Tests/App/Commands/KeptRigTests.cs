using ColdSim.App.Screens.Frame;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>The rig that a person keeps in the folder of the settings.</summary>
public sealed class KeptRigTests : IDisposable
{
    private readonly string _settings = Directory.CreateTempSubdirectory().FullName;

    private string Kept => Path.Combine(_settings, "coldsim", "rig.toml");

    private (Shell Shell, Opening? Opened) Bare()
    {
        Opening? opened = null;
        Shell shell = new() { Settings = _settings, Terminal = true, Screen = (opening, _, _) => { opened = opening; return 0; } };
        Assert.Equal(0, shell.Run());
        return (shell, opened);
    }

    [Fact]
    public void New_with_mine_writes_the_rig_and_its_weather_where_coldsim_keeps_it()
    {
        Shell shell = new() { Settings = Path.Combine(_settings, "not", "yet") };
        Assert.Equal(0, shell.Run("new", "--mine"));
        string kept = Path.Combine(_settings, "not", "yet", "coldsim", "rig.toml");
        Assert.Contains(kept, shell.Out, StringComparison.Ordinal);
        Assert.Equal(0, shell.Run("run", kept));
        File.AppendAllText(kept, "# mine\n");
        Assert.Equal(2, shell.Run("new", "--mine"));
        Assert.EndsWith("# mine\n", File.ReadAllText(kept), StringComparison.Ordinal);
    }

    [Fact]
    public void New_says_what_to_drop_or_to_give()
    {
        Shell shell = new() { Settings = _settings };
        Assert.Equal(2, shell.Run("new", "trip.toml", "--mine"));
        Assert.Contains("drop 'trip.toml' or --mine", shell.Error, StringComparison.Ordinal);
        Assert.Equal(2, shell.Run("new"));
        Assert.Contains("FILE is missing; or give --mine", shell.Error, StringComparison.Ordinal);
        shell.Settings = null;
        Assert.Equal(2, shell.Run("new", "--mine"));
        Assert.Contains("set HOME or XDG_CONFIG_HOME", shell.Error, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_settings, "file"), "");
        shell.Settings = Path.Combine(_settings, "file");
        Assert.Equal(2, shell.Run("new", "--mine"));
        Assert.Contains(Path.Combine(_settings, "file", "coldsim"), shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_program_alone_opens_the_kept_rig_and_without_one_a_demo_that_says_it_is_invented()
    {
        Assert.StartsWith("DEMO, INVENTED: ", Bare().Opened!.Report.Scenario.Title, StringComparison.Ordinal);
        Assert.Equal(0, new Shell { Settings = _settings }.Run("new", "--mine"));
        File.WriteAllText(Kept, File.ReadAllText(Kept).Replace("title = \"", "title = \"Our own ", StringComparison.Ordinal));
        (_, Opening? opened) = Bare();
        Assert.StartsWith("Our own ", opened!.Report.Scenario.Title, StringComparison.Ordinal);
        Assert.Equal(Kept, opened.File);
    }

    [Fact]
    public void A_kept_rig_that_is_faulty_is_told_with_its_place()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Kept)!);
        File.WriteAllText(Kept, "titel = \"no\"\n");
        Shell shell = new() { Settings = _settings, Terminal = true };
        Assert.Equal(2, shell.Run());
        Assert.Contains($"{Kept}:1:1: ", shell.Error, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_settings, recursive: true);
}
