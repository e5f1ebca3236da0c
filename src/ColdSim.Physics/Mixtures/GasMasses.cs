namespace ColdSim.Physics.Mixtures;

/// <summary>An amount of each species that a gas may be mixed of: masses, or parts of one mass. SI units.</summary>
/// <param name="Propane">Propane. [kg, or kg/kg]</param>
/// <param name="NormalButane">n-butane. [kg, or kg/kg]</param>
/// <param name="Isobutane">Isobutane. [kg, or kg/kg]</param>
public readonly record struct GasMasses(double Propane, double NormalButane, double Isobutane)
{
    /// <summary>Propane and nothing else.</summary>
    public static GasMasses PurePropane { get; } = new(1, 0, 0);

    /// <summary>All of it together.</summary>
    public double Sum => Propane + NormalButane + Isobutane;

    /// <summary>One species by its place among <see cref="GasSpecies.All"/>.</summary>
    public double this[int species] => species switch { 0 => Propane, 1 => NormalButane, _ => Isobutane };

    /// <summary>The same, as parts of one.</summary>
    public GasMasses Parts() => this * (1 / Sum);

    /// <summary>So much of it.</summary>
    public static GasMasses operator *(GasMasses a, double factor) => new(a.Propane * factor, a.NormalButane * factor, a.Isobutane * factor);

    /// <summary>Both together.</summary>
    public static GasMasses operator +(GasMasses a, GasMasses b) => new(a.Propane + b.Propane, a.NormalButane + b.NormalButane, a.Isobutane + b.Isobutane);

    /// <summary>One less the other.</summary>
    public static GasMasses operator -(GasMasses a, GasMasses b) => new(a.Propane - b.Propane, a.NormalButane - b.NormalButane, a.Isobutane - b.Isobutane);
}
