using System.Text;
using ColdSim.App.Commands;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Tests.Files;

namespace ColdSim.Tests.App.Commands;

/// <summary>Runs command lines of the real program in this process, on a host of its own: captured output, files, clock and screen that a test may choose.</summary>
internal sealed class Shell
{
    private StringWriter? _error;


    /// <summary>The demo: three nights, of which the second runs short and the third dry.</summary>
    public static string ColdSnap { get; } = Demo("cold-snap.toml");

    public IFiles Files { get; set; } = new DiskFiles();

    /// <summary>The folder of the person's settings; null where there is none.</summary>
    public string? Settings { get; set; }

    /// <summary>The folder of what can be fetched again; null where there is none.</summary>
    public string? Cache { get; set; }

    public TimeProvider Clock { get; set; } = TimeProvider.System;

    public bool Terminal { get; set; }

    /// <summary>Where lines on standard error are broken; so far out, unless a test says otherwise, that each message is one line.</summary>
    public int Columns { get; set; } = 10_000;

    /// <summary>What the person types when asked; null where nobody is there.</summary>
    public Func<string?>? Answer { get; set; }

    public Func<Opening, UnitStyle, bool, int> Screen { get; set; } = (_, _, _) => 0;

    /// <summary>Done whenever a sign of life is put on standard error.</summary>
    public Action WhileWaiting { get; set; } = () => { };

    public string Out { get; private set; } = "";

    public string Error { get; private set; } = "";

    /// <summary>What a run that is still going has put on standard error.</summary>
    public string ErrorSoFar => _error?.ToString() ?? "";

    public static string Demo(string file) => Path.Combine(DocPage.Scenarios, file);

    public int Run(params string[] words) => RunAsync(words, CancellationToken.None).GetAwaiter().GetResult();

    public async Task<int> RunAsync(string[] words, CancellationToken cancel)
    {
        using MemoryStream output = new();
        using ErrorWriter error = new(() => WhileWaiting());
        _error = error;
        int code;
        using (Host host = On(output, error))
            code = await Dispatcher.RunAsync(words, host, cancel);
        Out = Encoding.UTF8.GetString(output.ToArray());
        Error = error.ToString();
        return code;
    }

    /// <summary>Runs one command's work by itself.</summary>
    public async Task<int> RunAsync<T>(CommandWork<T> work, bool json, CancellationToken cancel)
        where T : class
    {
        using MemoryStream output = new();
        using ErrorWriter error = new(() => WhileWaiting());
        try
        {
            using Host host = On(output, error);
            return await CommandRunner.RunAsync(work, host, UnitStyle.Us, json, AnswerLength.Full, cancel);
        }
        finally
        {
            Out = Encoding.UTF8.GetString(output.ToArray());
            Error = error.ToString();
        }
    }

    /// <summary>Interrupts the program at its first sign of life, which the clock of this shell gives at once.</summary>
    public async Task<int> InterruptedAsync(params string[] words)
    {
        using CancellationTokenSource source = new();
        (Terminal, Clock, WhileWaiting) = (true, new HastyClock(), source.Cancel);
        return await RunAsync(words, source.Token);
    }

    /// <summary>Sections as a command prints them.</summary>
    public static string Printed(IReadOnlyList<TextSection> sections)
    {
        using StringWriter text = new() { NewLine = "\n" };
        RunText.Write(text, sections, bold: false);
        return text.ToString();
    }

    private Host On(Stream output, TextWriter error) => new(output, error, Columns)
    {
        Files = Files,
        Answer = Answer,
        Settings = () => Settings,
        Cache = () => Cache,
        Clock = Clock,
        OutIsTerminal = Terminal,
        ErrorIsTerminal = Terminal,
        Screen = Terminal ? Screen : null,
        Color = Terminal,
    };

    private sealed class ErrorWriter : StringWriter
    {
        private readonly Action _whileWaiting;

        public ErrorWriter(Action whileWaiting) => (_whileWaiting, CoreNewLine) = (whileWaiting, ['\n']);

        public override void Flush() => _whileWaiting();
    }
}

/// <summary>A clock on which the first second is over at once.</summary>
internal sealed class HastyClock : TimeProvider
{
    private int _timers;

    /// <summary>How long each later second takes; they never end unless this says so.</summary>
    public TimeSpan Later { get; init; } = Timeout.InfiniteTimeSpan;

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        if (Interlocked.Increment(ref _timers) > 1)
            return base.CreateTimer(callback, state, Later == Timeout.InfiniteTimeSpan ? dueTime : Later, period);
        callback(state);
        return base.CreateTimer(_ => { }, null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }
}

/// <summary>Files that are only held, before those of the disk.</summary>
internal sealed class HeldFiles : DiskFiles
{
    /// <summary>Text of each by its path.</summary>
    public Dictionary<string, string> Texts { get; } = [];

    public override bool Exists(string path) => Texts.ContainsKey(path) || base.Exists(path);

    public override Stream Open(string path) => Texts.TryGetValue(path, out string? text) ? new MemoryStream(Encoding.UTF8.GetBytes(text)) : base.Open(path);
}
