using ColdSim.Files.Scenarios;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Tests.Files;

/// <summary>A report made up by hand, for the writers' tests.</summary>
internal static class Reports
{
    private static readonly DateTimeOffset Start = new(2025, 1, 14, 16, 0, 0, TimeSpan.FromHours(-7));

    public static RunReport Short()
    {
        Scenario scenario = ScenarioReader.ReadText(
            StarterScenario.Text("w.csv"), "s", new Fixtures.OneFile("w.csv", StarterScenario.WeatherText())).Scenario!;
        return new RunReport
        {
            Scenario = scenario with { Assumptions = ["wind: not in the weather file; assumed 2.0 m/s"] },
            Summary = new RunSummary
            {
                Verdict = Verdict.GasShort,
                Nights = 1,
                NightsHeld = 0,
                FirstFailure = Start.AddHours(9),
                FreezingTime = Duration.FromHours(17),
                Lowest = Temperature.FromDegreesCelsius(-3),
                NoHeatTime = Duration.FromMinutes(40),
                ColdKelvinHours = 6.5,
                FirstShort = Start.AddHours(9),
                DryAt = null,
                GasUsed = Mass.FromKilograms(3.25),
                GasHeat = Energy.FromMegajoules(163.5725),
                GasByAppliance = [new("furnace", Mass.FromKilograms(3.25), Ratio.FromPercent(100))],
                LeftAtStart = Mass.FromKilograms(7.25),
                LeftAtEnd = Mass.FromKilograms(4),
                OutsideLow = Temperature.FromDegreesCelsius(-22),
                InsideLow = Temperature.FromDegreesCelsius(11.5),
                ShortTime = Duration.FromMinutes(42),
            },
            Nights = [Night()],
            Events =
            [
                new(Start.AddMinutes(3), ReportedKind.BurnerOn, 291.15, 258.15, 250_000, 7.2),
                new(Start.AddHours(9), ReportedKind.ShortBegins, double.NaN, 240.15, 120_000, 5),
            ],
            Ledger = new LedgerBalance(0.5, 1e-9, -0.2, -2e-9, 0, 0, 1e-12, 3e-13),
            Series = Series(),
            End = RunEnd.Complete,
            CoolDown = Stop,
        };
    }

    private static NightReport Night() => new()
    {
        Number = 1,
        Evening = DateOnly.FromDateTime(Start.DateTime),
        From = Start,
        To = Start.AddHours(20),
        Verdict = Verdict.GasShort,
        FirstFailure = Start.AddHours(9),
        FreezingTime = Duration.FromHours(17),
        Lowest = Temperature.FromDegreesCelsius(-3),
        NoHeatTime = Duration.FromMinutes(40),
        ColdKelvinHours = 6.5,
        OutsideLow = Temperature.FromDegreesCelsius(-22),
        InsideLow = Temperature.FromDegreesCelsius(11.5),
        InsideLowAt = Start.AddHours(15),
        BurnerTime = Duration.FromHours(7),
        BurnerStarts = 41,
        GasUsed = Mass.FromKilograms(3.25),
        GasHeat = Energy.FromMegajoules(163.5725),
        LeftAtDawn = null,
        LeftAtEnd = Mass.FromKilograms(4),
        GasByAppliance = [new("furnace", Mass.FromKilograms(2.6), Ratio.FromPercent(80)), new("stove", Mass.FromKilograms(0.65), Ratio.FromPercent(20))],
        FirstToStarve = "stove",
        Water = [new("dump valve", Temperature.FromDegreesCelsius(-3), Ratio.FromPercent(100), Start.AddHours(3), Start.AddHours(5)) { HoldsWater = true }],
        CylinderPressureLow = Pressure.FromKilopascals(88.5),
        LiquidLow = Temperature.FromDegreesCelsius(-31.25),
        DeliveryPressureLow = Pressure.FromKilopascals(1.9),
        FirstShort = Start.AddHours(9),
        ShortTime = Duration.FromMinutes(42),
        LeftAtFirstShort = Mass.FromKilograms(5),
        DryAt = null,
        BelowSetPoint = TemperatureDelta.FromKelvins(4.5),
        FreezingAt = null,
        SteadySupplyAtLow = Power.FromWatts(2600),
        AllowedLiquid = Temperature.FromDegreesCelsius(-36),
        DemandAtLow = Power.FromWatts(4100),
        Power = new NightPower
        {
            Drawn = [new NightDraw("furnace fan", Energy.FromWattHours(410)), new NightDraw("blankets", Energy.Zero), new NightDraw("lights", Energy.FromWattHours(66))],
            Solar = Energy.FromWattHours(120),
            Shore = Energy.Zero,
            Generator = Energy.FromWattHours(300),
            GeneratorTime = Duration.FromHours(1),
            ChargeLow = Ratio.FromPercent(62),
            ChargeLowAt = Start.AddHours(16),
            ChargeAtEnd = Ratio.FromPercent(71),
            FlatAt = null,
            VoltageGone = Duration.Zero,
        },
        Blends =
        [
            new BlendReport
            {
                AtStart = new(0.6, 0.3, 0.1),
                AtEnd = new(0.25, 0.55, 0.2),
                Left = Mass.FromKilograms(4),
                PressureAtEnd = Pressure.FromKilopascals(30),
                LeftBehind = Mass.FromKilograms(3.5),
                LeftBehindAt = Temperature.FromDegreesCelsius(-22),
            },
        ],
    };

    /// <summary>A reading that a run starts from, made up.</summary>
    public static LogStart LogStart { get; } = new(8, Start, 7.25, Simulated: false, OnTheRoad: false)
    {
        InUse = "left",
        InUse_frac = 0.9,
        Cylinders = [new("left", 2.25, 0.25, StartedBy.Read, Start), new("right", 5, 0.5, StartedBy.WorkedOut, Start)],
    };

    /// <summary>A furnace that stops, made up.</summary>
    public static CoolDown Stop { get; } = new()
    {
        At = Start.AddHours(11),
        Outside = Temperature.FromDegreesCelsius(-20),
        Inside = Temperature.FromDegreesCelsius(16),
        FiftyAfter = Duration.FromMinutes(20),
        FreezingAfter = Duration.FromHours(2),
        FiftyEarliest = Duration.FromMinutes(14),
        FiftyLatest = Duration.FromMinutes(29),
        FreezingEarliest = Duration.FromHours(1.5),
        FreezingLatest = Duration.FromHours(2.5),
        Water = [new WaterAfter("line", Duration.FromHours(3), null)],
        Watched = Duration.FromHours(30),
    };

    private static RunSeries Series()
    {
        RunSeries series = new(120);
        for (int i = 0; i < 3; i++)
        {
            series.Outside_K[i] = 263.15 - i;
            series.Inside_K[i] = i == 2 ? double.NaN : 293.15;
            series.Asked_W[i] = 1234.56;
            series.Burner_frac[i] = 0.5;
        }
        series.Count = 3;
        return series;
    }
}
