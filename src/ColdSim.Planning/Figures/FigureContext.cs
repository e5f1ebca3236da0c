using System.Globalization;
using ColdSim.Model;

namespace ColdSim.Planning.Figures;

/// <summary>What headings need to know of the scenario whose rows are shown.</summary>
/// <param name="Cylinders">The cylinders' names, in their order.</param>
/// <param name="GasConsumers">Who can take gas, in their order.</param>
/// <param name="Currency">The sign of money.</param>
/// <param name="Dawn">The hour at which what is left is counted, such as "07:00".</param>
/// <param name="HasBattery">Whether there is a 12 V side.</param>
public sealed record FigureContext(
    IReadOnlyList<string> Cylinders, IReadOnlyList<string> GasConsumers, string Currency, string Dawn, bool HasBattery)
{
    /// <summary>For rows that have no scenario.</summary>
    public static FigureContext None { get; } = new([], [], "", "", false);

    /// <summary>Of a scenario.</summary>
    public static FigureContext Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Rig rig = scenario.Rig;
        return new(
            rig.CylinderNames(),
            [.. Enumerable.Range(0, rig.GasPlaces).Where(i => i > 0 || rig.Furnace is not null).Select(rig.GasConsumerOf)],
            scenario.Prices.Currency,
            scenario.Criteria.Dawn.ToString("HH:mm", CultureInfo.InvariantCulture),
            rig.Power is not null);
    }
}
