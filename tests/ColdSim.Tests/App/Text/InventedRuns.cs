using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Tests.App.Text;

/// <summary>Reports whose every number is invented, to test words and layout only; nothing here was computed.</summary>
internal static class InventedRuns
{
    private const double Psi_Pa = 6894.757293168361;

    public static DateTimeOffset Noon { get; } = new(2027, 1, 14, 12, 0, 0, TimeSpan.FromHours(-7));

    public static Rig Rig { get; } = new()
    {
        Cylinders = [new()
        {
            Name = "20 lb",
            Volume_m3 = 0.0216,
            OutsideDiameter_m = 0.31,
            MetalMass_kg = 7,
            Tare_kg = 8,
            LegalFill_kg = 9.07,
            Contents_kg = 6.5,
        }],
        Coach = new()
        {
            HeatLoss = [new("walls", 60), new("windows, single", 38.5), new("roof", 31), new("floor", 36)],
            LeakageArea_cm2 = 120,
            AirCapacity_J_K = 280_000,
            FurnishingsCapacity_J_K = 1_400_000,
            Coupling_W_K = 260,
        },
        Thermostat = new(),
        Furnace = new() { Input_W = 25_000 * 0.29307107017222 },
    };

    public static Scenario Scenario { get; } = new()
    {
        Title = "Invented cold snap",
        Rig = Rig,
        Weather = new WeatherSeries([new(Noon, 255), new(Noon.AddDays(2), 255)], new WeatherDefaults(), Rig.Site),
        Start = Noon.AddHours(4),
        Nights = 2,
        Assumptions = ["wind 2 m/s, because the weather file has no column for it", "cylinder in the shade of the coach, wind exposure 0.3"],
    };

    public static NightReport Holds { get; } = new()
    {
        Number = 1,
        Evening = new(2027, 1, 14),
        From = Noon.AddHours(4),
        To = Noon.AddDays(1),
        Verdict = Verdict.Holds,
        OutsideLow = Temperature.FromDegreesFahrenheit(14),
        InsideLow = Temperature.FromDegreesFahrenheit(61.6),
        InsideLowAt = Noon.AddHours(19),
        BurnerTime = Duration.FromHours(6.4),
        BurnerStarts = 41,
        GasUsed = Mass.FromPounds(5.2),
        GasHeat = Energy.FromBritishThermalUnits(112_400),
        LeftAtDawn = Mass.FromPounds(9.1),
        LeftAtEnd = Mass.FromPounds(8.1),
        CylinderPressureLow = Pressure.FromPascals(21.3 * Psi_Pa),
        LiquidLow = Temperature.FromDegreesFahrenheit(-2),
        DeliveryPressureLow = Pressure.FromPascals(2650),
        FirstShort = null,
        ShortTime = Duration.Zero,
        LeftAtFirstShort = null,
        DryAt = null,
        BelowSetPoint = TemperatureDelta.Zero,
        FreezingAt = null,
        SteadySupplyAtLow = Power.FromBritishThermalUnitsPerHour(16_900),
        AllowedLiquid = Temperature.FromDegreesFahrenheit(-20),
        DemandAtLow = Power.FromBritishThermalUnitsPerHour(11_200),
    };

    public static NightReport Short { get; } = Holds with
    {
        Number = 2,
        Evening = new(2027, 1, 15),
        From = Noon.AddDays(1),
        To = Noon.AddDays(2),
        Verdict = Verdict.GasShort,
        OutsideLow = Temperature.FromDegreesFahrenheit(-22),
        InsideLow = Temperature.FromDegreesFahrenheit(44.2),
        InsideLowAt = Noon.AddHours(43.2),
        LeftAtDawn = Mass.FromPounds(3.9),
        LeftAtEnd = Mass.FromPounds(3.1),
        CylinderPressureLow = Pressure.FromPascals(2.4 * Psi_Pa),
        LiquidLow = Temperature.FromDegreesFahrenheit(-38),
        FirstFailure = Noon.AddHours(39.2),
        FirstShort = Noon.AddHours(39.2),
        ShortTime = Duration.FromMinutes(125),
        NoFlameTime = Duration.FromMinutes(125),
        LeftAtFirstShort = Mass.FromPounds(4.4),
        LiquidAtFirstShort = Temperature.FromDegreesFahrenheit(-37),
        CylinderPressureAtFirstShort = Pressure.FromPascals(3.1 * Psi_Pa),
        FirstLockout = Noon.AddHours(39.38),
        Lockouts = 1,
        BelowSetPoint = TemperatureDelta.FromDegreesFahrenheit(18),
        SteadySupplyAtLow = Power.FromBritishThermalUnitsPerHour(4_100),
        AllowedLiquid = Temperature.FromDegreesFahrenheit(-38),
        DemandAtLow = Power.FromBritishThermalUnitsPerHour(17_800),
    };

