namespace ColdSim.Planning.Explain;

/// <summary>What can stand between a cylinder and the gas that is asked of it.</summary>
public enum Limit
{
    /// <summary>Too little heat comes into the liquid.</summary>
    HeatIntoLiquid,

    /// <summary>Too little liquid stands against the wall.</summary>
    LittleLiquid,

    /// <summary>Regulator or connection pass too little.</summary>
    Regulator,

    /// <summary>Several appliances ask at once.</summary>
    Appliances,

    /// <summary>The air's pressure at this height.</summary>
    Altitude,

    /// <summary>There is too little propane, until none is left.</summary>
    LiquidGone,
}
