using System.Collections.ObjectModel;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>Gas that one appliance took.</summary>
/// <param name="Name">Which; the furnace is called so.</param>
/// <param name="Gas">Mass of gas.</param>
/// <param name="Share">Its part of what all took.</param>
public sealed record ApplianceGas(string Name, Mass Gas, Ratio Share)
{
    /// <summary>The same appliances over several nights.</summary>
    /// <param name="nights">Night by night, each in the same order.</param>
    public static IReadOnlyList<ApplianceGas> Sum(IReadOnlyList<IReadOnlyList<ApplianceGas>> nights)
    {
        ArgumentNullException.ThrowIfNull(nights);
        if (nights.Count == 0) return [];
        double[] each_kg = new double[nights[0].Count];
        double whole_kg = 0;
        for (int i = 0; i < each_kg.Length; i++)
        {
            for (int night = 0; night < nights.Count; night++) each_kg[i] += nights[night][i].Gas.Kilograms;
            whole_kg += each_kg[i];
        }

        ApplianceGas[] each = new ApplianceGas[each_kg.Length];
        for (int i = 0; i < each.Length; i++)
        {
            Ratio share = Ratio.FromDecimalFractions(whole_kg > 0 ? each_kg[i] / whole_kg : 0);
            each[i] = nights[0][i] with { Gas = Mass.FromKilograms(each_kg[i]), Share = share };
        }

        return new SameGas(each);
    }
}

/// <summary>A list of what each took that is equal to another of the same amounts, so that reports that say the same are equal.</summary>
/// <param name="each">What each took.</param>
internal sealed class SameGas(IList<ApplianceGas> each) : ReadOnlyCollection<ApplianceGas>(each)
{
    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SameGas other && this.SequenceEqual(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Count == 0 ? 0 : HashCode.Combine(Count, this[0]);
}
