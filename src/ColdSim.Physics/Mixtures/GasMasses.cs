namespace ColdSim.Physics.Mixtures;

/// <summary>An amount of each species that a gas may be mixed of: masses, or parts of one mass. SI units.</summary>
/// <param name="Propane">Propane. [kg, or kg/kg]</param>
/// <param name="NormalButane">n-butane. [kg, or kg/kg]</param>
/// <param name="Isobutane">Isobutane. [kg, or kg/kg]</param>
public readonly record struct GasMasses(double Propane, double NormalButane, double Isobutane)
{
    /// <summary>Propane and nothing else.</summary>
    public static GasMasses PurePropane { get; } = new(1, 0, 0);

    /// <summary>Sum of all species.</summary>
    public double Sum => Propane + NormalButane + Isobutane;

    /// <summary>One species by its place among <see cref="GasSpecies.All"/>.</summary>
    public double this[int species] => species switch { 0 => Propane, 1 => NormalButane, _ => Isobutane };

    /// <summary>The composition: parts of 1.</summary>
    public GasMasses Parts() => this * (1 / Sum);

    /// <summary>An amount times a factor.</summary>
    public static GasMasses operator *(GasMasses a, double factor) => new(a.Propane * factor, a.NormalButane * factor, a.Isobutane * factor);

    /// <summary>Sum of two amounts, species by species.</summary>
    public static GasMasses operator +(GasMasses a, GasMasses b) => new(a.Propane + b.Propane, a.NormalButane + b.NormalButane, a.Isobutane + b.Isobutane);

    /// <summary>Difference of two amounts, species by species.</summary>
    public static GasMasses operator -(GasMasses a, GasMasses b) => new(a.Propane - b.Propane, a.NormalButane - b.NormalButane, a.Isobutane - b.Isobutane);
}
