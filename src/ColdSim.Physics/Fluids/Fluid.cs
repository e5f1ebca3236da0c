namespace ColdSim.Physics.Fluids;

/// <summary>A pure fluid that a gas may be mixed of: its equation of state and its saturation line.</summary>
public sealed class Fluid
{
    private readonly HelmholtzEquation _equation;
    private readonly Func<double, double> _roughLiquid_kg_m3, _roughVapour_kg_m3;
    private readonly Lazy<SaturationLine> _saturation;

    internal Fluid(
        string name, double molarMass_kg_mol, HelmholtzEquation equation,
        Func<double, double> roughLiquid_kg_m3, Func<double, double> roughVapour_kg_m3)
    {
        (Name, MolarMass_kg_mol, _equation) = (name, molarMass_kg_mol, equation);
        (_roughLiquid_kg_m3, _roughVapour_kg_m3) = (roughLiquid_kg_m3, roughVapour_kg_m3);
        _saturation = new Lazy<SaturationLine>(() => new SaturationLine(this));
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Molar mass. [kg/mol]</summary>
    public double MolarMass_kg_mol { get; }

    /// <summary>Its saturation line, solved at the first look.</summary>
    public SaturationLine Saturation => _saturation.Value;

    /// <summary>The state at a temperature and a density.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    public FluidState At(double t_K, double rho_kg_m3) => _equation.At(t_K, rho_kg_m3);

    /// <summary>Density of saturated liquid by a short fit, to start the exact solution from. [kg/m³]</summary>
    internal double RoughLiquidDensity_kg_m3(double t_K) => _roughLiquid_kg_m3(t_K);

    /// <summary>Density of saturated vapour by a short fit, to start the exact solution from. [kg/m³]</summary>
    internal double RoughVapourDensity_kg_m3(double t_K) => _roughVapour_kg_m3(t_K);
}
