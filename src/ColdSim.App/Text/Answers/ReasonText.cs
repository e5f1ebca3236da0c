using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>Why a run fails, in a sentence or two that a neighbour would say.</summary>
internal static class ReasonText
{
    /// <summary>The reason; empty where the verdict itself says it.</summary>
    public static string Of(Explanation why, UnitStyle units)
    {
        ChainOfCause chain = why.Chain;
        if (why.Failed is { Verdict: Verdict.BatteryFlat, Power: { } power })
            return Battery(power);
        if (why.Failed?.Verdict == Verdict.FurnaceTooSmall)
            return "the furnace burns without a pause and gets all its gas, and the coach still loses more heat than it gives.";
        return why.Limit?.Binds is { } limit ? Limited(limit, chain, units) : "";
    }

    private static string Battery(NightPower power)
    {
        double given_Wh = power.Solar.WattHours + power.Shore.WattHours + power.Generator.WattHours;
        return $"the furnace's fan and the other 12 V loads took {UnitStyle.Number(power.DrawnInAll.WattHours, 0)} Wh, "
            + $"and solar, shore and generator gave {UnitStyle.Number(given_Wh, 0)} Wh.";
    }

    private static string Limited(Limit limit, ChainOfCause chain, UnitStyle units) => limit switch
    {
        Limit.LittleLiquid => $"the cylinder is too empty for this cold: {Share(chain)} of its wall touches liquid, so it cannot take in heat as fast "
            + $"as the burners need. {Cold(chain, units)}",
        Limit.HeatIntoLiquid => $"gas boils off faster than the cold air can warm the liquid. {Cold(chain, units)}",
        Limit.Regulator => $"the regulator or its connection passes too little: {Could(chain, units)}.",
        Limit.Appliances => $"too many appliances burn at once: {Could(chain, units)}.",
        Limit.Altitude => $"the thin air at this height leaves the cylinder or the regulator too little: {Could(chain, units)}.",
        _ => chain.HasLiquid ? $"there is too little gas in the cylinder to keep itself warm. {Cold(chain, units)}" : "the gas is used up.",
    };

    private static string Cold(ChainOfCause chain, UnitStyle units)
        => $"Its liquid is at {units.WholeTemperature(chain.LiquidTo_K)} and makes {units.Pressure(chain.Pressure_Pa)}.";

    private static string Could(ChainOfCause chain, UnitStyle units)
        => $"{units.Power(chain.CanGive_W)} of the {units.Power(chain.Asked_W)} asked for";

    private static string Share(ChainOfCause chain)
    {
        double percent = 100 * chain.WettedWall_m2 / chain.WholeWall_m2;
        return percent < 1 ? "hardly any" : $"only {UnitStyle.Number(percent, 0)} %";
    }
}
