using UnitsNet.Units;
using Hour = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Freezing.NextHour>;

namespace ColdSim.Planning.Freezing;

/// <summary>What is reported of the next hour.</summary>
internal static class NextHourFigures
{
    /// <summary>All of it.</summary>
    public static IReadOnlyList<Hour> All { get; } =
    [
        Hour.Time("from", h => h.From, "the present moment, when the run starts"),
        Hour.Time("to", h => h.To, "an hour later, or when the run ends"),
        Hour.Quantity("inside_at_end_c", h => h.InsideAtEnd, TemperatureUnit.DegreeCelsius, "inside air then; null without a coach", canBeAbsent: true),
        Hour.Quantity("inside_low_c", h => h.InsideLow, TemperatureUnit.DegreeCelsius, "the coldest inside until then", canBeAbsent: true),
        Hour.Time("first_short", h => h.FirstShort, "when gas is first too little until then; null where it is not", canBeAbsent: true),
        Hour.Quantity("gas_used_kg", h => h.GasUsed, MassUnit.Kilogram, "gas burnt until then"),
        Hour.Quantity("left_at_end_kg", h => h.LeftAtEnd, MassUnit.Kilogram, "gas left in all cylinders then"),
        Hour.Quantity("inside_if_out_c", h => h.InsideIfOut, TemperatureUnit.DegreeCelsius, "inside air then if the furnace stays out", canBeAbsent: true),
        Hour.Group("if_out", h => h.IfOut, FreezeFigures.Stops, "what follows if the furnace stays out", canBeAbsent: true),
    ];
}
