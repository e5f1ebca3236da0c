namespace ColdSim.Model.Nodes;

/// <summary>Something with one temperature of its own: a cold box, a tank of water, a wet bay, a pipe. SI units.</summary>
public sealed record ThermalNode
{
    /// <summary>Name for messages.</summary>
    public required string Name { get; init; }

    /// <summary>Heat capacity while nothing in it is frozen. [J/K]</summary>
    public required double Capacity_J_K { get; init; }

    /// <summary>Of it, water that can freeze. [kg]</summary>
    public double Water_kg { get; init; }

    /// <summary>To the coach's air. [W/K]</summary>
    public double Inside_W_K { get; init; }

    /// <summary>To outside air. [W/K]</summary>
    public double Outside_W_K { get; init; }

    /// <summary>Place of the bay in which it lies, among the rig's water nodes; -1 where it lies in none.</summary>
    public int Bay { get; init; } = -1;

    /// <summary>To that bay. [W/K]</summary>
    public double Bay_W_K { get; init; }

    /// <summary>Part of the furnace's useful heat that its duct brings here.</summary>
    public double Duct_frac { get; init; }

    /// <summary>Length over which ice grows inward as in a round pipe; 0 where ice's own resistance is left out. [m]</summary>
    public double IceLength_m { get; init; }

    /// <summary>Water drawn from it by the clock.</summary>
    public IReadOnlyList<WaterDraw> Draws { get; init; } = [];

    /// <summary>Water that comes in for what is drawn. [K]</summary>
    public double Cold_K { get; init; } = 281.15;

    /// <summary>At the start. [K]</summary>
    public double Initial_K { get; init; } = 281.15;
}

/// <summary>Water drawn every day over a span of the clock.</summary>
/// <param name="Window">When.</param>
/// <param name="Flow_kg_s">How fast. [kg/s]</param>
public readonly record struct WaterDraw(ClockWindow Window, double Flow_kg_s);
