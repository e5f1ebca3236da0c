using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;

namespace ColdSim.Planning.Trips;

/// <summary>The temperature of a cylinder into which liquid is pumped.</summary>
/// <remarks>
/// Energy of the closed cylinder, shell included, and enthalpy of what comes in: nothing is vented, and the pump's work and the heat
/// through the wall while it is filled are left out. Both are of the order of a tenth of a kelvin.
/// </remarks>
public static class Mixing
{
    private const int MostTries = 60;

    /// <summary>Temperature once a mass of liquid has come in and all is mixed. [K]</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="before_kg">What was in it. [kg]</param>
    /// <param name="before_K">How warm it was. [K]</param>
    /// <param name="added_kg">What comes in. [kg]</param>
    /// <param name="added_K">How warm that is. [K]</param>
    public static double Temperature_K(CylinderSpecification cylinder, double before_kg, double before_K, double added_kg, double added_K)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        if (!(added_kg > 0)) return before_K;
        double shell_J_K = cylinder.MetalMass_kg * cylinder.MetalHeat_J_kgK;
        double energy_J = CylinderContents.Of(before_kg, cylinder.Volume_m3, before_K).InternalEnergy_J + shell_J_K * before_K
            + added_kg * SaturationTable.At(added_K).LiquidEnthalpy_J_kg;
        double t_K = before_K;
        for (int i = 0; i < MostTries; i++)
        {
            CylinderContents contents = CylinderContents.Of(before_kg + added_kg, cylinder.Volume_m3, t_K);
            double step_K = (energy_J - contents.InternalEnergy_J - shell_J_K * t_K) / (contents.HeatCapacity_J_K + shell_J_K);
            t_K += Math.Clamp(step_K, -20, 20);
            if (Math.Abs(step_K) < 1e-10) break;
        }

        return t_K;
    }
}
