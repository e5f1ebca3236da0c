using System.Text;

namespace ColdSim.App.Shells;

/// <summary>The scripts that teach a shell to complete; each asks the program itself what may come next.</summary>
internal static class CompletionScript
{
    /// <summary>The shells there is a script for.</summary>
    public static IReadOnlyList<string> Shells { get; } = ["bash", "zsh", "fish", "pwsh"];

    /// <summary>The first word of a command line by which a script asks; the words typed so far follow it.</summary>
    public const string Question = "__complete";

    /// <summary>The line that says that the shell completes the name of a file.</summary>
    public const string Files = ":files";

    /// <summary>The script of one shell.</summary>
    public static string Of(string shell)
    {
        using Stream script = typeof(CompletionScript).Assembly.GetManifestResourceStream($"completions/coldsim.{shell}")
            ?? throw new ArgumentException($"There is no script for '{shell}'.", nameof(shell));
        using StreamReader reader = new(script, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
