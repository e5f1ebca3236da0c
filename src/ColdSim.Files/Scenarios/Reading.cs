using System.Globalization;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>What one reading of a scenario gathers on its way.</summary>
/// <param name="file">The scenario's name in messages.</param>
/// <param name="partial">Whether parts did not parse; then nothing is called missing, for it may only be unread.</param>
internal sealed class Reading(string file, bool partial)
{
    /// <summary>Every fault so far.</summary>
    public List<FileProblem> Problems { get; } = [];

    /// <summary>What was assumed because the scenario does not state it.</summary>
    public List<string> Assumptions { get; } = [];

    /// <summary>What is allowed and probably not meant.</summary>
    public List<string> Warnings { get; } = [];

    /// <summary>The scenario's name in messages.</summary>
    public string File => file;

    /// <summary>A reading of the same file from its beginning.</summary>
    public Reading Again() => new(file, partial);

    public void Report(TextPlace place, string what, string? accepted = null, string? nearest = null)
        => Problems.Add(new FileProblem(file, place.Line, place.Column, what, accepted, nearest));

    /// <summary>Reports that something is not there.</summary>
    public void Missing(TextPlace place, string what, string? accepted = null)
    {
        if (!partial)
            Report(place, what, accepted);
    }

    public void Assume(FormattableString text) => Assumptions.Add(text.ToString(CultureInfo.InvariantCulture));

    /// <summary>Warns of an unusual value, once.</summary>
    /// <param name="place">Where it is.</param>
    /// <param name="found">What was found, with its value.</param>
    /// <param name="usual">What is usual.</param>
    public void WarnUnusual(TextPlace place, string found, string usual)
    {
        string warning = string.Create(CultureInfo.InvariantCulture, $"{file}:{place.Line}:{place.Column}: {found}; usual: {usual}");
        if (!Warnings.Contains(warning))
            Warnings.Add(warning);
    }

    public void Warn(FormattableString text) => Warnings.Add(text.ToString(CultureInfo.InvariantCulture));
}
