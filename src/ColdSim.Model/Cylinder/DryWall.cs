using System.Runtime.CompilerServices;

namespace ColdSim.Model.Cylinder;

/// <summary>The wall above the liquid under a blanket: warmer than the liquid, with a heat capacity of its own. SI units.</summary>
/// <remarks>
/// Its state is the energy by which it is warmer than the liquid, so that the shell as a whole still has the liquid's temperature in the books and this
/// energy comes on top. Heat goes down the wall into the liquid, into the vapour, through the insulation, and round into the bare wall beside it.
/// docs/model.md, "Blanket", has the equations.
/// </remarks>
/// <param name="Capacity_J_K">Heat capacity. [J/K]</param>
/// <param name="ToLiquid_W_K">Heat into the liquid per kelvin of the mean excess under the blanket: down the wall, and without liquid through the vapour. [W/K]</param>
/// <param name="ToVapour_W_K">Film between the wall and vapour that is not in balance with it. [W/K]</param>
/// <param name="Outside_W_K">Through the insulation. [W/K]</param>
/// <param name="Beside_W_K">Through the bare wall beside the blanket, into which the heat spreads, and through the wetted wall below. [W/K]</param>
/// <param name="Environment_K">Temperature outside the insulation at which no heat flows through it. [K]</param>
/// <param name="Power_frac">Part of the blanket's power that is made on this wall; the rest is made below the liquid's level.</param>
/// <param name="Hottest_factor">Excess of the hottest place, at the top in the blanket's middle, over the mean excess.</param>
public readonly record struct DryWall(
    double Capacity_J_K, double ToLiquid_W_K, double ToVapour_W_K, double Outside_W_K, double Beside_W_K, double Environment_K,
    double Power_frac, double Hottest_factor)
{
    // Of saturated propane vapour: 1.43 kJ/(kg K) at -40 °C, 1.73 at 0 °C.
    private const double VapourHeat_J_kgK = 1560;

    /// <summary>Mean excess over the liquid at an energy. [K]</summary>
    /// <param name="energy_J">Energy by which it is warmer than the liquid. [J]</param>
    public double Excess_K(double energy_J) => Capacity_J_K > 0 ? energy_J / Capacity_J_K : 0;

    /// <summary>Rate of change of its energy. [W]</summary>
    /// <param name="excess_K">Mean excess over the liquid. [K]</param>
    /// <param name="liquid_K">Liquid. [K]</param>
    /// <param name="blanket_W">Power of the blanket. [W]</param>
    /// <param name="draw_kg_s">Vapour that leaves. [kg/s]</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Gain_W(double excess_K, double liquid_K, double blanket_W, double draw_kg_s)
        => Power_frac * blanket_W + Outside_W_K * (Environment_K - liquid_K - excess_K) - (ToLiquid_W_K + Beside_W_K + WithGas_W_K(draw_kg_s)) * excess_K;

    /// <summary>Mean excess at which it neither warms nor cools. [K]</summary>
    /// <param name="liquid_K">Liquid. [K]</param>
    /// <param name="blanket_W">Power of the blanket. [W]</param>
    /// <param name="draw_kg_s">Vapour that leaves. [kg/s]</param>
    public double SteadyExcess_K(double liquid_K, double blanket_W, double draw_kg_s)
    {
        double all_W_K = All_W_K(draw_kg_s);
        return all_W_K > 0 ? (Power_frac * blanket_W + Outside_W_K * (Environment_K - liquid_K)) / all_W_K : 0;
    }

    /// <summary>Power that keeps the wall under the blanket at a temperature. [W]</summary>
    /// <param name="covered_K">That temperature. [K]</param>
    /// <param name="liquid_K">Liquid. [K]</param>
    /// <param name="draw_kg_s">Vapour that leaves. [kg/s]</param>
    /// <returns>0 where it is as warm without power.</returns>
    public double PowerAt_W(double covered_K, double liquid_K, double draw_kg_s)
    {
        double excess_K = covered_K - liquid_K;
        return Power_frac > 0 ? Math.Max(0, All_W_K(draw_kg_s) * excess_K - Outside_W_K * (Environment_K - liquid_K)) / Power_frac : double.PositiveInfinity;
    }

    /// <summary>Part of the heat made on it that reaches the liquid.</summary>
    /// <param name="draw_kg_s">Vapour that leaves. [kg/s]</param>
    public double ToLiquid_frac(double draw_kg_s) => All_W_K(draw_kg_s) is > 0 and double all_W_K ? ToLiquid_W_K / all_W_K : 0;

    /// <summary>Its hottest place, or the liquid where that is warmer. [K]</summary>
    public double Hottest_K(double excess_K, double liquid_K) => liquid_K + Hottest_factor * Math.Max(0, excess_K);

    /// <summary>Time in which it follows what heats it; infinite where there is none. [s]</summary>
    public double TimeConstant_s
        => Capacity_J_K > 0 ? Capacity_J_K / (ToLiquid_W_K + ToVapour_W_K + Outside_W_K + Beside_W_K) : double.PositiveInfinity;

    // Vapour over liquid that is colder lies still; what it takes from the wall leaves with what is drawn, which mixes it.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double WithGas_W_K(double draw_kg_s)
    {
        double carried_W_K = VapourHeat_J_kgK * Math.Max(0, draw_kg_s);
        return carried_W_K > 0 ? ToVapour_W_K * carried_W_K / (ToVapour_W_K + carried_W_K) : 0;
    }

    private double All_W_K(double draw_kg_s) => ToLiquid_W_K + Outside_W_K + Beside_W_K + WithGas_W_K(draw_kg_s);
}
