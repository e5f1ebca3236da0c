using ColdSim.Model.Cylinder;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>Stops one after the other, and the refills on the way.</summary>
public sealed record Trip
{
    /// <summary>What one person can carry unless somebody says otherwise: the load constant of the NIOSH lifting equation. [kg]</summary>
    public const double UsualCarry_kg = 23;

    /// <summary>In order of time, none overlapping; between two the coach is on the road.</summary>
    public required IReadOnlyList<TripStop> Stops { get; init; }

    /// <summary>In order of time.</summary>
    public IReadOnlyList<Refill> Refills { get; init; } = [];

    /// <summary>What one person can carry. [kg]</summary>
    public double Carries_kg { get; init; } = UsualCarry_kg;

    /// <summary>The trip of a scenario that stays in one place.</summary>
    /// <param name="scenario">The scenario.</param>
    public static Trip InOnePlace(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        double duration_s = new NightCalendar(scenario with { Legs = [] }).Duration_s;
        return new Trip
        {
            Stops = [new TripStop { From = scenario.Start, To = scenario.Start.AddSeconds(duration_s), Site = scenario.Rig.Site, Weather = scenario.Weather }],
        };
    }

    /// <summary>The legs that stops and refills make.</summary>
    /// <param name="cylinders">The rig's cylinders.</param>
    public IReadOnlyList<Leg> Legs(IReadOnlyList<CylinderSpecification> cylinders) => TripLegs.Of(this, cylinders, null);
}
