using ColdSim.App.Screens.Frame;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace ColdSim.Tests.App.Screens;

/// <summary>A screen on a terminal that is not there.</summary>
internal sealed class ScreenHost : IDisposable
{
    private readonly SessionToken? _session;

    public ScreenHost(FrameView view, bool color = true, int columns = 80, int rows = 24)
    {
        App = Application.Create(new VirtualTimeProvider());
        App.Init(DriverRegistry.Names.ANSI);
        App.Driver!.Force16Colors = true;
        App.Driver.SetScreenSize(columns, rows);
        Screen = new(view, color);
        _session = App.Begin(Screen);
        App.LayoutAndDraw(true);
    }

    public IApplication App { get; }

    public FrameScreen Screen { get; }

    public string Ansi => App.Driver!.ToAnsi();

    /// <summary>What was sent to the terminal last.</summary>
    public string LastSent => App.Driver!.GetOutput().GetLastOutput();

    public string Text => string.Join('\n', App.Driver!.ToString().Replace("\r", "", StringComparison.Ordinal).Split('\n').Select(l => l.TrimEnd()));

    public ScreenHost Press(params Key[] keys)
    {
        foreach (Key key in keys)
            App.InjectKey(key);
        App.LayoutAndDraw();
        return this;
    }

    /// <summary>Lets other threads' work arrive until something is true, at most 10 seconds.</summary>
    public bool Soon(Func<bool> isTrue)
    {
        for (int i = 0; i < 1000 && !isTrue(); i++)
        {
            App.TimedEvents!.RunTimers();
            App.LayoutAndDraw();
            Thread.Sleep(10);
        }

        return isTrue();
    }

    public ScreenHost Resize(int columns, int rows)
    {
        App.Driver!.SetScreenSize(columns, rows);
        App.LayoutAndDraw(true);
        return this;
    }

    public void Dispose()
    {
        if (_session is not null)
            App.End(_session);
        Screen.Dispose();
        App.Dispose();
    }
}
