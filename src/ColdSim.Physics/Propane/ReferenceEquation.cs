using ColdSim.Physics.Fluids;

namespace ColdSim.Physics.Propane;

/// <summary>The reference equation of state of propane: the Helmholtz energy as a function of temperature and density.</summary>
/// <remarks>
/// Lemmon, McLinden, Wagner, J. Chem. Eng. Data 54 (2009) 3141; see <see cref="HelmholtzEquation"/>. Used here from 190 to 400 K. The
/// constants a1 and a2 put h = 200 kJ/kg and s = 1 kJ/(kg·K) on saturated liquid at 0 °C.
/// </remarks>
internal static class ReferenceEquation
{
    /// <summary>Critical temperature. [K]</summary>
    public const double CriticalTemperature_K = 369.89;

    /// <summary>Critical pressure. [Pa]</summary>
    public const double CriticalPressure_Pa = 4_251_200;

    /// <summary>Critical density, 5 mol/L. [kg/m³]</summary>
    public const double CriticalDensity_kg_m3 = 5000 * MolarMass_kg_mol;

    /// <summary>Molar mass. [kg/mol]</summary>
    public const double MolarMass_kg_mol = 0.04409562;

    /// <summary>The molar gas constant that the equation was fitted with. [J/(mol·K)]</summary>
    public const double MolarGasConstant_J_molK = 8.314472;

    /// <summary>The specific gas constant. [J/(kg·K)]</summary>
    public const double GasConstant_J_kgK = MolarGasConstant_J_molK / MolarMass_kg_mol;

    /// <summary>Normal boiling point by the reference equation. [K]</summary>
    public const double NormalBoilingPoint_K = 231.036;

    // Terms 1-11: n δ^d τ^t exp(-δ^l), no exponential where l is 0.
    private static readonly PowerTerm[] Power =
    [
        new(0.042910051, 1.00, 4, 0),
        new(1.7313671, 0.33, 1, 0),
        new(-2.4516524, 0.80, 1, 0),
        new(0.34157466, 0.43, 2, 0),
        new(-0.46047898, 0.90, 2, 0),
        new(-0.66847295, 2.46, 1, 1),
        new(0.20889705, 2.09, 3, 1),
        new(0.19421381, 0.88, 6, 1),
        new(-0.22917851, 1.09, 6, 1),
        new(-0.60405866, 3.25, 2, 2),
        new(0.066680654, 4.62, 3, 2),
    ];

    // Terms 12-18: n δ^d τ^t exp[-η(δ-ε)² - β(τ-γ)²].
    private static readonly GaussTerm[] Gauss =
    [
        new(0.017534618, 0.76, 1, 0.963, 2.33, 0.684, 1.283),
        new(0.33874242, 2.50, 1, 1.977, 3.47, 0.829, 0.6936),
        new(0.22228777, 2.75, 1, 1.917, 3.15, 1.419, 0.788),
        new(-0.23219062, 3.05, 2, 2.307, 3.19, 0.817, 0.473),
        new(-0.09220694, 2.55, 2, 2.546, 0.92, 1.500, 0.8577),
        new(-0.47575718, 8.40, 4, 3.28, 18.8, 1.426, 0.271),
        new(-0.017486824, 6.75, 1, 14.6, 547.8, 1.093, 0.948),
    ];

    // The ideal part: ln δ + 3 ln τ + a1 + a2 τ + Σ v ln(1 − exp(−u τ)).
    private static readonly HelmholtzEquation Equation = new(
        CriticalTemperature_K, CriticalDensity_kg_m3, GasConstant_J_kgK, new IdealTerm(3, -4.970583, 4.29352),
        [new(3.043, 1.062478), new(5.874, 3.344237), new(9.337, 5.363757), new(7.922, 11.762957)], Power, Gauss);

    /// <summary>Propane as one of the fluids that a gas may be mixed of.</summary>
    public static Fluid Fluid { get; } = new("propane", MolarMass_kg_mol, Equation, SaturationNodes.Propane, StartLiquidDensity_kg_m3, StartVapourDensity_kg_m3);

    /// <summary>The state at a temperature and a density.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    /// <returns>Properties of the single phase at that point; inside the two-phase dome those of the metastable phase.</returns>
    public static FluidState At(double t_K, double rho_kg_m3) => Equation.At(t_K, rho_kg_m3);

    /// <summary>The state at a temperature and a density without its entropy and Gibbs energy, which are then not a number: cheaper.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    /// <returns>Properties of the single phase at that point.</returns>
    public static FluidState EnergyAt(double t_K, double rho_kg_m3) => Equation.EnergyAt(t_K, rho_kg_m3);

    // The ancillary equations of the same paper, with θ = 1 − T/Tc, from which the exact solution of the saturation line starts: within
    // 0.03 % of it from −50 to +60 °C.
    private static double StartLiquidDensity_kg_m3(double t_K)
    {
        double th = 1 - t_K / CriticalTemperature_K;
        return CriticalDensity_kg_m3 * (1 + 1.82205 * Math.Pow(th, 0.345) + 0.65802 * Math.Pow(th, 0.74)
            + 0.21109 * Math.Pow(th, 2.6) + 0.083973 * Math.Pow(th, 7.2));
    }

    private static double StartVapourDensity_kg_m3(double t_K)
    {
        double th = 1 - t_K / CriticalTemperature_K;
        return CriticalDensity_kg_m3 * Math.Exp(-2.4887 * Math.Pow(th, 0.3785) - 5.1069 * Math.Pow(th, 1.07)
            - 12.174 * Math.Pow(th, 2.7) - 30.495 * Math.Pow(th, 5.5) - 52.192 * Math.Pow(th, 10) - 134.89 * Math.Pow(th, 20));
    }
}
