namespace ColdSim.Physics.Fluids;

/// <summary>Isobutane: the reference equation of Bücker and Wagner (2006).</summary>
/// <remarks>
/// D. Bücker, W. Wagner, J. Phys. Chem. Ref. Data 35 (2006) 929, coefficients as CoolProp holds them. Valid from the triple point to
/// 575 K; used here from 190 to 400 K. a1 and a2 put h = 200 kJ/kg and s = 1 kJ/(kg·K) on saturated liquid at 0 °C.
/// </remarks>
internal static class Isobutane
{
    /// <summary>Critical temperature, by which the equation reduces temperature. [K]</summary>
    public const double CriticalTemperature_K = 407.81;

    /// <summary>Critical density. [kg/m³]</summary>
    public const double CriticalDensity_kg_m3 = 3879.756788283995 * MolarMass_kg_mol;

    /// <summary>Molar mass. [kg/mol]</summary>
    public const double MolarMass_kg_mol = 0.0581222;

    private const double GasConstant_J_kgK = 8.314472 / MolarMass_kg_mol;

    private static readonly PowerTerm[] Power =
    [
        new(2.0686820727966, 0.50, 1, 0),
        new(-3.6400098615204, 1.00, 1, 0),
        new(0.51968754427244, 1.50, 1, 0),
        new(0.17745845870123, 0.00, 2, 0),
        new(-0.12361807851599, 0.50, 3, 0),
        new(0.045145314010528, 0.50, 4, 0),
        new(0.03047647996598, 0.75, 4, 0),
        new(0.75508387706302, 2.00, 1, 1),
        new(-0.85885381015629, 2.50, 1, 1),
        new(0.036324009830684, 2.50, 2, 1),
        new(-0.01954879945055, 1.50, 7, 1),
        new(-0.004445239290496, 1.00, 8, 1),
        new(0.004641076366646, 1.50, 8, 1),
        new(-0.071444097992825, 4.00, 1, 2),
        new(-0.080765060030713, 7.00, 2, 2),
        new(0.15560460945053, 3.00, 3, 2),
        new(0.0020318752160332, 7.00, 3, 2),
        new(-0.10624883571689, 3.00, 4, 2),
        new(0.039807690546305, 1.00, 5, 2),
        new(0.016371431292386, 6.00, 5, 2),
        new(0.00053212200682628, 0.00, 10, 2),
        new(-0.0078681561156387, 6.00, 2, 3),
        new(-0.0030981191888963, 13.00, 6, 3),
    ];

    private static readonly GaussTerm[] Gauss =
    [
        new(-0.042276036810382, 2, 1, 10, 150, 1.16, 0.85),
        new(-0.0053001044558079, 0, 2, 10, 200, 1.13, 1),
    ];

    private static readonly DensityFit SaturatedDensity = new(
        CriticalTemperature_K, CriticalDensity_kg_m3,
        [(2.0418147224188545, 0.356), (0.4363922893974425, 0.824), (1.915261424521202, 3.142),
            (-2.1807762762122045, 3.696), (1.068664850362356, 6.863), (-6.816247938174933, 18.441)],
        [(-2.8656855559386294, 0.37), (0.7330458189287201, 0.502), (-4.254613288675131, 1.021),
            (2.9956235180226516, 2.003), (-5.671641417558254, 3.403), (0.14361022568133902, 10.717)]);

    /// <summary>Isobutane as a species of a mixed gas.</summary>
    public static Fluid Fluid { get; } = new(
        "isobutane", MolarMass_kg_mol,
        new HelmholtzEquation(
            CriticalTemperature_K, CriticalDensity_kg_m3, GasConstant_J_kgK,
            new IdealTerm(3.05956619, 11.60865546 - 17.6081648486994, -5.29450411 + 10.3134499204439),
            [new(4.94641014, 0.951277902), new(4.09475197, 2.387895885), new(15.6632824, 4.346904269), new(9.73918122, 10.36885864)], Power, Gauss),
        SaturationNodes.Isobutane, SaturatedDensity.Liquid_kg_m3, SaturatedDensity.Vapour_kg_m3);
}
