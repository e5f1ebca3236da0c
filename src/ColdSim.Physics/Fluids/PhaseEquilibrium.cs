namespace ColdSim.Physics.Fluids;

/// <summary>Saturated liquid and vapour at one temperature: equal pressure and equal Gibbs energy.</summary>
/// <param name="Liquid">State of the saturated liquid.</param>
/// <param name="Vapour">State of the saturated vapour.</param>
internal readonly record struct PhaseEquilibrium(FluidState Liquid, FluidState Vapour)
{
    private const int MaximumIterations = 30;

    /// <summary>Solves the equilibrium by Newton's method on both densities.</summary>
    /// <param name="fluid">Fluid whose equation of state is solved.</param>
    /// <param name="t_K">Temperature, 190 to 365 K. [K]</param>
    /// <returns>Both phases, pressure and Gibbs energy equal to about 1e-12.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside the range.</exception>
    public static PhaseEquilibrium At(Fluid fluid, double t_K)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        if (!(t_K is >= 190 and <= 365))
            throw new ArgumentOutOfRangeException(nameof(t_K), t_K, "Saturation is solved from 190 to 365 K.");
        double rhoL = fluid.RoughLiquidDensity_kg_m3(t_K);
        double rhoV = fluid.RoughVapourDensity_kg_m3(t_K);
        for (int i = 0; ; i++)
        {
            FluidState l = fluid.At(t_K, rhoL), v = fluid.At(t_K, rhoV);
            double dp = v.Pressure_Pa - l.Pressure_Pa;
            double dg = v.Gibbs_J_kg - l.Gibbs_J_kg;

            // dg = dp/ρ along an isotherm, so both equations have the derivatives p'(ρ) and p'(ρ)/ρ.
            double stepL = (dp - rhoV * dg) / (l.PressureByDensity * (1 - rhoV / rhoL));
            double stepV = (l.PressureByDensity * stepL - dp) / v.PressureByDensity;
            rhoL += stepL;
            rhoV += stepV;
            if (Math.Abs(stepL) <= 1e-12 * rhoL && Math.Abs(stepV) <= 1e-11 * rhoV || i == MaximumIterations)
                return new PhaseEquilibrium(fluid.At(t_K, rhoL), fluid.At(t_K, rhoV));
        }
    }

    /// <summary>Slope of the saturation pressure, from the Clapeyron equation. [Pa/K]</summary>
    public double PressureSlope_Pa_K
        => (Vapour.Entropy_J_kgK - Liquid.Entropy_J_kgK) / (1 / Vapour.Density_kg_m3 - 1 / Liquid.Density_kg_m3);

    /// <summary>Slope of one phase's density along the saturation line. [kg/(m³·K)]</summary>
    public double DensitySlope_kg_m3K(in FluidState phase)
        => (PressureSlope_Pa_K - phase.PressureByTemperature_Pa_K) / phase.PressureByDensity;

    /// <summary>Slope of one phase's internal energy along the saturation line. [J/(kg·K)]</summary>
    public double InternalEnergySlope_J_kgK(in FluidState phase)
        => phase.Cv_J_kgK + phase.InternalEnergyByDensity * DensitySlope_kg_m3K(phase);
}
