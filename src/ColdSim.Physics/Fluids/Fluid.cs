namespace ColdSim.Physics.Fluids;

/// <summary>A pure fluid that a gas may be mixed of: its equation of state and its saturation line.</summary>
internal sealed class Fluid
{
    private readonly HelmholtzEquation _equation;
    private readonly Func<double, double> _startLiquid_kg_m3, _startVapour_kg_m3;

    // Worked out when it is first asked for; a second thread that asks meanwhile works out the same.
    private DiluteSeries? _dilute;

    internal Fluid(
        string name, double molarMass_kg_mol, HelmholtzEquation equation, ReadOnlySpan<double> saturationNodes,
        Func<double, double> startLiquid_kg_m3, Func<double, double> startVapour_kg_m3)
    {
        (Name, MolarMass_kg_mol, _equation) = (name, molarMass_kg_mol, equation);
        (_startLiquid_kg_m3, _startVapour_kg_m3) = (startLiquid_kg_m3, startVapour_kg_m3);
        Saturation = new SaturationLine(saturationNodes);
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Molar mass. [kg/mol]</summary>
    public double MolarMass_kg_mol { get; }

    /// <summary>Its saturation line.</summary>
    public SaturationLine Saturation { get; }

    /// <summary>The state at a temperature and a density.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    public FluidState At(double t_K, double rho_kg_m3) => _equation.At(t_K, rho_kg_m3);

    /// <summary>The state at a temperature and a density without its entropy and Gibbs energy, which are then not a number: cheaper.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    /// <returns>Properties of the single phase at that point.</returns>
    public FluidState EnergyAt(double t_K, double rho_kg_m3) => _equation.EnergyAt(t_K, rho_kg_m3);

    /// <summary>The same of vapour without liquid: by the equation's power series where that is good, else by the equation itself.</summary>
    /// <remarks>
    /// From 200 to 640 K and up to saturation, and up to 30 kg/m³, pressure is within 1e-10 of the equation's, energy and enthalpy within 1e-10 of RT and
    /// heat capacity within 1e-7 of R, in a quarter of the time.
    /// </remarks>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    public FluidState VapourAt(double t_K, double rho_kg_m3)
        => t_K >= DiluteSeries.Lowest_K && t_K < DiluteSeries.Highest_K && rho_kg_m3 <= DiluteSeries.Highest_kg_m3
            ? (_dilute ??= _equation.Dilute()).At(t_K, rho_kg_m3)
            : _equation.EnergyAt(t_K, rho_kg_m3);

    /// <summary>Density of saturated liquid by a short fit, to start the exact solution from. [kg/m³]</summary>
    internal double RoughLiquidDensity_kg_m3(double t_K) => _startLiquid_kg_m3(t_K);

    /// <summary>Density of saturated vapour by a short fit, to start the exact solution from. [kg/m³]</summary>
    internal double RoughVapourDensity_kg_m3(double t_K) => _startVapour_kg_m3(t_K);
}

/// <summary>Ancillary equations: short fits of both saturated densities, from which the exact solution starts.</summary>
/// <remarks>With θ = 1 − T/Tc: ρ′ = ρc (1 + Σ n θ^t) and ρ″ = ρc exp(Tc/T Σ n θ^t). Nothing in the model uses them directly.</remarks>
internal sealed class DensityFit(double tc_K, double rhoc_kg_m3, (double N, double T)[] liquid, (double N, double T)[] vapour)
{
    public double Liquid_kg_m3(double t_K) => rhoc_kg_m3 * (1 + Sum(liquid, t_K));

    public double Vapour_kg_m3(double t_K) => rhoc_kg_m3 * Math.Exp(tc_K / t_K * Sum(vapour, t_K));

    private double Sum((double N, double T)[] terms, double t_K)
    {
        double theta = 1 - t_K / tc_K, sum = 0;
        foreach ((double n, double t) in terms) sum += n * Math.Pow(theta, t);
        return sum;
    }
}
