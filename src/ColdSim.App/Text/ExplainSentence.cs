using ColdSim.Model.Engine;
using ColdSim.Planning.Explain;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>The first sentence of an explanation: which limit binds, or by how much it holds, or how it stands.</summary>
internal static class ExplainSentence
{
    public static string Of(Explanation explanation, UnitStyle units)
    {
        ChainOfCause chain = explanation.Chain;
        if (explanation.AtTime)
            return $"At {ClockText.DayClock(chain.To)} the cylinder stands at {units.Pressure(chain.Pressure_Pa)} with its liquid at "
                + $"{units.Temperature(chain.LiquidTo_K)}, {Could(chain, units)}{Inside(chain, units)}.";
        if (explanation.Limit is { } limit && explanation.Shortage is { } shortage)
            return $"Gas runs short on {ClockText.DayClock(shortage)}{Because(limit, chain)}";
        if (explanation.Flat is { Power: { FlatAt: { } flat } power })
            return $"It is not the gas that fails first: the battery is flat on {ClockText.DayClock(flat)} and voltage is gone for {ClockText.Span(power.VoltageGone)}; "
                + $"until then the night drew {UnitStyle.Number(power.DrawnInAll.WattHours, 0)} Wh, and solar, shore and generator gave "
                + $"{UnitStyle.Number(power.Solar.WattHours + power.Shore.WattHours + power.Generator.WattHours, 0)} Wh. At that time {Could(chain, units)}."
                + $" {RemedySentence.Of(explanation)}";
        string stopped = explanation.Report.End is RunEnd.LiquidFull or RunEnd.ReliefPressure
            ? ", but the cylinder itself ends the run, too full of liquid or too hot" : "";
        return chain.Asked_W <= 0
            ? $"Nothing is short: nothing asks for gas{stopped}."
            : $"Nothing is short{stopped}: at its tightest, {ClockText.DayClock(chain.To)}, {Could(chain, units)}.";
    }

    private static string Because(BindingLimit limit, ChainOfCause chain)
    {
        string part = $"{UnitStyle.Number(limit.Part_frac * 100, 0)} %";
        if (limit.Binds is not { } binds)
            return $", and no single limit eased by as much as {part} delays it by a minute.";
        LimitSensitivity eased = limit.Eased.First(e => e.Limit == binds);
        string does = eased.GoneAt_frac is { } gone
            ? $" is gone with {UnitStyle.Number(gone * 100, 0)} % of easing it, sooner than with any other limit"
            : $" comes {ClockText.Span(Duration.FromSeconds(eased.Delay_s))} later with {part} of easing it, more than with any other limit";
        string ties = limit.Ties.Count == 0 ? "" : $" but {string.Join(", ", limit.Ties.Select(BindingLimitWords.Name))}, which does as much";
        return $" because {BindingLimitWords.Reason(binds, chain)}: the shortage{does}{ties}.";
    }

    private static string Could(ChainOfCause chain, UnitStyle units)
        => $"the regulator could pass {units.Power(chain.CanGive_W)} and {units.Power(chain.Asked_W)} is asked";

    private static string Inside(ChainOfCause chain, UnitStyle units)
        => double.IsFinite(chain.Inside_K) ? $", inside is {units.Temperature(chain.Inside_K)}" : "";
}
