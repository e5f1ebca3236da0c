using ColdSim.App.Shells;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.App.Shells;

/// <summary>The scripts of <c>coldsim completions</c> in real shells: somebody types and presses the tabulator.</summary>
[Trait("Category", "Slow")]
public sealed class CompletionScriptTests : IDisposable
{
    // Typed is what somebody types, | the tabulator; then the words that the program is given.
    private static readonly (string Typed, string Given)[] Lines =
    [
        ("coldsim ex|--un|", "<explain><--units>"),
        ("coldsim run --units s|", "<run><--units><si>"),
        ("coldsim tonight --grade l|", "<tonight><--grade><leaky>"),
        ("coldsim capacity 33|", "<capacity><33 kg>"),
        ("coldsim capacity \"33 k|", "<capacity><33 kg>"),
        ("coldsim compare which-cylinder.toml --option 4|", "<compare><which-cylinder.toml><--option><40 lb cylinder>"),
        ("coldsim run which-cylinder.t|", "<run><which-cylinder.toml>"),
        ("coldsim run my\\ tr|", "<run><my trip.toml>"),
    ];

    // Shows the words that it is given, and lets the program answer the script.
    private const string Program =
        "coldsim() { if [ \"$1\" = __complete ]; then command coldsim \"$@\"; else printf '<%s>' \"$@\"; echo; fi; }";

    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-shell-").FullName;

    public CompletionScriptTests()
    {
        foreach (string shell in CompletionScript.Shells)
        {
            Shell program = new();
            Assert.Equal(0, program.Run("completions", shell));
            File.WriteAllText(Path.Combine(_folder, "script." + shell), program.Out);
        }

        foreach (string file in Directory.GetFiles(ColdSim.Tests.Files.DocPage.Scenarios))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
        File.WriteAllText(Path.Combine(_folder, "my trip.toml"), "");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [FactWith("script")]
    public void Bash_completes_what_is_typed()
        => AreCompleted(Typed("bash --norc --noprofile -i", $". ./script.bash; {Program}"));

    [FactWith("zsh")]
    public void Zsh_completes_what_is_typed()
        => AreCompleted(Typed("zsh -f -i", $"autoload -Uz compinit; compinit -u -D; . ./script.zsh; {Program}"));

    [FactWith("fish")]
    public void Fish_offers_what_may_come_next()
    {
        Assert.Equal(["--units\tUnits to print"], Fish("coldsim explain --un"));
        Assert.Equal(["si"], Fish("coldsim run --units s"));
        Assert.Equal(["33 kg"], Fish("coldsim capacity \"33"));
        Assert.Equal(["40 lb cylinder"], Fish("coldsim compare which-cylinder.toml --option 4"));
        Assert.Contains("which-cylinder.toml", Fish("coldsim run which-cylinder.t"));
        Assert.Equal("compare,completions", string.Join(',', Fish("coldsim com").Select(l => l.Split('\t')[0])));
    }

    [Fact]
    public void The_script_for_powershell_asks_the_program_too()
        => Assert.Contains("__complete", CompletionScript.Of("pwsh"), StringComparison.Ordinal);

    private string[] Fish(string typed)
        => RealShell.Said("fish", ["--no-config", "-c", $"source script.fish; complete -C '{typed}'"], "", _folder).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    // A terminal of its own, so that the shell reads keys.
    private string Typed(string shell, string first)
    {
        string input = $"{first}\n{string.Concat(Lines.Select(l => l.Typed.Replace('|', '\t') + "\n"))}exit\n";
        return RealShell.Said("script", ["-qec", shell, "/dev/null"], input, _folder);
    }

    private static void AreCompleted(string said)
        => Assert.Equal(Lines.Select(l => l.Given), said.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith('<')));
}
