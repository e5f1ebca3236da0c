using ColdSim.App.Text;
using ColdSim.Planning.Nights;
using Terminal.Gui.App;

namespace ColdSim.App.Screens.Frame;

/// <summary>Opens the screen on the terminal and leaves the terminal as it was.</summary>
internal static class ScreenProgram
{
    private const int Quit = 0;
    private const int Refused = 2;
    private const int Broken = 70;

    /// <summary>Added to a signal's number for the exit code, as shells do.</summary>
    internal const int EndedBySignal = 128;

    /// <summary>Shows a run until the person quits.</summary>
    /// <param name="opening">The run and its options.</param>
    /// <param name="units">The units to start with.</param>
    /// <param name="color">False writes no colour code; NO_COLOR does the same.</param>
    /// <returns>0 after quitting, 2 where there is no terminal or no night, 70 after an error, 128 and the signal's number after a signal.</returns>
    public static int Show(Opening opening, UnitStyle units, bool color)
    {
        if (Refusal(opening.Report) is string why)
        {
            Console.Error.WriteLine(why);
            return Refused;
        }

        int signal = 0;
        IApplication? running = null;

        // Outlives the application: putting the terminal in order may itself wait for ever where the terminal is gone.
        using SignalWatch watch = new(number =>
        {
            signal = number;
            running?.Invoke(() => running.RequestStop());
        });
        try
        {
            using IApplication app = Application.Create().Init();
            running = app;
            app.Driver!.Force16Colors = true;
            using FrameScreen screen = new(FramePages.Open(opening, units), color && !NoColor);
            app.Run(screen);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Console.Error.WriteLine($"coldsim: the screen stopped: {e.Message}");
            return Broken;
        }

        return signal == 0 ? Quit : EndedBySignal + signal;
    }

    private static bool NoColor => Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 };

    private static string? Refusal(RunReport report)
    {
        if (Console.IsInputRedirected || Console.IsOutputRedirected || Environment.GetEnvironmentVariable("TERM") == "dumb")
            return "coldsim: the screen needs a terminal for input and output; the other commands print text.";
        return report.Nights.Count == 0 ? "coldsim: this run holds no night to show." : null;
    }
}
