namespace ColdSim.Planning.Diagnosis;

/// <summary>How often each state of a sign is seen when a cause is at work.</summary>
/// <param name="Cause">The cause; null for every cause that has no row of its own.</param>
/// <param name="Weights">A weight for each state; together 1.</param>
/// <param name="Basis">A heading of docs/sources.md where a source says which way it goes, else "common practice, no source".</param>
/// <remarks>No source counts how often; the numbers are judgement everywhere.</remarks>
internal sealed record LikelihoodRow(Cause? Cause, IReadOnlyList<double> Weights, string Basis);
