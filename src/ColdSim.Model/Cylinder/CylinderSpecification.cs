using ColdSim.Model.Blanket;
using ColdSim.Physics.Mixtures;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Cylinder;

/// <summary>Orientation of the cylinder's axis.</summary>
public enum Orientation
{
    /// <summary>Axis vertical, as portable cylinders need for vapour withdrawal.</summary>
    Upright,

    /// <summary>Axis horizontal, as in frame-mounted tanks.</summary>
    Horizontal,
}

/// <summary>One propane cylinder as its maker's plate, its fill and its place describe it. SI units.</summary>
/// <remarks>Values are not checked here; the readers at the border check them, and <c>CylinderBody</c> refuses impossible geometry.</remarks>
public sealed record CylinderSpecification
{
    /// <summary>Common name of the size, such as "20 lb".</summary>
    public required string Name { get; init; }

    /// <summary>Name given by its owner, such as "left"; null for no name of its own.</summary>
    public string? Label { get; init; }

    /// <summary>Orientation of its axis.</summary>
    public Orientation Orientation { get; init; } = Orientation.Upright;

    /// <summary>Inside volume, the water capacity. [m³]</summary>
    public required double Volume_m3 { get; init; }

    /// <summary>Outside diameter of the shell. [m]</summary>
    public required double OutsideDiameter_m { get; init; }

    /// <summary>Shell thickness, up to a tenth of the diameter: the inside is smaller by it, and the dry wall is a fin. [m]</summary>
    public double WallThickness_m { get; init; } = 0.0020;

    /// <summary>Conductivity of the shell. [W/(m·K)]</summary>
    public double WallConductivity_W_mK { get; init; } = 48;

    /// <summary>Mass of the shell, which moves with the liquid's temperature. [kg]</summary>
    public required double MetalMass_kg { get; init; }

    /// <summary>Specific heat of the shell. [J/(kg·K)]</summary>
    public double MetalHeat_J_kgK { get; init; } = 460;

    /// <summary>Empty mass as stamped: shell, collar, foot ring and valve. [kg]</summary>
    public required double Tare_kg { get; init; }

    /// <summary>The legal filling: 42 % of the water capacity by mass unless the scenario says otherwise. [kg]</summary>
    public required double LegalFill_kg { get; init; }

    /// <summary>Propane in it at the start, liquid and vapour together. [kg]</summary>
    public required double Contents_kg { get; init; }

    /// <summary>Temperature at the start; null takes the outside air's. [K]</summary>
    public double? InitialTemperature_K { get; init; }

    /// <summary>Gauge pressure at which the relief valve starts to discharge. [Pa gauge]</summary>
    public double ReliefPressure_Pa { get; init; } = 375 * Psi_Pa;

    /// <summary>What a mixed gas in it is made of at the start, parts by mass; null for the gas as it is filled.</summary>
    public GasMasses? InitialComposition { get; init; }

    /// <summary>Last day on which it may be filled before it has to be requalified; null where nothing is said.</summary>
    public DateOnly? RequalifyBy { get; init; }

    /// <summary>The blanket around it, or null.</summary>
    public BlanketSpecification? Blanket { get; init; }

    /// <summary>Whether it is in the rig's enclosure, where there is one.</summary>
    public bool IsEnclosed { get; init; } = true;

    /// <summary>Its surroundings, as far as heat transfer depends on them.</summary>
    public CylinderSurroundings Surroundings { get; init; } = new();
}

/// <summary>What surrounds a cylinder: wind, sky and sun, each computed or fixed to a measured number.</summary>
public sealed record CylinderSurroundings
{
    /// <summary>Wind at the cylinder as a fraction of the weather's wind: 1 open to the wind, 0 in a closed box.</summary>
    public double WindExposure_frac { get; init; } = 0.3;

    /// <summary>Part of the open half-space of sky that the side wall sees: 1 in the open, 0 under a cover.</summary>
    public double SkyView_frac { get; init; } = 0.5;

    /// <summary>Part of the sun that reaches the wall: 1 in the open, 0 in shade.</summary>
    public double SunExposure_frac { get; init; }

    /// <summary>Long-wave emissivity of the outside.</summary>
    public double Emissivity_frac { get; init; } = 0.92;

    /// <summary>Short-wave absorptance of the outside.</summary>
    public double SolarAbsorptance_frac { get; init; } = 0.3;

    /// <summary>Film between wall and liquid. [W/(m²·K)]</summary>
    public double InsideFilm_W_m2K { get; init; } = 130;

    /// <summary>Film between the dry wall under a blanket and the vapour. [W/(m²·K)]</summary>
    public double VapourFilm_W_m2K { get; init; } = 8;

    /// <summary>Whole conductance between liquid and air, if measured; replaces everything below and above. [W/K]</summary>
    public double? FixedConductance_W_K { get; init; }

    /// <summary>Convective film, if fixed. [W/(m²·K)]</summary>
    public double? FixedConvection_W_m2K { get; init; }

    /// <summary>Radiative film to surroundings at air temperature, if fixed; the sky is then left out. [W/(m²·K)]</summary>
    public double? FixedRadiation_W_m2K { get; init; }

    /// <summary>Height of dry wall that counts as wetted, if fixed; never more than there is. [m]</summary>
    public double? FixedFin_m { get; init; }

    /// <summary>Frost thickness, if fixed; then nothing is deposited. [m]</summary>
    public double? FixedFrost_m { get; init; }

    /// <summary>Sun absorbed by the whole outside wall, if fixed; spread evenly over it. [W]</summary>
    public double? FixedSun_W { get; init; }

    /// <summary>What the whole conductance is multiplied by at the end, for the sensitivity to heat gain; 1 by default.</summary>
    public double HeatGain_factor { get; init; } = 1;

    /// <summary>What the liquid's volume is multiplied by for its wetted area, and nowhere else; 1 by default.</summary>
    public double WettingLiquid_factor { get; init; } = 1;

    /// <summary>Liquid added for the wetted area, and nowhere else; 0 by default. [m³]</summary>
    public double WettingExtra_m3 { get; init; }
}
