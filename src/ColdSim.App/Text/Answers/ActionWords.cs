using System.Globalization;
using ColdSim.Model;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Electrical;
using ColdSim.Planning;
using ColdSim.Planning.Actions;
using UnitsNet;

namespace ColdSim.App.Text.Answers;

/// <summary>An action in words: what is done, and how the run goes with it.</summary>
internal static class ActionWords
{
    /// <summary>What is done and how it goes, one line such as "Thermostat at 52 °F at night (now 59 °F): holds, 3 lb left, 52 °F inside."</summary>
    public static string Line(PlannedAction action, Scenario scenario, UnitStyle units)
        => $"{What(action, scenario, units)}: {(action.Holds ? Holds(action, units) : Fails(action))}.";

    /// <summary>What is done.</summary>
    public static string What(PlannedAction action, Scenario scenario, UnitStyle units)
    {
        string first = Change(action.Changes[0], scenario.Rig, units);
        return action.Changes.Count == 1 ? Upper(first) : $"{Upper(first)}, and {Change(action.Changes[1], scenario.Rig, units)}";
    }

    private static string Holds(PlannedAction action, UnitStyle units)
    {
        string inside = double.IsFinite(action.InsideLow_K) ? $", {units.WholeTemperature(action.InsideLow_K)} inside" : "";
        string ground = action.IsOnGround && action.Changes.Any(c => c.Kind == ActionKind.Size) ? "; set it on the ground" : "";
        return $"holds{Electricity(action)}, {units.RoundMass(action.LeftAtEnd_kg)} left{inside}{ground}";
    }

    private static string Fails(PlannedAction action)
    {
        if (action.StoppedByCylinder || action.FailsAt is not { } at)
            return "does not hold, a cylinder gets too full or too hot";
        string length = action.FailsBy is Planning.Harms.Verdict.GasShort && action.Harm.ShortMinutes >= 1
            ? $" for {ClockText.Span(Duration.FromMinutes(action.Harm.ShortMinutes))}" : "";
        return $"does not hold, {VerdictWords.Short(action.FailsBy)} {ClockText.ShortDayClock(at)}{length}";
    }

    private static string Electricity(PlannedAction action)
    {
        if (action.Changes.All(c => c.Kind != ActionKind.Blanket))
            return "";
        string taken = $"{(Math.Round(action.Blanket_J / 3600 / 10) * 10).ToString("#,0", CultureInfo.InvariantCulture)} Wh";
        return action.NeedsShorePower ? $", {taken}, which needs shore power"
            : action.Scenario.Rig.Cylinders.Any(c => c.Blanket?.Supply == BlanketSupply.Battery) ? $", {taken} from the battery" : $", {taken} from shore power";
    }

    private static string Change(ActionChange change, Rig rig, UnitStyle units) => change.Kind switch
    {
        ActionKind.WindowCovers => "window covers up by day too",
        ActionKind.CylinderFirst => $"use the {Cylinder(change.Name!)} first",
        ActionKind.BothOpen => rig.Cylinders.Count == 2 ? "open both cylinders" : "open all cylinders",
        ActionKind.PanelsClear => "sweep the snow off the solar panels",
        ActionKind.ApplianceOff or ActionKind.LoadOff => $"{change.Name} off",
        ActionKind.GeneratorOff => "generator off",
        ActionKind.GeneratorAnyHour => "generator at any hour",
        ActionKind.OtherHeater => $"{change.Name} on at all hours",
        ActionKind.NightSetPoint => $"thermostat at {units.Temperature(change.Amount)} at night (now {units.TemperatureNumber(change.Now!.Value)})",
        ActionKind.DaySetPoint => $"thermostat at {units.Temperature(change.Amount)} by day (now {units.TemperatureNumber(change.Now!.Value)})",
        ActionKind.TopUp => TopUp(change, rig, units),
        ActionKind.Blanket => $"listed {Watts(change.Amount)} blanket on {(rig.Cylinders.Count == 1 ? "the cylinder" : "each cylinder")}",
        ActionKind.PurePropane => "propane in place of the blend, as much by weight",
        ActionKind.SecondChangeover => $"second full {rig.Cylinders[0].Name} cylinder on a changeover",
        ActionKind.SecondOpen => $"second full {rig.Cylinders[0].Name} cylinder, both open",
        ActionKind.Size => rig.Cylinders.Count == 1 ? $"full {change.Name} cylinder instead" : $"full {change.Name} cylinders instead of these",
        ActionKind.ShorePower => "shore power",
        ActionKind.MorePanels => $"{Watts(change.Amount)} more of solar panels, clear of snow",
        ActionKind.Battery => $"battery of {AmpereHours(change.Amount)} in place of {AmpereHours(change.Now!.Value)}",
        ActionKind.Generator => $"generator of {Watts(change.Amount)} outside, on the same cylinders",
        ActionKind.Regulator => $"regulator for {units.Power(change.Amount)}, fitted by a technician",
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, null),
    };

    private static string Cylinder(string name) => name.EndsWith("cylinder", StringComparison.OrdinalIgnoreCase) ? name : $"{name} cylinder";

    private static string TopUp(ActionChange change, Rig rig, UnitStyle units)
    {
        string more = $"{UnitStyle.Number(units.MassIn(change.Amount), units.IsUs ? 0 : 1)} {units.MassUnit}";
        if (rig.Cylinders.Count > 1)
            return change.IsFurthest ? "fill up every cylinder" : $"top up each cylinder by {more}";
        CylinderSpecification cylinder = rig.Cylinders[0];
        return change.IsFurthest ? $"fill up to the legal {units.RoundMass(cylinder.LegalFill_kg)}"
            : $"top up by {more}, to {units.RoundMass(cylinder.Contents_kg + change.Amount)}";
    }

    private static string Upper(string text) => char.ToUpper(text[0], CultureInfo.InvariantCulture) + text[1..];

    private static string Watts(double value_W) => $"{UnitStyle.Number(value_W, 0)} W";

    private static string AmpereHours(double value_J) => $"{UnitStyle.Number(value_J / NominalVoltage.AmpereHour_J, 0)} Ah";
}
