using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Model.Engine;

namespace ColdSim.App.Commands;

/// <summary>The work of one command whose question has been read: how its answer is found, how it is written, and which exit code it means.</summary>
/// <typeparam name="T">The answer.</typeparam>
internal sealed record CommandWork<T>
    where T : class
{
    /// <summary>Finds the answer on another thread; reports each part that is done, and stops when asked to.</summary>
    public required Func<IProgress<int>, CancellationToken, T> Answer { get; init; }

    /// <summary>Writes the answer as text, everything of it.</summary>
    public required Action<T, TextOutput> Text { get; init; }

    /// <summary>The answer for one screen, which also begins the full text; null for a command whose text is short.</summary>
    public Func<T, UnitStyle, Answer>? OnScreen { get; init; }

    /// <summary>Writes the answer as one JSON document; null for a command without one.</summary>
    public Action<T, Stream>? Json { get; init; }

    /// <summary>What goes to standard error beside a JSON document, because the document is for programs.</summary>
    public Func<T, IEnumerable<string>> BesideJson { get; init; } = _ => [];

    /// <summary>Files that are written beside the answer.</summary>
    public IReadOnlyList<FileOutput<T>> Files { get; init; } = [];

    /// <summary>Further files, where it is known only from the answer which there are.</summary>
    public Func<T, IReadOnlyList<FileOutput<T>>> FilesOf { get; init; } = _ => [];

    /// <summary>What is said each second while a person waits, from how many parts are done; null for the time alone.</summary>
    public Func<int, string>? Progress { get; init; }

    /// <summary>The books of the answer's runs; null where nothing was run.</summary>
    public LedgerCheck<T>? Ledgers { get; init; }

    /// <summary>Whether the answer counts as a failure, which is exit code 1.</summary>
    public Func<T, bool> Fails { get; init; } = _ => false;

    /// <summary>Whether an interrupt leaves an answer that is shown all the same, instead of ending the command without one.</summary>
    public bool OutlivesInterrupt { get; init; }

    /// <summary>What is said after the answer where an interrupt left only a part of it; null for a whole one.</summary>
    public Func<T, string?> Interrupted { get; init; } = _ => null;
}

/// <summary>Where an answer goes as text.</summary>
internal sealed class TextOutput(Host host, UnitStyle units)
{
    public UnitStyle Units => units;

    public void Write(IReadOnlyList<TextSection> sections) => RunText.Write(host.Out, sections, host.OutIsTerminal && host.Color);

    public void Write(IEnumerable<AnswerLine> lines)
    {
        bool bold = host.OutIsTerminal && host.Color;
        foreach (AnswerLine line in lines)
        {
            string text = VisibleText.Of(line.Text);
            host.Out.WriteLine(line.Stressed && bold ? $"\e[1m{text}\e[0m" : text);
        }
    }

    public void Write(IEnumerable<string> lines)
    {
        foreach (string line in lines)
            host.Out.WriteLine(VisibleText.Of(line));
    }
}

/// <summary>Refuses an answer from runs whose energy or mass does not add up: an open ledger is our fault, and nothing of the answer is shown.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Shown">What is not shown, such as "this run".</param>
/// <param name="Open">A line for each ledger of the answer that is open.</param>
internal sealed record LedgerCheck<T>(string Shown, Func<T, IEnumerable<string>> Open)
{
    /// <summary>What to report it with.</summary>
    public string With { get; init; } = "the scenario and its weather file";

    /// <summary>Whose ledger it is.</summary>
    public string Whose { get; init; } = "the ledger";

    /// <exception cref="CommandFault">A ledger is open.</exception>
    public void Refuse(T answer)
    {
        string[] lines = [.. Open(answer)];
        if (lines.Length > 0)
            throw Fault(lines);
    }

    public CommandFault Fault(IEnumerable<string> lines) => new(
        ExitCode.Internal,
        [$"coldsim: internal error: {Whose} does not close, so nothing of {Shown} is shown.", .. lines, $"Please report it with {With}."]);
}

/// <summary>What is said of a ledger that is open.</summary>
internal static class LedgerLine
{
    /// <summary>One line, or none where it closes.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="of">Which of several runs it is of; empty for the only one.</param>
    public static IEnumerable<string> IfOpen(LedgerBalance ledger, string of = "") => ledger.Closes ? [] : [Of(ledger, of)];

    /// <summary>How far off it is, and what is allowed.</summary>
    public static string Of(LedgerBalance ledger, string of = "") => $"{(of.Length > 0 ? $"{of}: " : "")}{RunText.Ledger(ledger)} Allowed is 1e-6.";
}
