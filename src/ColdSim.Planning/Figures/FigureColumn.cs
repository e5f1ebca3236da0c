namespace ColdSim.Planning.Figures;

/// <summary>A table of text or screen. A figure says in which it has a column.</summary>
public enum ReportTable
{
    /// <summary>The nights of a run.</summary>
    Nights,

    /// <summary>The nights of a run in an answer that fits a terminal.</summary>
    NightsOnScreen,

    /// <summary>What is in each of several cylinders, night by night.</summary>
    EachCylinder,

    /// <summary>The 12 V side, night by night.</summary>
    Power,

    /// <summary>What a shortage of gas was, night by night.</summary>
    Shortages,

    /// <summary>A mixed gas in each cylinder, night by night.</summary>
    Blends,

    /// <summary>Who drew what gas.</summary>
    Appliances,

    /// <summary>Bays, pipes and tanks.</summary>
    Water,

    Events,

    /// <summary>The nights of a trip.</summary>
    Trip,

    /// <summary>The nights of a trip on the screen.</summary>
    TripPage,

    /// <summary>The refills of a trip.</summary>
    Refills,

    /// <summary>The options of a comparison.</summary>
    Compare,

    /// <summary>The options of a comparison in an answer that fits a terminal.</summary>
    CompareOnScreen,

    /// <summary>What the options of a comparison cost and leave.</summary>
    CompareCosts,

    /// <summary>The options of a comparison on the screen.</summary>
    OptionsPage,

    /// <summary>The chance of each night.</summary>
    ChanceNights,

    /// <summary>What moves the chance most.</summary>
    Influences,

    /// <summary>The chance of each option.</summary>
    ChanceOptions,

    /// <summary>Readings of a cylinder, put together.</summary>
    Gauges,

    /// <summary>Where a reading's uncertainty comes from.</summary>
    GaugeErrors,

    /// <summary>What a cylinder shows at other temperatures.</summary>
    Drift,

    /// <summary>What a cylinder's instruments show at an instant of a run.</summary>
    Expected,

    /// <summary>Readings in the log.</summary>
    Log,

    /// <summary>Readings in the log beside what the simulator predicts from the one before.</summary>
    LogPrediction,

    /// <summary>Values measured beside contents, beside what was computed.</summary>
    Measured,

    /// <summary>How long is left once the furnace stops.</summary>
    HeatStops,

    /// <summary>Use by day, beside the simulator.</summary>
    DailyUse,

    /// <summary>What a fit found.</summary>
    Fit,

    /// <summary>Set-ups that can be bought.</summary>
    Purchases,

    /// <summary>Causes of a fault, ranked.</summary>
    Diagnosis,

    /// <summary>What a cylinder should show in each of its states.</summary>
    DiagnosisStates,
}

/// <summary>A CSV file that is written. A figure says in which it has a column.</summary>
public enum CsvTable
{
    /// <summary>The nights of a trip.</summary>
    Trip,

    /// <summary>The options of a comparison.</summary>
    Compare,

    /// <summary>The cells of a limits chart.</summary>
    Limits,
}

/// <summary>How a person is shown a value. The rounding of each belongs to its quantity and the system of units.</summary>
public enum Display
{
    /// <summary>As its kind of value is mostly shown: a mass in tenths of a pound, a temperature in whole degrees, a ratio in whole per cent, a time as "03:12".</summary>
    Usual,

    /// <summary>A time with its day, such as "Fri 15 Jan 03:12".</summary>
    DayClock,

    /// <summary>A time with its date, such as "15 Jan 03:12".</summary>
    DateClock,

    /// <summary>A span in hours with one decimal.</summary>
    Hours,

    /// <summary>A span as "2:05".</summary>
    HoursMinutes,

    /// <summary>A ratio in whole per cent with the sign, such as "12 %".</summary>
    PercentSign,

    /// <summary>Electric energy in whole watt-hours.</summary>
    WattHours,

