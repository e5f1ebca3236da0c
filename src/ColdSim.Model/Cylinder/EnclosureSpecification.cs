namespace ColdSim.Model.Cylinder;

/// <summary>A cover or locker round the cylinders of a rig, with openings that stay open. SI units.</summary>
/// <remarks>Openings are a must by the rules for gas lockers, so that leaking gas gets out: nothing makes them smaller than they are.</remarks>
public sealed record EnclosureSpecification
{
    /// <summary>What it is called, such as "tongue cover".</summary>
    public required string Name { get; init; }

    /// <summary>Outside area of its walls that lie against the outside air. [m²]</summary>
    public required double Area_m2 { get; init; }

    /// <summary>Resistance of the wall alone, without its films. [m²·K/W]</summary>
    public double Wall_m2K_W { get; init; } = 0.01;

    /// <summary>Heat that goes through its walls, films and all, if measured; openings come on top. [W/K]</summary>
    public double? FixedLoss_W_K { get; init; }

    /// <summary>Openings near its floor. [m²]</summary>
    public required double LowOpening_m2 { get; init; }

    /// <summary>Openings near its top. [m²]</summary>
    public required double HighOpening_m2 { get; init; }

    /// <summary>Height between the two. [m]</summary>
    public required double OpeningHeight_m { get; init; }

    /// <summary>Wind at its walls and openings as a part of the weather's.</summary>
    public double WindExposure_frac { get; init; } = 0.3;

    /// <summary>Part of the open half-space of sky that its walls see.</summary>
    public double SkyView_frac { get; init; } = 0.5;

    /// <summary>Part of the sun that reaches it.</summary>
    public double SunExposure_frac { get; init; }

    /// <summary>Part of that which its colour takes in.</summary>
    public double SolarAbsorptance_frac { get; init; } = 0.25;

    /// <summary>Conductance of the coach's wall between it and the inside; that heat is part of the coach's own loss already. [W/K]</summary>
    public double Coach_W_K { get; init; }
}
