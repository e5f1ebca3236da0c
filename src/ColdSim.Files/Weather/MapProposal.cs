using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>A column map that is proposed for a table of no known layout.</summary>
internal sealed record MapProposal
{
    /// <summary>The table.</summary>
    public required string File { get; init; }

    /// <summary>The map.</summary>
    public required ColumnMap Map { get; init; }

    /// <summary>What is not in the headings, and so only a guess.</summary>
    public required IReadOnlyList<string> Guesses { get; init; }

    /// <summary>Headings that are not used.</summary>
    public required IReadOnlyList<string> Unused { get; init; }

    /// <summary>Whether its times have no offset of their own.</summary>
    public required bool NeedsOffset { get; init; }

    /// <summary>The first rows as they are read by it, three at most.</summary>
    public required IReadOnlyList<WeatherRow> Preview { get; init; }

    /// <summary>What is wrong with the first rows as they are read by it.</summary>
    public required IReadOnlyList<FileProblem> Problems { get; init; }
}
