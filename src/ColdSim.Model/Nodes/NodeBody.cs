using System.Runtime.CompilerServices;
using ColdSim.Physics.Freezing;

namespace ColdSim.Model.Nodes;

/// <summary>A node's state as energy, and what it means: temperature and ice. Energy counts from water at 0 °C.</summary>
/// <remarks>
/// The enthalpy method: above zero energy the node warms as a whole; between zero and minus the latent heat it stays at 0 °C and
/// freezes; below, it cools as ice. Supercooling is left out: docs/model.md says why that is the cautious side.
/// </remarks>
internal sealed class NodeBody
{
    // Where all but this much is ice the resistance of the ice grows no further: its logarithm has no end, its integral has.
    private const double LastWater_frac = 1e-3;

    private readonly double _perCapacity_K_J, _frozenCapacity_J_K;
    private readonly double _perThickness_K_W;

    public NodeBody(ThermalNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(node.Capacity_J_K);
        Node = node;
        _perCapacity_K_J = 1 / node.Capacity_J_K;
        Latent_J = node.Water_kg * Water.LatentHeat_J_kg;
        _frozenCapacity_J_K = node.Capacity_J_K - node.Water_kg * (Water.SpecificHeat_J_kgK - Water.IceSpecificHeat_J_kgK);
        _perThickness_K_W = node.IceLength_m > 0 ? 1 / (2 * Math.PI * Water.IceConductivity_W_mK * node.IceLength_m) : 0;
    }

    public ThermalNode Node { get; }

    /// <summary>Heat that freezing all its water sets free. [J]</summary>
    public double Latent_J { get; }

    /// <summary>Temperature at an energy. [K]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Temperature_K(double energy_J)
        => energy_J >= 0 ? Water.Freezing_K + energy_J * _perCapacity_K_J
            : energy_J >= -Latent_J ? Water.Freezing_K
            : Water.Freezing_K + (energy_J + Latent_J) / _frozenCapacity_J_K;

    /// <summary>Energy at a temperature; at freezing, of water. [J]</summary>
    public double Energy_J(double t_K)
        => t_K >= Water.Freezing_K
            ? (t_K - Water.Freezing_K) * Node.Capacity_J_K
            : (t_K - Water.Freezing_K) * _frozenCapacity_J_K - Latent_J;

    /// <summary>Part of its water that is ice.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Ice_frac(double energy_J) => Latent_J <= 0 ? 0 : Math.Clamp(-energy_J / Latent_J, 0, 1);

    /// <summary>A conductance to the node as the ice in it leaves it: heat must cross the ring of ice. [W/K]</summary>
    /// <param name="bare_W_K">Without ice. [W/K]</param>
    /// <param name="ice_frac">Part of its water that is ice.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double ThroughIce_W_K(double bare_W_K, double ice_frac)
    {
        if (_perThickness_K_W <= 0 || ice_frac <= 0 || bare_W_K <= 0) return bare_W_K;
        double ring_K_W = -0.5 * Math.Log(Math.Max(LastWater_frac, 1 - ice_frac)) * _perThickness_K_W;
        return 1 / (1 / bare_W_K + ring_K_W);
    }

    /// <summary>Heat that water drawn at a time of the clock takes per kelvin above the water that comes in. [W/K]</summary>
    public double Drain_W_K(double clock_s)
    {
        double flow_kg_s = 0;
        for (int i = 0; i < Node.Draws.Count; i++)
        {
            if (Node.Draws[i].Window.Contains(clock_s)) flow_kg_s += Node.Draws[i].Flow_kg_s;
        }

        return flow_kg_s * Water.SpecificHeat_J_kgK;
    }

    /// <summary>Its shortest time constant towards its surroundings. [s]</summary>
    public double TimeConstant_s
    {
        get
        {
            double flow_W_K = 0;
            foreach (WaterDraw draw in Node.Draws) flow_W_K = Math.Max(flow_W_K, draw.Flow_kg_s * Water.SpecificHeat_J_kgK);
            double conductance_W_K = Node.Inside_W_K + Node.Outside_W_K + Node.Bay_W_K + flow_W_K;
            return conductance_W_K <= 0 ? double.PositiveInfinity : Math.Min(Node.Capacity_J_K, _frozenCapacity_J_K) / conductance_W_K;
        }
    }
}
