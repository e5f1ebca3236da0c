using System.Text;

namespace ColdSim.App.Commands;

/// <summary>Where a command runs: its streams, its clock, and the rest of the program.</summary>
internal sealed class Host : IDisposable
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public Host(Stream output, TextWriter error, Parts parts)
    {
        Output = output;
        Out = new StreamWriter(output, Utf8, leaveOpen: true) { NewLine = "\n" };
        Error = error;
        Parts = parts;
    }

    /// <summary>Standard output as bytes; flush <see cref="Out"/> before writing here.</summary>
    public Stream Output { get; }

    /// <summary>Standard output as text.</summary>
    public TextWriter Out { get; }

    public TextWriter Error { get; }

    public Parts Parts { get; }

    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Whether a person looks at standard output.</summary>
    public bool OutIsTerminal { get; init; }

    /// <summary>Whether a person looks at standard error.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Whether a screen can be opened.</summary>
    public bool CanShow { get; init; }

    /// <summary>Whether colour and bold are wanted: not with NO_COLOR, not on a dumb terminal.</summary>
    public bool Color { get; init; }

    /// <summary>The host of a real process.</summary>
    public static Host OfProcess(Parts parts)
    {
        if (OperatingSystem.IsWindows())
            Console.OutputEncoding = Encoding.UTF8;
        bool terminal = !Console.IsOutputRedirected;
        return new(Console.OpenStandardOutput(), Console.Error, parts)
        {
            OutIsTerminal = terminal,
            ErrorIsTerminal = !Console.IsErrorRedirected,
            CanShow = terminal && !Console.IsInputRedirected,
            Color = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
                && Environment.GetEnvironmentVariable("TERM") != "dumb",
        };
    }

    /// <summary>One line about something wrong, on standard error.</summary>
    public void Complain(string what) => Error.WriteLine($"coldsim: {what}");

    public void Dispose() => Out.Dispose();
}
