using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>
/// Runs every command the same way: reads the question, finds the answer with progress and cancellation, refuses an open ledger, writes text or JSON,
/// then the files beside it, and ends with the exit code.
/// </summary>
internal static class CommandRunner
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    /// <summary>Gives a command its work.</summary>
    /// <param name="command">The command.</param>
    /// <param name="host">Where it runs.</param>
    /// <param name="question">Reads the command line, and the files it names, into the work; throws a <see cref="CommandFault"/> for what is wrong.</param>
    /// <param name="units">The option that says the units; null for a command without it.</param>
    /// <param name="json">The option that asks for JSON; null for a command without it.</param>
    /// <param name="length">The options that say how long the answer is wanted; null for a command whose text is short.</param>
    /// <typeparam name="T">The answer.</typeparam>
    public static void SetWork<T>(
        this Command command, Host host, Func<ParseResult, CommandWork<T>> question, Option<string>? units = null, Option<bool>? json = null,
        AnswerOptions? length = null)
        where T : class
        => command.SetAction((parsed, cancel) =>
        {
            AnswerLength wanted = length?.Of(parsed) ?? AnswerLength.Screen;
            return RunAsync(
                question(parsed),
                host,
                units is null ? UnitStyle.Us : parsed.UnitStyle(units),
                json is not null && parsed.GetValue(json),
                wanted,
                cancel);
        });

    /// <summary>Finds the answer, writes it and gives the exit code.</summary>
    public static async Task<int> RunAsync<T>(CommandWork<T> work, Host host, UnitStyle units, bool json, AnswerLength length, CancellationToken cancel)
        where T : class
    {
        host.Notices.Say(json ? AnswerLength.Full : length);
        T answer = await AnswerAsync(work, host, cancel).ConfigureAwait(false);

        // What was found while answering comes before the answer, which is then set into the rows that are left.
        host.Notices.Say(json ? AnswerLength.Full : length);
        if (json)
        {
            foreach (string line in work.BesideJson(answer))
                host.Error.WriteLine(line);
            await host.Out.FlushAsync(CancellationToken.None).ConfigureAwait(false);
            work.Json!(answer, host.Output);
        }
        else
        {
            Write(work, answer, length, new TextOutput(host, units), AnswerLayout.Rows - host.ErrorRows - work.Files.Count);
        }

        await host.Out.FlushAsync(work.OutlivesInterrupt ? CancellationToken.None : cancel).ConfigureAwait(false);
        foreach (FileOutput<T> file in work.Files)
            file.Save(answer, host, cancel);
        foreach (FileOutput<T> file in work.FilesOf(answer))
            file.Save(answer, host, cancel);
        if (work.Interrupted(answer) is { } interrupted)
        {
            host.Complain(interrupted);
            return ExitCode.Interrupted;
        }

        return work.Fails(answer) ? ExitCode.ShortOrDry : ExitCode.Done;
    }

    private static void Write<T>(CommandWork<T> work, T answer, AnswerLength length, TextOutput to, int rows)
        where T : class
    {
        if (work.OnScreen?.Invoke(answer, to.Units) is not { } screen)
        {
            work.Text(answer, to);
            return;
        }

        switch (length)
        {
            case AnswerLength.Brief:
                to.Write([screen.Brief]);
                break;
            case AnswerLength.Screen:
                to.Write(AnswerLayout.Fit(screen, rows));
                break;
            default:
                to.Write(AnswerLayout.Whole(screen));
                to.Write([""]);
                work.Text(answer, to);
                break;
        }
    }

    /// <summary>Finds the answer only.</summary>
    /// <exception cref="CommandFault">A ledger is open.</exception>
    /// <exception cref="OperationCanceledException">Interrupted, and the work does not outlive that.</exception>
    public static async Task<T> AnswerAsync<T>(CommandWork<T> work, Host host, CancellationToken cancel)
        where T : class
    {
        PartsDone done = new();
        Task<T> finding = Task.Run(() => work.Answer(done, cancel), work.OutlivesInterrupt ? CancellationToken.None : cancel);
        await ShowWaitingAsync(finding, host, () => work.Progress?.Invoke(done.Count)).ConfigureAwait(false);
        try
        {
            T answer = await finding.ConfigureAwait(false);
            if (!work.OutlivesInterrupt)
                cancel.ThrowIfCancellationRequested();
            work.Ledgers?.Refuse(answer);
            return answer;
        }
        catch (LedgerOpenException e) when (work.Ledgers is { } ledgers)
        {
            throw ledgers.Fault([LedgerLine.Of(e.Ledger)]);
        }
    }

    // A sign of life on standard error, if a person looks at it and the work takes over a second; it is wiped when the work is over, however that ended.
    private static async Task ShowWaitingAsync(Task work, Host host, Func<string?> progress)
    {
        if (!host.ErrorIsTerminal)
            return;
        int seconds = 0, width = 19;
        while (await Task.WhenAny(work, Task.Delay(Second, host.Clock)).ConfigureAwait(false) != work)
        {
            seconds++;
            string line = FormattableString.Invariant($"running for {seconds} s{progress()}");
            width = Math.Max(width, line.Length);
            host.Error.Write('\r' + line);
            host.Error.Flush();
        }

        if (seconds > 0)
            host.Error.Write($"\r{new string(' ', width)}\r");
    }

    // Parts report from several threads, and a later count may come first, so they are counted here.
    private sealed class PartsDone : IProgress<int>
    {
        private int _count;

        public int Count => Volatile.Read(ref _count);

        public void Report(int value) => Interlocked.Increment(ref _count);
    }
}
