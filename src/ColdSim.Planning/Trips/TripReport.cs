using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Trips;

/// <summary>A night of a trip.</summary>
public sealed record TripNight
{
    public required NightReport Night { get; init; }

    /// <summary>Place of the stop where it is at midnight, from 0; null on the road.</summary>
    public required int? Stop { get; init; }

    /// <summary>Its smallest margin; null where there was no demand for gas.</summary>
    public required Margin? Margin { get; init; }

    /// <summary>Places of the refills between its noons, from 0.</summary>
    public required IReadOnlyList<int> Refills { get; init; }
}

/// <summary>A refill of a trip.</summary>
public sealed record TripRefill
{
    /// <summary>The refill as planned.</summary>
    public required Refill Refill { get; init; }

    /// <summary>Its outcome; null where the run ended before.</summary>
    public required RefillOutcome? Outcome { get; init; }

    /// <summary>Until when it can be put off.</summary>
    public required RefillWait Wait { get; init; }

    /// <summary>Cylinder and gas together as somebody carries them back; null for a tank that stays in its frame, and where it was refused.</summary>
    public required Mass? Carried { get; init; }

    /// <summary>Whether that is more than one person can carry.</summary>
    public required bool TooHeavy { get; init; }
}

/// <summary>Report of a trip.</summary>
public sealed record TripReport
{
    public required Trip Trip { get; init; }

    public required RunReport Run { get; init; }

    /// <summary>Night by night.</summary>
    public required IReadOnlyList<TripNight> Nights { get; init; }

    /// <summary>The refills in order of time.</summary>
    public required IReadOnlyList<TripRefill> Refills { get; init; }

    /// <summary>What the trip costs.</summary>
    public required TripMoney Money { get; init; }

    /// <summary>Gas that came in at the refills.</summary>
    public Mass Bought => Mass.FromKilograms(Refills.Sum(r => r.Outcome?.Bought_kg ?? 0));

    /// <summary>Gas left behind in cylinders given in exchange.</summary>
    public Mass LeftBehind => Mass.FromKilograms(Refills.Sum(r => r.Outcome?.LeftBehind_kg ?? 0));
}

/// <summary>The least surplus of a night: gas that could have been given at full delivery pressure, less the demand.</summary>
/// <remarks>
/// The least over the minutes with a demand for gas; below zero something went short. It is read off the run's curves when
/// first used, because most runs never need it.
/// </remarks>
/// <param name="Surplus">As gross heat.</param>
/// <param name="At">The instant of the least margin.</param>
public sealed record Margin(Power Surplus, DateTimeOffset At)
{
    /// <summary>A night's; null where there was no demand for gas.</summary>
    public static Margin? Of(RunReport run, NightReport night)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(night);
        DateTimeOffset start = run.Scenario.Start;
        int from = (int)Math.Ceiling((night.From - start).TotalSeconds / RunSeries.Spacing_s);
        int to = Math.Min(run.Series.Count - 1, (int)Math.Floor((night.To - start).TotalSeconds / RunSeries.Spacing_s));
        int at = -1;
        double least_W = double.PositiveInfinity;
        for (int i = Math.Max(1, from); i <= to; i++)
        {
            if (!(run.Series.Asked_W[i] > 0)) continue;
            double surplus_W = run.Series.CanGiveNow_W[i] - run.Series.Asked_W[i];
            if (surplus_W < least_W) (least_W, at) = (surplus_W, i);
        }

        return at < 0 ? null : new Margin(Power.FromWatts(least_W), start.AddSeconds(at * RunSeries.Spacing_s));
    }
}

/// <summary>Outcome of a refill in a run.</summary>
/// <param name="Refill">What was planned.</param>
/// <param name="Before">The cylinder's state before.</param>
/// <param name="After">Its state afterwards; unchanged where it was refused.</param>
/// <param name="Refused">Whether the station refused it, the cylinder being past its requalification date.</param>
public sealed record RefillOutcome(Refill Refill, CylinderState Before, FilledCylinder After, bool Refused)
{
    /// <summary>Gas bought: what was pumped in, or what came in the exchange cylinder. [kg]</summary>
    public double Bought_kg => Refused ? 0 : Refill.Kind == RefillKind.Exchange ? After.Propane_kg : After.Propane_kg - Before.Propane_kg;

    /// <summary>Gas left behind in a cylinder given in exchange. [kg]</summary>
    public double LeftBehind_kg => !Refused && Refill.Kind == RefillKind.Exchange ? Before.Propane_kg : 0;

    /// <summary>What was paid; null where no price is given.</summary>
    public double? Paid => Refill.Price is not { } price ? null : Refused || Bought_kg <= 0 ? 0 : price.Of(Bought_kg);
}
