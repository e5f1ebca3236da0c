namespace ColdSim.Physics.Propane;

/// <summary>Constants of propane in the reference equation of Lemmon, McLinden and Wagner (2009).</summary>
public static class PropaneConstants
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
}
