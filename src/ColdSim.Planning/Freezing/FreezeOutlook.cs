using ColdSim.Planning.Nights;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Freezing;

/// <summary>The same question at several instants of a run: how long is left once the furnace stops.</summary>
/// <param name="Scenario">The scenario that was run.</param>
/// <param name="Stops">One for each instant, in order.</param>
public sealed record FreezeOutlook(Scenario Scenario, IReadOnlyList<CoolDown> Stops)
{
    private const int MostNights = 14;

    // At dusk, late in the evening, in the small hours and at dawn.
    private static readonly TimeSpan[] Clock = [new(18, 0, 0), new(22, 0, 0), new(3, 0, 0), new(7, 0, 0)];

    /// <summary>Instants of a run worth asking about: four a night, of its first two weeks.</summary>
    /// <param name="scenario">The scenario to run.</param>
    public static IReadOnlyList<DateTimeOffset> UsualInstants(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        DateTimeOffset end = scenario.End;
        DateTimeOffset midnight = new(scenario.Start.Date, scenario.Start.Offset);
        DateTimeOffset[] instants = [.. Enumerable.Range(0, MostNights + 1)
            .SelectMany(day => Clock.Order().Select(clock => midnight.AddDays(day) + clock))
            .Where(t => t >= scenario.Start && t < end)];
        return instants.Length > 0 ? instants : [scenario.Start];
    }

    /// <summary>Asks it at every instant, on all processors.</summary>
    /// <param name="scenario">The scenario to run.</param>
    /// <param name="instants">The instants at which the furnace stops.</param>
    /// <param name="cancel">Stops the runs.</param>
    /// <exception cref="TimeOutsideRunException">An instant outside the run.</exception>
    /// <exception cref="LedgerOpenException">The ledger of a run does not close.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static FreezeOutlook Of(Scenario scenario, IReadOnlyList<DateTimeOffset> instants, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(instants);
        return new FreezeOutlook(scenario, ParallelMap.Of(instants.Count, i => CoolDownRun.At(scenario, instants[i], cancel), null, cancel));
    }

    /// <summary>
    /// The instant that leaves the least time until water begins to freeze, or until inside does where there is no water. What freezes with
    /// the furnace on leaves no time at all and counts only where nothing else is left.
    /// </summary>
    public CoolDown? Shortest => Stops.Where(s => Left_s(s) is not null).OrderBy(s => Left_s(s) <= 0).ThenBy(s => Left_s(s)).FirstOrDefault();

    private static double? Left_s(CoolDown stop) => (stop.First?.BeginsAfter ?? (stop.Water.Count == 0 ? stop.FreezingAfter : null))?.Seconds;
}
