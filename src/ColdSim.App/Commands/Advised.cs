using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.App.Commands;

/// <summary>An answer with what it hangs on.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Of">The answer.</param>
/// <param name="Guesses">The uncertain inputs that move it, the first most; empty where that was not asked for.</param>
internal sealed record Advised<T>(T Of, IReadOnlyList<InputEffect> Guesses)
    where T : class;

/// <summary>Finds out what an answer hangs on.</summary>
internal static class Advised
{
    /// <summary>An answer, with what the run that it rests on hangs on.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="wanted">Whether that is wanted; it takes further runs.</param>
    /// <param name="scenario">What was run.</param>
    /// <param name="summary">What it came to.</param>
    /// <param name="cancel">Stops the runs.</param>
    /// <typeparam name="T">The answer.</typeparam>
    public static Advised<T> With<T>(T answer, bool wanted, Scenario scenario, RunSummary summary, CancellationToken cancel)
        where T : class
        => new(answer, wanted ? InputSensitivity.Of(scenario, summary, cancel: cancel) : []);
}
