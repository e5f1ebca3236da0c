using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Weather;
using UnitsNet;

namespace ColdSim.Planning.HeatLoss;

/// <summary>Where a coach loses heat at the coldest hour of its weather, and what its furnace has against it.</summary>
public sealed record HeatLossBreakdown
{
    /// <summary>Envelope, ground and leaking air, in W/K.</summary>
    public required IReadOnlyList<HeatLossItem> Items { get; init; }

    /// <summary>Sum of the items. [W/K]</summary>
    public required double Total_W_K { get; init; }

    /// <summary>Whether one of the items is leaking air; if not, a measured loss holds it already.</summary>
    public required bool HasInfiltration { get; init; }

    /// <summary>Outside air at the coldest hour.</summary>
    public required Temperature Outside { get; init; }

    /// <summary>Wind at mast height then.</summary>
    public required Speed Wind { get; init; }

    /// <summary>Inside: the night's set point, or the start's temperature without a thermostat.</summary>
    public required Temperature Inside { get; init; }

    /// <summary>Heat lost at that hour.</summary>
    public required Power Loss { get; init; }

    /// <summary>Sun left out, what people and things give.</summary>
    public required Power Gains { get; init; }

    /// <summary>What the furnace gives at this altitude, burning all the time; null without one.</summary>
    public required Power? FurnaceHeat { get; init; }

    /// <summary>The breakdown of a scenario's coach.</summary>
    /// <returns>Null where there is no coach.</returns>
    public static HeatLossBreakdown? Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        if (scenario.Rig.Coach is not { } coach) return null;
        WeatherSample coldest = Coldest(scenario.Weather);
        double inside_K = scenario.Rig.Thermostat?.NightSetPoint_K ?? coach.InitialTemperature_K ?? coldest.Air_K;
        double infiltration_W_K = new CoachBody(coach).Infiltration_W_K(coldest, inside_K);

        List<HeatLossItem> items = [.. coach.HeatLoss];
        if (coach.GroundConductance_W_K > 0) items.Add(new HeatLossItem("ground under the skirt", coach.GroundConductance_W_K));
        if (infiltration_W_K > 0) items.Add(new HeatLossItem("draughts", infiltration_W_K));
        double toAir_W_K = coach.HeatLoss.Sum(i => i.Conductance_W_K) + infiltration_W_K;
        double loss_W = toAir_W_K * (inside_K - coldest.Air_K) + coach.GroundConductance_W_K * (inside_K - coach.GroundTemperature_K);
        return new HeatLossBreakdown
        {
            Items = items,
            Total_W_K = toAir_W_K + coach.GroundConductance_W_K,
            HasInfiltration = infiltration_W_K > 0,
            Outside = Temperature.FromKelvins(coldest.Air_K),
            Wind = Speed.FromMetersPerSecond(coldest.Wind_m_s),
            Inside = Temperature.FromKelvins(inside_K),
            Loss = Power.FromWatts(loss_W),
            Gains = Power.FromWatts(coach.InternalGains_W),
            FurnaceHeat = scenario.Rig.Furnace is { } furnace
                ? Power.FromWatts(BurnerInput.At_W(furnace.Input_W, furnace.Altitude, scenario.Rig.Site.Elevation_m) * furnace.Efficiency_frac * (1 - furnace.DuctLoss_frac))
                : null,
        };
    }

    private static WeatherSample Coldest(WeatherSeries weather)
    {
        int row = 0;
        WeatherSample coldest = weather.At(0, ref row);
        for (double t_s = 0; t_s <= (weather.Last - weather.First).TotalSeconds; t_s += 3600)
        {
            WeatherSample sample = weather.At(t_s, ref row);
            if (sample.Air_K < coldest.Air_K) coldest = sample;
        }

        return coldest;
    }
}
