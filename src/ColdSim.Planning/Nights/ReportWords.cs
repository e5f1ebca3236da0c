using ColdSim.Model.Engine;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Nights;

/// <summary>The words for how nights and runs end.</summary>
internal static class ReportWords
{
    public static WordTable<Verdict> Verdicts { get; } = new WordTable<Verdict>()
        .With(Verdict.Holds, "holds")
        .With(Verdict.GasShort, "gas short", "short")
        .With(Verdict.GasGone, "gas gone", "gone")
        .With(Verdict.BatteryFlat, "battery flat", "flat")
        .With(Verdict.FurnaceStopped, "furnace stopped", "stopped")
        .With(Verdict.FurnaceTooSmall, "furnace too small", "small")
        .With(Verdict.WaterFreezes, "water freezes", "freezes");

    /// <summary>Why a run ended.</summary>
    public static WordTable<RunEnd> Ends { get; } = new WordTable<RunEnd>()
        .With(RunEnd.Complete, "complete")
        .With(RunEnd.WeatherEnded, "weather_ended")
        .With(RunEnd.LiquidFull, "liquid_full")
        .With(RunEnd.ReliefPressure, "relief_pressure");
}
