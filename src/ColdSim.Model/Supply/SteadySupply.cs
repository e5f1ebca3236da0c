using ColdSim.Model.Cylinder;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.Propane;

namespace ColdSim.Model.Supply;

/// <summary>Steady capacity of a cylinder: the draw whose heat of evaporation the surroundings replace.</summary>
/// <remarks>
/// A capacity means nothing without the liquid temperature that it allows, so both always go together: the colder the liquid may
/// become, the more heat flows in and the more can boil.
/// </remarks>
internal static class SteadySupply
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
        return Draw_kg_s(body, weather, body.Contents(mass_kg, allowed_K), allowed_K, blanket_W, frost);
    }

    /// <summary>The steady draw of what is in it, in a weather. [kg/s]</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather, held still.</param>
    /// <param name="contents">What is in it at that temperature, held still.</param>
    /// <param name="allowed_K">How cold the liquid may become. [K]</param>
    /// <param name="blanket_W">Heat that a blanket makes. [W]</param>
    /// <param name="frost">Frost on the wall.</param>
    /// <returns>0 where the surroundings are no warmer than the allowed liquid, or no liquid is left.</returns>
    public static double Draw_kg_s(
        CylinderBody body, in WeatherSample weather, in CylinderContents contents, double allowed_K, double blanket_W, in FrostLayer frost)
    {
        if (!contents.HasLiquid) return 0;
        HeatCoupling coupling = HeatCoupling.At(body, weather, contents, allowed_K, frost);
        double draw_kg_s = Math.Max(0, coupling.Heat_W(allowed_K, ThroughThermostat_W(body, coupling, allowed_K, blanket_W, 0), 0)) / contents.DrawHeat_J_kg;
        if (!body.IsUnderBlanket) return draw_kg_s;

        // What leaves takes warmth of the dry wall along, a twentieth of the heat at most: three turns are exact to a thousandth of that.
        for (int i = 0; i < 3; i++)
        {
            double power_W = ThroughThermostat_W(body, coupling, allowed_K, blanket_W, draw_kg_s);
            draw_kg_s = Math.Max(0, coupling.Heat_W(allowed_K, power_W, draw_kg_s)) / contents.DrawHeat_J_kg;
        }

        return draw_kg_s;
    }

    // A thermostat that would switch off at full power goes on and off, and holds its wall in the middle of its band.
    private static double ThroughThermostat_W(CylinderBody body, in HeatCoupling coupling, double liquid_K, double power_W, double draw_kg_s)
        => body.Specification.Blanket is { StuckOn: false } blanket && power_W > 0
            ? Math.Min(power_W, coupling.Wall.PowerAt_W(0.5 * (blanket.On_K + blanket.Off_K), liquid_K, draw_kg_s))
            : power_W;

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
        double inlet_Pa = regulator.SufficientInlet_Pa(flow_kg_s, delivery_Pa, air_Pa, ReferenceEquation.NormalBoilingPoint_K);
        if (!double.IsFinite(inlet_Pa)) return double.NaN;
        double low_Pa = PropaneSaturation.Pressure_Pa(SaturationTable.Lowest_K);
        double high_Pa = PropaneSaturation.Pressure_Pa(SaturationTable.Highest_K);
        return PropaneSaturation.Temperature_K(Math.Clamp(inlet_Pa, low_Pa, high_Pa));
    }

    /// <summary>The coldest liquid of a mixed gas that still has a pressure. [K]</summary>
    /// <param name="inlet_Pa">That pressure, before the regulator. [Pa]</param>
    /// <param name="gas">What is in the cylinder. [kg]</param>
    /// <param name="volume_m3">Its inside volume. [m³]</param>
    /// <returns>Clamped to the range of the saturation table; NaN for a pressure that is not finite.</returns>
    public static double AllowedLiquid_K(double inlet_Pa, in GasMasses gas, double volume_m3)
    {
        if (!double.IsFinite(inlet_Pa)) return double.NaN;
        double low_K = SaturationTable.Lowest_K, high_K = SaturationTable.Highest_K;
        while (high_K - low_K > 1e-6)
        {
            double middle_K = 0.5 * (low_K + high_K);
            if (MixedContents.Of(gas, volume_m3, middle_K).Pressure_Pa < inlet_Pa) low_K = middle_K;
            else high_K = middle_K;
        }

        return high_K;
    }
}
