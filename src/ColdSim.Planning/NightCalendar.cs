namespace ColdSim.Planning;

/// <summary>Where the nights of a run begin and end, in seconds since its start.</summary>
/// <remarks>
/// A night runs from noon to noon, the first from the start, so that every hour of a run belongs to exactly one. The first of a run
/// that starts between dawn and noon reaches to the next day's noon.
/// </remarks>
internal sealed class NightCalendar
{
    private const double Day_s = 86_400;
    private const double HalfDay_s = 43_200;

    private readonly DateTimeOffset _start;
    private readonly double _firstEnd_s;

    public NightCalendar(Scenario scenario)
    {
        _start = scenario.Start;
        double clock_s = scenario.Start.TimeOfDay.TotalSeconds;
        double wait_s = (NightCriteria.NightBoundary.ToTimeSpan().TotalSeconds - clock_s + Day_s) % Day_s;

        // A start between dawn and noon belongs to the coming night; there is no night left to run before noon.
        bool afterDawn = clock_s >= scenario.Criteria.Dawn.ToTimeSpan().TotalSeconds && wait_s > 0 && wait_s < HalfDay_s;
        _firstEnd_s = wait_s <= 0 ? Day_s : afterDawn ? wait_s + Day_s : wait_s;
        double weather_s = (scenario.Weather.Last - scenario.Start).TotalSeconds;
        Duration_s = scenario.Legs.Count > 0 ? (scenario.Legs[^1].To - scenario.Start).TotalSeconds
            : scenario.Nights is int nights ? End_s(nights - 1) : WholeNights_s(weather_s);
    }

    /// <summary>Requested length of the run. [s]</summary>
    public double Duration_s { get; }

    /// <summary>When a night begins. [s]</summary>
    public double Begin_s(int night) => night == 0 ? 0 : End_s(night - 1);

    /// <summary>When a night ends. [s]</summary>
    public double End_s(int night) => _firstEnd_s + night * Day_s;

    /// <summary>The calendar day on whose evening a night begins: that of the last noon before its end.</summary>
    public DateOnly Evening(int night) => DateOnly.FromDateTime(_start.AddSeconds(End_s(night) - Day_s).DateTime);

    /// <summary>The night a time belongs to; a boundary belongs to the night that begins there.</summary>
    public int NightOf(double time_s) => time_s < _firstEnd_s ? 0 : 1 + (int)Math.Floor((time_s - _firstEnd_s) / Day_s);

    /// <summary>The clock time's instant within a night. [s]</summary>
    public double ClockIn_s(int night, TimeOnly clock)
        => End_s(night) - HalfDay_s + (clock.ToTimeSpan().TotalSeconds - (clock < NightCriteria.NightBoundary ? 0 : Day_s));

    // All the weather there is, but no afternoon that is cut off before its midnight.
    private double WholeNights_s(double weather_s)
    {
        int last = NightOf(weather_s);
        double begin_s = Begin_s(last);
        return last > 0 && weather_s - begin_s <= HalfDay_s ? begin_s : weather_s;
    }
}
