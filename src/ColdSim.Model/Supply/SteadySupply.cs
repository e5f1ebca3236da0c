using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.Propane;

namespace ColdSim.Model.Supply;

/// <summary>What a cylinder can keep giving: the draw whose heat of evaporation the surroundings replace.</summary>
/// <remarks>
/// A capacity means nothing without the liquid temperature that it allows, so both always go together: the colder the liquid may
/// become, the more heat flows in and the more can boil.
/// </remarks>
public static class SteadySupply
{
    /// <summary>The steady draw at a fill, in a weather. [kg/s]</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather, held still.</param>
    /// <param name="mass_kg">Propane, held still. [kg]</param>
    /// <param name="allowed_K">How cold the liquid may become. [K]</param>
    /// <param name="blanket_W">Heat that a blanket makes. [W]</param>
    /// <param name="frost">Frost on the wall.</param>
    /// <returns>0 where the surroundings are no warmer than the allowed liquid, or no liquid is left.</returns>
    public static double Draw_kg_s(
        CylinderBody body, in WeatherSample weather, double mass_kg, double allowed_K, double blanket_W, in FrostLayer frost)
    {
        ArgumentNullException.ThrowIfNull(body);
        CylinderContents contents = body.Contents(mass_kg, allowed_K);
        if (!contents.HasLiquid) return 0;
        double heat_W = CylinderFilm.At(body, weather, mass_kg, allowed_K, frost).Heat_W(allowed_K, blanket_W);
        return Math.Max(0, heat_W) / contents.DrawHeat_J_kg;
    }

    /// <summary>The coldest liquid that still feeds a flow at a delivery pressure. [K]</summary>
    /// <param name="regulator">The regulator.</param>
    /// <param name="flow_kg_s">Flow to be fed. [kg/s]</param>
    /// <param name="delivery_Pa">Delivery pressure to keep. [Pa gauge]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <returns>Clamped to the range of the saturation table; NaN where the regulator never passes the flow.</returns>
    public static double AllowedLiquid_K(TwoStageRegulator regulator, double flow_kg_s, double delivery_Pa, double air_Pa)
    {
        ArgumentNullException.ThrowIfNull(regulator);

        // Gas temperature enters as a square root only; the boiling point is near enough for every liquid that matters.
        double inlet_Pa = regulator.SufficientInlet_Pa(flow_kg_s, delivery_Pa, air_Pa, PropaneConstants.NormalBoilingPoint_K);
        if (!double.IsFinite(inlet_Pa)) return double.NaN;
        double low_Pa = PropaneSaturation.Pressure_Pa(SaturationTable.Lowest_K);
        double high_Pa = PropaneSaturation.Pressure_Pa(SaturationTable.Highest_K);
        return PropaneSaturation.Temperature_K(Math.Clamp(inlet_Pa, low_Pa, high_Pa));
    }
}
