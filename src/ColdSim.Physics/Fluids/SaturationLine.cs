using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace ColdSim.Physics.Fluids;

/// <summary>A fluid's saturation line as a table for the step loop: every kelvin as its equation gives it, cubic between.</summary>
/// <remarks>
/// Pressure, both specific volumes and both internal energies are stored with their exact slopes along the line and interpolated
/// by cubic Hermite polynomials, so that a slope read from the table is the true derivative of the value read from it, and an
/// energy balance written with the slopes closes on the values. A lookup allocates nothing and checks nothing.
/// The nodes were solved once and are kept in <see cref="SaturationNodes"/>: to solve them takes longer than all else that a program does at its start.
/// </remarks>
internal sealed class SaturationLine
{
    /// <summary>Lowest temperature the product accepts, −80 °C. [K]</summary>
    public const double Lowest_K = 193.15;

    /// <summary>Highest temperature the product accepts, +80 °C. [K]</summary>
    public const double Highest_K = 353.15;

    // The table reaches a little further, so that a trial step past the edge still reads smooth values.
    private const double First_K = 191;
    private const double Last_K = 355;

    // In each kelvin's row: both volumes and both energies, their slopes, pressure and its slope.
    internal const int Stride = 10;
    private const int Slopes = 4, Pressure = 8;

    internal SaturationLine(ReadOnlySpan<double> nodes) => Nodes = nodes.ToArray();

    /// <summary>The table itself, for those who read it without going through an object.</summary>
    internal double[] Nodes { get; }

    /// <summary>Both saturated phases at a temperature, with slopes.</summary>
    /// <param name="t_K">Temperature; the two edge cells are continued beyond the table. [K]</param>
    public SaturatedPhases At(double t_K) => At(Nodes, t_K);

    /// <summary>Saturation pressure alone. [Pa]</summary>
    /// <param name="t_K">Temperature. [K]</param>
    public double Pressure_Pa(double t_K) => Pressure_Pa(Nodes, t_K);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static SaturatedPhases At(double[] nodes, double t_K)
    {
        (int i, double x) = Cell(t_K);
        ReadOnlySpan<double> n = nodes.AsSpan(i * Stride, 2 * Stride);

        // Cubic Hermite basis on a cell of one kelvin, and its derivative.
        double x2 = x * x, x3 = x2 * x;
        double h01 = 3 * x2 - 2 * x3, h00 = 1 - h01, h10 = x3 - 2 * x2 + x, h11 = x3 - x2;
        double d01 = 6 * (x - x2), d10 = 3 * x2 - 4 * x + 1, d11 = 3 * x2 - 2 * x;

        Vector256<double> low = Vector256.Create(n), lowSlope = Vector256.Create(n[Slopes..]);
        Vector256<double> high = Vector256.Create(n[Stride..]), highSlope = Vector256.Create(n[(Stride + Slopes)..]);
        return new SaturatedPhases(
            h00 * n[Pressure] + h01 * n[Stride + Pressure] + h10 * n[Pressure + 1] + h11 * n[Stride + Pressure + 1],
            h00 * low + h01 * high + h10 * lowSlope + h11 * highSlope,
            d01 * (high - low) + d10 * lowSlope + d11 * highSlope);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Pressure_Pa(double[] nodes, double t_K)
    {
        (int i, double x) = Cell(t_K);
        ReadOnlySpan<double> n = nodes.AsSpan(i * Stride, 2 * Stride);
        double x2 = x * x, x3 = x2 * x, h01 = 3 * x2 - 2 * x3;
        return (1 - h01) * n[Pressure] + h01 * n[Stride + Pressure] + (x3 - 2 * x2 + x) * n[Pressure + 1] + (x3 - x2) * n[Stride + Pressure + 1];
    }

    /// <summary>The nodes as the fluid's equation gives them, from which the kept ones were written.</summary>
    internal static double[] Solve(Fluid fluid)
    {
        int count = (int)(Last_K - First_K) + 1;
        double[] nodes = new double[count * Stride];
        for (int i = 0; i < count; i++)
        {
            PhaseEquilibrium e = PhaseEquilibrium.At(fluid, First_K + i);
            double rhoL = e.Liquid.Density_kg_m3, rhoV = e.Vapour.Density_kg_m3;
            Span<double> n = nodes.AsSpan(i * Stride, Stride);
            n[0] = 1 / rhoL;
            n[1] = 1 / rhoV;
            n[2] = e.Liquid.InternalEnergy_J_kg;
            n[3] = e.Vapour.InternalEnergy_J_kg;
            n[Slopes] = -e.DensitySlope_kg_m3K(e.Liquid) / (rhoL * rhoL);
            n[Slopes + 1] = -e.DensitySlope_kg_m3K(e.Vapour) / (rhoV * rhoV);
            n[Slopes + 2] = e.InternalEnergySlope_J_kgK(e.Liquid);
            n[Slopes + 3] = e.InternalEnergySlope_J_kgK(e.Vapour);
            n[Pressure] = e.Vapour.Pressure_Pa;
            n[Pressure + 1] = e.PressureSlope_Pa_K;
        }

        return nodes;
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

/// <summary>Saturated liquid and vapour of one fluid at one temperature, as read from the table.</summary>
internal readonly record struct SaturatedPhases
{
    // In the table's order: volume of liquid and vapour, energy of liquid and vapour; one look-up works out all four at once.
    private readonly Vector256<double> _values, _slopes;

    internal SaturatedPhases(double pressure_Pa, Vector256<double> values, Vector256<double> slopes)
        => (Pressure_Pa, _values, _slopes) = (pressure_Pa, values, slopes);

    /// <summary>Saturation pressure. [Pa]</summary>
    public double Pressure_Pa { get; }

    /// <summary>Specific volume of the liquid. [m³/kg]</summary>
    public double LiquidVolume_m3_kg => _values[0];

    /// <summary>Its slope along the saturation line. [m³/(kg·K)]</summary>
    public double LiquidVolumeSlope => _slopes[0];

    /// <summary>Specific volume of the vapour. [m³/kg]</summary>
    public double VapourVolume_m3_kg => _values[1];

    /// <summary>Its slope along the saturation line. [m³/(kg·K)]</summary>
    public double VapourVolumeSlope => _slopes[1];

    /// <summary>Internal energy of the liquid. [J/kg]</summary>
    public double LiquidEnergy_J_kg => _values[2];

    /// <summary>Its slope along the saturation line. [J/(kg·K)]</summary>
    public double LiquidEnergySlope => _slopes[2];

    /// <summary>Internal energy of the vapour. [J/kg]</summary>
    public double VapourEnergy_J_kg => _values[3];

    /// <summary>Its slope along the saturation line. [J/(kg·K)]</summary>
    public double VapourEnergySlope => _slopes[3];

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
