using ColdSim.Physics.Mixtures;
using ColdSim.Planning.Figures;
using UnitsNet.Units;
using Appliance = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.ApplianceGas>;
using Blend = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.BlendReport>;
using Draw = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.NightDraw>;
using Night = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.NightReport>;
using Part = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.GasParts>;
using PowerSide = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.NightPower>;
using Water = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Nights.WaterReport>;

namespace ColdSim.Planning.Nights;

/// <summary>What is reported of a night.</summary>
internal static class NightFigures
{
    /// <summary>Who took what gas.</summary>
    public static IReadOnlyList<Appliance> Appliances { get; } =
    [
        Appliance.Text("name", a => a.Name, "who").InTable(ReportTable.Appliances, "Appliance", left: true),
        Appliance.Quantity("gas_kg", a => a.Gas, MassUnit.Kilogram, "gas it took").InTable(ReportTable.Appliances, "Gas|{unit}", Display.FineMass),
        Appliance.Quantity("share", a => a.Share, RatioUnit.DecimalFraction, "as a part of what all took").InTable(ReportTable.Appliances, "Share", Display.PercentSign),
    ];

    /// <summary>How one body of water, or a bay, fared.</summary>
    public static IReadOnlyList<Water> WaterPlaces { get; } =
    [
        Water.Text("name", w => w.Name, "which").InTable(ReportTable.Water, "Where", left: true),
        Water.Flag("holds_water", w => w.HoldsWater, "false for a bay"),
        Water.Flag("heated", w => w.Heated, "whether it is inside, or where a duct brings heat"),
        Water.Quantity("lowest_c", w => w.Lowest, TemperatureUnit.DegreeCelsius, "its lowest temperature").InTable(ReportTable.Water, "Lowest|{unit}"),
        Water.Quantity("most_ice", w => w.MostIce, RatioUnit.DecimalFraction, "the largest part of its water that was ice")
            .InTable(ReportTable.Water, "Most ice", Display.PercentSign, value: w => w.HoldsWater ? w.MostIce : null),
        Water.Time("freezes_at", w => w.FreezesAt, "when its water first began to freeze", canBeAbsent: true)
            .InTable(ReportTable.Water, "Begins|to freeze", Display.DayClock),
        Water.Time("solid_at", w => w.SolidAt, "when it was first ice through and through", canBeAbsent: true)
            .InTable(ReportTable.Water, "All ice", Display.DayClock),
    ];

    /// <summary>What a gas is made of, parts by mass.</summary>
    public static IReadOnlyList<Part> GasParts { get; } =
    [
        Part.Number("propane", p => p.Masses.Propane, "propane"),
        Part.Number("n_butane", p => p.Masses.NormalButane, "n-butane"),
        Part.Number("isobutane", p => p.Masses.Isobutane, "isobutane"),
    ];

    /// <summary>What became of a mixed gas in one cylinder.</summary>
    public static IReadOnlyList<Blend> Blends { get; } =
    [
        Blend.Group("start", b => new GasParts(b.AtStart), GasParts, "what it was made of at the first instant counted, parts by mass")
            .InTable(ReportTable.Blends, "Propane|first|%", value: b => Percent(b.AtStart.Propane)),
        Blend.Group("end", b => new GasParts(b.AtEnd), GasParts, "what it was made of at the last instant counted, parts by mass")
            .InTable(ReportTable.Blends, "Propane|last|%", value: b => Percent(b.AtEnd.Propane))
            .InTable(ReportTable.Blends, "n-butane|last|%", value: b => Percent(b.AtEnd.NormalButane))
            .InTable(ReportTable.Blends, "Isobutane|last|%", value: b => Percent(b.AtEnd.Isobutane)),
        Blend.Quantity("left_kg", b => b.Left, MassUnit.Kilogram, "gas left in it at the last instant counted").InTable(ReportTable.Blends, "Left|last|{unit}", order: 2),
        Blend.Quantity("pressure_at_end_kpa_gauge", b => b.PressureAtEnd, PressureUnit.Kilopascal, "its own pressure then")
            .InTable(ReportTable.Blends, "Pressure|last|{unit}", order: 1),
        Blend.Quantity("left_behind_kg", b => b.LeftBehind, MassUnit.Kilogram, "liquid that would stay in it at the night's coldest air: what is left when its pressure no longer feeds every appliance in full; null where the regulator never does", canBeAbsent: true)
            .InTable(ReportTable.Blends, "Stays|behind|{unit}", order: 3),
        Blend.Quantity("left_behind_at_c", b => b.LeftBehindAt, TemperatureUnit.DegreeCelsius, "that air").InTable(ReportTable.Blends, "at|air|{unit}", order: 4),
    ];

