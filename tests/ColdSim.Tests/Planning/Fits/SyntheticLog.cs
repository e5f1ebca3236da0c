using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;

namespace ColdSim.Tests.Planning.Fits;

/// <summary>An invented log with a truth that is known: a coach as the scenario does not know it, read with the errors that people make.</summary>
/// <remarks>
/// The truth differs from the scenario by more than what is fitted: a finer step, air and wind at the site other than the weather file's,
/// more or less sun through the windows, doors that open, another warmth inside, a meal a day and one appliance that nobody wrote down.
/// </remarks>
internal sealed class SyntheticLog
{
    private const double Pound_kg = 0.45359237;
    private static readonly DateTimeOffset Start = new(2027, 1, 10, 18, 0, 0, TimeSpan.FromHours(-7));

    /// <summary>What the person wrote.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The true coach.</summary>
    public required FittedFactors Truth { get; init; }

    /// <summary>What was read.</summary>
    public required IReadOnlyList<LogReading> Readings { get; init; }

    /// <summary>What was truly in the cylinder at each reading. [kg]</summary>
    public required IReadOnlyList<double> Mass_kg { get; init; }

    /// <summary>Invents one.</summary>
    /// <param name="seed">Of its random numbers.</param>
    /// <param name="days">How long.</param>
    /// <param name="filledAt">The reading at which the cylinder has just been filled; null where it never is.</param>
    public static SyntheticLog Of(int seed, int days = 6, int? filledAt = null)
    {
        Random random = new(seed);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
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
        Rig rig = Rig(site);
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
        double[] times_s = [.. Enumerable.Range(0, 2 * days + 1).Select(i => i * 43_200 + (i == 0 ? 0 : 3600 * Between(-1.5, 1.5)))];
        WeatherSeries air = new(real, new WeatherDefaults(), site);
        double[] mass_kg = filledAt is not { } filled ? Run(made, air, times_s)
            : [.. Run(made, air, times_s[..filled]), .. Run(made, air, times_s[filled..])];
        double tare_kg = rig.Cylinders[0].Tare_kg * (1 + 0.015 * Normal());
        return new()
        {
            Scenario = scenario,
            Truth = truth with { Infiltration = doors * truth.Infiltration, BaseUse_W = truth.BaseUse_W + meal_W * 0.75 / 24 },
            Mass_kg = mass_kg,
            Readings = [.. times_s.Select((t, i) => Read(i, i == filledAt, Start.AddSeconds(t), Math.Round((mass_kg[i] + tare_kg + 0.2 * Pound_kg * Normal()) / Pound_kg, 1) * Pound_kg, rig.Cylinders[0]))],
        };
    }

    /// <summary>The same log with one weighing off.</summary>
    public SyntheticLog Off(int index, double kg) => new()
    {
        Scenario = Scenario,
        Truth = Truth,
        Mass_kg = Mass_kg,
        Readings = [.. Readings.Select((r, i) => i != index ? r : r with { Reading = Weight(((WeightReading)r.Reading).Scale_kg + kg, Scenario.Rig.Cylinders[0]) })],
    };

    private static LogReading Read(int index, bool filled, DateTimeOffset time, double scale_kg, CylinderSpecification cylinder)
        => new() { Line = index + 2, Time = time, Filled = filled, Reading = Weight(scale_kg, cylinder), Note = "invented" };

    private static WeightReading Weight(double scale_kg, CylinderSpecification cylinder) => new() { Name = "weight", Scale_kg = scale_kg, Tare_kg = cylinder.Tare_kg };

    private static double[] Run(Rig rig, WeatherSeries weather, double[] times_s)
    {
        Watch watch = new([.. times_s.Select(t => t - times_s[0])], rig.Cylinders[0].Contents_kg);
        new Simulation(rig, weather, new SimulationSettings { Start = Start.AddSeconds(times_s[0]), Duration_s = times_s[^1] - times_s[0], Step_s = 30, Undersupplied_frac = 0.95 }).Run(watch);
        return watch.Mass_kg;
    }

    private static Rig Rig(SiteSpecification site)
    {
        StandardSize size = StandardSize.Find("100 lb")!;
        return new Rig
        {
            Site = site,
            Cylinders = [new CylinderSpecification
            {
                Name = size.Name,
                Volume_m3 = size.Volume_m3,
                OutsideDiameter_m = size.OutsideDiameter_m,
                WallThickness_m = size.WallThickness_m,
                MetalMass_kg = size.ShellMass_kg,
                Tare_kg = size.Tare_kg,
                LegalFill_kg = size.LegalFill_kg,
                Contents_kg = size.LegalFill_kg,
            }],
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

    private sealed class Watch(double[] times_s, double start_kg) : IRunObserver
    {
        private int _next;

        public double[] Mass_kg { get; } = [.. times_s.Select(_ => start_kg)];

        public void Stepped(StepRecord record)
        {
            while (_next < times_s.Length && times_s[_next] <= record.To.Time_s + 1e-6)
            {
                double x = Math.Clamp((times_s[_next] - record.From.Time_s) / (record.To.Time_s - record.From.Time_s), 0, 1);
                Mass_kg[_next++] = record.From.Propane_kg + x * (record.To.Propane_kg - record.From.Propane_kg);
            }
        }

        public void Happened(in SimulationEvent happened, in ColdSim.Model.Engine.Snapshot moment)
        {
        }
    }
}
