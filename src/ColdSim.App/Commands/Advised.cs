using ColdSim.Planning.Sensitivity;

namespace ColdSim.App.Commands;

/// <summary>An answer with what it hangs on.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Of">The answer.</param>
/// <param name="Guesses">The uncertain inputs that move it, the first most; empty where that was not asked for.</param>
internal sealed record Advised<T>(T Of, IReadOnlyList<InputEffect> Guesses)
    where T : class;
