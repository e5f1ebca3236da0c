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
        Temperature(night.OutsideLow, units),
        night.InsideLow is { } inside ? Temperature(inside, units) : "-",
        UnitStyle.Number(night.BurnerTime.Hours, 1),
        Mass(night.GasUsed, units),
        GasHeat(night.GasHeat, units),
        night.LeftAtDawn is { } left ? Mass(left, units) : "-",
        UnitStyle.Number(units.PressureIn(night.CylinderPressureLow.Pascals), units.IsUs ? 1 : 0),
        Temperature(night.LiquidLow, units),
        night.FirstShort is { } first ? ClockText.Clock(first) : "-",
        night.FirstShort is null ? "-" : ClockText.SpanShort(night.ShortTime),
        night.DryAt is { } dry ? ClockText.Clock(dry) : "-",
    ];

    private static string Temperature(Temperature t, UnitStyle units)
        => UnitStyle.Number(units.TemperatureIn(t.Kelvins), units.IsUs ? 0 : 1);

    private static string Mass(Mass m, UnitStyle units) => UnitStyle.Number(units.MassIn(m.Kilograms), units.IsUs ? 1 : 2);

    private static string GasHeat(Energy e, UnitStyle units) => units.Energy(e.Joules).Split(' ')[0];
}
