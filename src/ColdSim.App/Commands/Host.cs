using System.Text;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Files.Disk;

namespace ColdSim.App.Commands;

/// <summary>Where a command runs: its streams, its files, its clock and its screen.</summary>
internal sealed class Host : IDisposable
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly VisibleWriter _error;

    /// <summary>A host of two streams.</summary>
    /// <param name="output">Standard output.</param>
    /// <param name="error">Standard error.</param>
    /// <param name="columns">The width at which a line on standard error is broken; unbroken unless a person looks at it, so that programs find a message in one line.</param>
    public Host(Stream output, TextWriter error, int columns = int.MaxValue)
    {
        Output = output;
        Out = new StreamWriter(output, Utf8, leaveOpen: true) { NewLine = "\n" };
        Error = _error = new VisibleWriter(error, columns);
        Notices = new Notices(Error);
    }

    /// <summary>Standard output as bytes; flush <see cref="Out"/> before writing here.</summary>
    public Stream Output { get; }

    /// <summary>Standard output as text.</summary>
    public TextWriter Out { get; }

    /// <summary>Standard error; foreign text in a line that is written to it is made visible.</summary>
    public TextWriter Error { get; }

    /// <summary>Warnings about the input that are still to be said.</summary>
    public Notices Notices { get; }

    /// <summary>Rows of a terminal of 80 columns that standard error has taken so far.</summary>
    public int ErrorRows => _error.Rows;

    public IFiles Files { get; init; } = new DiskFiles();

    /// <summary>The folder of the person's settings; null where there is none.</summary>
    public Func<string?> Settings { get; init; } = () => null;

    /// <summary>The folder of what can be fetched again; null where there is none.</summary>
    public Func<string?> Cache { get; init; } = () => null;

    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Whether a person looks at standard output.</summary>
    public bool OutIsTerminal { get; init; }

    /// <summary>Whether a person looks at standard error.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Reads a line that a person types; null where nobody is there to ask.</summary>
    public Func<string?>? Answer { get; init; }

    /// <summary>Opens the screen, in colour or not, and comes back with an exit code when it is closed; null where no screen can be opened.</summary>
    public Func<Opening, UnitStyle, bool, int>? Screen { get; init; }

    /// <summary>Whether colour and bold are wanted: not with NO_COLOR, not on a dumb terminal.</summary>
    public bool Color { get; init; }

    /// <summary>Whether the terminal has plain characters only.</summary>
    public bool Plain { get; init; }

    /// <summary>The host of a real process.</summary>
    public static Host OfProcess(Func<Opening, UnitStyle, bool, int> screen)
    {
        if (OperatingSystem.IsWindows())
            Console.OutputEncoding = Encoding.UTF8;
        bool terminal = !Console.IsOutputRedirected;
        return new(StandardStreams.Output(), StandardStreams.Error(), Console.IsErrorRedirected ? int.MaxValue : Wrap.Columns)
        {
            Settings = UserFolder.Settings,
            Cache = UserFolder.Cache,
            OutIsTerminal = terminal,
            ErrorIsTerminal = !Console.IsErrorRedirected,
            Answer = Console.IsInputRedirected || Console.IsErrorRedirected ? null : Console.ReadLine,
            Screen = terminal && !Console.IsInputRedirected ? screen : null,
            Plain = PlainTerminal.Is(Environment.GetEnvironmentVariable),
            Color = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
                && Environment.GetEnvironmentVariable("TERM") != "dumb",
        };
    }

    /// <summary>One line about something wrong, on standard error.</summary>
    public void Complain(string what) => Error.WriteLine($"coldsim: {what}");

    public void Dispose()
    {
        try
        {
            Out.Dispose();
        }
        catch (FileFaultException)
        {
            // It was said when the answer could not be written.
        }
    }
}
