using ColdSim.Model.Engine;
using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Balance = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.LedgerReport>;
using Summary = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.RunSummary>;

namespace ColdSim.Planning.Nights;

/// <summary>What is reported of a whole run.</summary>
internal static class RunFigures
{
    /// <summary>The run in one row; the same of a run, a trip and an option.</summary>
    public static IReadOnlyList<Summary> Summaries { get; } =
    [
        Summary.Word("verdict", s => s.Verdict, ReportWords.Verdicts, "of the first night that does not hold").InCsv(CsvTable.Compare, "verdict", order: 4),
        Summary.Count("nights", s => s.Nights, "nights counted").InCsv(CsvTable.Compare, "nights", order: 6),
        Summary.Count("nights_held", s => s.NightsHeld, "nights that held")
            .InTable(ReportTable.Compare, "Held", value: s => $"{s.NightsHeld}/{s.Nights}")
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "nights held", order: 7),
        Summary.Time("first_failure", s => s.FirstFailure, "when the cause of that verdict began; null where all nights hold", canBeAbsent: true)
            .InTable(ReportTable.Compare, "Fails|first", Display.DateClock, order: 2)
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "first failure", order: 30),
        Summary.Quantity("freezing_time_s", s => s.FreezingTime, DurationUnit.Second, "time with frozen water in a declared pipe or tank, or with inside below freezing")
            .InTable(ReportTable.Compare, "Freez-|ing|{unit}", Display.HoursMinutes, value: s => s.FreezingTime.Seconds > 0 ? s.FreezingTime : null, order: 3)
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "freezing", 2, DurationUnit.Hour, order: 31),
        Summary.Quantity("lowest_c", s => s.Lowest, TemperatureUnit.DegreeCelsius, "lowest temperature of inside and of declared water; null where there is neither", canBeAbsent: true)
            .InCsv(CsvTable.Compare, "lowest of water and inside", 2, order: 32),
        Summary.Quantity("no_heat_time_s", s => s.NoHeatTime, DurationUnit.Second, "time in which the thermostat called and the furnace gave no heat, its own starts left out")
            .InTable(ReportTable.Compare, "No|heat|{unit}", Display.HoursMinutes, value: s => s.NoHeatTime.Seconds > 0 ? s.NoHeatTime : null, order: 4)
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "no heat", 2, DurationUnit.Hour, order: 33),
        Summary.Number("cold_kelvin_hours", s => s.ColdKelvinHours, "inside below the set point beyond the thermostat's own swing, kelvin times hours")
            .InCsv(CsvTable.Compare, "cold kelvin-hours", 1, order: 34),
        Summary.Time("first_short", s => s.FirstShort, "first undersupply of a night that did not hold", canBeAbsent: true)
            .InCsv(CsvTable.Compare, "first short", order: 8),
        Summary.Quantity("short_time_s", s => s.ShortTime, DurationUnit.Second, "undersupply in all")
            .InTable(ReportTable.Compare, "Short|{unit}", Display.HoursMinutes, value: s => s.ShortTime.Seconds > 0 ? s.ShortTime : null, order: 4)
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "short", 1, DurationUnit.Minute, order: 9),
        Summary.Quantity("no_flame_time_s", s => s.NoFlameTime, DurationUnit.Second, "of it, no flame and no gas to light one")
            .InCsv(CsvTable.Compare, "no flame", 1, DurationUnit.Minute, order: 101),
        Summary.Quantity("weak_flame_time_s", s => s.WeakFlameTime, DurationUnit.Second, "of it, a flame that gets less than it needs")
            .InCsv(CsvTable.Compare, "weak flame", 1, DurationUnit.Minute, order: 101),
        Summary.Quantity("locked_out_with_gas_time_s", s => s.LockedOutTime, DurationUnit.Second, "of it, the furnace waits in a lockout although there is gas again to light it")
            .InCsv(CsvTable.Compare, "locked out with gas", 1, DurationUnit.Minute, order: 101),
        Summary.Time("dry_at", s => s.DryAt, "when the last cylinder was dry", canBeAbsent: true)
            .InCsv(CsvTable.Compare, "dry at", order: 10),
        Summary.Time("flat_at", s => s.FlatAt, "when voltage was first gone in a night that does not hold", canBeAbsent: true).InCsv(CsvTable.Compare, "flat at", order: 20),
        Summary.Quantity("voltage_gone_s", s => s.VoltageGone, DurationUnit.Second, "time without voltage in all")
            .InTable(ReportTable.CompareCosts, "No 12 V|{unit}", Display.HoursMinutes, value: s => s.VoltageGone.Seconds > 0 ? s.VoltageGone : null, shown: HasBattery, order: 6)
            .InCsv(CsvTable.Compare, "voltage gone", 1, DurationUnit.Minute, s => s.ChargeLow is null ? null : s.VoltageGone, order: 21),
        Summary.Quantity("charge_low_frac", s => s.ChargeLow, RatioUnit.DecimalFraction, "lowest charge of the battery, of the capacity; null without a battery", canBeAbsent: true)
            .InTable(ReportTable.CompareCosts, "Charge|low|{unit}", shown: HasBattery, order: 5)
            .InCsv(CsvTable.Compare, "charge low", 1, RatioUnit.Percent, order: 22),
        Summary.Quantity("outside_low_c", s => s.OutsideLow, TemperatureUnit.DegreeCelsius, "lowest outside air"),
        Summary.Quantity("inside_low_c", s => s.InsideLow, TemperatureUnit.DegreeCelsius, "lowest inside air; null without a coach", canBeAbsent: true)
            .InTable(ReportTable.CompareOnScreen, "In low|{unit}", order: 5)
            .InTable(ReportTable.Compare, "In|low|{unit}", order: 5)
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "inside low", 2, order: 11),
        Summary.Time("water_freezes_at", s => s.WaterFreezesAt, "when the first of the rig's water began to freeze", canBeAbsent: true).InCsv(CsvTable.Compare, "water freezes at", order: 23),
        Summary.Quantity("gas_used_kg", s => s.GasUsed, MassUnit.Kilogram, "gas drawn")
            .InTable(ReportTable.CompareOnScreen, "Used|{unit}", order: 6)
            .InTable(ReportTable.Compare, "Gas|used|{unit}", order: 6)
            .AlsoIn(ReportTable.OptionsPage)
            .InTable(ReportTable.CompareCosts, "Gas|used|{unit}")
            .InCsv(CsvTable.Compare, "gas used", 3, order: 12),
        Summary.Quantity("gas_heat_mj", s => s.GasHeat, EnergyUnit.Megajoule, "the same as heat").InCsv(CsvTable.Compare, "gas used", 1, order: 13),
        Summary.Rows("gas_by_appliance", s => s.GasByAppliance, NightFigures.Appliances, "who drew what gas: the furnace, then the other appliances in their order"),
        Summary.Quantity("left_at_start_kg", s => s.LeftAtStart, MassUnit.Kilogram, "propane at the start").InCsv(CsvTable.Compare, "left at start", 3, order: 16),
        Summary.Quantity("left_at_end_kg", s => s.LeftAtEnd, MassUnit.Kilogram, "propane at the end")
            .InTable(ReportTable.CompareOnScreen, "Left|{unit}", order: 7)
            .InTable(ReportTable.Compare, "Left|end|{unit}", order: 7)
            .AlsoIn(ReportTable.OptionsPage)
            .InCsv(CsvTable.Compare, "left at end", 3, order: 17),
        Summary.Count("cylinder_changes", s => s.CylinderChanges, "walks outside to change cylinders")
            .InTable(ReportTable.CompareCosts, "Walks", shown: rows => rows.Any(s => s.CylinderChanges > 0), order: 3)
            .InCsv(CsvTable.Compare, "cylinder changes", order: 14),
        Summary.Quantity("blanket_energy_wh", s => s.BlanketEnergy, EnergyUnit.WattHour, "electricity that the blankets took")
            .InTable(ReportTable.CompareCosts, "Blankets|{unit}", Display.WattHours, shown: rows => rows.Any(s => s.BlanketEnergy.Joules > 0), order: 2)
            .InCsv(CsvTable.Compare, "blanket", 1, order: 15),
    ];

    /// <summary>How well energy and mass close.</summary>
    public static IReadOnlyList<Balance> Ledger { get; } =
    [
        Balance.Flag("closes", l => l.Balance.Closes, "whether all of it is within a millionth of what went through"),
        Balance.Number("energy_residual", l => l.Balance.WorstEnergy_frac, "the worst of the energy residuals, relative", exact: true),
        Balance.Number("mass_residual", l => l.Balance.Mass_frac, "mass, relative", exact: true),
        Balance.Number("cylinder_energy_residual", l => l.Balance.CylinderEnergy_frac, "energy of the cylinders, relative", exact: true),
        Balance.Number("coach_energy_residual", l => l.Balance.CoachEnergy_frac, "energy of the coach, relative", exact: true),
        Balance.Number("fuel_energy_residual", l => l.Balance.FuelEnergy_frac, "heat of the gas, relative", exact: true),
        Balance.Number("cylinder_energy_j", l => l.Balance.CylinderEnergy_J, "energy of the cylinders", exact: true),
        Balance.Number("coach_energy_j", l => l.Balance.CoachEnergy_J, "energy of the coach", exact: true),
        Balance.Number("fuel_energy_j", l => l.Balance.FuelEnergy_J, "heat of the gas", exact: true),
        Balance.Number("mass_kg", l => l.Balance.Mass_kg, "mass", exact: true),
        Balance.Number("electric_energy_residual", l => l.Balance.Electric_frac, "electricity, relative", exact: true),
        Balance.Number("electric_energy_j", l => l.Balance.Electric_J, "electricity", exact: true),
    ];

    private static bool HasBattery(IReadOnlyList<RunSummary> rows) => rows.Any(s => s.ChargeLow is not null);
}

/// <summary>A ledger's balance as a row of figures.</summary>
internal sealed record LedgerReport(LedgerBalance Balance);
