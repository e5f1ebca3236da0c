namespace ColdSim.Model.Site;

/// <summary>The site of the coach.</summary>
public sealed record SiteSpecification
{
    /// <summary>A name for the reports.</summary>
    public string Name { get; init; } = "";

    /// <summary>Height above sea level. [m]</summary>
    public double Elevation_m { get; init; }

    /// <summary>North positive; null where the scenario gives no position. [°]</summary>
    public double? Latitude_deg { get; init; }

    /// <summary>East positive; null where the scenario gives no position. [°]</summary>
    public double? Longitude_deg { get; init; }

    /// <summary>Whether there is shore power.</summary>
    public bool Hookup { get; init; }

    /// <summary>What the hookup's breaker carries without end. [W]</summary>
    public double Breaker_W { get; init; } = 3600;

    /// <summary>Part of the sunlight that the ground throws back; snow by default.</summary>
    public double GroundAlbedo_frac { get; init; } = 0.6;
}

/// <summary>When people are up, and how they act when something fails.</summary>
public sealed record Occupancy
{
    /// <summary>How much warmer than what woke them it must be before they sleep again; an assumption. [K]</summary>
    public const double AsleepAgain_K = 2;

    /// <summary>Hours in which a person is awake.</summary>
    public IReadOnlyList<ClockWindow> AwakeHours { get; init; } = [new(6.5 * 3600, 22.5 * 3600)];

    /// <summary>Delay from a lockout to its reset by a person awake. [s]</summary>
    public double ResetAfter_s { get; init; } = 900;

    /// <summary>How many resets in vain somebody makes before leaving it until something changes; 0 where nobody ever resets.</summary>
    public int ResetsInVain { get; init; } = 3;

    /// <summary>Inside air below which somebody asleep wakes. [K]</summary>
    public double WakesBelow_K { get; init; } = 280.372_222_222_222_2;
}
