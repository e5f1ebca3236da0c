using System.CommandLine;
using System.CommandLine.Invocation;
using ColdSim.App.Shells;
using ColdSim.Files.Disk;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>The dispatcher: runs one command line from words to exit code; whatever goes wrong becomes a line, not a trace.</summary>
internal static class Dispatcher
{
    private static readonly TimeSpan GraceAfterInterrupt = TimeSpan.FromMilliseconds(800);

    public static async Task<int> RunAsync(IReadOnlyList<string> words, Host host, CancellationToken cancel = default)
    {
        try
        {
            int code = await InvokeAsync(words, host, cancel).ConfigureAwait(false);
            await host.Out.FlushAsync(CancellationToken.None).ConfigureAwait(false);
            return code;
        }
        catch (CommandFault fault)
        {
            host.Notices.SayAll();
            foreach (string line in fault.Lines)
                host.Error.WriteLine(line);
            return fault.Code;
        }
        catch (OperationCanceledException)
        {
            host.Complain("interrupted");
            return ExitCode.Interrupted;
        }
        catch (FileFaultException e)
        {
            host.Complain(OneLine(e.Message));
            return ExitCode.BadInput;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            host.Complain($"a file cannot be read or written: {FileFaultException.WhyNotRead(e)}");
            return ExitCode.BadInput;
        }
        catch (CannotRunException e)
        {
            host.Complain(OneLine(e.Message));
            return ExitCode.BadInput;
        }
#pragma warning disable CA1031 // the last place before the person: a line is better than a trace
        catch (Exception e)
#pragma warning restore CA1031
        {
            host.Complain($"internal error: {OneLine(e.Message)} ({e.GetType().Name})");
            return ExitCode.Internal;
        }
        finally
        {
            host.Notices.SayAll();
        }
    }

    private static Task<int> InvokeAsync(IReadOnlyList<string> words, Host host, CancellationToken cancel)
    {
        if (words.Count > 0 && words[0] == CompletionScript.Question)
            return Task.FromResult(CompletionsCommand.Answer([.. words.Skip(1)], host));
        if (words.Count > 0 && words[0] == "help")
            words = [.. words.Skip(1), "--help"];
        RootCommand root = CommandTree.Of(host, words.Count > 0 ? words[0] : null);
        ParseResult parsed = root.Parse(words, CommandTree.Parsing);
        bool lost = parsed.Action is HelpWithExamples && parsed.UnmatchedTokens.Count > 0;
        if (lost || parsed.Action is ParseErrorAction || UsageFault.SwallowedOption(parsed) is not null)
            throw CommandFault.Input(UsageFault.Lines(parsed, host.Files));
        return parsed.InvokeAsync(
            new InvocationConfiguration
            {
                Output = host.Out,
                Error = host.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = GraceAfterInterrupt,
            },
            cancel);
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
