using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;

namespace ColdSim.Model.Appliances;

/// <summary>A tank of hot water over a burner with a thermostat: draws by the clock, and a standing loss at all times.</summary>
internal sealed record StorageWaterHeater : GasAppliance
{
    /// <summary>Water in the tank. [kg]</summary>
    public required double Water_kg { get; init; }

    /// <summary>Heat to the water per gross heat of gas.</summary>
    public double Efficiency_frac { get; init; } = 0.78;

    /// <summary>Temperature that the thermostat keeps. [K]</summary>
    public double SetPoint_K { get; init; } = 333.15;

    /// <summary>Between its on and off. [K]</summary>
    public double Differential_K { get; init; } = 8;

    /// <summary>Standing loss per kelvin above what is around it. [W/K]</summary>
    public double StandingLoss_W_K { get; init; } = 2;

    /// <summary>Part of the standing loss that stays in the coach; the rest leaves through the outside door of its compartment.</summary>
    public double LossInside_frac { get; init; } = 0.5;

    /// <summary>Hot water drawn.</summary>
    public IReadOnlyList<WaterDraw> Draws { get; init; } = [];

    /// <summary>Water that comes in for it. [K]</summary>
    public double Cold_K { get; init; } = 281.15;

    /// <summary>Water in the tank at the start; null for the set point. [K]</summary>
    public double? Initial_K { get; init; }

    /// <inheritdoc/>
    public override double WarmsNode_frac => Efficiency_frac;

    /// <inheritdoc/>
    public override double ElectricWarmsNode_frac => 1;

    /// <inheritdoc/>
    public override GasAppliance Shut() => this with { IsOff = true, Draws = [] };

    /// <inheritdoc/>
    public override ThermalNode Node => new()
    {
        Name = Name,
        Capacity_J_K = Water_kg * Water.SpecificHeat_J_kgK,
        Inside_W_K = StandingLoss_W_K * LossInside_frac,
        Outside_W_K = StandingLoss_W_K * (1 - LossInside_frac),
        Draws = Draws,
        Cold_K = Cold_K,
        Initial_K = Initial_K ?? SetPoint_K,
    };

    /// <inheritdoc/>
    public override SwitchBand? Thermostat => new(SetPoint_K - 0.5 * Differential_K, SetPoint_K + 0.5 * Differential_K);
}
