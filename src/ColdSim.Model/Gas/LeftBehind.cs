using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Gas;

/// <summary>What a mixed gas leaves in the cylinder: liquid that no longer has the pressure that is needed.</summary>
public static class LeftBehind
{
    private const int Steps = 400;

    /// <summary>Liquid left once vapour drawn at one temperature has brought the pressure down to what is needed. [kg]</summary>
    /// <param name="gas">What is in the cylinder. [kg]</param>
    /// <param name="volume_m3">Its inside volume. [m³]</param>
    /// <param name="t_K">Temperature of the liquid, held still. [K]</param>
    /// <param name="needed_Pa">Absolute pressure that the regulator needs. [Pa]</param>
    /// <returns>0 where the pressure lasts as long as the liquid does; all the liquid where it is too low already.</returns>
    public static double Liquid_kg(in GasMasses gas, double volume_m3, double t_K, double needed_Pa)
    {
        GasMasses left = gas;
        double step_kg = gas.Sum / Steps;
        MixedContents now = MixedContents.Of(left, volume_m3, t_K);
        if (now.Pressure_Pa <= needed_Pa) return Math.Max(0, now.LiquidMass_kg);
        for (int i = 0; i < Steps; i++)
        {
            // Middle of the step; the vapour's composition changes slowly against it.
            MixedContents middle = MixedContents.Of(left - now.Vapour * (0.5 * step_kg), volume_m3, t_K);
            left -= middle.Vapour * step_kg;
            MixedContents then = MixedContents.Of(left, volume_m3, t_K);
            if (then.LiquidMass_kg <= 0) return 0;
            if (then.Pressure_Pa <= needed_Pa)
            {
                double part = (now.Pressure_Pa - needed_Pa) / (now.Pressure_Pa - then.Pressure_Pa);
                return now.LiquidMass_kg + part * (then.LiquidMass_kg - now.LiquidMass_kg);
            }

            now = then;
        }

        return 0;
    }
}
