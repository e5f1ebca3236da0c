using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ColdSim.App.Commands;

namespace ColdSim.Fuzz.Readers;

/// <summary>How a damaged file was taken.</summary>
internal enum Taken
{
    Read,
    Refused,
    Failed,
}

/// <summary>What came of one damaged file.</summary>
/// <param name="Number">Which one.</param>
/// <param name="Kind">What kind of file it is.</param>
/// <param name="Taken">How it was taken.</param>
/// <param name="HasRun">Whether a run was made of it.</param>
/// <param name="Seconds">How long that took.</param>
/// <param name="Why">Why it failed; empty where it did not.</param>
internal sealed record ReaderOutcome(int Number, string Kind, Taken Taken, bool HasRun, double Seconds, string Why = "");

/// <summary>One command line over damaged files, and what must hold of whatever it says.</summary>
internal static partial class ReaderCase
{
    private const int LongestLine = 1500;

    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(20);

    [GeneratedRegex(@"^(left out: |warning: )?.+:\d+:\d+: \S", RegexOptions.CultureInvariant)]
    private static partial Regex Placed { get; }

    [GeneratedRegex(@"^\s+at \S+\(|Exception|internal error|System\.", RegexOptions.CultureInvariant)]
    private static partial Regex Trace { get; }

    /// <summary>Runs it; the fault, or null, and the exit code.</summary>
    public static (int Code, string? Fault) Run(string[] words, bool mustBePlaced)
    {
        using MemoryStream output = new();
        using StringWriter error = new() { NewLine = "\n" };
        using Host host = new(output, error);
        int code;
        try
        {
            Task<int> run = Task.Run(() => Dispatcher.RunAsync(words, host));
            if (!run.Wait(Limit))
                return (-1, $"no end within {Limit.TotalSeconds} s: {string.Join(' ', words)}");
            code = run.Result;
        }
        catch (AggregateException e)
        {
            return (-1, e.InnerException!.ToString());
        }

        string said = error.ToString();
        if (code is not (0 or 1 or 2))
            return (code, string.Create(CultureInfo.InvariantCulture, $"exit code {code}: {said}"));
        if (code == 2 && mustBePlaced && !said.Split('\n').Any(l => Placed.IsMatch(l)))
            return (code, $"refused without a place: {said}");
        return (code, Fault(said) ?? Fault(Encoding.UTF8.GetString(output.ToArray())));
    }

    private static string? Fault(string said)
    {
        foreach (string line in said.Split('\n'))
        {
            if (line.Length > LongestLine)
                return string.Create(CultureInfo.InvariantCulture, $"a line of {line.Length} characters: {line[..200]}");
            if (Trace.IsMatch(line))
                return $"an inner word comes out: {line}";
        }

        int at = said.EnumerateRunes().Select((rune, i) => (rune, i)).Where(r => r.rune.Value != '\n' && Rune.GetUnicodeCategory(r.rune) is
            UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
            .Where(r => r.rune.Value is not (0x200C or 0x200D)).Select(r => r.i).FirstOrDefault(-1);
        return at < 0 ? null : string.Create(CultureInfo.InvariantCulture, $"a control code at {at}: {said[Math.Max(0, at - 50)..Math.Min(said.Length, at + 50)]}");
    }
}