    /// <summary>What one consumer drew from the 12 V side.</summary>
    public static IReadOnlyList<Draw> Draws { get; } =
    [
        Draw.Text("name", d => d.Name, "who"),
        Draw.Quantity("energy_wh", d => d.Energy, EnergyUnit.WattHour, "how much"),
    ];

    /// <summary>The 12 V side.</summary>
    public static IReadOnlyList<PowerSide> Power { get; } =
    [
        PowerSide.Rows("drawn", p => p.Drawn, Draws, "who drew from it: the furnace's fan, the blankets, the loads")
            .InTable(ReportTable.Power, "Fan|Wh", Display.WattHours, value: p => p.Drawn[0].Energy)
            .InTable(ReportTable.Power, "Blan-|kets|Wh", Display.WattHours, value: p => p.Drawn[1].Energy)
            .InTable(ReportTable.Power, "Other|loads|Wh", Display.WattHours, value: p => UnitsNet.Energy.FromJoules(p.Drawn.Skip(2).Sum(d => d.Energy.Joules))),
        PowerSide.Quantity("solar_wh", p => p.Solar, EnergyUnit.WattHour, "what the panels gave").InTable(ReportTable.Power, "Solar|Wh", Display.WattHours),
        PowerSide.Quantity("shore_wh", p => p.Shore, EnergyUnit.WattHour, "what shore power gave").InTable(ReportTable.Power, "Shore|Wh", Display.WattHours),
        PowerSide.Quantity("generator_wh", p => p.Generator, EnergyUnit.WattHour, "what the generator gave").InTable(ReportTable.Power, "Gene-|rator|Wh", Display.WattHours),
        PowerSide.Quantity("generator_time_s", p => p.GeneratorTime, DurationUnit.Second, "how long it ran"),
        PowerSide.Quantity("charge_low_frac", p => p.ChargeLow, RatioUnit.DecimalFraction, "lowest charge, of the capacity")
            .InTable(ReportTable.Power, "Charge|low|%")
            .InCsv(CsvTable.Trip, "charge low", 1, RatioUnit.Percent, shown: c => c.HasBattery, order: 9),
        PowerSide.Time("charge_low_at", p => p.ChargeLowAt, "when that was").InTable(ReportTable.Power, "Charge|low|at"),
        PowerSide.Quantity("charge_at_end_frac", p => p.ChargeAtEnd, RatioUnit.DecimalFraction, "charge at the last instant counted").InTable(ReportTable.Power, "Charge|end|%"),
        PowerSide.Time("flat_at", p => p.FlatAt, "when voltage was first gone", canBeAbsent: true).InTable(ReportTable.Power, "Flat|at"),
        PowerSide.Quantity("left_at_flat_kg", p => p.GasLeftAtFlat, MassUnit.Kilogram, "gas left in the cylinders then", canBeAbsent: true),
        PowerSide.Quantity("voltage_gone_s", p => p.VoltageGone, DurationUnit.Second, "how long it was gone in all")
            .InCsv(CsvTable.Trip, "voltage gone", 1, DurationUnit.Minute, shown: c => c.HasBattery, order: 8),
        PowerSide.Quantity("too_cold_to_charge_s", p => p.TooCold, DurationUnit.Second, "how long the bank was too cold to be charged"),
        PowerSide.Time("frozen_at", p => p.FrozenAt, "when acid in a lead-acid bank first froze", canBeAbsent: true),
        PowerSide.Quantity("charge_at_frozen_frac", p => p.ChargeAtFrozen, RatioUnit.DecimalFraction, "its charge then, of the capacity", canBeAbsent: true),
        PowerSide.Quantity("frozen_time_s", p => p.FrozenTime, DurationUnit.Second, "how long it was frozen in all"),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Night> All { get; } =
    [
        Night.Count("number", n => n.Number, "1 for the first")
            .InTable(ReportTable.Nights, "Night", left: true, value: n => n.Evening, order: -2)
            .AlsoIn(ReportTable.NightsOnScreen)
            .AlsoIn(ReportTable.EachCylinder)
            .AlsoIn(ReportTable.Shortages)
            .AlsoIn(ReportTable.Power)
            .AlsoIn(ReportTable.Trip)
            .AlsoIn(ReportTable.TripPage),
        Night.Time("from", n => n.From, "first instant counted").InCsv(CsvTable.Trip, "night from", order: -3),
        Night.Time("to", n => n.To, "last instant counted").InCsv(CsvTable.Trip, "night to", order: -3),
        Night.Word("verdict", n => n.Verdict, ReportWords.Verdicts, "whether it holds, and the cause that came first where it does not")
            .InTable(ReportTable.Trip, "", left: true, order: 2)
            .AlsoIn(ReportTable.TripPage)
            .InCsv(CsvTable.Trip, "verdict", order: -1),
        Night.Time("first_failure", n => n.FirstFailure, "when that cause began; null where the night holds", canBeAbsent: true).InCsv(CsvTable.Trip, "first failure", order: 100),
        Night.Quantity("freezing_time_s", n => n.FreezingTime, DurationUnit.Second, "time with frozen water in a declared pipe or tank, or with inside below freezing")
            .InCsv(CsvTable.Trip, "freezing", 2, DurationUnit.Hour, order: 100),
        Night.Quantity("lowest_c", n => n.Lowest, TemperatureUnit.DegreeCelsius, "lowest temperature of inside and of declared water; null where there is neither", canBeAbsent: true)
            .InCsv(CsvTable.Trip, "lowest of water and inside", 2, order: 100),
        Night.Flag("inside_for_water", n => n.InsideForWater, "whether inside is used in place of water, because no pipe or tank is declared"),
        Night.Quantity("no_heat_time_s", n => n.NoHeatTime, DurationUnit.Second, "time in which the thermostat called and the furnace gave no heat, its own starts left out")
            .InCsv(CsvTable.Trip, "no heat", 2, DurationUnit.Hour, order: 100),
        Night.Number("cold_kelvin_hours", n => n.ColdKelvinHours, "inside below the set point beyond the thermostat's own swing, kelvin times hours")
            .InCsv(CsvTable.Trip, "cold kelvin-hours", 1, order: 100),
        Night.Quantity("outside_low_c", n => n.OutsideLow, TemperatureUnit.DegreeCelsius, "lowest outside air")
            .InTable(ReportTable.Nights, "Out|low|{unit}")
            .AlsoIn(ReportTable.NightsOnScreen)
            .AlsoIn(ReportTable.Trip)
            .AlsoIn(ReportTable.TripPage)
            .InCsv(CsvTable.Trip, "outside low", 2),
        Night.Quantity("inside_low_c", n => n.InsideLow, TemperatureUnit.DegreeCelsius, "lowest inside air", canBeAbsent: true)
            .InTable(ReportTable.Nights, "In|low|{unit}")
            .AlsoIn(ReportTable.NightsOnScreen)
            .AlsoIn(ReportTable.Trip)
            .AlsoIn(ReportTable.TripPage)
            .InCsv(CsvTable.Trip, "inside low", 2),
        Night.Time("inside_low_at", n => n.InsideLowAt, "when that was", canBeAbsent: true)
            .InTable(ReportTable.Nights, "In|low|at")
            .InCsv(CsvTable.Trip, "inside low at", order: 99),
        Night.Quantity("burner_time_s", n => n.BurnerTime, DurationUnit.Second, "time with the furnace lit").InTable(ReportTable.Nights, "Lit|h", Display.Hours)
            .AlsoIn(ReportTable.NightsOnScreen),
        Night.Count("burner_starts", n => n.BurnerStarts, "times it lit"),
        Night.Quantity("gas_used_kg", n => n.GasUsed, MassUnit.Kilogram, "gas drawn")
            .InTable(ReportTable.Nights, "Gas|used|{unit}")
            .AlsoIn(ReportTable.NightsOnScreen)
            .AlsoIn(ReportTable.Trip)
            .AlsoIn(ReportTable.TripPage)
            .InCsv(CsvTable.Trip, "gas used", 3),
        Night.Quantity("gas_heat_mj", n => n.GasHeat, EnergyUnit.Megajoule, "the same as heat").InTable(ReportTable.Nights, "Gas|used|{unit}"),
        Night.Rows("gas_by_appliance", n => n.GasByAppliance, Appliances, "who drew what gas in the night")
            .InCsv(CsvTable.Trip, "{name} gas", 3, MassUnit.Kilogram, n => n.GasByAppliance.Select(a => (object?)a.Gas).ToArray(), c => c.GasConsumers, c => c.GasConsumers.Count > 1, order: 6),
        Night.Quantity("left_at_dawn_kg", n => n.LeftAtDawn, MassUnit.Kilogram, "propane left at dawn; null where the run does not reach it", canBeAbsent: true).InTable(ReportTable.Nights, "Left|{dawn}|{unit}")
            .AlsoIn(ReportTable.NightsOnScreen),
        Night.Quantity("left_at_end_kg", n => n.LeftAtEnd, MassUnit.Kilogram, "propane left at the last instant counted"),
        Night.Quantities("each_left_at_dawn_kg", n => n.EachLeftAtDawn.Cast<UnitsNet.IQuantity>(), MassUnit.Kilogram, "the same in each cylinder, in their order; empty where the run does not reach it")
            .InTable(ReportTable.EachCylinder, "{name}|left|{unit}", value: n => n.EachLeft.Select(m => (object?)m).ToArray(), names: c => c.Cylinders)
            .AlsoIn(ReportTable.Trip)
            .AlsoIn(ReportTable.TripPage)
            .InCsv(CsvTable.Trip, "{name} left at dawn", 3, names: c => c.Cylinders, order: 5),
        Night.Quantities("each_left_at_end_kg", n => n.EachLeftAtEnd.Cast<UnitsNet.IQuantity>(), MassUnit.Kilogram, "propane left in each cylinder at the last instant counted"),
        Night.Count("cylinder_changes", n => n.CylinderChanges, "walks outside to change cylinders")
            .InTable(ReportTable.EachCylinder, "Walks")
            .InTable(ReportTable.Trip, "Chan-|ges", value: Changes, order: 3)
            .InCsv(CsvTable.Trip, "changes", value: Changes, order: 2),
        Night.Count("reserve_starts", n => n.ReserveStarts, "times that a changeover's reserve side began to feed").InTable(ReportTable.EachCylinder, "Reserve|starts"),
        Night.Quantity("blanket_energy_wh", n => n.BlanketEnergy, EnergyUnit.WattHour, "electricity that the blankets took")
            .InTable(ReportTable.EachCylinder, "Blankets|Wh", Display.WattHours)
            .InTable(ReportTable.Trip, "Blan-|kets|Wh", Display.WattHours, order: 4)
            .InCsv(CsvTable.Trip, "blankets", 1, order: 3),
        Night.Quantity("other_heat_wh", n => n.OtherHeat, EnergyUnit.WattHour, "heat of the `[[heater]]` tables, of whatever fuel"),
        Night.Quantity("cylinder_temperature_max_c", n => n.HottestCylinder, TemperatureUnit.DegreeCelsius, "hottest place of any cylinder: liquid, or the wall above it under a blanket")
            .InTable(ReportTable.EachCylinder, "Hottest|{unit}"),
        Night.Time("cylinder_hot_at", n => n.CylinderHotAt, "when a cylinder first passed 125 °F (52 °C)", canBeAbsent: true),
        Night.Count("hot_cylinder", n => n.HotCylinder + 1, "which cylinder that was, from 1", canBeAbsent: true),
        Night.Quantity("pressure_min_kpa_gauge", n => n.CylinderPressureLow, PressureUnit.Kilopascal, "lowest cylinder pressure").InTable(ReportTable.Nights, "Cyl.|low|{unit}"),
        Night.Quantity("liquid_temperature_min_c", n => n.LiquidLow, TemperatureUnit.DegreeCelsius, "lowest temperature of liquid and shell")
            .InTable(ReportTable.Nights, "Liq.|low|{unit}"),
        Night.Quantity("delivery_pressure_min_kpa_gauge", n => n.DeliveryPressureLow, PressureUnit.Kilopascal, "lowest delivery pressure while gas was asked for", canBeAbsent: true),
        Night.Time("first_short", n => n.FirstShort, "first undersupply, however short", canBeAbsent: true).InTable(ReportTable.Nights, "Short|first|at"),
        Night.Quantity("short_time_s", n => n.ShortTime, DurationUnit.Second, "undersupply in all")
            .InTable(ReportTable.Nights, "Short|for|{unit}", Display.HoursMinutes, value: n => n.FirstShort is null ? null : n.ShortTime)
            .InTable(ReportTable.Shortages, "Short|in all|{unit}", Display.HoursMinutes)
            .InCsv(CsvTable.Trip, "short", 1, DurationUnit.Minute, order: 101),
        Night.Quantity("no_flame_time_s", n => n.NoFlameTime, DurationUnit.Second, "of it, no flame and no gas to light one")
            .InTable(ReportTable.Shortages, "No|flame|{unit}", Display.HoursMinutes)
            .InCsv(CsvTable.Trip, "no flame", 1, DurationUnit.Minute, order: 101),
        Night.Quantity("weak_flame_time_s", n => n.WeakFlameTime, DurationUnit.Second, "of it, a flame that gets less than it needs")
            .InTable(ReportTable.Shortages, "Weak|flame|{unit}", Display.HoursMinutes)
            .InCsv(CsvTable.Trip, "weak flame", 1, DurationUnit.Minute, order: 101),
        Night.Quantity("locked_out_with_gas_time_s", n => n.LockedOutTime, DurationUnit.Second, "of it, the furnace waits in a lockout although there is gas again to light it")
            .InTable(ReportTable.Shortages, "Locked out,|gas there|{unit}", Display.HoursMinutes)
            .InCsv(CsvTable.Trip, "locked out with gas", 1, DurationUnit.Minute, order: 101),
        Night.Quantity("below_minimum_inlet_s", n => n.BelowMinimumInlet, DurationUnit.Second, "time that gas flowed with less before the regulator than its `minimum_inlet`, of which its plate promises nothing"),
        Night.Text("first_to_starve", n => n.FirstToStarve, "of the appliances that were short of gas, the one whose flame needs the highest pressure", canBeAbsent: true),
        Night.Quantity("left_at_first_short_kg", n => n.LeftAtFirstShort, MassUnit.Kilogram, "propane left at that first undersupply", canBeAbsent: true),
        Night.Quantity("liquid_at_first_short_c", n => n.LiquidAtFirstShort, TemperatureUnit.DegreeCelsius, "liquid and shell of the feeding cylinder then", canBeAbsent: true),
        Night.Quantity("pressure_at_first_short_kpa_gauge", n => n.CylinderPressureAtFirstShort, PressureUnit.Kilopascal, "pressure before the regulator then", canBeAbsent: true),
        Night.Time("first_lockout_at", n => n.FirstLockout, "when the furnace first locked out", canBeAbsent: true),
        Night.Count("lockouts", n => n.Lockouts, "times the furnace locked out"),
        Night.Time("liquid_gone_at", n => n.LiquidGoneAt, "when the last liquid of a cylinder first boiled off", canBeAbsent: true),
        Night.Time("dry_at", n => n.DryAt, "when it was dry", canBeAbsent: true).InTable(ReportTable.Nights, "Dry|at"),
        Night.Quantity("below_set_point_k", n => n.BelowSetPoint, TemperatureDeltaUnit.Kelvin, "deepest fall below the set point for lack of gas"),
        Night.Time("freezing_at", n => n.FreezingAt, "when inside first fell to freezing", canBeAbsent: true),
        Night.Flag("water_alert", n => n.WaterAlert, "whether outside was at about 20 °F (-6.7 °C) or less with water where nothing heats it; an alert, not a finding"),
        Night.Rows("water", n => n.Water, WaterPlaces, "the rig's bays, pipes and tanks"),
        Night.Quantity("steady_supply_at_low_w", n => n.SteadySupplyAtLow, PowerUnit.Watt, "at the coldest hour, what the cylinder could give without end if weather and fill stayed"),
        Night.Quantity("allowed_liquid_temperature_c", n => n.AllowedLiquid, TemperatureUnit.DegreeCelsius, "the liquid temperature which what is given without end allows; null where the regulator never passes what all appliances ask together", canBeAbsent: true),
        Night.Quantity("demand_at_low_w", n => n.DemandAtLow, PowerUnit.Watt, "what was asked for, mean of that hour"),
        Night.Rows("blends", n => n.Blends, Blends, "what became of a mixed gas, cylinder by cylinder; empty for propane alone"),
        Night.Quantity("damp_time_s", n => n.DampTime, DurationUnit.Second, "how long damp settled on the coach's coldest surface"),
        Night.Group("power", n => n.Power, Power, "the 12 V side; null without a battery", canBeAbsent: true),
    ];

    private static object? Changes(NightReport night) => night.CylinderChanges + night.ReserveStarts;

    private static UnitsNet.Ratio Percent(double part) => UnitsNet.Ratio.FromDecimalFractions(part);
}

/// <summary>The parts of a gas as a row of figures.</summary>
/// <param name="Masses">Its parts by mass.</param>
internal sealed record GasParts(GasMasses Masses);
