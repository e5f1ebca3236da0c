using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Model.Site;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Tests.App.Screens;

/// <summary>A run to draw: three nights from Thursday 17:00. Every curve and number in it is invented; it is no result of any model.</summary>
internal static class SampleRun
{
    private const double FullDemand_W = 8790;
    private const double HeatingValue_J_kg = 50e6;
    private const double Vapour_kg = 0.6;

    public static DateTimeOffset Start { get; } = new(2026, 1, 15, 17, 0, 0, TimeSpan.FromHours(-6));

    /// <summary>With a coach and a furnace: the first night holds, the second runs short, the third runs dry.</summary>
    public static RunReport Report { get; } = Build(coach: true);

    /// <summary>Only a cylinder with a steady draw.</summary>
    public static RunReport WithoutCoach { get; } = Build(coach: false);

    private static RunReport Build(bool coach)
    {
        RunSeries series = Curves(coach);
        List<ReportedEvent> events = [.. Events(series).OrderBy(e => e.Time)];
        return new RunReport
        {
            Scenario = Question(coach),
            Summary = null!,
            Nights = [.. Enumerable.Range(0, 3).Select(n => Night(n, series, events))],
            Events = events,
            Ledger = default,
            Series = series,
            End = RunEnd.Complete,
        };
    }

    private static RunSeries Curves(bool coach)
    {
        RunSeries s = new(67 * 3600.0);
        double inside = 293.15, liquid = 268.15, left = 13.6;
        bool lit = false;
        for (int i = 0; i < s.Outside_K.Length; i++)
        {
            double hour = 17 + i / 60.0, set = hour % 24 is < 6.5 or >= 22 ? 288.15 : 292.15;
            double outside = 261.15 - hour / 10 + 6 * Math.Cos((hour - 15) * Math.PI / 12);
            lit = inside < set - 0.5 || (lit && inside < set + 0.5);
            double asked = coach ? (lit ? FullDemand_W : 0) : 3000;
            double can = left <= Vapour_kg ? 0 : Math.Max(0, 900 * (liquid - 236.15)) * Math.Min(1, left / 8);
            double given = Math.Min(asked, can);
            left = Math.Max(0, left - given * 60 / HeatingValue_J_kg);
            liquid += ((outside - liquid) * 9 - given * 0.0085) * 60 / (3000 + 2500 * left);
            inside += (given * 0.77 - 95 * (inside - outside)) * 60 / 1.6e6;
            s.Outside_K[i] = outside;
            s.Wind_m_s[i] = 3 + 2 * Math.Sin(hour / 3);
            s.Inside_K[i] = coach ? inside : double.NaN;
            s.SetPoint_K[i] = coach ? set : double.NaN;
            s.Liquid_K[i] = liquid;
            s.CylinderPressure_Pa[i] = left <= 0 ? 0 : Math.Max(0, 101325 * (Math.Exp(2260 * (1 / 231.04 - 1 / liquid)) - 1));
            s.DeliveryPressure_Pa[i] = asked <= 0 ? 3000 : 2740 * given / asked;
            s.Propane_kg[i] = left;
            s.Cylinders[0].Liquid_K[i] = s.Cylinders[0].Hottest_K[i] = liquid;
            s.Cylinders[0].Pressure_Pa[i] = s.CylinderPressure_Pa[i];
            s.Cylinders[0].Propane_kg[i] = left;
            s.Asked_W[i] = asked;
            s.Given_W[i] = given;
            s.CanGiveNow_W[i] = can;
            s.CanGiveWithoutEnd_W[i] = Math.Max(0, 150 * (outside - 231));
            s.HeatIntoCylinder_W[i] = 9 * (outside - liquid);
            s.Burner_frac[i] = coach && asked > 0 ? given / asked : 0;
        }

        s.Count = s.Outside_K.Length;
        return s;
    }

    private static IEnumerable<ReportedEvent> Events(RunSeries s)
    {
        bool isShort = false;
        for (int i = 1; i < s.Count; i++)
        {
            bool now = s.Asked_W[i] > 0 && s.Given_W[i] < 0.95 * s.Asked_W[i];
            if (now && !isShort)
                yield return At(s, i, ReportedKind.ShortBegins);
            else if (!now && isShort)
                yield return At(s, i, ReportedKind.ShortEnds);
            isShort = now;
            if (s.Propane_kg[i] <= Vapour_kg && s.Propane_kg[i - 1] > Vapour_kg)
            {
                yield return At(s, i, ReportedKind.LiquidGone);
                yield return At(s, i, ReportedKind.Dry);
                yield return At(s, i + 6, ReportedKind.Lockout);
            }

            if (s.Inside_K[i] < 273.15 && s.Inside_K[i - 1] >= 273.15)
                yield return At(s, i, ReportedKind.InsideFreezing);
        }
    }

