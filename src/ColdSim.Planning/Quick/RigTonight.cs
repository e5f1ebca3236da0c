using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Quick;

/// <summary>A rig that has a file, through one night that is not in it.</summary>
internal static class RigTonight
{
    /// <summary>Whether the rig's own weather reaches from the start to the next morning.</summary>
    /// <param name="scenario">The rig.</param>
    /// <param name="night">The night.</param>
    public static bool HasWeatherFor(Scenario scenario, QuickNight night)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(night);
        return scenario.Weather.First <= night.Start && scenario.Weather.Last >= night.Noon.AddHours(20) && scenario.Weather.Last > night.Start;
    }

    /// <summary>The scenario of that night; its stops and refills are left out.</summary>
    /// <param name="scenario">The rig, with what is in its cylinders.</param>
    /// <param name="night">The night; without low and rows the rig's own weather is used.</param>
    public static Scenario Of(Scenario scenario, QuickNight night)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(night);
        bool own = night.Rows is null && double.IsNaN(night.Low_K);
        Rig rig = scenario.Rig;
        return scenario with
        {
            Title = $"Tonight: {scenario.Title}",
            Start = night.Start,
            StartsNow = night.IsNow,
            Nights = 1,
            Legs = [],
            Trip = null,
            HeatStops = null,
            Weather = own ? scenario.Weather : new WeatherSeries(night.Hours, night.Air, rig.Site),
            WeatherDefaults = own ? scenario.WeatherDefaults : night.Air,
            Rig = rig with { Coach = night.AtStart(rig.Coach), Thermostat = Set(rig.Thermostat, night.SetPoint_K) },
        };
    }

    /// <summary>The rig with other contents.</summary>
    /// <param name="scenario">The rig.</param>
    /// <param name="left_kg">What is in each cylinder, in the order of its file. [kg]</param>
    public static Scenario WithLeft(Scenario scenario, IReadOnlyList<double> left_kg)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(left_kg);
        CylinderSpecification[] cylinders = [.. scenario.Rig.Cylinders.Select((c, i) => c with { Contents_kg = left_kg[scenario.FilePlaceOf(i)] })];
        return scenario with { Rig = scenario.Rig with { Cylinders = cylinders } };
    }

    private static ThermostatSpecification? Set(ThermostatSpecification? thermostat, double? setPoint_K)
        => thermostat is null || setPoint_K is not { } k ? thermostat : thermostat with { DaySetPoint_K = k, NightSetPoint_K = k };
}
