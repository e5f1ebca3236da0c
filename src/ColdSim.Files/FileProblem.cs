using ColdSim.Files.Disk;

namespace ColdSim.Files;

/// <summary>One fault in a file somebody wrote: where it is, what was found and what would have been right.</summary>
/// <param name="File">The file as it was named to the reader.</param>
/// <param name="Line">1 for the first line.</param>
/// <param name="Column">1 for the first character.</param>
/// <param name="What">What was found.</param>
/// <param name="Accepted">What is accepted there, or null.</param>
/// <param name="Nearest">The nearest name that would have been valid, or null.</param>
public sealed record FileProblem(string File, int Line, int Column, string What, string? Accepted = null, string? Nearest = null)
{
    /// <summary><c>file:line:column: what was found; what is accepted; did you mean 'name'?</c></summary>
    public override string ToString()
    {
        string place = FormattableString.Invariant($"{File}:{Line}:{Column}: {What}");
        if (Accepted is not null)
            place += "; " + Accepted;
        return VisibleText.Of(Nearest is null ? place : $"{place}; did you mean '{Quote.Of(Nearest)}'?");
    }

    /// <summary>Why a file could not be opened, in words.</summary>
    internal static string WhyUnreadable(Exception e) => FileFaultException.WhyNotRead(e);

    /// <summary>Problems in the order of a reader's eye: file by file, top to bottom, left to right.</summary>
    internal static IReadOnlyList<FileProblem> InOrder(IEnumerable<FileProblem> problems, string firstFile)
        => [.. problems
            .OrderBy(p => p.File == firstFile ? 0 : 1).ThenBy(p => p.File, StringComparer.Ordinal)
            .ThenBy(p => p.Line).ThenBy(p => p.Column)];
}
