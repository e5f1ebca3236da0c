namespace ColdSim.Physics.Fluids;

/// <summary>Normal butane: the reference equation of Bücker and Wagner (2006).</summary>
/// <remarks>
/// D. Bücker, W. Wagner, J. Phys. Chem. Ref. Data 35 (2006) 929, coefficients as CoolProp holds them. Valid from the triple point to
/// 575 K; used here from 190 to 400 K. a1 and a2 put h = 200 kJ/kg and s = 1 kJ/(kg·K) on saturated liquid at 0 °C.
/// </remarks>
internal static class NormalButane
{
    /// <summary>Critical temperature, by which the equation reduces temperature. [K]</summary>
    public const double CriticalTemperature_K = 425.125;

    /// <summary>Critical density. [kg/m³]</summary>
    public const double CriticalDensity_kg_m3 = 3922.769612987809 * MolarMass_kg_mol;

    /// <summary>Molar mass. [kg/mol]</summary>
    public const double MolarMass_kg_mol = 0.0581222;

    private const double GasConstant_J_kgK = 8.314472 / MolarMass_kg_mol;

    private static readonly PowerTerm[] Power =
    [
        new(2.5536998241635, 0.50, 1, 0),
        new(-4.4585951806696, 1.00, 1, 0),
        new(0.82425886369063, 1.50, 1, 0),
        new(0.11215007011442, 0.00, 2, 0),
        new(-0.035910933680333, 0.50, 3, 0),
        new(0.016790508518103, 0.50, 4, 0),
        new(0.032734072508724, 0.75, 4, 0),
        new(0.95571232982005, 2.00, 1, 1),
        new(-1.0003385753419, 2.50, 1, 1),
        new(0.085581548803855, 2.50, 2, 1),
        new(-0.025147918369616, 1.50, 7, 1),
        new(-0.0015202958578918, 1.00, 8, 1),
        new(0.004706068232642, 1.50, 8, 1),
        new(-0.097845414174006, 4.00, 1, 2),
        new(-0.04831790415876, 7.00, 2, 2),
        new(0.17841271865468, 3.00, 3, 2),
        new(0.018173836739334, 7.00, 3, 2),
        new(-0.11399068074953, 3.00, 4, 2),
        new(0.019329896666669, 1.00, 5, 2),
        new(0.001157587740101, 6.00, 5, 2),
        new(0.00015253808698116, 0.00, 10, 2),
        new(-0.043688558458471, 6.00, 2, 3),
        new(-0.0082403190629989, 13.00, 6, 3),
    ];

    private static readonly GaussTerm[] Gauss =
    [
        new(-0.028390056949441, 2, 1, 10, 150, 1.16, 0.85),
        new(0.0014904666224681, 0, 2, 10, 200, 1.13, 1),
    ];

    private static readonly DensityFit SaturatedDensity = new(
        CriticalTemperature_K, CriticalDensity_kg_m3,
        [(7.6544950329552, 0.501), (-16.928503641708495, 0.742), (14.176327512939299, 0.917),
            (-2.3511736019127136, 1.387), (5.431931351600508, 9.328), (-13.286388570143172, 12.623)],
        [(-3.756767939636941, 0.448), (-2.819084986331516, 1.717), (2.3817493893256763, 4.443),
            (-27.835034497609627, 7.472), (409.95394459399324, 13.095), (-539.2138907428523, 14.725)]);

    /// <summary>Normal butane as a species of a mixed gas.</summary>
    public static Fluid Fluid { get; } = new(
        "n-butane", MolarMass_kg_mol,
        new HelmholtzEquation(
            CriticalTemperature_K, CriticalDensity_kg_m3, GasConstant_J_kgK,
            new IdealTerm(3.24680487, 12.54882924 - 17.9737888338978, -5.46976878 + 10.3892639083242),
            [new(5.54913289, 0.774840445), new(11.4648996, 3.340602552), new(7.59987584, 4.970513096), new(9.66033239, 9.975553778)], Power, Gauss),
        SaturationNodes.NormalButane, SaturatedDensity.Liquid_kg_m3, SaturatedDensity.Vapour_kg_m3);
}
