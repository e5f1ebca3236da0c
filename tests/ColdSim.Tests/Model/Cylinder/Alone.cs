using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>One cylinder by itself, in the engine's own heat balance.</summary>
internal static class Alone
{
    public static double Warming_K_s(this CylinderBody body, in CylinderContents contents, double heat_W, double draw_kg_s)
    {
        CylinderStates one = new(1);
        one.Contents[0] = contents;
        one.Heat_W[0] = heat_W;
        one.Capacity_J_K[0] = contents.HeatCapacity_J_K + body.ShellHeat_J_K;
        one.Out_kg_s[0] = draw_kg_s;
        one.Mix();
        return one.Warming_K_s(0);
    }

    /// <summary>Energy stored in propane and shell. [J]</summary>
    public static double StoredEnergy_J(this CylinderBody body, double mass_kg, double t_K)
        => body.Contents(mass_kg, t_K).InternalEnergy_J + body.ShellHeat_J_K * t_K;
}
