using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.Tests.App.Screens.Tries;
using ColdSim.Tests.Files;
using Terminal.Gui.Input;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>
/// The pictures of the screen in docs: what follows a fence such as <c>screen 80x24 t Down Right</c> is the demo's screen after these keys; with a file's name
/// first, that scenario's. Text in quotes is typed.
/// </summary>
[Trait("Category", "Docs")]
public class ScreenPictureTests
{
    private const string Fence = "```screen ", End = "```";

    public static TheoryData<string> Pages
        => [.. Directory.EnumerateFiles(Path.GetDirectoryName(DocPage.PathOf("model.md"))!, "*.md").Select(p => Path.GetFileName(p)!)
            .Where(p => File.ReadAllText(DocPage.PathOf(p)).Contains(Fence, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_shows_what_the_screen_shows(string page)
    {
        string path = DocPage.PathOf(page), written = File.ReadAllText(path).ReplaceLineEndings("\n");
        List<string> lines = [];
        string[] all = written.Split('\n');
        for (int i = 0; i < all.Length; i++)
        {
            lines.Add(all[i]);
            if (!all[i].StartsWith(Fence, StringComparison.Ordinal))
                continue;
            lines.AddRange(Picture(all[i][Fence.Length..]).Split('\n'));
            while (all[i] != End)
                i++;
            lines.Add(End);
        }

        string current = string.Join('\n', lines);
        if (Environment.GetEnvironmentVariable(GeneratedPage.WriteVariable) != "1")
            Assert.Equal(current, written);
        else if (current != written)
            File.WriteAllText(path, current);
    }

    [Fact]
    public void Every_picture_of_the_screen_in_docs_is_made_by_this_test()
        => Assert.DoesNotContain(
            Directory.EnumerateFiles(Path.GetDirectoryName(DocPage.PathOf("model.md"))!, "*.md").Append(DocPage.PathOf("../README.md")),
            p => File.ReadLines(p).Any(l => l == Fence.TrimEnd()));

    private static string Picture(string fence)
    {
        string[] parts = fence.Split('"'), words = parts[0].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int[] size = [.. words[0].Split('x').Select(int.Parse)];
        bool isOther = words.Length > 1 && words[1].EndsWith(".toml", StringComparison.Ordinal);
        using Bench bench = isOther ? new Bench(words[1]) : new Bench();
        bench.WorkOut();
        foreach (string word in words[(isOther ? 2 : 1)..]) Press(bench, KeyOf(word));
        for (int i = 1; i < parts.Length; i++)
        {
            // Every second part is typed; between two are keys again.
            foreach (string word in i % 2 == 1 ? parts[i].Select(c => c.ToString()) : parts[i].Split(' ', StringSplitOptions.RemoveEmptyEntries))
                Press(bench, KeyOf(word));
        }

        return bench.Drawn(size[0], size[1]);
    }

    private static void Press(Bench bench, Key key)
    {
        bench.Send(Assert.IsAssignableFrom<FrameMessage>(PageKeys.Frame(key, bench.View)));
        bench.WorkOut();
    }

    private static Key KeyOf(string word) => word switch
    {
        "Down" => Key.CursorDown,
        "Up" => Key.CursorUp,
        "Left" => Key.CursorLeft,
        "Right" => Key.CursorRight,
        "Enter" => Key.Enter,
        "Tab" => Key.Tab,
        "Space" => Key.Space,
        _ => new Key(word[0]),
    };
}
