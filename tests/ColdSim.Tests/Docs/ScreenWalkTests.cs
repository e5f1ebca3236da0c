using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.Tests.Files;
using Terminal.Gui.Input;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>The pictures of docs/screen-walk.md: what follows a fence such as <c>screen 80x24 t Down Right</c> is the demo's screen after these keys.</summary>
[Trait("Category", "Docs")]
public class ScreenWalkTests
{
    private const string Fence = "```screen ", End = "```", Page = "screen-walk.md";

    [Fact]
    public void The_page_shows_what_the_screen_shows()
    {
        string path = DocPage.PathOf(Page), written = File.ReadAllText(path).ReplaceLineEndings("\n");
        List<string> lines = [];
        string[] all = written.Split('\n');
        int pictures = 0;
        for (int i = 0; i < all.Length; i++)
        {
            lines.Add(all[i]);
            if (!all[i].StartsWith(Fence, StringComparison.Ordinal))
                continue;
            pictures++;
            lines.AddRange(Picture(all[i][Fence.Length..].Split(' ')).Split('\n'));
            while (all[i] != End)
                i++;
            lines.Add(End);
        }

        Assert.True(pictures > 2);
        string current = string.Join('\n', lines);
        if (Environment.GetEnvironmentVariable(GeneratedPage.WriteVariable) != "1")
            Assert.Equal(current, written);
        else if (current != written)
            File.WriteAllText(path, current);
    }

    private static string Picture(string[] words)
    {
        int[] size = [.. words[0].Split('x').Select(int.Parse)];
        using App.Screens.Tries.Bench bench = new();
        bench.WorkOut();
        foreach (string word in words[1..])
        {
            Key key = word switch
            {
                "Down" => Key.CursorDown,
                "Up" => Key.CursorUp,
                "Left" => Key.CursorLeft,
                "Right" => Key.CursorRight,
                "Enter" => Key.Enter,
                _ => new Key(word[0]),
            };
            bench.Send(Assert.IsType<FrameMessage.ToPage>(PageKeys.Frame(key, bench.View)).Message);
            bench.WorkOut();
        }

        return bench.Drawn(size[0], size[1]);
    }
}
