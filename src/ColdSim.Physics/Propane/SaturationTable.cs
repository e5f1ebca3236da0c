using System.Runtime.CompilerServices;

namespace ColdSim.Physics.Propane;

/// <summary>The saturation line as a table for the step loop: every kelvin solved from the reference equation, cubic between.</summary>
/// <remarks>
/// Pressure, both specific volumes and both internal energies are stored with their exact slopes along the line and interpolated
/// by cubic Hermite polynomials, so that a slope read from the table is the true derivative of the value read from it, and an
/// energy balance written with the slopes closes on the values. A lookup allocates nothing and checks nothing.
/// </remarks>
public static class SaturationTable
{
    /// <summary>Lowest temperature the product accepts, −80 °C. [K]</summary>
    public const double Lowest_K = 193.15;

    /// <summary>Highest temperature the product accepts, +80 °C. [K]</summary>
    public const double Highest_K = 353.15;

    // The table reaches a little further, so that a trial step past the edge still reads smooth values.
    private const double First_K = 191;
    private const double Last_K = 355;
    private const int Stride = 10;

    private static readonly double[] Nodes = Build();

    private static double[] Build()
    {
        int count = (int)(Last_K - First_K) + 1;
        double[] nodes = new double[count * Stride];
        for (int i = 0; i < count; i++)
        {
            PhaseEquilibrium e = PhaseEquilibrium.At(First_K + i);
            double rhoL = e.Liquid.Density_kg_m3, rhoV = e.Vapour.Density_kg_m3;
            Span<double> n = nodes.AsSpan(i * Stride, Stride);
            n[0] = e.Vapour.Pressure_Pa;
            n[1] = e.PressureSlope_Pa_K;
            n[2] = 1 / rhoL;
            n[3] = -e.DensitySlope_kg_m3K(e.Liquid) / (rhoL * rhoL);
            n[4] = 1 / rhoV;
            n[5] = -e.DensitySlope_kg_m3K(e.Vapour) / (rhoV * rhoV);
            n[6] = e.Liquid.InternalEnergy_J_kg;
            n[7] = e.InternalEnergySlope_J_kgK(e.Liquid);
            n[8] = e.Vapour.InternalEnergy_J_kg;
            n[9] = e.InternalEnergySlope_J_kgK(e.Vapour);
        }

        return nodes;
    }

    /// <summary>Both saturated phases at a temperature, with slopes.</summary>
    /// <param name="t_K">Temperature; the two edge cells are continued beyond the table. [K]</param>
    public static SaturatedPhases At(double t_K)
    {
        (int i, double x) = Cell(t_K);
        ReadOnlySpan<double> n = Nodes.AsSpan(i * Stride, 2 * Stride);

        // Cubic Hermite basis on a cell of one kelvin, and its derivative.
        double x2 = x * x, x3 = x2 * x;
        double h01 = 3 * x2 - 2 * x3, h00 = 1 - h01, h10 = x3 - 2 * x2 + x, h11 = x3 - x2;
        double d01 = 6 * (x - x2), d10 = 3 * x2 - 4 * x + 1, d11 = 3 * x2 - 2 * x;

        return new SaturatedPhases(
            h00 * n[0] + h01 * n[10] + h10 * n[1] + h11 * n[11],
            h00 * n[2] + h01 * n[12] + h10 * n[3] + h11 * n[13],
            d01 * (n[12] - n[2]) + d10 * n[3] + d11 * n[13],
            h00 * n[4] + h01 * n[14] + h10 * n[5] + h11 * n[15],
            d01 * (n[14] - n[4]) + d10 * n[5] + d11 * n[15],
            h00 * n[6] + h01 * n[16] + h10 * n[7] + h11 * n[17],
            d01 * (n[16] - n[6]) + d10 * n[7] + d11 * n[17],
            h00 * n[8] + h01 * n[18] + h10 * n[9] + h11 * n[19],
            d01 * (n[18] - n[8]) + d10 * n[9] + d11 * n[19]);
    }

    /// <summary>Saturation pressure alone. [Pa]</summary>
    /// <param name="t_K">Temperature. [K]</param>
    public static double Pressure_Pa(double t_K)
    {
        (int i, double x) = Cell(t_K);
        ReadOnlySpan<double> n = Nodes.AsSpan(i * Stride, 2 * Stride);
        double x2 = x * x, x3 = x2 * x, h01 = 3 * x2 - 2 * x3;
        return (1 - h01) * n[0] + h01 * n[10] + (x3 - 2 * x2 + x) * n[1] + (x3 - x2) * n[11];
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (int Index, double X) Cell(double t_K)
    {
        double from_K = t_K - First_K;
        int i = (int)from_K;
        int last = (int)(Last_K - First_K) - 1;
        if (!(from_K >= 0)) i = 0;
        else if (i > last) i = last;
        return (i, from_K - i);
    }
}

/// <summary>Saturated liquid and vapour at one temperature as read from the table.</summary>
/// <param name="Pressure_Pa">Saturation pressure. [Pa]</param>
/// <param name="LiquidVolume_m3_kg">Specific volume of the liquid. [m³/kg]</param>
/// <param name="LiquidVolumeSlope">Its slope along the saturation line. [m³/(kg·K)]</param>
/// <param name="VapourVolume_m3_kg">Specific volume of the vapour. [m³/kg]</param>
/// <param name="VapourVolumeSlope">Its slope along the saturation line. [m³/(kg·K)]</param>
/// <param name="LiquidEnergy_J_kg">Internal energy of the liquid. [J/kg]</param>
/// <param name="LiquidEnergySlope">Its slope along the saturation line. [J/(kg·K)]</param>
/// <param name="VapourEnergy_J_kg">Internal energy of the vapour. [J/kg]</param>
/// <param name="VapourEnergySlope">Its slope along the saturation line. [J/(kg·K)]</param>
public readonly record struct SaturatedPhases(
    double Pressure_Pa,
    double LiquidVolume_m3_kg,
    double LiquidVolumeSlope,
    double VapourVolume_m3_kg,
    double VapourVolumeSlope,
    double LiquidEnergy_J_kg,
    double LiquidEnergySlope,
    double VapourEnergy_J_kg,
    double VapourEnergySlope)
{
    /// <summary>Enthalpy of the vapour. [J/kg]</summary>
    public double VapourEnthalpy_J_kg => VapourEnergy_J_kg + Pressure_Pa * VapourVolume_m3_kg;

    /// <summary>Enthalpy of the liquid. [J/kg]</summary>
    public double LiquidEnthalpy_J_kg => LiquidEnergy_J_kg + Pressure_Pa * LiquidVolume_m3_kg;

    /// <summary>Latent heat of vaporisation. [J/kg]</summary>
    public double LatentHeat_J_kg => VapourEnthalpy_J_kg - LiquidEnthalpy_J_kg;

    /// <summary>Heat taken from the vessel per mass of vapour drawn: latent heat × ρ′/(ρ′ − ρ″). [J/kg]</summary>
    /// <remarks>More than the latent heat, because the volume that the boiled liquid leaves must be filled with vapour too.</remarks>
    public double DrawHeat_J_kg => LatentHeat_J_kg * VapourVolume_m3_kg / (VapourVolume_m3_kg - LiquidVolume_m3_kg);
}
