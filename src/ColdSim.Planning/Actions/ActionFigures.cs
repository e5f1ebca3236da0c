using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;
using UnitsNet.Units;
using Changed = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Actions.ActionChange>;
using Plan = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Actions.ActionPlan>;
using Planned = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Actions.PlannedAction>;
using Spared = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Actions.SpareMargin>;

namespace ColdSim.Planning.Actions;

/// <summary>What is reported of actions.</summary>
internal static class ActionFigures
{
    /// <summary>The words for actions.</summary>
    public static WordTable<ActionKind> Kinds { get; } = new WordTable<ActionKind>()
        .With(ActionKind.WindowCovers, "window_covers")
        .With(ActionKind.CylinderFirst, "cylinder_first")
        .With(ActionKind.BothOpen, "both_open")
        .With(ActionKind.PanelsClear, "panels_clear")
        .With(ActionKind.ApplianceOff, "appliance_off")
        .With(ActionKind.LoadOff, "load_off")
        .With(ActionKind.GeneratorOff, "generator_off")
        .With(ActionKind.GeneratorAnyHour, "generator_any_hour")
        .With(ActionKind.OtherHeater, "other_heater")
        .With(ActionKind.NightSetPoint, "night_set_point")
        .With(ActionKind.DaySetPoint, "day_set_point")
        .With(ActionKind.TopUp, "top_up")
        .With(ActionKind.Blanket, "blanket")
        .With(ActionKind.PurePropane, "pure_propane")
        .With(ActionKind.SecondChangeover, "second_changeover")
        .With(ActionKind.SecondOpen, "second_open")
        .With(ActionKind.Size, "size")
        .With(ActionKind.ShorePower, "shore_power")
        .With(ActionKind.MorePanels, "more_panels")
        .With(ActionKind.Battery, "battery")
        .With(ActionKind.Generator, "generator")
        .With(ActionKind.Regulator, "regulator");

    private static IReadOnlyList<Changed> Changes { get; } =
    [
        Changed.Word("action", c => c.Kind, Kinds, "which"),
        Changed.Text("name", c => c.Name, "the size, the cylinder, the appliance or the load", canBeAbsent: true),
        Changed.Number("amount", c => InUnit(c.Kind, c.Amount),
            "set points in °C, top up in kg for each cylinder, blanket, panels, generator and regulator in W, battery in Wh at 12 V", canBeAbsent: true),
        Changed.Number("less", c => InUnit(c.Kind, c.Less), "the next smaller change, which does not hold; null where there is none", canBeAbsent: true),
        Changed.Number("now", c => InUnit(c.Kind, c.Now), "as it is, in the unit of `amount`", canBeAbsent: true),
    ];

    private static IReadOnlyList<Planned> Actions { get; } =
    [
        Planned.Rows("changes", a => a.Changes, Changes, "what is changed; two in a pair"),
        Planned.Flag("on_board", a => a.IsOnBoard, "whether it needs only what is on board"),
        Planned.Flag("holds", a => a.Holds, "whether every night of the run holds; the amounts are then the least that do, else the furthest tried"),
        Planned.Word("fails_by", a => a.Holds || a.StoppedByCylinder ? null : a.FailsBy, ReportWords.Verdicts, "what fails the first night that does not hold", canBeAbsent: true),
        Planned.Time("fails_at", a => a.FailsAt, "when that begins", canBeAbsent: true),
        Planned.Flag("stopped_by_cylinder", a => a.StoppedByCylinder, "whether a cylinder ends the run, too full or too hot"),
        Planned.Number("short_min", a => a.StoppedByCylinder ? null : a.Harm.ShortMinutes, "minutes short of gas in all", canBeAbsent: true),
        Planned.Quantity("left_at_end_kg", a => a.StoppedByCylinder ? null : SiQuantity.Mass(a.LeftAtEnd_kg), MassUnit.Kilogram, "gas left at the end of the run", canBeAbsent: true),
        Planned.Quantity("inside_low_c", a => SiQuantity.Temperature(a.InsideLow_K), TemperatureUnit.DegreeCelsius, "the lowest inside", canBeAbsent: true),
        Planned.Quantity("blanket_wh", a => SiQuantity.Energy(a.Blanket_J), EnergyUnit.WattHour, "electricity of blankets over the run", canBeAbsent: true),
        Planned.Flag("needs_shore_power", a => a.NeedsShorePower, "whether that is more than a battery is assumed to give, 600 Wh a night"),
        Planned.Flag("on_ground", a => a.IsOnGround, "whether a cylinder is too large to be carried"),
    ];

    private static IReadOnlyList<Spared> Spares { get; } =
    [
        Spared.Number("colder_k", s => s.Colder_K, "how much colder all the weather may be; null where 30 K hold", canBeAbsent: true),
        Spared.Quantity("less_kg", s => SiQuantity.Mass(s.Less_kg), MassUnit.Kilogram, "how much less gas there may be in all cylinders at the start; null where hardly any holds", canBeAbsent: true),
    ];

    /// <summary>The plan.</summary>
    public static IReadOnlyList<Plan> All { get; } =
    [
        Plan.Rows("singles", p => p.Singles, Actions, "each by itself, the least intrusive first"),
        Plan.Rows("pairs", p => p.Pairs, Actions, "pairs that hold, where no single action does"),
        Plan.Time("leave_before", p => p.LeaveBefore, "by when to leave or to plug in, where nothing holds", canBeAbsent: true),
        Plan.Group("spare", p => p.Spare, Spares, "what a run that holds can still bear, each alone", canBeAbsent: true),
    ];

    private static double? InUnit(ActionKind kind, double? value) => kind switch
    {
        ActionKind.NightSetPoint or ActionKind.DaySetPoint => SiQuantity.Temperature(value)?.As(TemperatureUnit.DegreeCelsius),
        ActionKind.Battery => SiQuantity.Energy(value)?.As(EnergyUnit.WattHour),
        ActionKind.TopUp or ActionKind.Blanket or ActionKind.MorePanels or ActionKind.Generator or ActionKind.Regulator => value,
        _ => null,
    };
}
