using System.Runtime.CompilerServices;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Arrangement;

/// <summary>Thermodynamic state and flows of every cylinder at one evaluation of the equations; filled again for each. SI units.</summary>
internal sealed class CylinderStates
{
    /// <summary>Room for a number of cylinders.</summary>
    public CylinderStates(int count)
    {
        Contents = new CylinderContents[count];
        Temperature_K = new double[count];
        Heat_W = new double[count];
        Capacity_J_K = new double[count];
        Out_kg_s = new double[count];
        Wall_J = new double[count];
        WallGain_W = new double[count];
        Vapour = new GasMasses[count];
    }

    /// <summary>Number of cylinders.</summary>
    public int Count => Contents.Length;

    /// <summary>Contents of each cylinder.</summary>
    public CylinderContents[] Contents { get; }

    /// <summary>Liquid and shell. [K]</summary>
    public double[] Temperature_K { get; }

    /// <summary>Heat from surroundings and blanket into liquid and shell. [W]</summary>
    public double[] Heat_W { get; }

    /// <summary>Heat capacity of propane and shell. [J/K]</summary>
    public double[] Capacity_J_K { get; }

    /// <summary>Vapour that leaves; negative where it comes in. [kg/s]</summary>
    public double[] Out_kg_s { get; }

    /// <summary>Energy by which the dry wall under a blanket is warmer than the liquid. [J]</summary>
    public double[] Wall_J { get; }

    /// <summary>Rate of change of that energy. [W]</summary>
    public double[] WallGain_W { get; }

    /// <summary>What each one's vapour is made of, by mass; only of a mixed gas.</summary>
    public GasMasses[] Vapour { get; }

    /// <summary>Gas that flows, per mass of propane that would; 1 for propane.</summary>
    public double Mass_factor { get; set; } = 1;

    /// <summary>Heat of combustion of the gas that flows, per that of propane, both by mass; 1 for propane.</summary>
    public double Heating_factor { get; set; } = 1;

    /// <summary>Whether one gives gas and has no liquid.</summary>
    public bool IsGivingVapourAlone(int i) => Out_kg_s[i] > 0 && !Contents[i].HasLiquid;

    /// <summary>Whether any has no liquid.</summary>
    public bool IsAnyWithoutLiquid()
    {
        foreach (ref readonly CylinderContents contents in Contents.AsSpan())
        {
            if (!contents.HasLiquid) return true;
        }

        return false;
    }

    /// <summary>Whether any gives gas and has no liquid: it is drawn down in minutes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool IsAnyGivingVapourAlone()
    {
        for (int i = 0; i < Count; i++)
        {
            if (IsGivingVapourAlone(i)) return true;
        }

        return false;
    }

    /// <summary>Enthalpy of the gas in the manifold, the mean of what the giving cylinders send. [J/kg]</summary>
    public double ManifoldEnthalpy_J_kg { get; private set; }

    /// <summary>Mixes the outflows of the giving cylinders.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Mix()
    {
        double flow_kg_s = 0, enthalpy_W = 0;
        for (int i = 0; i < Count; i++)
        {
            if (Out_kg_s[i] <= 0) continue;
            flow_kg_s += Out_kg_s[i];
            enthalpy_W += Out_kg_s[i] * Contents[i].VapourEnthalpy_J_kg;
        }

        ManifoldEnthalpy_J_kg = flow_kg_s > 0 ? enthalpy_W / flow_kg_s : 0;
    }

    /// <summary>Rate of change of a cylinder's temperature. [K/s]</summary>
    /// <param name="i">Index of the cylinder.</param>
    /// <remarks>
    /// [m′c′ + m″c″ + m_w c_w] dT/dt = Q − ṁ h_fg ρ′/(ρ′ − ρ″), written with ∂U/∂T of the two-phase contents. What leaves takes the draw
    /// heat; what comes in gives it, and what it is richer than the cylinder's own vapour.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Warming_K_s(int i)
    {
        double out_kg_s = Out_kg_s[i];
        double taken_W = out_kg_s >= 0
            ? out_kg_s * Contents[i].DrawHeat_J_kg
            : out_kg_s * (Contents[i].DrawHeat_J_kg + ManifoldEnthalpy_J_kg - Contents[i].VapourEnthalpy_J_kg);
        return (Heat_W[i] - taken_W) / Capacity_J_K[i];
    }
}
