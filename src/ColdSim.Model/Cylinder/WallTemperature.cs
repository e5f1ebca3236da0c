using ColdSim.Model.Weather;

namespace ColdSim.Model.Cylinder;

/// <summary>The steel of a cylinder's bare wall as a hand or a thermometer on it finds it. SI units.</summary>
/// <remarks>
/// Below the level the wall lies between the inside film and what is outside of it (frost and air film): heat passes both in series. Above it is a straight
/// fin with an insulated tip from there up, whose mean is T_environment + (T_root − T_environment) tanh(mL)/(mL), m = √(h/(k t)), the same fin that the
/// heat balance uses (<see cref="HeatCoupling"/>). The heat of freezing is in the environment's temperature.
/// </remarks>
/// <param name="Below_K">Below the level, where liquid wets it. [K]</param>
/// <param name="Above_K">Mean of the wall above the level. [K]</param>
internal readonly record struct WallTemperature(double Below_K, double Above_K)
{
    /// <summary>The wall at a state.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather at it.</param>
    /// <param name="liquid_m3">Volume of the liquid. [m³]</param>
    /// <param name="t_K">Temperature of the liquid. [K]</param>
    /// <param name="frost">Frost on the wall.</param>
    /// <returns>Null where a measured conductance replaces all films, so that nothing is known of the wall between them.</returns>
    public static WallTemperature? At(CylinderBody body, in WeatherSample weather, double liquid_m3, double t_K, in FrostLayer frost)
    {
        ArgumentNullException.ThrowIfNull(body);
        CylinderSpecification cylinder = body.Specification;
        CylinderSurroundings around = cylinder.Surroundings;
        if (around.FixedConductance_W_K is not null) return null;
        double layer_m2K_W = frost.Resistance_m2K_W, film_W_m2K = around.InsideFilm_W_m2K;
        ExternalHeatTransfer outside = new(body, weather, new ExternalConvection(body, weather, t_K), t_K, layer_m2K_W);
        FrostExchange exchange = FrostExchange.At(weather, outside, t_K, 1 / (layer_m2K_W + 1 / film_W_m2K), frost);
        double environment_K = outside.Environment_K(exchange.Heat_W_m2), h_W_m2K = 1 / (1 / outside.Total_W_m2K + layer_m2K_W);
        double below_K = t_K + (environment_K - t_K) * h_W_m2K / (h_W_m2K + film_W_m2K);
        double length_m = body.Vessel.DryFinLength_m(HeatCoupling.WettingLevel_m(body, liquid_m3));
        double mL = Math.Sqrt(h_W_m2K / (cylinder.WallConductivity_W_mK * cylinder.WallThickness_m)) * length_m;
        double mean_frac = mL > 1e-6 ? Math.Tanh(mL) / mL : 1;
        return new(below_K, environment_K + (below_K - environment_K) * mean_frac);
    }
}
