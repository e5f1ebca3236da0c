using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Logs;

namespace ColdSim.Planning.Forecasts;

/// <summary>What a rig's cylinders hold at the latest reading of a log, and which one is in use, which is put first.</summary>
internal sealed record StartContents
{
    private const double Least_kg = 0.02;

    private StartContents()
    {
    }

    /// <summary>The scenario, the cylinder in use first.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>Each cylinder's latest reading, in the order of <see cref="Scenario"/>; null where there is none.</summary>
    public required IReadOnlyList<LogRow?> Latest { get; init; }

    /// <summary>What each holds. [kg]</summary>
    public required double[] Held_kg { get; init; }

    /// <summary>Standard uncertainty of that; 0 for a cylinder that holds what the scenario says. [kg]</summary>
    public required double[] Uncertainty_kg { get; init; }

    /// <summary>How that is known.</summary>
    public required StartedBy[] By { get; init; }

    /// <summary>Probability that the first one is in use; null where all feed together, for one, and where the readings do not say it.</summary>
    public double? InUse_frac { get; init; }

    /// <summary>At the latest reading of a log.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="log">Its log, with at least one row.</param>
    /// <param name="cancel">Stops the run through the log.</param>
    public static StartContents Of(Scenario scenario, UseLog log, CancellationToken cancel)
    {
        FeedHistory? feeds = LogFeeds.Of(scenario, log, cancel);
        bool isOneInUse = feeds is { Together: false };
        int first = isOneInUse ? feeds!.InUse : 0;
        int[] order = Order(scenario, first);
        LogRow?[] latest = [.. order.Select(log.LatestOf)];
        StartedBy[] by = [.. latest.Select(row => ByOf(row, log.Rows[^1], feeds is not null))];
        CylinderSpecification[] cylinders = [.. order.Select(i => scenario.Rig.Cylinders[i])];
        return new()
        {
            Scenario = InUseFirst(scenario, first),
            Latest = latest,
            By = by,
            Held_kg = [.. by.Select((b, i) => b switch
            {
                StartedBy.WorkedOut => Math.Max(Least_kg, feeds!.Held_kg[^1][order[i]]),
                StartedBy.Scenario => cylinders[i].Contents_kg,
                _ => Math.Max(Least_kg, latest[i]!.Contents.Mass_kg),
            })],
            Uncertainty_kg = [.. by.Select((b, i) => b switch
            {
                StartedBy.WorkedOut => feeds!.Uncertainty_kg[order[i]],
                StartedBy.Scenario => 0,
                _ => latest[i]!.Contents.Uncertainty_kg,
            })],
            InUse_frac = isOneInUse ? feeds!.InUse_frac[first] : null,
        };
    }

    /// <summary>The same scenario with the cylinder at a place first, as the one in use; each keeps its name.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="first">The place, from 0.</param>
    public static Scenario InUseFirst(Scenario scenario, int first)
    {
        if (first == 0)
            return scenario;
        int[] order = Order(scenario, first);
        Rig Turned(Rig rig) => rig with { Cylinders = [.. order.Select(i => rig.Cylinders[i] with { Label = scenario.Rig.NameOf(i) })] };
        return scenario.WithPlacesIn(order) with
        {
            Rig = Turned(scenario.Rig),
            Fit = scenario.Fit is { } fit ? fit with { Before = Turned(fit.Before) } : null,
        };
    }

    /// <summary>Each of several cylinders for a report; none for one.</summary>
    /// <param name="contents_kg">What each holds when the run starts. [kg]</param>
    public IReadOnlyList<StartedCylinder> Started(IReadOnlyList<double> contents_kg) => Latest.Count == 1 ? []
        :
        [
            .. contents_kg.Select((kg, i) => new StartedCylinder(
                Scenario.Rig.NameOf(i), kg, Uncertainty_kg[i], By[i], Latest[i]?.Reading.Time.ToOffset(Scenario.Start.Offset))),
        ];

    // The others follow in the order in which they are used.
    private static int[] Order(Scenario scenario, int first)
        => [.. Enumerable.Range(0, scenario.Rig.Cylinders.Count).Select(i => (first + i) % scenario.Rig.Cylinders.Count)];

    private static StartedBy ByOf(LogRow? row, LogRow newest, bool workedOut)
        => row is not null && newest.Reading.Time - row.Reading.Time <= ForecastStart.SameTime ? StartedBy.Read
            : workedOut ? StartedBy.WorkedOut
            : row is null ? StartedBy.Scenario : StartedBy.Earlier;
}
