using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>The nights, a row each, within 80 columns.</summary>
internal static class NightTable
{
    public static IReadOnlyList<string> Lines(RunReport report, UnitStyle units)
        => TextTable.Lines(Columns(report, units), [.. report.Nights.Select(n => Row(n, units))]);

    private static TextColumn[] Columns(RunReport report, UnitStyle units) =>
    [
        new(["Night"], Left: true),
        new(["Out", "low", units.TemperatureUnit]),
        new(["In", "low", units.TemperatureUnit]),
        new(["Burner", "lit", "h"]),
        new(["Gas", "used", units.MassUnit]),
        new(["Gas", "used", units.EnergyUnit]),
        new(["Left", report.Scenario.Criteria.Dawn.ToString("HH:mm", null), units.MassUnit]),
        new(["Cyl.", "low", units.PressureUnit]),
        new(["Liq.", "low", units.TemperatureUnit]),
        new(["Short", "first", "at"]),
        new(["Short", "in all", "h:mm"]),
        new(["Dry", "at"]),
    ];

    private static string[] Row(NightReport night, UnitStyle units) =>
    [
        ClockText.NightShort(night),
        units.TemperatureNumber(night.OutsideLow.Kelvins),
        night.InsideLow is { } inside ? units.TemperatureNumber(inside.Kelvins) : "-",
        UnitStyle.Number(night.BurnerTime.Hours, 1),
        units.MassNumber(night.GasUsed.Kilograms),
        GasHeat(night.GasHeat, units),
        night.LeftAtDawn is { } left ? units.MassNumber(left.Kilograms) : "-",
        UnitStyle.Number(units.PressureIn(night.CylinderPressureLow.Pascals), units.IsUs ? 1 : 0),
        units.TemperatureNumber(night.LiquidLow.Kelvins),
        night.FirstShort is { } first ? ClockText.Clock(first) : "-",
        night.FirstShort is null ? "-" : ClockText.SpanShort(night.ShortTime),
        night.DryAt is { } dry ? ClockText.Clock(dry) : "-",
    ];



    private static string GasHeat(Energy e, UnitStyle units) => units.Energy(e.Joules).Split(' ')[0];
}
