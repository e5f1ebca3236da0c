namespace ColdSim.Planning.Ensemble;

/// <summary>Makes the members of one scenario, one after the other; belongs to one thread.</summary>
internal interface IMemberMaker
{
    /// <summary>A member; it is good until the next is asked for.</summary>
    /// <param name="member">Its place, from 0.</param>
    /// <param name="drawn">Takes what was drawn for each <see cref="Uncertainty"/>.</param>
    Scenario Of(int member, Span<double> drawn);
}
