using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Planning;

namespace ColdSim.Benchmarks;

/// <summary>The run that the figures in docs/performance.md are of: fourteen nights that hold, rig and weather invented.</summary>
internal static class FourteenNights
{
    private const int Nights = 14;

    public static Scenario Scenario { get; } = Of(Nights);

    /// <summary>The same rig and the same days for a number of nights, whether they hold or not.</summary>
    public static Scenario Of(int nights)
    {
        DateTimeOffset start = new(2027, 1, 10, 16, 0, 0, TimeSpan.FromHours(-7));
        SiteSpecification site = new() { Elevation_m = 1500, Latitude_deg = 45, Longitude_deg = -112 };
        StandardSize size = StandardSize.Find("100 lb")!;
        Rig rig = new()
        {
            Site = site,
            Cylinders = [size.Full() with { Surroundings = new CylinderSurroundings { SunExposure_frac = 0.3 } }],
            Coach = new CoachSpecification
            {
                HeatLoss = [new HeatLossItem("whole coach", 70)],
                LeakageArea_cm2 = 60,
                AirCapacity_J_K = 210e3,
                FurnishingsCapacity_J_K = 1.2e6,
                Coupling_W_K = 230,
                SolarAperture_m2 = 1.5,
                InternalGains_W = 200,
            },
            Thermostat = new ThermostatSpecification { DaySetPoint_K = 289.15, NightSetPoint_K = 285.15 },
            Furnace = new FurnaceSpecification { Input_W = 12_000 * 0.29307107017222 },
            Appliances = [new ConstantDraw { Name = "refrigerator", Input_W = 250 }],
        };
        return new Scenario
        {
            Title = "Fourteen nights that hold",
            Rig = rig,
            Weather = new WeatherSeries([.. Hours(start, nights)], new WeatherDefaults(), site),
            Start = start,
            Nights = nights,
        };
    }

    // A mean of -3 °C with a daily swing of 5 K, some wind and sun by day.
    private static IEnumerable<WeatherRow> Hours(DateTimeOffset start, int nights)
    {
        for (int h = -4; h <= nights * 24 + 24; h++)
        {
            DateTimeOffset t = start.AddHours(h);
            double swing = -Math.Cos((t.Hour - 6) / 24.0 * Math.Tau);
            double air_K = 270.15 + 5 * swing;
            yield return new WeatherRow(t, air_K, 2 + swing, air_K - 3, 350 * Math.Max(0, swing), 0.3);
        }
    }
}
