using ColdSim.Model.Engine;
using ColdSim.Planning.Figures;

namespace ColdSim.Planning.Nights;

/// <summary>The words for how nights and runs end.</summary>
public static class ReportWords
{
    public static WordTable<Verdict> Verdicts { get; } = new WordTable<Verdict>()
        .With(Verdict.Holds, "holds")
        .With(Verdict.RunsShort, "runs_short", "short")
        .With(Verdict.RunsFlat, "runs_flat", "flat")
        .With(Verdict.RunsDry, "runs_dry", "dry");

    /// <summary>What ran out first.</summary>
    public static WordTable<FirstOut> FirstOuts { get; } = new WordTable<FirstOut>()
        .With(FirstOut.Nothing, "nothing", "-")
        .With(FirstOut.GasSupply, "gas_supply", "supply")
        .With(FirstOut.Gas, "gas")
        .With(FirstOut.Battery, "battery");

    /// <summary>Why a run ended.</summary>
    public static WordTable<RunEnd> Ends { get; } = new WordTable<RunEnd>()
        .With(RunEnd.Complete, "complete")
        .With(RunEnd.WeatherEnded, "weather_ended")
        .With(RunEnd.LiquidFull, "liquid_full")
        .With(RunEnd.ReliefPressure, "relief_pressure");
}
