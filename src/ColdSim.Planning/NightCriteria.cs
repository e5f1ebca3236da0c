using UnitsNet;

namespace ColdSim.Planning;

/// <summary>The one place that says what it means that a night holds, or fails, and from what.</summary>
/// <remarks>
/// A night <em>holds</em> when the people are warm and the water is liquid: when none of the following happens. Otherwise its verdict is the
/// cause that came first.
/// <list type="bullet">
/// <item><em>Undersupply</em>: an appliance needs gas and gets less than <see cref="Undersupplied"/> of it, or waits to be lit again because
/// the pressure was too low.</item>
/// <item><em>Gas short</em>: undersupply lasts more than <see cref="ShortAllowance"/> in all, or inside falls more than
/// <see cref="BelowSetPoint"/> below the set point for lack of gas, with liquid left when it begins.</item>
/// <item><em>Gas gone</em>: an appliance is undersupplied and no cylinder has liquid. If that night's undersupply began with at most
/// <see cref="LastOfGas"/> of the legal filling left, it counts from there; with more left, gas was short first.</item>
/// <item><em>Battery flat</em>: voltage is gone for more than <see cref="ShortAllowance"/> in all while something needs it.</item>
/// <item><em>Furnace stopped</em>: the thermostat calls for more than <see cref="ShortAllowance"/> in all of a furnace that has stopped, or
/// locked out, for another reason than gas or voltage.</item>
/// <item><em>Furnace too small</em>: inside is more than <see cref="BelowSetPoint"/> below the set point although the furnace has burned with
/// all its gas and without a pause for <see cref="WithoutPause"/>, and the set point has not risen, nor heat failed, for
/// <see cref="Settling"/>.</item>
/// <item><em>Water freezes</em>: the water of a declared pipe or tank begins to freeze, or is still frozen.</item>
/// </list>
/// A rig without furnace or thermostat fails only by gas, battery and water.
/// </remarks>
public sealed record NightCriteria
{
    /// <summary>How long gas, voltage or a stopped furnace may be missing in a night that still holds, each in all.</summary>
    public Duration ShortAllowance { get; init; } = Duration.FromMinutes(5);

    /// <summary>How far inside may be below the set point in a night that still holds, for lack of gas or because the furnace is too small.</summary>
    public TemperatureDelta BelowSetPoint { get; init; } = TemperatureDelta.FromKelvins(1);

    /// <summary>Part of the demand below which an appliance counts as undersupplied.</summary>
    public Ratio Undersupplied { get; init; } = Ratio.FromPercent(95);

    /// <summary>Clock time at which "left at dawn" is read.</summary>
    public TimeOnly Dawn { get; init; } = new(7, 0);

    /// <summary>Nights run from this clock time to the next day's, so that every hour of a run belongs to one night.</summary>
    public static TimeOnly NightBoundary { get; } = new(12, 0);

    /// <summary>How long a coach may take to warm up after the set point has risen, before it counts as cold. Our decision; no source gives one.</summary>
    public static Duration Settling { get; } = Duration.FromHours(3);

    /// <summary>How long a furnace that burns without a pause may stay below the set point. Our decision; no source gives one.</summary>
    public static Duration WithoutPause { get; } = Duration.FromHours(1);

    /// <summary>What is so little of the legal filling that a shortage is the end of the gas. Our decision; no source gives one.</summary>
    public static Ratio LastOfGas { get; } = Ratio.FromPercent(5);

    /// <summary>Two things closer than this happen at the same time. [s]</summary>
    public const double SameTime_s = 60;
}
