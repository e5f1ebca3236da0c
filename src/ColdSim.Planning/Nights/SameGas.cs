using System.Collections.ObjectModel;

namespace ColdSim.Planning.Nights;

/// <summary>A list of what each took that is equal to another of the same amounts, so that reports that say the same are equal.</summary>
/// <param name="each">What each took.</param>
internal sealed class SameGas(IList<ApplianceGas> each) : ReadOnlyCollection<ApplianceGas>(each)
{
    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SameGas other && this.SequenceEqual(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Count == 0 ? 0 : HashCode.Combine(Count, this[0]);
}
