using ColdSim.Planning.Harms;

namespace ColdSim.App.Text;

/// <summary>A verdict in a few words, the same in every sentence.</summary>
internal static class VerdictWords
{
    /// <summary>A clause, such as "gas runs short".</summary>
    public static string Clause(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "it holds",
        Verdict.GasShort => "gas runs short",
        Verdict.GasGone => "the gas runs out",
        Verdict.BatteryFlat => "the battery goes flat",
        Verdict.FurnaceStopped => "the furnace stops",
        Verdict.FurnaceTooSmall => "the furnace is too small",
        Verdict.WaterFreezes => "water freezes",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, null),
    };

    /// <summary>What a failure is like while it lasts, such as "gas is short".</summary>
    public static string State(Verdict verdict) => verdict switch
    {
        Verdict.BatteryFlat => "the battery is flat",
        Verdict.GasGone => "the gas is out",
        Verdict.FurnaceStopped => "the furnace is out",
        Verdict.FurnaceTooSmall => "the furnace is too small",
        Verdict.WaterFreezes => "water freezes",
        _ => "gas is short",
    };

    /// <summary>The same in two or three words.</summary>
    public static string Short(Verdict verdict) => verdict switch
    {
        Verdict.BatteryFlat => "battery flat",
        Verdict.GasGone => "gas out",
        Verdict.FurnaceStopped => "furnace out",
        Verdict.FurnaceTooSmall => "furnace small",
        Verdict.WaterFreezes => "water freezes",
        _ => "gas short",
    };

    /// <summary>A heading, such as "GAS SHORT from 03:19"; the clock time goes at its end.</summary>
    public static string Heading(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "HOLDS",
        Verdict.GasShort => "GAS SHORT from",
        Verdict.GasGone => "GAS GONE at",
        Verdict.BatteryFlat => "BATTERY FLAT at",
        Verdict.FurnaceStopped => "FURNACE STOPPED at",
        Verdict.FurnaceTooSmall => "FURNACE TOO SMALL from",
        Verdict.WaterFreezes => "WATER FREEZES at",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, null),
    };
}
