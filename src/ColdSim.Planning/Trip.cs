using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Planning;

/// <summary>Stops one after the other, and the refills on the way.</summary>
public sealed record Trip
{
    /// <summary>What one person can carry unless stated: the load constant of the NIOSH lifting equation. [kg]</summary>
    public const double UsualCarry_kg = 23;

    /// <summary>In order of time, none overlapping; between two the coach is on the road.</summary>
    public required IReadOnlyList<TripStop> Stops { get; init; }

    /// <summary>In order of time.</summary>
    public IReadOnlyList<Refill> Refills { get; init; } = [];

    /// <summary>What one person can carry. [kg]</summary>
    public double Carries_kg { get; init; } = UsualCarry_kg;

    /// <summary>The trip of a scenario that stays in one place.</summary>
    public static Trip InOnePlace(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        double duration_s = new NightCalendar(scenario with { Legs = [] }).Duration_s;
        return new Trip
        {
            Stops = [new TripStop { From = scenario.Start, To = scenario.Start.AddSeconds(duration_s), Site = scenario.Rig.Site, Weather = scenario.Weather }],
        };
    }
}

/// <summary>A place where the coach stays for a while, with its weather and its hookup.</summary>
public sealed record TripStop
{
    /// <summary>When the coach is there and set up.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>When the coach leaves.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>The place.</summary>
    public required SiteSpecification Site { get; init; }

    /// <summary>The weather there.</summary>
    public required WeatherSeries Weather { get; init; }

    /// <summary>What it is called.</summary>
    public string Name => Site.Name;
}
