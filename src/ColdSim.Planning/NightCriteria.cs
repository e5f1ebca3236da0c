using UnitsNet;

namespace ColdSim.Planning;

/// <summary>The one place where short, flat, holds and dry are given a meaning.</summary>
/// <remarks>
/// <list type="bullet">
/// <item>An appliance is <em>undersupplied</em> while it demands gas and gets less than <see cref="Undersupplied"/> of its demand,
/// or is waiting to be lit again because pressure was too low.</item>
/// <item>A night is <em>short</em> when undersupply lasts more than <see cref="ShortAllowance"/> in all, or when inside falls more
/// than <see cref="BelowSetPoint"/> below the set point for lack of gas.</item>
/// <item>A night is <em>dry</em> when no liquid is left and an appliance is undersupplied.</item>
/// <item>A night is <em>flat</em> when voltage is gone for more than <see cref="ShortAllowance"/> in all, and was gone before gas was
/// short or out. Voltage counts as gone only while there is a load.</item>
/// <item>A night <em>holds</em> when it is none of these.</item>
/// </list>
/// </remarks>
public sealed record NightCriteria
{
    /// <summary>How much undersupply, all appliances and hours of a night together, still counts as holding; and how long without voltage.</summary>
    public Duration ShortAllowance { get; init; } = Duration.FromMinutes(5);

    /// <summary>How far inside may fall below the set point for lack of gas and still count as holding.</summary>
    public TemperatureDelta BelowSetPoint { get; init; } = TemperatureDelta.FromKelvins(1);

    /// <summary>Part of the demand below which an appliance counts as undersupplied.</summary>
    public Ratio Undersupplied { get; init; } = Ratio.FromPercent(95);

    /// <summary>Clock time at which "left at dawn" is read.</summary>
    public TimeOnly Dawn { get; init; } = new(7, 0);

    /// <summary>Nights run from this clock time to the next day's, so that every hour of a run belongs to one night.</summary>
    public static TimeOnly NightBoundary { get; } = new(12, 0);
}
