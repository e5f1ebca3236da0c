using static ColdSim.Physics.Propane.PropaneConstants;

namespace ColdSim.Physics.Propane;

/// <summary>Short fits of the saturation line, used only to start the exact solution.</summary>
/// <remarks>
/// The ancillary equations of Lemmon, McLinden and Wagner (2009), with θ = 1 − T/Tc. From −50 to +60 °C they stay within
/// 0.03 % of the full equation; nothing in the model uses them directly.
/// </remarks>
internal static class SaturationAncillaries
{
    public static double LiquidDensity_kg_m3(double t_K)
    {
        double th = 1 - t_K / CriticalTemperature_K;
        return CriticalDensity_kg_m3 * (1 + 1.82205 * Math.Pow(th, 0.345) + 0.65802 * Math.Pow(th, 0.74)
            + 0.21109 * Math.Pow(th, 2.6) + 0.083973 * Math.Pow(th, 7.2));
    }

    public static double VapourDensity_kg_m3(double t_K)
    {
        double th = 1 - t_K / CriticalTemperature_K;
        return CriticalDensity_kg_m3 * Math.Exp(-2.4887 * Math.Pow(th, 0.3785) - 5.1069 * Math.Pow(th, 1.07)
            - 12.174 * Math.Pow(th, 2.7) - 30.495 * Math.Pow(th, 5.5) - 52.192 * Math.Pow(th, 10) - 134.89 * Math.Pow(th, 20));
    }
}
