namespace ColdSim.Planning.Trips;

/// <summary>The days on which a station sells nothing.</summary>
public sealed record ClosedDays
{
    /// <summary>Open every day.</summary>
    public static ClosedDays None { get; } = new();

    /// <summary>Every week.</summary>
    public IReadOnlyList<DayOfWeek> Weekly { get; init; } = [];

    /// <summary>Single days.</summary>
    public IReadOnlyList<DateOnly> Days { get; init; } = [];

    /// <summary>Whether a day is one of them.</summary>
    /// <param name="day">The day, by the run's clock.</param>
    public bool Has(DateOnly day) => Weekly.Contains(day.DayOfWeek) || Days.Contains(day);
}