    /// <summary>A mass in hundredths of whatever unit.</summary>
    FineMass,

    /// <summary>A power in hundreds of BTU/h without a separator, or tenths of a kilowatt.</summary>
    ShortPower,

    /// <summary>Money with two decimals.</summary>
    Money,

    /// <summary>A number with one decimal.</summary>
    OneDecimal,

    /// <summary>A number with two decimals.</summary>
    TwoDecimals,

    /// <summary>A chance in per cent, with a decimal next to none and all.</summary>
    Chance,

    /// <summary>A share in per cent with the sign, or that it is small.</summary>
    Share,

    /// <summary>A temperature in whole degrees of either scale.</summary>
    WholeDegrees,

    /// <summary>A ratio in per cent with a decimal.</summary>
    FinePercent,

    /// <summary>A span in whole microseconds.</summary>
    Microseconds,

    /// <summary>A gauge pressure, with words where it is below the pressure of the air.</summary>
    GaugePressure,

    /// <summary>A text that is cut where it is long.</summary>
    ShortText,

    /// <summary>A quantity with its unit, where a column has several.</summary>
    WithUnit,
}

/// <summary>A figure's column in a table of text or screen.</summary>
/// <param name="table">The table that has the column.</param>
/// <param name="heading">Its lines, with | between.</param>
/// <param name="value">What its cells show.</param>
public sealed class FigureColumn<TRow>(ReportTable table, string heading, Func<TRow, object?> value)
{
    /// <summary>The table that has the column.</summary>
    public ReportTable Table { get; } = table;

    /// <summary>Its heading's lines, with | between.</summary>
    public string Heading { get; } = heading;

    /// <summary>What its cells show.</summary>
    public Func<TRow, object?> Value { get; } = value;

    /// <summary>How that is shown.</summary>
    public Display Display { get; init; }

    /// <summary>Whether cells are set to the left.</summary>
    public bool Left { get; init; }

    /// <summary>The unit of the quantity, which says what <c>{unit}</c> is; null for none.</summary>
    public Enum? Unit { get; init; }

    /// <summary>For a list: whose values they are, one column each.</summary>
    public Func<FigureContext, IReadOnlyList<string>>? Names { get; init; }

    /// <summary>The column's position among the others; columns with the same number keep the order of the list.</summary>
    public int Order { get; init; }

    /// <summary>Whether the column is there; always where null.</summary>
    public Func<IReadOnlyList<TRow>, bool>? Shown { get; init; }

    internal FigureColumn<TRow> In(ReportTable table, Display? display) => new(table, Heading, Value)
    {
        Display = display ?? Display,
        Left = Left,
        Unit = Unit,
        Names = Names,
        Order = Order,
        Shown = Shown,
    };

    internal FigureColumn<TOuter> From<TOuter>(Func<TOuter, TRow?> inner, Func<TOuter, object?> value) => new(Table, Heading, value)
    {
        Display = Display,
        Left = Left,
        Unit = Unit,
        Names = Names,
        Order = Order,
        Shown = Shown is null ? null : outer => Shown([.. outer.Select(inner).OfType<TRow>()]),
    };
}

/// <summary>A figure's column in a CSV file.</summary>
/// <param name="File">The file that has the column.</param>
/// <param name="Heading">Its heading without unit.</param>
/// <param name="Unit">Its unit; null for none.</param>
/// <param name="Digits">Decimals.</param>
/// <param name="Order">The column's position among the others; columns with the same number keep the order of the list.</param>
/// <param name="Value">What its cells hold.</param>
/// <param name="Names">For a list: whose values they are, one column each.</param>
/// <param name="Shown">Whether the column is there; always where null.</param>
public sealed record CsvColumn<TRow>(
    CsvTable File, string Heading, Enum? Unit, int Digits, int Order, Func<TRow, object?> Value, Func<FigureContext, IReadOnlyList<string>>? Names,
    Func<FigureContext, bool>? Shown);
