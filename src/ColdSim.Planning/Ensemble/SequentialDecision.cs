namespace ColdSim.Planning.Ensemble;

/// <summary>On which side of the wanted chance the chance of holding lies.</summary>
public enum ChanceSide
{
    /// <summary>It is above.</summary>
    Above,

    /// <summary>It is below.</summary>
    Below,

    /// <summary>The members do not say.</summary>
    Open,
}

/// <summary>The answer of members that were run until it was settled whether the chance is above or below the wanted one.</summary>
/// <param name="Side">The answer.</param>
/// <param name="Low_frac">Lower end of the interval that may be looked at after every member.</param>
/// <param name="High_frac">Upper end.</param>
/// <param name="Most">Members after which it would have stopped without an answer.</param>
public sealed record SequentialDecision(ChanceSide Side, double Low_frac, double High_frac, int Most)
{
    /// <summary>Members before the first look: percentiles of fewer say little.</summary>
    internal const int FirstLook = 40;

    private const int Batch = 20;
    private const int Batches = 10;

    /// <summary>Members at the look after one: every twenty at first, later a tenth more, in whole twenties. It does not depend on the machine.</summary>
    internal static int NextLook(int members) => members + Batch * Math.Max(1, members / (Batch * Batches));

    /// <summary>What members say.</summary>
    /// <param name="holds">Those that hold.</param>
    /// <param name="members">All of them.</param>
    /// <param name="wanted_frac">The wanted chance.</param>
    /// <param name="most">Members after which it stops.</param>
    internal static SequentialDecision Of(int holds, int members, double wanted_frac, int most)
    {
        ConfidenceSequence sequence = new(holds, members);
        ChanceSide side = sequence.Place(wanted_frac) switch { < 0 => ChanceSide.Above, > 0 => ChanceSide.Below, _ => ChanceSide.Open };
        return new SequentialDecision(side, sequence.Low_frac, sequence.High_frac, most);
    }
}
