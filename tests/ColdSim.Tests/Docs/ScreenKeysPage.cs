using System.Text;
using ColdSim.App.Commands;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Tests.App.Commands;

namespace ColdSim.Tests.Docs;

/// <summary>The tables of docs/screen-keys.md: what each page declares of its keys once its job is done, each on a demo that has it.</summary>
internal static class ScreenKeysPage
{
    private static readonly (string Demo, string Keys)[] Demos =
        [("cold-snap.toml", "1457bd"), ("fortnight.toml", "2"), ("battery-first.toml", "39"), ("three-days.toml", "6"), ("breakfast-overload.toml", "8")];

    public static IReadOnlyDictionary<string, string> Parts() => new Dictionary<string, string> { ["everywhere"] = Everywhere(), ["pages"] = Pages() };

    private static string Everywhere()
    {
        StringBuilder page = new("| key | on every page |\n| --- | --- |\n");
        foreach (ScreenCommand command in ScreenCommand.Everywhere)
            page.Append(Row(command.Keys, command.Words));
        return page.ToString();
    }

    private static string Pages()
    {
        StringBuilder text = new();
        IPage[] pages = [.. Demos.SelectMany(Loaded).OrderBy(p => p.Key)];
        foreach (IPage page in pages)
        {
            text.Append($"### {page.Key} {page.Title.Split(':')[0]}\n\n| key | does |\n| --- | --- |\n");
            foreach (KeyBinding key in page.Keys)
                text.Append(Row(key.Keys, key.Cost.Length > 0 ? $"{key.Words}: {key.Cost}" : key.Words));
            text.Append('\n');
        }

        return text.ToString();
    }

    private static string Row(string keys, string words) => $"| {string.Join(' ', keys.Split(' ').Select(k => $"`{k}`"))} | {words.Replace("|", "\\|", StringComparison.Ordinal)} |\n";

    private static IEnumerable<IPage> Loaded((string Demo, string Keys) shown)
    {
        ScreenFiles files = new(TimeProvider.System, () => new DiskFiles());
        foreach (IPage page in files.Open(Shell.Demo(shown.Demo), CancellationToken.None).Frame(UnitStyle.Us).Pages.Where(p => shown.Keys.Contains(p.Key)))
        {
            yield return page.DueJob is { } job ? page.Update(new PageMessage.Completed(job.Run(new Progress<int>(), CancellationToken.None))) : page;
        }
    }
}
