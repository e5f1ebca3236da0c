using ColdSim.Model.Coach;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Quick;

/// <summary>The night in question: when, how cold, and what is known of inside. SI units; what is not known has a stated default.</summary>
public sealed record QuickNight
{
    /// <summary>Noon before the night; its offset is the clock of the run.</summary>
    public required DateTimeOffset Noon { get; init; }

    /// <summary>When the run starts.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>The morning's low; NaN where <see cref="Rows"/> say it. [K]</summary>
    public double Low_K { get; init; } = double.NaN;

    /// <summary>The afternoon's high; null takes <see cref="Swing_K"/> above the low. [K]</summary>
    public double? High_K { get; init; }

    /// <summary>Wind at mast height; null takes <see cref="Wind_m_s"/>. [m/s]</summary>
    public double? MastWind_m_s { get; init; }

    /// <summary>Rows of a weather file; null makes them of low and high.</summary>
    public IReadOnlyList<WeatherRow>? Rows { get; init; }

    /// <summary>Height above sea level of the place of that file; null where it does not say it. [m]</summary>
    public double? Elevation_m { get; init; }

    /// <summary>Set point all night; null takes the rig's, or <see cref="QuickQuestion.Inside_K"/>. [K]</summary>
    public double? SetPoint_K { get; init; }

    /// <summary>Whether the run starts at this very moment, so that the next hour is what is asked for.</summary>
    public bool IsNow { get; init; }

    /// <summary>Inside air when the run starts; null takes the set point. [K]</summary>
    public double? InsideAtStart_K { get; init; }

    /// <summary>Afternoon high above the morning low, unless stated. [K]</summary>
    public const double Swing_K = 10;

    /// <summary>Wind unless stated. [m/s]</summary>
    public const double Wind_m_s = 2;

    private const double Humidity_frac = 0.75;

    /// <summary>What is assumed of the air where a file does not say it.</summary>
    public WeatherDefaults Air => new()
    {
        Wind_m_s = MastWind_m_s ?? Wind_m_s,
        RelativeHumidity_frac = Humidity_frac,
        Cloud_frac = 0,
        Sun_W_m2 = 0,
    };

    /// <summary>The hours of the night.</summary>
    public IReadOnlyList<WeatherRow> Hours => Rows ?? NightShape.Rows(Noon, Low_K, High_K ?? Low_K + Swing_K);

    /// <summary>The coach as warm as it is when the run starts.</summary>
    /// <param name="coach">The coach.</param>
    public CoachSpecification? AtStart(CoachSpecification? coach)
        => coach is null || InsideAtStart_K is not { } inside_K ? coach : coach with { InitialTemperature_K = inside_K };
}
