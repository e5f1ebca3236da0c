using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Model.Site;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Planning;

namespace ColdSim.Tests.Planning.Fits;

/// <summary>An invented coach in invented weather, as somebody's file has it and as it truly is.</summary>
/// <remarks>
/// The truth differs from the scenario by more than what is fitted: air and wind at the site other than the weather file's, more or less sun
/// through the windows, doors that open, another warmth inside, a meal a day and one appliance that nobody wrote down.
/// </remarks>
internal sealed class InventedCoach
{
    /// <summary>When the logs begin.</summary>
    public static readonly DateTimeOffset Start = new(2027, 1, 10, 18, 0, 0, TimeSpan.FromHours(-7));

    private readonly Random _random;

    private InventedCoach(Random random) => _random = random;

    /// <summary>What the person wrote.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The factors that a fit should find.</summary>
    public required FittedFactors Truth { get; init; }

    /// <summary>The true rig.</summary>
    public required Rig Made { get; init; }

    /// <summary>The true weather at the site.</summary>
    public required WeatherSeries Air { get; init; }

    /// <summary>A normal random number.</summary>
    public double Normal() => Normal(_random);

    /// <summary>A uniform random number.</summary>
    public double Between(double low, double high) => Between(_random, low, high);

    /// <summary>Invents one.</summary>
    /// <param name="seed">Of its random numbers.</param>
    /// <param name="days">How long its weather lasts.</param>
    /// <param name="cylinders">Its cylinders.</param>
    public static InventedCoach Of(int seed, int days, IReadOnlyList<CylinderSpecification> cylinders)
    {
        Random random = new(seed);
        double Normal() => InventedCoach.Normal(random);
        double Between(double low, double high) => InventedCoach.Between(random, low, high);
        List<WeatherRow> told = [], real = [];
        double mean_K = 273.15 + Between(-9, 1), day_K = 0, local_K = 0.6 * Normal(), drift_K = 0, wind = 0, windHere = Math.Exp(0.25 * Normal());
        for (int h = -12; h <= 24 * days + 30; h++)
        {
            DateTimeOffset t = Start.AddHours(h);
            if (t.Hour == 0)
                day_K = 0.6 * day_K + 3.5 * Normal();
            drift_K = 0.9 * drift_K + 0.4 * Normal();
            wind = 0.85 * wind + 0.5 * Normal();
            double high = -Math.Cos((t.Hour - 3) / 24.0 * Math.Tau), air_K = mean_K + day_K + 4.5 * high;
            double wind_m_s = Math.Max(0.3, 3 * Math.Exp(0.4 * wind)), sun_W_m2 = 380 * Math.Max(0, Math.Sin((t.Hour - 8) / 9.0 * Math.PI)) * (t.Hour is >= 8 and <= 17 ? 1 : 0);
            told.Add(new WeatherRow(t, air_K, wind_m_s, air_K - 3, sun_W_m2, 0.4));
            real.Add(new WeatherRow(t, air_K + local_K + drift_K, wind_m_s * windHere, air_K - 3, sun_W_m2 * Between(0.6, 1.1), 0.4));
        }

        SiteSpecification site = new() { Elevation_m = 1500, Latitude_deg = 45, Longitude_deg = -112 };
        Rig rig = Written(site, cylinders);
        FittedFactors truth = new() { HeatLoss = Math.Exp(0.25 * Normal()), Infiltration = Math.Exp(0.4 * Normal()), BaseUse_W = Between(0, 220) };
        double meal_W = Between(600, 2500), doors = Between(1, 1.35);
        Rig made = truth.Over(rig);
        made = made with
        {
            Coach = made.Coach! with
            {
                LeakageArea_cm2 = doors * made.Coach.LeakageArea_cm2,
                SolarAperture_m2 = Between(0.5, 1.6) * made.Coach.SolarAperture_m2,
                InternalGains_W = made.Coach.InternalGains_W + 40 * Normal(),
            },
            Thermostat = made.Thermostat! with { DaySetPoint_K = made.Thermostat.DaySetPoint_K + 0.4 * Normal(), NightSetPoint_K = made.Thermostat.NightSetPoint_K + 0.4 * Normal() },
            Appliances = [.. made.Appliances, new ConstantDraw { Name = "meal", Input_W = meal_W, HeatToCoach_frac = 0.6, Hours = [new(17.5 * 3600, 18.25 * 3600)] }],
        };
        Scenario scenario = new() { Title = "Invented", Rig = rig, Weather = new WeatherSeries(told, new WeatherDefaults(), site), Start = Start };
        return new(random)
        {
            Scenario = scenario,
            Made = made,
            Air = new WeatherSeries(real, new WeatherDefaults(), site),
            Truth = truth with { Infiltration = doors * truth.Infiltration, BaseUse_W = truth.BaseUse_W + meal_W * 0.75 / 24 },
        };
    }

    /// <summary>A cylinder of a standard size, full.</summary>
    /// <param name="name">The size.</param>
    public static CylinderSpecification Cylinder(string name) => StandardSize.Find(name)!.Full();

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());

    private static double Between(Random random, double low, double high) => low + (high - low) * random.NextDouble();

    private static Rig Written(SiteSpecification site, IReadOnlyList<CylinderSpecification> cylinders) => new()
    {
        Site = site,
        Cylinders = cylinders,
        Coach = new CoachSpecification
        {
            HeatLoss = [new HeatLossItem("whole coach", 85)],
            LeakageArea_cm2 = 90,
            AirCapacity_J_K = 210e3,
            FurnishingsCapacity_J_K = 1.2e6,
            Coupling_W_K = 230,
            SolarAperture_m2 = 1.2,
            InternalGains_W = 200,
        },
        Thermostat = new ThermostatSpecification { DaySetPoint_K = 292.15, NightSetPoint_K = 288.15 },
        Furnace = new FurnaceSpecification { Input_W = 25_000 * 0.29307107017222 },
        Appliances = [new ConstantDraw { Name = "refrigerator", Input_W = 250, HeatToCoach_frac = 0.3 }],
    };
}
