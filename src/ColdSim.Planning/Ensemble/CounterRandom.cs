using MathNet.Numerics.Distributions;

namespace ColdSim.Planning.Ensemble;

/// <summary>Counter-based random numbers of one member, each addressed by seed, member, purpose and index.</summary>
/// <remarks>
/// SplitMix64 (Steele, Lea and Flood 2014) used as a hash of a counter. A number depends on its address alone, so
/// it is the same whichever thread asks, however many members there are and whatever other options are run: common random numbers.
/// </remarks>
internal readonly struct CounterRandom
{
    private const ulong Golden = 0x9E3779B97F4A7C15;
    private const double Unit = 1.0 / (1UL << 53);

    private readonly ulong _key;

    private CounterRandom(ulong key) => _key = key;

    /// <summary>A member's numbers.</summary>
    public static CounterRandom Of(int seed, int member) => new(Number(Number(0, (ulong)(uint)seed), (ulong)(uint)member));

    /// <summary>The number at a place of SplitMix64's sequence from a seed; the first is at 0.</summary>
    public static ulong Number(ulong seed, ulong place)
    {
        ulong z = unchecked(seed + (place + 1) * Golden);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EB);
        return z ^ (z >> 31);
    }

    /// <summary>A number of the uniform distribution on the open interval from 0 to 1.</summary>
    public double Uniform(Purpose purpose, int place = 0)
        => ((Number(Number(_key, (ulong)purpose), (ulong)(uint)place) >> 11) + 0.5) * Unit;

    /// <summary>A standard normal number.</summary>
    public double Normal(Purpose purpose, int place = 0) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, Uniform(purpose, place));

    /// <summary>What turns a standard normal number into one of Student's t with variance one, when all of a member share it.</summary>
    /// <param name="freedom">Degrees of freedom, above 2.</param>
    public double TailScale(double freedom)
        => Math.Sqrt((freedom - 2) / ChiSquared.InvCDF(freedom, Uniform(Purpose.Tail)));

    /// <summary>What a number is for; the values are part of the addresses and stay.</summary>
    internal enum Purpose
    {
        Tail = 0,
        Temperature = 1,
        Wind = 2,
        HeatLoss = 3,
        Infiltration = 4,
        Contents = 5,
        SetPoint = 6,
        DoorOpenings = 7,
    }
}
