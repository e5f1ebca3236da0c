using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Cell = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Capacity.CapacityCell>;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Capacity.CapacityTable>;

namespace ColdSim.Planning.Capacity;

/// <summary>What is reported of capacities.</summary>
internal static class CapacityFigures
{
    /// <summary>The words for times.</summary>
    public static WordTable<CapacityTimeKind> Times { get; } = new WordTable<CapacityTimeKind>()
        .With(CapacityTimeKind.Span, "span")
        .With(CapacityTimeKind.Night, "night")
        .With(CapacityTimeKind.WithoutEnd, "without_end");

    /// <summary>The words for what ends a draw.</summary>
    public static WordTable<CapacityEnd> Ends { get; } = new WordTable<CapacityEnd>()
        .With(CapacityEnd.TooCold, "too_cold")
        .With(CapacityEnd.Emptied, "emptied")
        .With(CapacityEnd.Regulator, "regulator");

    /// <summary>A cell.</summary>
    public static IReadOnlyList<Cell> Cells { get; } =
    [
        Cell.Word("time", c => c.Time.Kind, Times, "what the capacity is for"),
        Cell.Quantity("time_s", c => SiQuantity.Duration(c.Time.Time_s), DurationUnit.Second, "how long that is; null without end", canBeAbsent: true),
        Cell.Quantity("air_c", c => SiQuantity.Temperature(c.Low_K), TemperatureUnit.DegreeCelsius, "air all that time; of a night its low"),
        Cell.Quantity("fill", c => SiQuantity.Ratio(c.Fill_frac), RatioUnit.DecimalFraction, "part of the legal filling at the beginning; without end, all the time"),
        Cell.Quantity("contents_kg", c => SiQuantity.Mass(c.Contents_kg), MassUnit.Kilogram, "the same as a mass"),
        Cell.Quantity("capacity_w", c => SiQuantity.Power(c.Draw_W), PowerUnit.Watt, "the greatest constant draw that is fed in full for that time, as gross heat; 0 where none is"),
        Cell.Quantity("capacity_above_minimum_inlet_w", c => SiQuantity.Power(c.AboveMinimumInlet_W), PowerUnit.Watt, "the same if the regulator gives nothing below its minimum inlet"),
        Cell.Word("ends", c => c.End, Ends, "what would fail a little more"),
        Cell.Quantity("liquid_at_end_c", c => SiQuantity.Temperature(c.Liquid_K), TemperatureUnit.DegreeCelsius, "liquid at the end", canBeAbsent: true),
        Cell.Quantity("left_at_end_kg", c => SiQuantity.Mass(c.Left_kg), MassUnit.Kilogram, "gas left at the end", canBeAbsent: true),
    ];

    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Text("cylinder", t => t.Question.Cylinder.Name, "the size"),
        Document.Quantity("legal_fill_kg", t => SiQuantity.Mass(t.Question.Cylinder.LegalFill_kg), MassUnit.Kilogram, "its legal filling"),
        Document.Number("wind_m_s", t => t.Question.Air.Wind_m_s, "wind at mast height"),
        Document.Number("tolerance", _ => LastingDraw.Tolerance_frac, "a draw greater by this part is not fed for the time"),
        Document.Quantity("minimum_inlet_kpa_gauge", t => SiQuantity.Pressure(t.MinimumInlet_Pa), PressureUnit.Kilopascal, "minimum inlet of its regulator"),
        Document.Rows("capacities", t => t.Cells, Cells, "by time, then by air temperature, then by fill, each in the order asked for"),
        Document.Texts("assumptions", t => t.Question.Assumptions(), "what was assumed"),
    ];
}
