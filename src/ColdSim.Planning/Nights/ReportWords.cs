using ColdSim.Model.Engine;
using ColdSim.Planning.Figures;

namespace ColdSim.Planning.Nights;

/// <summary>The words for how nights and runs end.</summary>
public static class ReportWords
{
    /// <summary>Verdicts.</summary>
    public static WordTable<Verdict> Verdicts { get; } = new(
        (Verdict.Holds, "holds", null),
        (Verdict.RunsShort, "runs_short", "short"),
        (Verdict.RunsFlat, "runs_flat", "flat"),
        (Verdict.RunsDry, "runs_dry", "dry"));

    /// <summary>What ran out first.</summary>
    public static WordTable<FirstOut> FirstOuts { get; } = new(
        (FirstOut.Nothing, "nothing", "-"),
        (FirstOut.GasSupply, "gas_supply", "supply"),
        (FirstOut.Gas, "gas", null),
        (FirstOut.Battery, "battery", null));

    /// <summary>Why a run ended.</summary>
    public static WordTable<RunEnd> Ends { get; } = new(
        (RunEnd.Complete, "complete", null),
        (RunEnd.WeatherEnded, "weather_ended", null),
        (RunEnd.LiquidFull, "liquid_full", null),
        (RunEnd.ReliefPressure, "relief_pressure", null));
}
