using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Capacity;

/// <summary>The draw that one cylinder would feed without end if its fill stayed as it is: the heat balance, in dry air and so without frost. SI units.</summary>
/// <param name="Draw_W">The draw, as gross heat; 0 where the air is no warmer than the liquid has to be. [W]</param>
/// <param name="Liquid_K">Temperature at which its liquid stays; NaN without a draw. [K]</param>
/// <param name="ByRegulator">Whether the regulator passes no more, although the heat would be there.</param>
internal sealed record EndlessDraw(double Draw_W, double Liquid_K, bool ByRegulator)
{
    private const double Tolerance_frac = 1e-4;
    private const double Least_W = 1;

    /// <summary>Finds it: the liquid stays at the temperature at which the regulator is just fed, and the surroundings replace the heat of evaporation.</summary>
    /// <param name="rig">One cylinder with its regulator.</param>
    /// <param name="weather">The weather, held still.</param>
    /// <param name="mass_kg">Propane, held still. [kg]</param>
    /// <param name="delivery_Pa">Delivery pressure that the draw has to have. [Pa gauge]</param>
    public static EndlessDraw For(Rig rig, in WeatherSample weather, double mass_kg, double delivery_Pa)
    {
        ArgumentNullException.ThrowIfNull(rig);
        // Humid air would lay down frost without end; its heat may not count where its layer does not.
        WeatherSample dry = weather with { VapourPressure_Pa = 0 };
        double heating_J_kg = rig.Gas.PlateHeatingValue_J_kg;
        TwoStageRegulator regulator = new(rig.Regulator, heating_J_kg);
        CylinderBody body = new(rig.Cylinders[0]);

        // The more is drawn the warmer the liquid has to be, and the less heat flows in.
        double low_kg_s = 0, high_kg_s = SteadySupply.Draw_kg_s(body, dry, mass_kg, LiquidFor_K(0, regulator, weather, delivery_Pa), 0, default);
        bool passes = true;
        while (high_kg_s > Least_W / heating_J_kg && high_kg_s - low_kg_s > Tolerance_frac * high_kg_s)
        {
            double middle_kg_s = 0.5 * (low_kg_s + high_kg_s), liquid_K = LiquidFor_K(middle_kg_s, regulator, weather, delivery_Pa);
            bool can = double.IsFinite(liquid_K);
            if (can && SteadySupply.Draw_kg_s(body, dry, mass_kg, liquid_K, 0, default) >= middle_kg_s) low_kg_s = middle_kg_s;
            else (high_kg_s, passes) = (middle_kg_s, can);
        }

        return low_kg_s <= 0 ? new EndlessDraw(0, double.NaN, false)
            : new EndlessDraw(low_kg_s * heating_J_kg, LiquidFor_K(low_kg_s, regulator, weather, delivery_Pa), !passes);
    }

    private static double LiquidFor_K(double draw_kg_s, TwoStageRegulator regulator, in WeatherSample weather, double delivery_Pa)
        => SteadySupply.AllowedLiquid_K(regulator, draw_kg_s, delivery_Pa, weather.Pressure_Pa);
}
