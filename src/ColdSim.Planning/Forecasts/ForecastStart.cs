using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Trips;

namespace ColdSim.Planning.Forecasts;

/// <summary>When the latest reading of a log was made, beside the weather and the run.</summary>
public enum LatestTime
{
    /// <summary>There is no reading.</summary>
    None,

    /// <summary>Before the weather begins.</summary>
    BeforeWeather,

    /// <summary>Within the weather, and before the run starts.</summary>
    BeforeStart,

    /// <summary>At the start of the run or after it, where a run can start from it.</summary>
    InRun,

    /// <summary>When the weather has ended, or on a trip its last stop.</summary>
    AfterEnd,
}

/// <summary>A scenario moved to its log's latest reading.</summary>
/// <remarks>
/// A cylinder that was read earlier than the latest reading is assumed to hold what it held then: it was shut, or somebody would have read it.
/// One that was never read holds what the scenario says. Both are reported.
/// </remarks>
public sealed record ForecastStart
{
    private const double Least_kg = 0.02;

    /// <summary>Earlier readings of another cylinder that still count as of the same time.</summary>
    public static readonly TimeSpan SameTime = TimeSpan.FromHours(1);

    /// <summary>The scenario, moved.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>Each cylinder's latest reading; null where there is none.</summary>
    public required IReadOnlyList<LogRow?> Latest { get; init; }

    /// <summary>The latest reading of all.</summary>
    public required LogRow Newest { get; init; }

    /// <summary>Places of the cylinders that were read too long before the latest reading to be of the same time.</summary>
    public IEnumerable<int> Older => Places.Where(i => Latest[i] is { } row && Newest.Reading.Time - row.Reading.Time > SameTime);

    /// <summary>Places of the cylinders that were never read.</summary>
    public IEnumerable<int> Unread => Places.Where(i => Latest[i] is null);

    private IEnumerable<int> Places => Enumerable.Range(0, Latest.Count);

    /// <summary>Moves a scenario to its log's latest reading.</summary>
    /// <returns>Null where the latest reading is not <see cref="LatestTime.InRun"/>.</returns>
    public static ForecastStart? Of(Scenario scenario, UseLog log)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        if (TimeOf(scenario, log) != LatestTime.InRun)
            return null;
        LogRow newest = log.Rows[^1];
        DateTimeOffset at = newest.Reading.Time.ToOffset(scenario.Start.Offset);
        if ((scenario.Legs.Count > 0 ? OnTrip(scenario, at) : InPlace(scenario, at)) is not { } moved)
            return null;
        ForecastStart start = new()
        {
            Scenario = moved,
            Newest = newest,
            Latest = [.. Enumerable.Range(0, scenario.Rig.Cylinders.Count).Select(log.LatestOf)],
        };
        return start with { Scenario = start.With(moved.Rig, _ => 0) };
    }

    /// <summary>When the latest reading was made.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="log">Its log.</param>
    public static LatestTime TimeOf(Scenario scenario, UseLog log)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        if (log.Rows.Count == 0)
            return LatestTime.None;
        DateTimeOffset at = log.Rows[^1].Reading.Time;
        if (at >= scenario.Start)
            return at >= EndOf(scenario) ? LatestTime.AfterEnd : LatestTime.InRun;
        return at < scenario.Weather.First ? LatestTime.BeforeWeather : LatestTime.BeforeStart;
    }

    /// <summary>From when on no run can start: the weather's end, or the end of a trip's last stop.</summary>
    /// <param name="scenario">The scenario.</param>
    public static DateTimeOffset EndOf(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return scenario.Trip is { } trip ? trip.Stops[^1].To : scenario.Weather.Last;
    }

    /// <summary>The scenario with other contents and another rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="off">How far each cylinder's contents are off its reading, in standard uncertainties.</param>
    internal Scenario With(Rig rig, Func<int, double> off) => Scenario with
    {
        Rig = rig with
        {
            Cylinders = [.. rig.Cylinders.Select((c, i) => Latest[i] is not { } row ? c
                : c with { Contents_kg = Math.Max(Least_kg, row.Contents.Mass_kg + off(i) * row.Contents.Uncertainty_kg) })],
        },
    };

    // A scenario that says how many nights keeps its last one.
    private static Scenario InPlace(Scenario scenario, DateTimeOffset at) => scenario with
    {
        Start = at,
        Nights = scenario.Nights is { } nights ? Math.Max(1, nights - (int)(at - scenario.Start).TotalDays) : null,
    };

    // On the road nothing burns, so a reading made there still holds at the next stop's first hour.
    private static Scenario? OnTrip(Scenario scenario, DateTimeOffset at)
    {
        if (scenario.Trip is not { } trip)
            return null;
        TripStop[] stops = [.. trip.Stops.Where(s => s.To > at)];
        if (stops.Length == 0)
            return null;
        DateTimeOffset start = stops[0].From > at ? stops[0].From : at;
        stops[0] = stops[0] with { From = start };
        Trip left = trip with { Stops = stops, Refills = [.. trip.Refills.Where(r => r.At >= start)] };
        IReadOnlyList<CylinderSpecification> cylinders = scenario.Rig.Cylinders;
        return scenario with
        {
            Start = start.ToOffset(scenario.Start.Offset),
            Weather = stops[0].Weather,
            Rig = scenario.Rig with { Site = stops[0].Site },
            Trip = left,
            Legs = TripLegs.Of(left, cylinders),
        };
    }
}
