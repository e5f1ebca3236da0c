using System.Runtime.CompilerServices;
using ColdSim.App.Screens.Loop;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Disk;
using ColdSim.Planning.Nights;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;

namespace ColdSim.App.Screens.Frame;

/// <summary>Opens the screen on the terminal and leaves the terminal as it was.</summary>
internal static class ScreenProgram
{
    /// <summary>Added to a signal's number for the exit code, as shells do.</summary>
    internal const int EndedBySignal = 128;

    /// <summary>Shows a run until the person quits.</summary>
    /// <param name="opening">The run, its options and its file.</param>
    /// <param name="units">The units to start with.</param>
    /// <param name="color">False writes no colour code; NO_COLOR does the same.</param>
    /// <returns>An <see cref="ExitCode"/>; 128 and the signal's number after a signal.</returns>
    public static int Show(Opening opening, UnitStyle units, bool color)
    {
        if (Refusal(opening.Report) is string why)
        {
            StandardStreams.Error().WriteLine(why);
            return ExitCode.BadInput;
        }

        int signal = 0;
        WaitingLoop? running = null;

        // It outlives the application, because restoring a terminal that is gone may itself wait for ever.
        using SignalWatch watch = new(number =>
        {
            signal = number;
            running?.Application.Invoke(() => running.Application.RequestStop());
        });
        try
        {
            ReadToolkitSettings();
            FrameView? view = opening.Frame(units);
            while (view is not null && signal == 0)
            {
                string? editing;
                (view, editing) = Run(view, color && !NoColor, opening.Plain, loop => running = loop);
                if (editing is null || signal != 0)
                    break;
                watch.LeavesInterrupts = true;
                string? fault = PersonsEditor.Edit(editing);
                watch.LeavesInterrupts = false;
                view = view.Update(fault is null ? new FrameMessage.Reload() : new FrameMessage.Say(fault));
            }
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            StandardStreams.Error().WriteLine(VisibleText.Of($"coldsim: the screen stopped: {(e is IOException ? FileFaultException.WhyNotWritten(e) : e.Message)}"));
            return ExitCode.Internal;
        }

        return signal == 0 ? ExitCode.Done : EndedBySignal + signal;
    }

    /// <summary>Runs the screen until the person quits or wants to edit a file; the terminal is then as it was.</summary>
    private static (FrameView View, string? Editing) Run(FrameView view, bool color, bool plain, Action<WaitingLoop> started)
    {
        using WaitingLoop loop = new();
        started(loop);
        IApplication app = loop.Init();
        app.Driver!.Force16Colors = true;
        using FrameScreen screen = new(view, color, plain);
        loop.Continued += screen.Redraw;
        loop.ReportsMouse = view.ReportsMouse;
        screen.MouseReported += on => loop.ReportsMouse = on;
        screen.Copied += loop.Copy;
        app.Run(screen);
        return (screen.View, screen.Editing);
    }

    /// <summary>Has the toolkit read the person's settings of it, where its own start code is left out of the program.</summary>
    private static void ReadToolkitSettings()
    {
        if (!RuntimeFeature.IsDynamicCodeSupported)
            TuiConfigurationBuilder.Shared.ApplyToStaticFacades();
    }

    private static bool NoColor => Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 };

    private static string? Refusal(RunReport report)
    {
        if (Console.IsInputRedirected || Console.IsOutputRedirected || Environment.GetEnvironmentVariable("TERM") == "dumb")
            return "coldsim: the screen needs a terminal for input and output; the other commands print text.";
        return report.Nights.Count == 0 ? "coldsim: this run holds no night to show." : null;
    }
}
