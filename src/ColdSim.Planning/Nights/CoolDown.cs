using ColdSim.Physics.Units;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>What happens, and how soon, when the furnace stops at an instant and stays out.</summary>
public sealed record CoolDown
{
    /// <summary>50 °F, below which a coach is too cold to live in. [K]</summary>
    public const double Fifty_K = 283.15;

    /// <summary>Freezing. [K]</summary>
    public const double Freezing_K = ConversionFactors.ZeroCelsius_K;

    /// <summary>When the furnace stops.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Outside air then.</summary>
    public required Temperature Outside { get; init; }

    /// <summary>Inside air then; null without a coach.</summary>
    public required Temperature? Inside { get; init; }

    /// <summary>Until inside is at 50 °F (10 °C); null where it is not within <see cref="Watched"/>, or without a coach.</summary>
    public required Duration? FiftyAfter { get; init; }

    /// <summary>Until inside is at freezing; null as for <see cref="FiftyAfter"/>.</summary>
    public required Duration? FreezingAfter { get; init; }

    /// <summary>The earliest that inside is at 50 °F, as far as what the coach stores is known; null where it is not within <see cref="Watched"/>.</summary>
    public Duration? FiftyEarliest { get; init; }

    /// <summary>The latest; null where it may not be within <see cref="Watched"/>.</summary>
    public Duration? FiftyLatest { get; init; }

    /// <summary>The earliest that inside is at freezing; null where it is not within <see cref="Watched"/>.</summary>
    public Duration? FreezingEarliest { get; init; }

    /// <summary>The latest; null where it may not be within <see cref="Watched"/>.</summary>
    public Duration? FreezingLatest { get; init; }

    /// <summary>Every bay's contents, pipe and tank that holds water.</summary>
    public required IReadOnlyList<WaterAfter> Water { get; init; }

    /// <summary>How far ahead the run goes: to the end of the weather, at most <see cref="CoolDownRun.LongestWatch_s"/>.</summary>
    public required Duration Watched { get; init; }

    /// <summary>The same with the range of the times to 50 °F and to freezing.</summary>
    /// <param name="fifty_s">Times to 50 °F, one for each corner of the range; NaN where it is not reached. [s]</param>
    /// <param name="freezing_s">Times to freezing likewise. [s]</param>
    internal CoolDown Over(IReadOnlyList<double> fifty_s, IReadOnlyList<double> freezing_s) => this with
    {
        FiftyEarliest = Earliest(FiftyAfter, fifty_s),
        FiftyLatest = Latest(FiftyAfter, fifty_s),
        FreezingEarliest = Earliest(FreezingAfter, freezing_s),
        FreezingLatest = Latest(FreezingAfter, freezing_s),
    };

    private static Duration? Earliest(Duration? own, IReadOnlyList<double> others_s)
    {
        double least_s = own?.Seconds ?? double.PositiveInfinity;
        foreach (double other_s in others_s)
        {
            if (other_s < least_s) least_s = other_s;
        }

        return double.IsFinite(least_s) ? Duration.FromSeconds(least_s) : null;
    }

    private static Duration? Latest(Duration? own, IReadOnlyList<double> others_s)
    {
        double most_s = own?.Seconds ?? double.NaN;
        foreach (double other_s in others_s) most_s = Math.Max(most_s, other_s);
        return double.IsNaN(most_s) ? null : Duration.FromSeconds(most_s);
    }

    /// <summary>The first water to freeze, or freezing by then, before any that is ice already; null where none does within <see cref="Watched"/>.</summary>
    public WaterAfter? First => Water.Where(w => w.BeginsAfter is not null)
        .OrderBy(w => w.SolidAfter is { Seconds: <= 0 }).ThenBy(w => w.BeginsAfter!.Value.Seconds).FirstOrDefault();
}

/// <summary>One body of water after the furnace has stopped.</summary>
/// <param name="Name">Name of the water.</param>
/// <param name="BeginsAfter">Until it begins to freeze; zero where it already had; null where it does not.</param>
/// <param name="SolidAfter">Until it is ice through and through; null where it is not.</param>
public sealed record WaterAfter(string Name, Duration? BeginsAfter, Duration? SolidAfter);
