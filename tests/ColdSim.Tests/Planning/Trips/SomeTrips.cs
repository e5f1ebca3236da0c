using ColdSim.Model;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Trips;
using ColdSim.Tests.Model;

namespace ColdSim.Tests.Planning.Trips;

/// <summary>Small trips, their weather a steady cold.</summary>
internal static class SomeTrips
{
    /// <summary>Tuesday, 16:00.</summary>
    public static DateTimeOffset Start => Rigs.Start;

    public static Rig Pair(double left = 0.9) => new()
    {
        Cylinders = [Rigs.Bottle("20 lb", left), Rigs.Bottle("20 lb", left)],
        Arrangement = new AutomaticChangeover(),
        Appliances = [Rigs.Draw(5_000)],
    };

    /// <summary>The same, changed by hand.</summary>
    public static Rig ByHand(double left) => Pair(left) with { Arrangement = new OneAtATime() };

    public static TripStop Stop(string name, double from_h, double to_h, double air_C = -10, bool hookup = false)
    {
        SiteSpecification site = new() { Name = name, Hookup = hookup };
        return new TripStop { From = Start.AddHours(from_h), To = Start.AddHours(to_h), Site = site, Weather = Air(site, air_C) };
    }

    /// <summary>Ten days from the start.</summary>
    public static WeatherSeries Air(SiteSpecification site, double air_C)
        => new([new(Start, air_C + 273.15), new(Start.AddDays(10), air_C + 273.15)], new WeatherDefaults(), site);

    public static Refill Fill(double at_h, int cylinder = 0) => new() { At = Start.AddHours(at_h), Cylinder = cylinder };

    public static Scenario Of(Rig rig, IReadOnlyList<TripStop> stops, params IReadOnlyList<Refill> refills)
    {
        Trip trip = new() { Stops = stops, Refills = refills };
        return Rigs.Scenario(rig with { Site = stops[0].Site }, stops[0].Weather) with { Trip = trip, Legs = TripLegs.Of(trip, rig.Cylinders) };
    }

    public static Scenario Of(IReadOnlyList<TripStop> stops, params IReadOnlyList<Refill> refills) => Of(Pair(), stops, refills);

    public static CylinderSpecification Due(this CylinderSpecification cylinder, DateOnly last) => cylinder with { RequalifyBy = last };
}
