using ColdSim.Model.Cylinder;
using ColdSim.Model.Electrical;
using ColdSim.Planning.Actions;

namespace ColdSim.App.Screens.Tries;

/// <summary>An action as settings of what can be turned.</summary>
internal static class RemedySettings
{
    private const double Changeover = 1, Together = 2;

    /// <summary>The settings with an action; null where it is none of what can be turned here.</summary>
    /// <param name="action">The action.</param>
    /// <param name="state">What is tried already.</param>
    public static TrySettings? Of(PlannedAction action, TryState state)
    {
        TrySettings? settings = state.Now;
        foreach (ActionChange change in action.Changes)
            settings = settings is null ? null : With(settings, change, state);
        return settings;
    }

    private static TrySettings? With(TrySettings settings, ActionChange change, TryState state)
    {
        TryPlace place = state.Bench.Place(settings, state.Night, state.Units);
        switch (change.Kind)
        {
            case ActionKind.NightSetPoint:
                return settings.With("night", change.Amount);
            case ActionKind.DaySetPoint:
                return settings.With("day", change.Amount);
            case ActionKind.TopUp:
                CylinderPlan plan = new(place);
                return settings.With("fill", Math.Min(plan.AllLegal_kg, (settings["fill"] ?? plan.AllUntouched_kg) + change.Amount * plan.Count));
            case ActionKind.Blanket:
                return settings.With("blanket", change.Amount);
            case ActionKind.SecondChangeover:
                return settings.With("number", 2).With("joined", Changeover);
            case ActionKind.SecondOpen:
                return settings.With("number", 2).With("joined", Together);
            case ActionKind.BothOpen:
                return settings.With("joined", Together);
            case ActionKind.Battery:
                return settings.With("battery", change.Amount / NominalVoltage.AmpereHour_J);
            case ActionKind.Size:
                IReadOnlyList<StandardSize> sizes = CylinderPlan.Sizes(place.Scenario);
                int at = sizes.ToList().FindIndex(s => s.Name == change.Name);
                return at < 0 ? null : settings.With("size", at);
            case ActionKind.ApplianceOff:
                int appliance = place.Scenario.Rig.Appliances.ToList().FindIndex(a => a.Name == change.Name);
                return appliance < 0 ? null : settings.With(BurnerAdjustments.Of(place.Scenario).ElementAt(appliance).Id, 0);
            default:
                return null;
        }
    }
}
