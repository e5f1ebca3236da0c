using ColdSim.Planning;
using ColdSim.Planning.Compare;

namespace ColdSim.Files.Scenarios;

/// <summary>What came of reading a scenario: the scenario, or everything that is wrong with it.</summary>
public sealed record ReadResult
{
    /// <summary>The scenario; null where there are problems.</summary>
    public required Scenario? Scenario { get; init; }

    /// <summary>The scenario's options in the order written, each a scenario of its own; none where there are problems.</summary>
    public IReadOnlyList<ComparedOption> Options { get; init; } = [];

    /// <summary>All problems, the scenario's by place and then the weather file's.</summary>
    public required IReadOnlyList<FileProblem> Problems { get; init; }

    /// <summary>What is allowed and probably worth a look.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }
}
