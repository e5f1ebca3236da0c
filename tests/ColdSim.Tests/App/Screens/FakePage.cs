using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;

namespace ColdSim.Tests.App.Screens;

/// <summary>A page that records its messages and needs the job it is given.</summary>
internal sealed record FakePage(char Key, string Title, PageJob? Job = null, bool TakesText = false) : IPage
{
    public IReadOnlyList<PageMessage> Heard { get; init; } = [];

    public IReadOnlyList<KeyBinding> Keys { get; init; } = [];

    public IReadOnlyList<KeyBinding> Places { get; init; } = [];

    public IReadOnlyList<string> Help { get; init; } = ["FAKE", "  nothing"];

    public TimeCursor? Cursor { get; init; }

    public PageJob? DueJob => Heard.Any(m => m is PageMessage.Completed or PageMessage.Failed or PageMessage.Cancelled) ? null : Job;

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        sheet.Put(0, 0, $"page {Key} heard {Heard.Count}");
        return sheet;
    }

    public IPage Update(PageMessage message) => this with { Heard = [.. Heard, message] };
}
