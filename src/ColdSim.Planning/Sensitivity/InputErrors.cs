using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Planning.Trips;

namespace ColdSim.Planning.Sensitivity;

/// <summary>A scenario with one of its uncertain inputs off by a given amount; the same relations for one input at a time and for the members of an ensemble.</summary>
internal static class InputErrors
{
    // Less than this is an empty cylinder, which the engine does not start with.
    private const double Least_kg = 0.02;

    /// <summary>The scenario with every weather warmer and windier.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="warmer_K">Added to air and dew point. [K]</param>
    /// <param name="wind_factor">What wind is multiplied by.</param>
    public static Scenario InWeather(Scenario scenario, double warmer_K, double wind_factor)
    {
        Dictionary<WeatherSeries, WeatherSeries> shifted = [];
        WeatherSeries Shifted(WeatherSeries weather)
        {
            if (shifted.TryGetValue(weather, out WeatherSeries? known)) return known;
            ShiftedWeather copy = new(weather);
            for (int row = 0; row < weather.Count; row++) copy.Shift(row, warmer_K, wind_factor);
            return shifted[weather] = copy.Series;
        }

        Scenario made = scenario with { Weather = Shifted(scenario.Weather) };
        return scenario.Trip is { } trip
            ? OnTrip(made, trip with { Stops = [.. trip.Stops.Select(s => s with { Weather = Shifted(s.Weather) })] })
            : made;
    }

    /// <summary>The scenario with another rig of the same cylinders; the legs of a trip are built again.</summary>
    public static Scenario WithRig(Scenario scenario, Rig rig)
    {
        Scenario made = scenario with { Rig = rig };
        return scenario.Trip is { } trip ? OnTrip(made, trip) : made;
    }

    /// <summary>A cylinder whose contents are off. Nobody fills a cylinder over its legal filling unawares; one that the scenario overfills stays so at most.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="off_kg">Added to its contents. [kg]</param>
    public static CylinderSpecification Holding(CylinderSpecification cylinder, double off_kg) => cylinder with
    {
        Contents_kg = Math.Clamp(
            cylinder.Contents_kg + off_kg, Math.Min(Least_kg, cylinder.Contents_kg), Math.Max(cylinder.LegalFill_kg, cylinder.Contents_kg)),
    };

    /// <summary>A coach whose conductances and leakage area are off by factors.</summary>
    public static CoachSpecification Leaking(CoachSpecification coach, double loss_factor, double leakage_factor) => coach with
    {
        HeatLoss = [.. coach.HeatLoss.Select(i => i with { Conductance_W_K = loss_factor * i.Conductance_W_K })],
        GroundConductance_W_K = loss_factor * coach.GroundConductance_W_K,
        LeakageArea_cm2 = leakage_factor * coach.LeakageArea_cm2,
    };

    private static Scenario OnTrip(Scenario scenario, Trip trip) => scenario with { Trip = trip, Legs = TripLegs.Of(trip, scenario.Rig.Cylinders) };
}