    public static NightReport Dry { get; } = Short with
    {
        Verdict = Verdict.GasGone,
        InsideLow = Temperature.FromDegreesFahrenheit(21),
        DryAt = Noon.AddHours(40.5),
        FreezingAt = Noon.AddMinutes(2514),
        LeftAtDawn = Mass.FromPounds(0.1),
        LeftAtEnd = Mass.FromPounds(0.1),
        LeftAtFirstShort = Mass.FromPounds(0.8),
        FirstLockout = null,
        Lockouts = 0,
        LiquidGoneAt = Noon.AddHours(40.41),
    };

    public static IReadOnlyList<ReportedEvent> Events { get; } =
    [
        At(5, ReportedKind.BurnerOn, 62, -2, 21.3, 13.9),
        At(5.2, ReportedKind.BurnerOff, 64, -3, 20.9, 13.8),
        At(39.2, ReportedKind.ShortBegins, 60.8, -37, 3.1, 4.4),
        At(39.3, ReportedKind.FlameLost, 60.6, -38, 2.5, 4.3),
        At(39.35, ReportedKind.IgnitionFailed, 60, -38, 2.6, 4.3),
        At(39.36, ReportedKind.IgnitionFailed, 60, -38, 2.6, 4.3),
        At(39.37, ReportedKind.IgnitionFailed, 60, -38, 2.6, 4.3),
        At(39.38, ReportedKind.Lockout, 59.9, -38, 2.6, 4.3),
        At(40.38, ReportedKind.LockoutRetry, 52, -33, 6.1, 4.3),
        At(40.4, ReportedKind.ShortEnds, 52, -33, 6.1, 4.3),
        At(42, ReportedKind.ShortBegins, 50, -37, 3.1, 4),
        At(42.4, ReportedKind.ShortEnds, 50, -37, 3.1, 4),
        At(42.6, ReportedKind.ShortBegins, 50, -37, 3.1, 4),
        At(43.08, ReportedKind.ShortEnds, 50, -37, 3.1, 4),
    ];

    public static RunReport HoldsThenShort { get; } = Report([Holds, Short], Events);

    public static RunReport HoldsThenDry { get; } = Report(
        [Holds, Dry],
        [
            At(39.2, ReportedKind.ShortBegins, 60.8, -37, 3.1, 0.8),
            At(40.41, ReportedKind.LiquidGone, 55, -30, 8, 0.2),
            At(40.5, ReportedKind.Dry, 54, -30, 1, 0.1),
            At(41.901, ReportedKind.InsideFreezing, 32, -22, 0.2, 0.1),
        ]);

    public static RunReport Report(IReadOnlyList<NightReport> nights, IReadOnlyList<ReportedEvent> events, Scenario? scenario = null) => new()
    {
        Scenario = scenario ?? Scenario,
        Nights = nights,
        Events = events,
        Series = new RunSeries(60),
        End = RunEnd.Complete,
        Ledger = new(0.02, 3e-10, -0.1, -2e-10, 0, 0, 1e-14, 1.2e-15),
        Summary = new()
        {
            Verdict = nights.FirstOrDefault(n => n.Verdict != Verdict.Holds)?.Verdict ?? Verdict.Holds,
            FirstFailure = nights.FirstOrDefault(n => n.Verdict != Verdict.Holds)?.FirstFailure,
            Nights = nights.Count,
            NightsHeld = nights.Count(n => n.Verdict == Verdict.Holds),
            FirstShort = nights.FirstOrDefault(n => n.Verdict != Verdict.Holds)?.FirstShort,
            DryAt = nights.FirstOrDefault(n => n.DryAt is not null)?.DryAt,
            GasUsed = Mass.FromPounds(10.4),
            GasHeat = Energy.FromBritishThermalUnits(224_800),
            LeftAtStart = Mass.FromPounds(14.3),
            LeftAtEnd = nights[^1].LeftAtEnd,
            OutsideLow = nights[^1].OutsideLow,
            InsideLow = nights[^1].InsideLow,
            ShortTime = nights[^1].ShortTime,
        },
    };

    private static ReportedEvent At(double hours, ReportedKind kind, double inside_F, double liquid_F, double pressure_psi, double left_lb)
        => new(
            Noon.AddHours(hours),
            kind,
            Temperature.FromDegreesFahrenheit(inside_F).Kelvins,
            Temperature.FromDegreesFahrenheit(liquid_F).Kelvins,
            pressure_psi * Psi_Pa,
            Mass.FromPounds(left_lb).Kilograms);
}
