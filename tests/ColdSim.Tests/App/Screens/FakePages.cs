using ColdSim.App.Screens;
using ColdSim.App.Screens.Frame;

namespace ColdSim.Tests.App.Screens;

/// <summary>A page that writes down what it is told and wants what it is given.</summary>
internal sealed record FakePage(char Key, string Title, PageWork? Work = null, bool TakesText = false) : IPage
{
    public IReadOnlyList<PageMessage> Heard { get; init; } = [];

    public IReadOnlyList<string>? Help { get; init; } = ["FAKE", "  nothing"];

    public FrameCursor? Cursor { get; init; }

    public PageWork? Wanted => Heard.Any(m => m is PageMessage.Done or PageMessage.Failed or PageMessage.Stopped) ? null : Work;

    public Sheet Draw(int width, int height)
    {
        Sheet sheet = new(width, height);
        sheet.Put(0, 0, $"page {Key} heard {Heard.Count}");
        return sheet;
    }

    public IPage After(PageMessage message) => this with { Heard = [.. Heard, message] };
}
