using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Commands;

/// <summary>What is run many times.</summary>
/// <param name="Scenario">The scenario.</param>
/// <param name="Options">What else is tried.</param>
internal sealed record ChanceQuestion(Scenario Scenario, IReadOnlyList<ComparedOption> Options)
{
    /// <summary>The question of a file.</summary>
    /// <param name="scenario">The scenario, perhaps moved to the log's latest reading.</param>
    /// <param name="options">The file's options, not moved.</param>
    /// <param name="latest">That reading, or null.</param>
    public static ChanceQuestion Of(Scenario scenario, IReadOnlyList<ComparedOption> options, LogRow? latest)
    {
        // Options start as the file says; beside a scenario that starts from a reading they would answer another question.
        if (latest is not null)
        {
            ErrorSize reading = new(latest.Contents.StandardUncertainty.Kilograms, "the log's latest reading");
            return new(scenario with { Errors = scenario.Errors with { Reading = reading } }, []);
        }

        return new(scenario, [.. options.Select(o => scenario.Trip is null && scenario.Nights is { } n && o.Scenario.Trip is null
            ? o with { Scenario = o.Scenario with { Nights = n, Step_s = scenario.Step_s } } : o)]);
    }
}
