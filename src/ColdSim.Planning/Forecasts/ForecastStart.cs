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
/// A reading before the run's start is run on to it, so that the contents there are the simulated ones.
/// What a cylinder holds that was read earlier than the latest reading, or never, is worked out from the readings of the others (<see cref="LogFeeds"/>), and
/// the one in use is put first. On a trip, and where the weather does not reach over the readings, the first is assumed to hold what it held then, and
/// the other what the scenario says. All of it is reported.
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

    /// <summary>What each cylinder holds when the run starts. [kg]</summary>
    public required IReadOnlyList<double> AtStart_kg { get; init; }

    /// <summary>Standard uncertainty of that; 0 for a cylinder that holds what the scenario says. [kg]</summary>
    public required IReadOnlyList<double> Uncertainty_kg { get; init; }

    /// <summary>The latest reading of all.</summary>
    public required LogRow Newest { get; init; }

    /// <summary>Places of the cylinders that were read too long before the latest reading to be of the same time.</summary>
    public IEnumerable<int> Older => Places.Where(i => Latest[i] is { } row && Newest.Reading.Time - row.Reading.Time > SameTime);

    /// <summary>Places of the cylinders that were never read.</summary>
    public IEnumerable<int> Unread => Places.Where(i => Latest[i] is null);

    private IEnumerable<int> Places => Enumerable.Range(0, Latest.Count);

    /// <summary>Moves a scenario to its log's latest reading.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="log">Its log.</param>
    /// <param name="cancel">Stops the run from the reading to a later start.</param>
    /// <returns>Null where no run can start from the latest reading, or cannot be run from it to a later start.</returns>
    public static ForecastStart? Of(Scenario scenario, UseLog log, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        LatestTime time = TimeOf(scenario, log);
        if (time is not (LatestTime.InRun or LatestTime.BeforeStart))
            return null;
        LogRow newest = log.Rows[^1];
        DateTimeOffset at = newest.Reading.Time.ToOffset(scenario.Start.Offset);
        StartContents read = StartContents.Of(scenario, log, cancel);
        scenario = read.Scenario;
        bool before = time == LatestTime.BeforeStart;
        if ((before ? scenario : MovedTo(scenario, at)) is not { } moved
            || (before ? SimulatedTo(scenario, at, read, cancel) : read.Held_kg) is not { } contents_kg)
            return null;
        LogStart from = new(newest.Reading.Line, at, contents_kg.Sum(), before, !before && moved.Start != at)
        {
            Cylinders = read.Started(contents_kg),
            InUse = read.InUse_frac is null ? null : scenario.Rig.NameOf(0),
            InUse_frac = read.InUse_frac ?? 0,
        };
        ForecastStart start = new()
        {
            Scenario = moved with { StartedFrom = from },
            Newest = newest,
            Latest = read.Latest,
            AtStart_kg = contents_kg,
            Uncertainty_kg = read.Uncertainty_kg,
        };
        return start with { Scenario = start.With(moved.Rig, _ => 0) };
    }

    /// <summary>Another scenario of the same nights, such as an option's, from the same reading.</summary>
    /// <param name="option">The scenario, as it is written.</param>
    /// <param name="own">Places in the file of the cylinders that keep the contents that it gives them.</param>
    public Scenario Applied(Scenario option, IReadOnlyList<int> own)
    {
        ArgumentNullException.ThrowIfNull(option);
        ArgumentNullException.ThrowIfNull(own);
        if (option.Rig.Cylinders.Count == Scenario.Rig.Cylinders.Count && option.FilePlaceOf(0) != Scenario.FilePlaceOf(0))
            option = StartContents.InUseFirst(option, Enumerable.Range(0, option.Rig.Cylinders.Count).First(i => option.FilePlaceOf(i) == Scenario.FilePlaceOf(0)));
        Scenario moved = Scenario.StartedFrom is { Simulated: true } ? option : MovedTo(option, Scenario.StartedFrom!.Read) ?? option;
        CylinderSpecification[] cylinders = [.. moved.Rig.Cylinders];
        for (int i = 0; i < cylinders.Length; i++)
        {
            if (!own.Contains(option.FilePlaceOf(i)) && PlaceOf(option.FilePlaceOf(i)) is { } here)
                cylinders[i] = cylinders[i] with { Contents_kg = Scenario.Rig.Cylinders[here].Contents_kg };
        }

        return moved with { StartedFrom = Scenario.StartedFrom, Rig = moved.Rig with { Cylinders = cylinders } };
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
            Cylinders = [.. rig.Cylinders.Select((c, i) => c with
            {
                Contents_kg = Uncertainty_kg[i] == 0 ? AtStart_kg[i] : Math.Max(Least_kg, AtStart_kg[i] + off(i) * Uncertainty_kg[i]),
            })],
        },
    };

    // What is left of the readings at a later start; null where the run between them does not reach it.
    private static double[]? SimulatedTo(Scenario scenario, DateTimeOffset at, StartContents read, CancellationToken cancel)
    {
        LogReplay replay = new(scenario);
        double[] contents_kg = [.. read.Held_kg];
        for (int i = 0; i < contents_kg.Length; i++)
        {
            if (read.Uncertainty_kg[i] > 0)
                replay.Set(i, contents_kg[i]);
        }

        if (replay.Run(at, scenario.Start, cancel).Used_kg is not { } used_kg)
            return null;
        for (int i = 0; i < contents_kg.Length; i++)
            contents_kg[i] = Math.Max(read.Uncertainty_kg[i] > 0 ? Least_kg : 0, contents_kg[i] - used_kg[i]);
        return contents_kg;
    }

    private static Scenario? MovedTo(Scenario scenario, DateTimeOffset at)
        => (scenario.Legs.Count > 0 ? OnTrip(scenario, at) : InPlace(scenario, at)) is not { } moved ? null
            : moved.HeatStops < moved.Start ? moved with { HeatStops = moved.Start } : moved;

    private int? PlaceOf(int filePlace)
    {
        for (int i = 0; i < Scenario.Rig.Cylinders.Count; i++)
        {
            if (Scenario.FilePlaceOf(i) == filePlace)
                return i;
        }

        return null;
    }

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
