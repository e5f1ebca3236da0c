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
using ColdSim.Planning.Nights;

namespace ColdSim.Tests.Model;

/// <summary>Sane rigs and made-up weather, to be changed where a test needs it.</summary>
internal static class Rigs
{
    public const double Btu_h = ColdSim.Physics.Units.ConversionFactors.BtuPerHour_W;
    public const double Pound_kg = ColdSim.Physics.Units.ConversionFactors.Pound_kg;
    public const double WaterColumn_Pa = ColdSim.Physics.Units.ConversionFactors.InchOfWater_Pa;
    public const double Zero_K = ColdSim.Physics.Units.ConversionFactors.ZeroCelsius_K;

    /// <summary>Four in the afternoon, seven hours behind.</summary>
    public static readonly DateTimeOffset Start = new(2027, 1, 12, 16, 0, 0, TimeSpan.FromHours(-7));

    /// <summary>Weather by a rule over the hours since <see cref="Start"/>.</summary>
    public static WeatherSeries Changing(
        Func<double, double> air_C, double hours = 72, double spacing_h = 1, double sun_W_m2 = 0, double wind_m_s = 2,
        SiteSpecification? site = null, DateTimeOffset? first = null)
    {
        List<WeatherRow> rows = [];
        for (int i = 0; i * spacing_h <= hours + 1e-9; i++)
            rows.Add(new WeatherRow((first ?? Start).AddHours(i * spacing_h), air_C(i * spacing_h) + Zero_K, wind_m_s, Sun_W_m2: sun_W_m2));
        return new WeatherSeries(rows, new WeatherDefaults(), site ?? new SiteSpecification());
    }

    /// <summary>The first row's weather.</summary>
    public static WeatherSample First(this WeatherSeries weather)
    {
        int row = 0;
        return weather.At(0, ref row);
    }

    public static WeatherSeries Steady(double air_C, double hours = 72) => Changing(_ => air_C, hours, hours);

    public static CylinderSpecification Bottle(string size = "40 lb", double left = 0.9)
    {
        StandardSize s = StandardSize.Find(size)!;
        return new CylinderSpecification
        {
            Name = s.Name,
            Orientation = s.Orientation,
            Volume_m3 = s.Volume_m3,
            OutsideDiameter_m = s.OutsideDiameter_m,
            WallThickness_m = s.WallThickness_m,
            MetalMass_kg = s.ShellMass_kg,
            Tare_kg = s.Tare_kg,
            LegalFill_kg = s.LegalFill_kg,
            Contents_kg = left * s.LegalFill_kg,
        };
    }

    /// <summary>A vessel so big and so well warmed that gas is never the matter.</summary>
    public static CylinderSpecification BigTank() => new()
    {
        Name = "big",
        Volume_m3 = 1.2,
        OutsideDiameter_m = 0.9,
        MetalMass_kg = 250,
        Tare_kg = 300,
        LegalFill_kg = 500,
        Contents_kg = 450,
        InitialTemperature_K = 280,
        Surroundings = new CylinderSurroundings { FixedConductance_W_K = 200 },
    };

    public static CylinderSpecification Fixed(this CylinderSpecification cylinder, double conductance_W_K)
        => cylinder with { Surroundings = cylinder.Surroundings with { FixedConductance_W_K = conductance_W_K } };

    /// <summary>One node unless furnishings are given.</summary>
    public static CoachSpecification OneNode(
        double loss_W_K = 150, double air_J_K = 0.6e6, double furnishings_J_K = 0, double coupling_W_K = 0, double? inside_C = null) => new()
        {
            HeatLoss = [new HeatLossItem("all of it", loss_W_K)],
            AirCapacity_J_K = air_J_K,
            FurnishingsCapacity_J_K = furnishings_J_K,
            Coupling_W_K = coupling_W_K,
            InitialTemperature_K = inside_C + Zero_K,
        };

    public static CoachSpecification TwoNodes(double loss_W_K = 150) => OneNode(loss_W_K, 0.5e6, 1.6e6, 400);

    public static FurnaceSpecification Plated(double input_Btu_h = 20_000) => new() { Input_W = input_Btu_h * Btu_h };

