using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Happened = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.ReportedEvent>;

namespace ColdSim.Planning.Nights;

/// <summary>What is reported of an event.</summary>
internal static class EventFigures
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Happened> All { get; } =
    [
        Happened.Time("time", e => e.Time, "when").InTable(ReportTable.Events, "When", Display.DayClock, left: true, order: -2),
        Happened.Word("kind", e => e.Kind, EventKinds.Words, "what"),
        Happened.Quantity("inside_c", e => SiQuantity.Temperature(e.Inside_K), TemperatureUnit.DegreeCelsius, "inside air at that instant; null without a coach", canBeAbsent: true)
            .InTable(ReportTable.Events, "Inside|{unit}", shown: rows => rows.Any(e => double.IsFinite(e.Inside_K)), order: 1),
        Happened.Quantity("liquid_temperature_c", e => SiQuantity.Temperature(e.Liquid_K), TemperatureUnit.DegreeCelsius, "liquid and shell").InTable(ReportTable.Events, "Liquid|{unit}"),
        Happened.Quantity("pressure_kpa_gauge", e => SiQuantity.Pressure(e.CylinderPressure_Pa), PressureUnit.Kilopascal, "cylinder pressure; null for a filling", canBeAbsent: true)
            .InTable(ReportTable.Events, "Cylinder|{unit}"),
        Happened.Quantity("left_kg", e => SiQuantity.Mass(e.Left_kg), MassUnit.Kilogram, "propane left").InTable(ReportTable.Events, "Left|{unit}"),
        Happened.Count("cylinder", e => e.Cylinder + 1, "which cylinder it happens to, from 1; 1 where it is none's"),
        Happened.Text("node", e => e.Node, "the bay, pipe or tank it happens to; null where it is none's", canBeAbsent: true),
    ];
}
