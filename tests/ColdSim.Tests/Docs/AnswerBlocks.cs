using System.Text;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>
/// Answers on pages: a block fenced as <c>answer</c> begins with <c>$ coldsim …</c>, and what follows is what that command prints, standard error
/// first, from the top folder of the project. <c>answer TITLE</c> has only the section of that title, <c>answer until TITLE</c> what comes before it.
/// </summary>
internal static class AnswerBlocks
{
    // Pages do not change from day to day.
    private static readonly FixedClock Afternoon = new(new DateTimeOffset(2027, 1, 13, 15, 0, 0, TimeSpan.FromHours(-6)));

    private const string Fence = "```answer", Until = "until ", End = "```", Prompt = "$ coldsim ";

    /// <summary>Whether a page has any.</summary>
    public static bool Has(string page) => File.ReadAllText(DocPage.PathOf(page)).Contains(Fence, StringComparison.Ordinal);

    /// <summary>Fails when a block is not what its command prints; rewrites the page when asked to.</summary>
    /// <param name="page">The file's name below docs.</param>
    public static async Task AssertCurrentAsync(string page)
    {
        string path = DocPage.PathOf(page);
        string written = (await File.ReadAllTextAsync(path)).ReplaceLineEndings("\n");
        string current = await RenewAsync(written);
        if (Environment.GetEnvironmentVariable(GeneratedPage.WriteVariable) != "1")
            Assert.Equal(current, written);
        else if (current != written)
            await File.WriteAllTextAsync(path, current);
    }

    private static async Task<string> RenewAsync(string page)
    {
        List<string> lines = [];
        string[] all = page.Split('\n');
        for (int i = 0; i < all.Length; i++)
        {
            lines.Add(all[i]);
            if (!all[i].StartsWith(Fence, StringComparison.Ordinal))
                continue;
            string part = all[i][Fence.Length..].Trim();
            StringBuilder command = new();
            do
            {
                lines.Add(all[++i]);
                command.Append(all[i].TrimEnd('\\')).Append(' ');
            }
            while (all[i].EndsWith('\\'));
            Assert.StartsWith(Prompt, command.ToString(), StringComparison.Ordinal);
            lines.AddRange(Part(await PrintedAsync(command.ToString()[Prompt.Length..]), part).TrimEnd('\n').Split('\n'));
            while (all[i] != End)
                i++;
            lines.Add(End);
        }

        return string.Join('\n', lines);
    }

    // On a terminal the titles of sections are stressed, and so is the first line of an answer.
    private static string Part(string printed, string part)
    {
        const string Title = "\e[1m", TitleEnd = "\e[0m";
        string plain = printed.Replace(Title, "", StringComparison.Ordinal).Replace(TitleEnd, "", StringComparison.Ordinal);
        if (part == "")
            return plain;
        bool until = part.StartsWith(Until, StringComparison.Ordinal);
        string title = until ? part[Until.Length..] : part;
        string[] sections = printed.Split(Title);
        int at = Array.FindIndex(sections, s => s.StartsWith(title + TitleEnd, StringComparison.Ordinal));
        Assert.True(at > 0, $"There is no section '{title}'.");
        return (until ? string.Concat(sections.Take(at)) : sections[at]).Replace(TitleEnd, "", StringComparison.Ordinal);
    }

    private static async Task<string> PrintedAsync(string command)
    {
        using MemoryStream output = new();
        using StringWriter error = new() { NewLine = "\n" };
        using (Host host = new(output, error, Wrap.Columns) { OutIsTerminal = true, Color = true, Clock = Afternoon })
            await Dispatcher.RunAsync(DocsCommand.Words(command), host, CancellationToken.None);
        string folder = DocPage.Scenarios + Path.DirectorySeparatorChar;
        return (error + Encoding.UTF8.GetString(output.ToArray())).Replace(folder, "scenarios/", StringComparison.Ordinal);
    }
}