    private static ReportedEvent At(RunSeries s, int i, ReportedKind kind)
        => new(Start.AddMinutes(i), kind, s.Inside_K[i], s.Liquid_K[i], s.CylinderPressure_Pa[i], s.Propane_kg[i]);

    private static NightReport Night(int index, RunSeries s, IReadOnlyList<ReportedEvent> events)
    {
        DateTimeOffset noon = new(2026, 1, 15 + index, 12, 0, 0, Start.Offset);
        DateTimeOffset from = index == 0 ? Start : noon;
        int first = (int)(from - Start).TotalMinutes, last = (int)(noon.AddDays(1) - Start).TotalMinutes;
        ReportedEvent[] own = [.. events.Where(e => e.Time >= from && e.Time < noon.AddDays(1))];
        DateTimeOffset? firstShort = own.Where(e => e.Kind == ReportedKind.ShortBegins).Select(e => (DateTimeOffset?)e.Time).FirstOrDefault();
        DateTimeOffset? dry = own.Where(e => e.Kind == ReportedKind.Dry).Select(e => (DateTimeOffset?)e.Time).FirstOrDefault();
        int shortMinutes = Enumerable.Range(first, last - first).Count(i => s.Asked_W[i] > 0 && s.Given_W[i] < 0.95 * s.Asked_W[i]);
        int dawn = (int)(noon.AddHours(19) - Start).TotalMinutes;
        return new NightReport
        {
            Number = index + 1,
            Evening = DateOnly.FromDateTime(noon.DateTime),
            From = from,
            To = noon.AddDays(1),
            Verdict = dry is not null ? Verdict.GasGone : shortMinutes > 5 ? Verdict.GasShort : Verdict.Holds,
            OutsideLow = Temperature.FromKelvins(s.Outside_K[first..last].Min()),
            InsideLow = double.IsNaN(s.Inside_K[first]) ? null : Temperature.FromKelvins(s.Inside_K[first..last].Min()),
            InsideLowAt = null,
            BurnerTime = Duration.FromMinutes(s.Burner_frac[first..last].Sum()),
            BurnerStarts = 0,
            GasUsed = Mass.FromKilograms(s.Propane_kg[first] - s.Propane_kg[last - 1]),
            GasHeat = Energy.Zero,
            LeftAtDawn = Mass.FromKilograms(s.Propane_kg[dawn]),
            LeftAtEnd = Mass.FromKilograms(s.Propane_kg[last - 1]),
            CylinderPressureLow = Pressure.FromPascals(s.CylinderPressure_Pa[first..last].Min()),
            LiquidLow = Temperature.FromKelvins(s.Liquid_K[first..last].Min()),
            DeliveryPressureLow = null,
            FirstFailure = dry is not null || shortMinutes > 5 ? firstShort : null,
            FirstShort = firstShort,
            ShortTime = Duration.FromMinutes(shortMinutes),
            LeftAtFirstShort = null,
            DryAt = dry,
            BelowSetPoint = TemperatureDelta.FromKelvins(shortMinutes > 5 ? 2.4 : 0),
            FreezingAt = null,
            SteadySupplyAtLow = Power.FromWatts(1800),
            AllowedLiquid = Temperature.FromKelvins(243.15),
            DemandAtLow = Power.FromWatts(4400),
        };
    }

    private static Scenario Question(bool coach) => new()
    {
        Title = "Invented weekend, 30 lb cylinder",
        Start = Start,
        Weather = new WeatherSeries(
            [new(Start.AddHours(-1), 260), new(Start.AddHours(80), 255)], new WeatherDefaults(), new SiteSpecification()),
        Rig = new Rig
        {
            Cylinders = [new CylinderSpecification
            {
                Name = "30 lb",
                Volume_m3 = 0.0324,
                OutsideDiameter_m = 0.31,
                MetalMass_kg = 10,
                Tare_kg = 11,
                LegalFill_kg = 13.6,
                Contents_kg = 13.6,
            }],
            Coach = coach ? new CoachSpecification { HeatLoss = [], AirCapacity_J_K = 1e6, FurnishingsCapacity_J_K = 0, Coupling_W_K = 0 } : null,
            Thermostat = coach ? new ThermostatSpecification() : null,
            Furnace = coach ? new FurnaceSpecification { Input_W = FullDemand_W } : null,
        },
    };
}
