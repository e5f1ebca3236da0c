using ColdSim.Physics.Units;

namespace ColdSim.Planning;

/// <summary>The size of an error, with its source.</summary>
/// <param name="Value">In the unit of its place.</param>
/// <param name="Source">Where it is from, in a few words.</param>
public sealed record ErrorSize(double Value, string Source)
{
    /// <summary>The source of what the scenario itself says.</summary>
    public const string FromScenario = "as the scenario says";
}

/// <summary>How far off forecast, rig, readings and habits may be: one standard deviation each, unless said otherwise.</summary>
public sealed record ErrorSizes
{
    /// <summary>The spread of a forecast's temperature grows no further: by then it knows no more than the season does. From memory. [K]</summary>
    public const double LargestTemperature_K = 6;

    private const string DayAhead = "day-ahead highs of 2005 in the United States: 68 % within 3 °F (1.7 K), 3 % 10 °F (5.6 K) or more off";
    private const string Memory = "from memory";
    private const string Assumed = "an assumption";

    /// <summary>Of the forecast temperature a day ahead. [K]</summary>
    public ErrorSize Temperature { get; init; } = new(2.0, DayAhead);

    /// <summary>How much that grows for every day further ahead, and shrinks for every day nearer. [K a day]</summary>
    public ErrorSize TemperatureGrowth { get; init; } = new(0.4, Memory);

    /// <summary>Time over which an error of the forecast is forgotten to 1/e. [s]</summary>
    public ErrorSize CorrelationTime { get; init; } = new(24 * 3600, Memory);

    /// <summary>Degrees of freedom of Student's t, common to all hours of a member; above 2, the fewer the fatter the tails.</summary>
    public ErrorSize Tail { get; init; } = new(4, DayAhead);

    /// <summary>Of the logarithm of the wind.</summary>
    public ErrorSize Wind { get; init; } = new(0.4, Memory);

    /// <summary>Of the logarithm of the coach's conductances.</summary>
    public ErrorSize HeatLoss { get; init; } = new(0.15, Assumed);

    /// <summary>Of the logarithm of the leakage area.</summary>
    public ErrorSize Infiltration { get; init; } = new(0.4, Assumed);

    /// <summary>Of the contents of each cylinder at the start. [kg]</summary>
    public ErrorSize Reading { get; init; } = new(ConversionFactors.Pound_kg, Assumed);

    /// <summary>Of the set points, the same by day and by night. [K]</summary>
    public ErrorSize SetPoint { get; init; } = new(1, Assumed);

    /// <summary>Most openings of the door a day beyond those in the scenario's heat loss; each member has a number from none to this.</summary>
    public ErrorSize DoorOpenings { get; init; } = new(10, Assumed);

    /// <summary>No errors at all: every member is the plain run.</summary>
    public static ErrorSizes None { get; } = new()
    {
        Temperature = Nothing,
        TemperatureGrowth = Nothing,
        Wind = Nothing,
        HeatLoss = Nothing,
        Infiltration = Nothing,
        Reading = Nothing,
        SetPoint = Nothing,
        DoorOpenings = Nothing,
    };

    private static ErrorSize Nothing => new(0, ErrorSize.FromScenario);

    /// <summary>Spread of the forecast temperature so far ahead. [K]</summary>
    /// <param name="lead_s">How far after the run's start. [s]</param>
    public double TemperatureAt_K(double lead_s)
        => Math.Clamp(Temperature.Value + TemperatureGrowth.Value * (lead_s / 86_400 - 1), 0, Math.Max(LargestTemperature_K, Temperature.Value));
}
