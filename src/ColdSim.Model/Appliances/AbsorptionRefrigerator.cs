using ColdSim.Model.Nodes;

namespace ColdSim.Model.Appliances;

/// <summary>An absorption refrigerator: a cold box whose leak the burner carries away, so that its duty follows the coach's warmth.</summary>
/// <remarks>
/// Burner's heat and what it lifts out of the box leave behind the wall, outside. Defaults give a duty of about a third in 15 °C and
/// nine tenths in 35 °C, as the trade's figures from memory have it; docs/model.md.
/// </remarks>
internal sealed record AbsorptionRefrigerator : GasAppliance
{
    /// <summary>Heat lifted out of the box per heat of the burner.</summary>
    public double Performance_frac { get; init; } = 0.2;

    /// <summary>Leak of the box from the coach's air. [W/K]</summary>
    public double Leak_W_K { get; init; } = 2.6;

    /// <summary>Heat capacity of box and food. [J/K]</summary>
    public double Capacity_J_K { get; init; } = 60e3;

    /// <summary>Temperature that its thermostat keeps. [K]</summary>
    public double SetPoint_K { get; init; } = 277.15;

    /// <summary>Between its on and off. [K]</summary>
    public double Differential_K { get; init; } = 2;

    /// <inheritdoc/>
    public override double WarmsNode_frac => -Performance_frac;

    /// <inheritdoc/>
    public override ThermalNode Node => new()
    {
        Name = Name,
        Capacity_J_K = Capacity_J_K,
        Inside_W_K = Leak_W_K,
        Initial_K = SetPoint_K,
    };

    /// <inheritdoc/>
    public override SwitchBand? Thermostat => new(SetPoint_K + 0.5 * Differential_K, SetPoint_K - 0.5 * Differential_K);
}
