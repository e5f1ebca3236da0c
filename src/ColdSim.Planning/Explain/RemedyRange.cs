namespace ColdSim.Planning.Explain;

/// <summary>A remedy before it is tried: its range and what a value makes of the scenario.</summary>
/// <param name="Kind">Which.</param>
/// <param name="From">As it is.</param>
/// <param name="To">The end of reach.</param>
/// <param name="Tolerance">Step.</param>
/// <param name="Build">The scenario with a value.</param>
internal sealed record RemedyRange(RemedyKind Kind, double From, double To, double Tolerance, Func<Scenario, double, Scenario> Build)
{
    /// <summary>What a value is called, or null.</summary>
    public Func<double, string>? Name { get; init; }
}
