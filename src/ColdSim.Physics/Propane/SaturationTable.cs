using ColdSim.Physics.Fluids;

namespace ColdSim.Physics.Propane;

/// <summary>Propane's saturation line as the step loop reads it; see <see cref="SaturationLine"/>.</summary>
internal static class SaturationTable
{
    /// <summary>Lowest temperature the product accepts, −80 °C. [K]</summary>
    public const double Lowest_K = SaturationLine.Lowest_K;

    /// <summary>Highest temperature the product accepts, +80 °C. [K]</summary>
    public const double Highest_K = SaturationLine.Highest_K;

    private static readonly double[] Nodes = ReferenceEquation.Fluid.Saturation.Nodes;

    /// <summary>Both saturated phases at a temperature, with slopes.</summary>
    /// <param name="t_K">Temperature; the two edge cells are continued beyond the table. [K]</param>
    public static SaturatedPhases At(double t_K) => SaturationLine.At(Nodes, t_K);

    /// <summary>Saturation pressure alone. [Pa]</summary>
    /// <param name="t_K">Temperature. [K]</param>
    public static double Pressure_Pa(double t_K) => SaturationLine.Pressure_Pa(Nodes, t_K);
}
