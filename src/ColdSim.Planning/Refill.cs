namespace ColdSim.Planning;

/// <summary>How gas comes into a cylinder's place.</summary>
public enum RefillKind
{
    /// <summary>The cylinder is filled.</summary>
    Fill,

    /// <summary>The cylinder is left at the station in exchange for another of its size.</summary>
    Exchange,
}

/// <summary>A planned filling or exchange.</summary>
public sealed record Refill
{
    /// <summary>When it is planned.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Place of the cylinder, from 0.</summary>
    public required int Cylinder { get; init; }

    /// <summary>Whether the cylinder is filled or exchanged.</summary>
    public RefillKind Kind { get; init; }

    /// <summary>The station's name, for the report.</summary>
    public string Station { get; init; } = "";

    /// <summary>The requested mass; null for as much as the limit lets in. [kg]</summary>
    public double? Asked_kg { get; init; }

    /// <summary>Where a filling stops.</summary>
    public FillLimit Limit { get; init; } = FillLimit.Volume;

    /// <summary>How warm the station's liquid is; null takes the outside air's temperature. [K]</summary>
    public double? Supply_K { get; init; }

    /// <summary>What comes in the exchange cylinder. [kg]</summary>
    public double ExchangeFill_kg { get; init; }

    /// <summary>What it costs; null where nothing is said.</summary>
    public Price? Price { get; init; }

    /// <summary>When the station is closed.</summary>
    public ClosedDays Closed { get; init; } = ClosedDays.None;

    /// <summary>The day, by the clock that <see cref="At"/> is written in.</summary>
    public DateOnly Day => DateOnly.FromDateTime(At.DateTime);
}

/// <summary>The days on which a station sells nothing.</summary>
public sealed record ClosedDays
{
    /// <summary>Open every day.</summary>
    public static ClosedDays None { get; } = new();

    /// <summary>Days of the week on which it is always closed.</summary>
    public IReadOnlyList<DayOfWeek> Weekly { get; init; } = [];

    /// <summary>Single dates on which it is closed.</summary>
    public IReadOnlyList<DateOnly> Days { get; init; } = [];

    /// <summary>Whether a day is one of them.</summary>
    /// <param name="day">The day, by the run's clock.</param>
    public bool Has(DateOnly day) => Weekly.Contains(day.DayOfWeek) || Days.Contains(day);
}

/// <summary>Where a filling stops.</summary>
public enum FillLimit
{
    /// <summary>At 80 % liquid by volume, as a stop valve or an outage gauge measures it.</summary>
    Volume,

    /// <summary>A scale shows the legal weight: 42 % of the water capacity unless the plate says otherwise.</summary>
    Weight,
}
