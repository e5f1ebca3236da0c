using System.CommandLine;
using System.Text;
using ColdSim.App.Commands;
using ColdSim.Tests.App.Commands;
using Xunit;

namespace ColdSim.Tests.App.Shells;

/// <summary>The manual page, which is made from what <c>--help</c> is made from.</summary>
public class ManualPageTests
{
    [FactWith("groff")]
    public void Groff_sets_it_without_a_warning()
        => Assert.Empty(RealShell.Said("groff", ["-ww", "-man", "-Tutf8", "-Kutf8", "-z"], Page()));

    [Fact]
    public void Every_command_and_option_is_in_it_with_the_words_of_the_help()
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        string page = Words(Page());
        foreach (Command command in All(CommandTree.Of(host)))
        {
            Assert.Contains(Words(command.Description!), page, StringComparison.Ordinal);
            foreach (Option option in command.Options.Where(o => !o.Hidden))
            {
                Assert.Contains(option.Name, page, StringComparison.Ordinal);
                Assert.Contains(Words(option.Description!), page, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Nothing_of_windows_is_in_it() => Assert.DoesNotContain("/?", Page(), StringComparison.Ordinal);

    private static IEnumerable<Command> All(Command command) => command.Subcommands.Where(c => !c.Hidden).SelectMany(All).Prepend(command);

    private static string Page()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("man"));
        return shell.Out;
    }

    // As a reader sees it, in one line.
    private static string Words(string text) => string.Join(
        ' ',
        new StringBuilder(text).Replace("\\-", "-").Replace("\\(aq", "'").Replace("\\(dq", "\"").Replace("\\e", "\\").Replace("\n\\&", "\n").ToString()
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