    /// <summary>No purges and no fan: the flame follows the thermostat, and its heat is all that the coach gets.</summary>
    public static FurnaceSpecification Prompt(double output_W) => new()
    {
        Input_W = output_W / 0.77,
        FanCurrent_A = 0,
        PrePurge_s = 0,
        PostPurge_s = 0,
    };

    public static ThermostatSpecification Holding(double setPoint_C = 20, double? night_C = null) => new()
    {
        DaySetPoint_K = setPoint_C + Zero_K,
        NightSetPoint_K = (night_C ?? setPoint_C) + Zero_K,
    };

    /// <summary>A bare switch: no lag and no shortest times.</summary>
    public static ThermostatSpecification BareSwitch(double setPoint_C, double differential_K) => Holding(setPoint_C) with
    {
        Differential_K = differential_K,
        SensorLag_s = 0,
        MinimumRun_s = 0,
        MinimumOff_s = 0,
    };

    /// <summary>Cylinder, furnace and coach, heated to 20 °C day and night.</summary>
    public static Rig Heated(double input_Btu_h = 20_000, double loss_W_K = 110) => new()
    {
        Cylinders = [Bottle()],
        Coach = TwoNodes(loss_W_K),
        Thermostat = Holding(),
        Furnace = Plated(input_Btu_h),
    };

    public static ConstantDraw Draw(double input_Btu_h, double toCoach = 0, params ClockWindow[] hours) => new()
    {
        Name = "draw",
        Input_W = input_Btu_h * Btu_h,
        HeatToCoach_frac = toCoach,
        Hours = hours,
    };

    public static Trace Run(
        Rig rig, WeatherSeries weather, double hours, double step_s = ColdSim.Planning.Scenario.DefaultStep_s, Ledger? ledger = null, DateTimeOffset? start = null,
        double undersupplied_frac = 0.95)
    {
        Trace trace = new();
        trace.Result = new Simulation(rig, weather, Settings(hours, step_s, start, undersupplied_frac), ledger ?? new Ledger()).Run(trace);
        return trace;
    }

    public static SimulationSettings Settings(double hours, double step_s = ColdSim.Planning.Scenario.DefaultStep_s, DateTimeOffset? start = null, double undersupplied_frac = 0.95) => new()
    {
        Start = start ?? Start,
        Duration_s = hours * 3600,
        Step_s = step_s,
        Undersupplied_frac = undersupplied_frac,
    };

    public static Scenario Scenario(Rig rig, WeatherSeries weather, int? nights = null, NightCriteria? criteria = null, DateTimeOffset? start = null) => new()
    {
        Title = "made up",
        Rig = rig,
        Weather = weather,
        Start = start ?? Start,
        Nights = nights,
        Criteria = criteria ?? new NightCriteria(),
    };

    public static RunReport Nights(Rig rig, WeatherSeries weather, int? nights = null, NightCriteria? criteria = null, DateTimeOffset? start = null)
        => NightRun.Of(Scenario(rig, weather, nights, criteria, start));
}

/// <summary>Keeps every step and event of a run.</summary>
internal sealed class Trace : IRunObserver
{
    public List<StepRecord> Steps { get; } = [];

    public List<SimulationEvent> Events { get; } = [];

    public List<RunSnapshot> Snapshots { get; } = [];

    public SimulationResult Result { get; set; }

    public void Stepped(StepRecord record) => Steps.Add(new StepRecord(record));

    public void Happened(in SimulationEvent happened, in RunSnapshot snapshot)
    {
        Events.Add(happened);
        Snapshots.Add(snapshot);
    }

    public double[] Times_s(EventKind kind) => [.. Events.Where(e => e.Kind == kind).Select(e => e.Time_s)];

    public double First_s(EventKind kind) => Events.First(e => e.Kind == kind).Time_s;

    public bool Has(EventKind kind) => Events.Exists(e => e.Kind == kind);

    public RunSnapshot Last => Steps[^1].To;

    /// <summary>The state at a time that a step ends on.</summary>
    public RunSnapshot At(double time_s) => Steps.First(s => Math.Abs(s.To.Time_s - time_s) < 1e-6).To;

    /// <summary>Gross heat of the gas given. [J]</summary>
    public double Given_J => Steps.Sum(s => s.Given_W * (s.To.Time_s - s.From.Time_s));
}
