using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Planning;

namespace ColdSim.App.Screens.Tries;

/// <summary>Everything that can be turned, in the order of the list.</summary>
internal static class AdjustmentList
{
    /// <summary>The adjustments of a scenario.</summary>
    public static IReadOnlyList<Adjustment> Of(Scenario scenario)
        => [.. WeatherAdjustments.Of(), .. HeatAdjustments.Of(), .. CylinderAdjustments.Of(), .. PowerAdjustments.Of(), .. BurnerAdjustments.Of(scenario)];

    /// <summary>The keys of all that is tried.</summary>
    public static IReadOnlyList<KeyChange> Changes(IReadOnlyList<Adjustment> all, TryPlace place)
        => place.Settings.IsNone ? [] :
        [
            .. all.Where(a => place.Settings[a.Id] is not null).SelectMany(a => a.Changes(place.Settings[a.Id]!.Value, place)),
            .. new CylinderPlan(place).Changes(),
        ];

    /// <summary>What is tried in a few words, such as "cylinders 2, battery 200 Ah".</summary>
    public static string Words(IReadOnlyList<Adjustment> all, TryPlace place)
        => string.Join(", ", all.Where(a => place.Settings[a.Id] is not null).Select(a => $"{a.Name} {a.Shown(place)}"));
}
