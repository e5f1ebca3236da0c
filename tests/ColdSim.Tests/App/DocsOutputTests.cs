using System.Text;
using ColdSim.App.Commands;
using ColdSim.Tests.Docs;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App;

/// <summary>What a page shows as output of the program is what the program prints.</summary>
/// <remarks>A block marked "screen" is a picture of the text UI, which has snapshots of its own; one marked "answer" is checked as a generated one.</remarks>
public class DocsOutputTests
{
    // So many lines in common make a block one that shows output.
    private const int Telling = 3;

    [Theory]
    [InlineData("freezing.md")]
    [InlineData("reading-a-cylinder.md")]
    [InlineData("chance.md")]
    [InlineData("log-and-fit.md")]
    [InlineData("weather-formats.md")]
    public async Task A_page_shows_what_the_program_prints(string page)
    {
        List<string[]> blocks = Blocks(DocPage.Lines(page));
        HashSet<string> printed = [];
        foreach (string command in blocks.Select(Command).OfType<string>())
        {
            printed.UnionWith(await PrintedAsync(command));
            if (HasLengths(command))
                printed.UnionWith(await PrintedAsync(command + " --full"));
        }

        int shown = 0;
        foreach (string[] block in blocks)
        {
            string[] lines = [.. block.Where(l => l.Trim().Length > 0)];
            if (lines.Count(printed.Contains) < Telling)
                continue;
            shown++;
            string[] other = [.. AfterCommand(lines).Where(l => !printed.Contains(l) && !l.StartsWith('(') && l.Trim() != "...")];
            Assert.True(other.Length == 0, $"{page} shows what is not printed any more:\n{string.Join('\n', other)}");
        }

        Assert.True(shown > 0, $"{page} shows no output");
    }

    private static List<string[]> Blocks(string[] page)
    {
        List<string[]> blocks = [];
        List<string>? block = null;
        bool picture = false;
        foreach (string line in page)
        {
            if (!line.StartsWith("```", StringComparison.Ordinal))
            {
                block?.Add(line.TrimEnd());
            }
            else if (block is null)
            {
                block = [];
                picture = line.StartsWith("```screen", StringComparison.Ordinal) || line.StartsWith("```answer", StringComparison.Ordinal);
            }
            else
            {
                if (!picture)
                    blocks.Add([.. block]);
                block = null;
            }
        }

        return blocks;
    }

    // "$ coldsim …", over several lines where they end in a backslash.
    private static string? Command(string[] block)
    {
        if (block.Length == 0 || !block[0].StartsWith("$ coldsim ", StringComparison.Ordinal))
            return null;
        StringBuilder command = new();
        foreach (string line in block.Take(block.Length - AfterCommand(block).Count()))
            command.Append(line.TrimEnd('\\')).Append(' ');
        return command.ToString()["$ coldsim ".Length..];
    }

    private static IEnumerable<string> AfterCommand(string[] block)
    {
        if (block.Length == 0 || !block[0].StartsWith("$ ", StringComparison.Ordinal))
            return block;
        int last = Array.FindIndex(block, l => !l.EndsWith('\\'));
        return block.Skip(last + 1);
    }

    private static async Task<IEnumerable<string>> PrintedAsync(string command)
    {
        using MemoryStream output = new();
        using StringWriter error = new();
        using (Host host = new(output, error))
            Assert.Equal(0, await Dispatcher.RunAsync(DocsCommand.Words(command), host, CancellationToken.None));
        return Encoding.UTF8.GetString(output.ToArray()).Split('\n').Select(l => l.TrimEnd());
    }

    private static bool HasLengths(string line)
    {
        if (line.Contains("--full", StringComparison.Ordinal) || line.Contains("--json", StringComparison.Ordinal))
            return false;
        string[] words = line.Split(' ');
        System.CommandLine.Command command = CommandTree.Of(new Host(Stream.Null, TextWriter.Null), words[0]);
        foreach (string word in words)
        {
            if (command.Subcommands.FirstOrDefault(c => c.Name == word) is not { } below)
                break;
            command = below;
        }

        return command.Options.Any(o => o.Name == "--full");
    }
}
