using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Trips;

/// <summary>A night of a trip.</summary>
public sealed record TripNight
{
    /// <summary>The night.</summary>
    public required NightReport Night { get; init; }

    /// <summary>Place of the stop where it is at midnight, from 0; null on the road.</summary>
    public required int? Stop { get; init; }

    /// <summary>Its smallest margin; null where nothing asked for gas.</summary>
    public required Margin? Margin { get; init; }

    /// <summary>Places of the refills between its noons, from 0.</summary>
    public required IReadOnlyList<int> Refills { get; init; }
}

/// <summary>A refill of a trip.</summary>
public sealed record TripRefill
{
    /// <summary>What was planned.</summary>
    public required Refill Refill { get; init; }

    /// <summary>What came of it; null where the run ended before.</summary>
    public required RefillOutcome? Outcome { get; init; }

    /// <summary>How long it can wait.</summary>
    public required RefillWait Wait { get; init; }

    /// <summary>Cylinder and gas together as somebody carries them back; null for a tank that stays in its frame, and where it was refused.</summary>
    public required Mass? Carried { get; init; }

    /// <summary>Whether that is more than one person can carry.</summary>
    public required bool TooHeavy { get; init; }
}

/// <summary>Everything that is said of a trip.</summary>
public sealed record TripReport
{
    /// <summary>The trip.</summary>
    public required Trip Trip { get; init; }

    /// <summary>The run.</summary>
    public required RunReport Run { get; init; }

    /// <summary>Night by night.</summary>
    public required IReadOnlyList<TripNight> Nights { get; init; }

    /// <summary>The refills in order of time.</summary>
    public required IReadOnlyList<TripRefill> Refills { get; init; }

    /// <summary>What it costs.</summary>
    public required TripMoney Money { get; init; }

    /// <summary>Gas that came in at the refills.</summary>
    public Mass Bought => Mass.FromKilograms(Refills.Sum(r => r.Outcome?.Bought_kg ?? 0));

    /// <summary>Gas left behind in cylinders given in exchange.</summary>
    public Mass LeftBehind => Mass.FromKilograms(Refills.Sum(r => r.Outcome?.LeftBehind_kg ?? 0));
}
