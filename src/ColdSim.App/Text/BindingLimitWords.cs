using ColdSim.Planning.Explain;

namespace ColdSim.App.Text;

/// <summary>What the limits are called.</summary>
internal static class BindingLimitWords
{
    /// <summary>As the subject of a row.</summary>
    public static string Name(Limit limit) => limit switch
    {
        Limit.HeatIntoLiquid => "heat into the liquid",
        Limit.LittleLiquid => "liquid against the wall",
        Limit.Regulator => "regulator and connection",
        Limit.Appliances => "largest other appliance",
        Limit.Altitude => "altitude (air pressure)",
        Limit.LiquidGone => "propane to burn",
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, null),
    };

    /// <summary>As the reason in a sentence, after "because".</summary>
    public static string Reason(Limit limit, ChainOfCause chain) => limit switch
    {
        Limit.HeatIntoLiquid => "too little heat comes into the liquid",
        Limit.LittleLiquid => "too little liquid stands against the cylinder's wall to take heat through it",
        Limit.Regulator => "regulator or connection pass too little",
        Limit.Appliances => "several appliances ask at once",
        Limit.Altitude => "the air's pressure at this altitude leaves the cylinder or the regulator too little",
        Limit.LiquidGone => chain.HasLiquid ? "the gas that is left is too little to stay warm enough" : "there is too little gas: the liquid is gone",
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, null),
    };
}
