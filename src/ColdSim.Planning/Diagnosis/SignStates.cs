using ColdSim.Physics.Units;

namespace ColdSim.Planning.Diagnosis;

/// <summary>The states of each sign, by the words with which they are given and stored.</summary>
internal static class SignStates
{
    // 75 % of the blower's speed is what closes a sail switch; the voltages are those at which that fails, or not.
    private static readonly double[] VoltEdges = [10.5, 11, 11.8, 12.3];

    // 2,000 ft is where the trade's rule on altitude begins; the others divide what is above it.
    private static readonly double[] ElevationEdges_m = [2000 * ConversionFactors.Foot_m, 5000 * ConversionFactors.Foot_m,
        8000 * ConversionFactors.Foot_m];

    /// <summary>The states of a sign, in the order of the table of likelihoods.</summary>
    public static IReadOnlyList<string> Of(Sign sign) => sign switch
    {
        Sign.Stove => ["normal", "weak", "fades", "none", "flares"],
        Sign.Fan => ["full", "slow", "none"],
        Sign.Furnace => ["silent", "fan-only", "clicks", "seconds", "minutes", "burns"],
        Sign.Volts => ["below 10.5 V", "10.5 to 11 V", "11 to 11.8 V", "11.8 to 12.3 V", "above 12.3 V"],
        Sign.Regulator => ["dry", "iced"],
        Sign.OpenedFast or Sign.Swapped or Sign.Filled => ["yes", "no"],
        Sign.Vents => ["clear", "snow"],
        Sign.Return => ["clear", "blocked"],
        Sign.Load => ["alone", "together"],
        Sign.ByDay => ["same", "better"],
        Sign.Reopened or Sign.Reset => ["helped", "no"],
        Sign.Gas => ["propane", "mixed", "butane"],
        Sign.Elevation => ["below 2,000 ft", "2,000 to 5,000 ft", "5,000 to 8,000 ft", "above 8,000 ft"],
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "has no states"),
    };

    /// <summary>The state of a word; null where the sign has no such state.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="word">Such as "fades".</param>
    public static int? Find(Sign sign, string word)
    {
        IReadOnlyList<string> states = Of(sign);
        for (int i = 0; i < states.Count; i++)
        {
            if (states[i].Equals(word, StringComparison.OrdinalIgnoreCase)) return i;
        }

        return null;
    }

    /// <summary>The state of a voltage.</summary>
    /// <param name="volts">At the board, the fan running. [V]</param>
    public static int OfVolts(double volts) => Place(VoltEdges, volts);

    /// <summary>The state of a height.</summary>
    /// <param name="elevation_m">Above sea level. [m]</param>
    public static int OfElevation(double elevation_m) => Place(ElevationEdges_m, elevation_m);

    private static int Place(double[] edges, double value)
    {
        int place = 0;
        while (place < edges.Length && value >= edges[place]) place++;
        return place;
    }
}
