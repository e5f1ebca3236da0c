using ColdSim.Model.Cylinder;

namespace ColdSim.Model.Arrangement;

/// <summary>How every cylinder stands at one evaluation of the equations; filled again for each. SI units.</summary>
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
    }

    /// <summary>Vapour left without liquid is drawn down in minutes, so the steps must be short while it flows. [s]</summary>
    public const double VapourStep_s = 5;

    /// <summary>How many.</summary>
    public int Count => Contents.Length;

    /// <summary>What is in each.</summary>
    public CylinderContents[] Contents { get; }

    /// <summary>Liquid and shell. [K]</summary>
    public double[] Temperature_K { get; }

    /// <summary>Heat from surroundings and blanket into liquid and shell. [W]</summary>
    public double[] Heat_W { get; }

    /// <summary>Heat capacity of propane and shell. [J/K]</summary>
    public double[] Capacity_J_K { get; }

    /// <summary>Vapour that leaves; negative where it comes in. [kg/s]</summary>
    public double[] Out_kg_s { get; }

    /// <summary>Whether one gives gas and has no liquid.</summary>
    public bool IsGivingVapourAlone(int i) => Out_kg_s[i] > 0 && !Contents[i].HasLiquid;

    /// <summary>Enthalpy of the gas in the manifold, the mean of what the giving cylinders send. [J/kg]</summary>
    public double ManifoldEnthalpy_J_kg { get; private set; }

    /// <summary>Takes in the outflows: mixes what the giving cylinders send.</summary>
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

    /// <summary>How fast one warms. [K/s]</summary>
    /// <param name="i">Its place.</param>
    /// <remarks>
    /// [m′c′ + m″c″ + m_w c_w] dT/dt = Q − ṁ h_fg ρ′/(ρ′ − ρ″), written with ∂U/∂T of the two-phase contents. What leaves takes the draw
    /// heat; what comes in gives it, and what it is richer than the cylinder's own vapour.
    /// </remarks>
    public double Warming_K_s(int i)
    {
        double out_kg_s = Out_kg_s[i];
        double taken_W = out_kg_s >= 0
            ? out_kg_s * Contents[i].DrawHeat_J_kg
            : out_kg_s * (Contents[i].DrawHeat_J_kg + ManifoldEnthalpy_J_kg - Contents[i].VapourEnthalpy_J_kg);
        return (Heat_W[i] - taken_W) / Capacity_J_K[i];
    }
}
