using ColdSim.Physics.MoistAir;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Appliances;

/// <summary>How altitude lowers a burner's input. One choice, never both.</summary>
public enum AltitudeRule
{
    /// <summary>The orifice is left alone and thinner gas flows through it: input goes with the square root of air pressure.</summary>
    FixedOrifice,

    /// <summary>Refitted by the code's percentage: 4 % of input per 1,000 ft above sea level, where the site is above 2,000 ft.</summary>
    CodePercentage,
}

/// <summary>A burner's input at a site's altitude.</summary>
internal static class BurnerInput
{
    private const double CodePerThousandFeet_frac = 0.04;
    private const double CodeFrom_m = 2000 * Foot_m;
    private const double ThousandFeet_m = 1000 * Foot_m;

    /// <summary>Input at full delivery pressure. [W]</summary>
    /// <param name="plate_W">Input at sea level. [W]</param>
    /// <param name="rule">How altitude lowers it.</param>
    /// <param name="elevation_m">Height of the site. [m]</param>
    /// <remarks>
    /// Fixed orifice: at a fixed gauge pressure mass flow goes with the square root of the gas's density, and that with air pressure.
    /// Code percentage: 4 % per 1,000 ft above sea level where the site is above 2,000 ft (NFPA 54 / ANSI Z223.1, orifice table).
    /// </remarks>
    public static double At_W(double plate_W, AltitudeRule rule, double elevation_m)
    {
        double factor = rule switch
        {
            AltitudeRule.FixedOrifice => Math.Sqrt(StandardAtmosphere.Pressure_Pa(elevation_m) / StandardAtmosphere_Pa),
            AltitudeRule.CodePercentage when elevation_m <= CodeFrom_m => 1,
            _ => Math.Max(0, 1 - CodePerThousandFeet_frac * elevation_m / ThousandFeet_m),
        };
        return plate_W * factor;
    }
}
