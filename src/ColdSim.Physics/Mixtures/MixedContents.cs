using ColdSim.Physics.Fluids;

namespace ColdSim.Physics.Mixtures;

/// <summary>A mixed gas in a closed vessel at one temperature, as everything that follows from its masses. SI units.</summary>
/// <param name="Pressure_Pa">Absolute pressure. [Pa]</param>
/// <param name="LiquidMass_kg">All liquid; negative without, by what is missing to saturate the space. [kg]</param>
/// <param name="LiquidVolume_m3">Its volume, 0 without. [m³]</param>
/// <param name="Vapour">The vapour's composition, parts by mass.</param>
/// <param name="Liquid">The liquid's composition, parts by mass; without liquid that of its first drop.</param>
/// <param name="VapourDensity_kg_m3">Density of the vapour. [kg/m³]</param>
/// <param name="VapourEnthalpy_J_kg">Enthalpy that leaves with each mass of vapour. [J/kg]</param>
/// <param name="DrawHeat_J_kg">Heat that each mass of vapour drawn takes from what stays. [J/kg]</param>
/// <param name="HeatCapacity_J_K">∂U/∂T at constant masses and volume. [J/K]</param>
/// <param name="InternalEnergy_J">Internal energy. [J]</param>
/// <param name="PressureByMass_Pa_kg">Rise of pressure with each mass of its own vapour put in, at constant temperature. [Pa/kg]</param>
public readonly record struct MixedContents(
    double Pressure_Pa,
    double LiquidMass_kg,
    double LiquidVolume_m3,
    GasMasses Vapour,
    GasMasses Liquid,
    double VapourDensity_kg_m3,
    double VapourEnthalpy_J_kg,
    double DrawHeat_J_kg,
    double HeatCapacity_J_K,
    double InternalEnergy_J,
    double PressureByMass_Pa_kg)
{
    private const int LeftBehindSteps = 400;
    private const int DrawSteps = 200;

    /// <summary>The contents of a volume, with or without liquid as it comes out.</summary>
    /// <param name="gas">Masses of all species, liquid and vapour. [kg]</param>
    /// <param name="volume_m3">Inside volume. [m³]</param>
    /// <param name="t_K">Temperature. [K]</param>
    public static MixedContents Of(in GasMasses gas, double volume_m3, double t_K)
        => In(VapourAlone.Saturation(gas, volume_m3, t_K) > 1, gas, volume_m3, t_K);

    /// <summary>The contents of a volume in a phase that is known, also a little past the point where it ends.</summary>
    /// <param name="withLiquid">Whether liquid and vapour are there, or vapour alone.</param>
    /// <param name="gas">Masses of all species, liquid and vapour. [kg]</param>
    /// <param name="volume_m3">Inside volume. [m³]</param>
    /// <param name="t_K">Temperature. [K]</param>
    public static MixedContents In(bool withLiquid, in GasMasses gas, double volume_m3, double t_K)
        => withLiquid ? LiquidWithVapour.Of(gas, volume_m3, t_K) : VapourAlone.Of(gas, volume_m3, t_K);

    /// <summary>Pressure at which a liquid of a composition begins to boil: Raoult's law. [Pa]</summary>
    /// <param name="liquid">Composition of the liquid, by mass.</param>
    /// <param name="t_K">Temperature. [K]</param>
    public static double BubblePressure_Pa(in GasMasses liquid, double t_K)
    {
        double moles = 0, sum = 0;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            if (liquid[i] <= 0) continue;
            Fluid fluid = GasSpecies.All[i].Fluid;
            double n = liquid[i] / fluid.MolarMass_kg_mol;
            moles += n;
            sum += n * fluid.Saturation.Pressure_Pa(t_K);
        }

        return sum / moles;
    }

    /// <summary>What is left of a gas once vapour was drawn at one temperature. [kg]</summary>
    /// <param name="gas">What was in the cylinder. [kg]</param>
    /// <param name="volume_m3">Its inside volume. [m³]</param>
    /// <param name="t_K">Temperature of the liquid, held still. [K]</param>
    /// <param name="left_kg">Mass that is left. [kg]</param>
    public static GasMasses Drawn(in GasMasses gas, double volume_m3, double t_K, double left_kg)
    {
        GasMasses left = gas;
        double step_kg = (gas.Sum - left_kg) / DrawSteps;
        for (int i = 0; i < DrawSteps && step_kg > 0; i++)
        {
            // Middle of the step; the vapour's composition changes slowly against it.
            GasMasses middle = left - Of(left, volume_m3, t_K).Vapour * (0.5 * step_kg);
            left -= Of(middle, volume_m3, t_K).Vapour * step_kg;
        }

        return left;
    }

    /// <summary>Liquid left once vapour drawn at one temperature has brought the pressure down to what is needed. [kg]</summary>
    /// <param name="gas">What is in the cylinder. [kg]</param>
    /// <param name="volume_m3">Its inside volume. [m³]</param>
    /// <param name="t_K">Temperature of the liquid, held still. [K]</param>
    /// <param name="needed_Pa">Absolute pressure that the regulator needs. [Pa]</param>
    /// <returns>0 where the pressure lasts as long as the liquid does; all the liquid where it is too low already.</returns>
    public static double LeftBehind_kg(in GasMasses gas, double volume_m3, double t_K, double needed_Pa)
    {
        GasMasses left = gas;
        double step_kg = gas.Sum / LeftBehindSteps;
        MixedContents now = Of(left, volume_m3, t_K);
        if (now.Pressure_Pa <= needed_Pa) return Math.Max(0, now.LiquidMass_kg);
        for (int i = 0; i < LeftBehindSteps; i++)
        {
            // Middle of the step; the vapour's composition changes slowly against it.
            MixedContents middle = Of(left - now.Vapour * (0.5 * step_kg), volume_m3, t_K);
            left -= middle.Vapour * step_kg;
            MixedContents then = Of(left, volume_m3, t_K);
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
