using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Electrical;
using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class LedgerTests
{
    private static readonly string[] Sizes = ["5 lb", "20 lb", "40 lb", "100 lb", "10 gal"];

    // Anything sane: sizes, fills down to almost nothing, altitudes, with and without coach, furnace, draws with hours.
    private static readonly Gen<(Rig Rig, WeatherSeries Weather)> Sane = Gen.Select(
        Gen.Select(Gen.Int[0, 4].Select(i => Sizes[i]), Gen.Double[0.02, 0.9], Gen.Double[0, 3000], Gen.OneOf(Gen.Const(0.0), Gen.Double[1, 8])),
        Gen.Select(Gen.Int[0, 3], Gen.Double[12_000, 40_000], Gen.Double[60, 250], Gen.Double[20_000, 160_000], Gen.Int[0, 1].Select(i => 100.0 * i)),
        Gen.Select(Gen.Double[-45, 5], Gen.Double[0, 12], Gen.Double[0, 8], Gen.Double[0, 300]),
        (place, house, sky) =>
        {
            (string size, double left, double elevation_m, double fixed_W_K) = place;
            (int kind, double input_Btu_h, double loss_W_K, double rating_Btu_h, double leak_cm2) = house;
            (double mean_C, double swing_K, double wind_m_s, double sun_W_m2) = sky;
            SiteSpecification site = new() { Elevation_m = elevation_m };
            CylinderSpecification cylinder = Bottle(size, left);
            Rig rig = new()
            {
                Site = site,
                Cylinders = [fixed_W_K > 0 ? cylinder.Fixed(fixed_W_K) : cylinder],
                Regulator = new() { RatedFlow_W = rating_Btu_h * Btu_h },
                Coach = kind == 0 ? null : TwoNodes(loss_W_K) with { LeakageArea_cm2 = leak_cm2, SolarAperture_m2 = 1, InternalGains_W = 100, GroundConductance_W_K = 10 },
                Thermostat = kind < 2 ? null : Holding(20, 16),
                Furnace = kind < 2 ? null : Plated(input_Btu_h) with { Altitude = (AltitudeRule)(kind % 2) },
                Appliances = [Draw(1200, 0.4), Draw(9000, 0.2, new ClockWindow(17 * 3600, 19.3 * 3600), new ClockWindow(23 * 3600, 1 * 3600))],
            };
            return (rig, Changing(h => mean_C + swing_K * Math.Sin(h / 4), 16, sun_W_m2: sun_W_m2, wind_m_s: wind_m_s, site: site));
        });

    // A pilot light takes from a large tank, in each second, no more than a hundred thousand times the last digit of what is in it.
    [Fact]
    public void A_tiny_flow_from_a_large_tank_in_short_steps_keeps_the_books_of_its_mass()
    {
        CylinderSpecification tank = Bottle("100 lb", 0) with { Volume_m3 = 3.78, OutsideDiameter_m = 1.71, LegalFill_kg = 1587, MetalMass_kg = 950, Contents_kg = 1170 };
        Trace run = Run(new Rig { Cylinders = [tank], Appliances = [Draw(1 / Btu_h)] }, Steady(-20), 24, 1);
        Assert.InRange(Math.Abs(run.Result.Ledger.Mass_frac), 0, 1e-9);
        Assert.InRange(Math.Abs(run.Result.Ledger.FuelEnergy_frac), 0, 1e-9);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Ledger_closes_and_values_stay_physical_on_random_rigs()
    {
        int dry = 0, locked = 0, froze = 0;
        Sane.Sample(s =>
        {
            Trace run = Run(s.Rig, s.Weather, 14);
            LedgerBalance l = run.Result.Ledger;
            Assert.True(l.Closes, l.ToString());
            bool liquid = CylinderContents.Of(s.Rig.Cylinders[0].Contents_kg, s.Rig.Cylinders[0].Volume_m3, run.Steps[0].From.Liquid_K).HasLiquid;
            double air_Pa = StandardAtmosphere.Pressure_Pa(s.Rig.Site.Elevation_m);
            SimulationEvent[] turns = [.. run.Events.Where(e => e.Kind is EventKind.LiquidGone or EventKind.LiquidAgain)];
            int turned = 0;
            foreach (StepRecord step in run.Steps)
            {
                RunSnapshot m = step.To;
                Assert.True(step.To.Time_s > step.From.Time_s);
                Assert.True(double.IsFinite(m.Liquid_K + m.CylinderPressure_Pa + m.DeliveryPressure_Pa + m.Propane_kg + step.Asked_W + step.Given_W + step.HeatIntoCylinder_W));
                Assert.Equal(s.Rig.Coach is null, double.IsNaN(m.Inside_K));
                Assert.True(m.Propane_kg > 0 && m.Propane_kg <= step.From.Propane_kg);
                Assert.True(step.Given_W <= step.Asked_W * (1 + 1e-9) + 1e-9, $"{step.Given_W} of {step.Asked_W}");
                for (; turned < turns.Length && turns[turned].Time_s <= m.Time_s; turned++)
                {
                    Assert.Equal(liquid, turns[turned].Kind == EventKind.LiquidGone);
                    liquid = !liquid;
                }

                if (liquid)
                    Assert.Equal(PropaneSaturation.Pressure_Pa(m.Liquid_K), m.CylinderPressure_Pa + air_Pa, 1e-6 * air_Pa);
            }

            if (run.Has(EventKind.LiquidGone)) Interlocked.Increment(ref dry);
            if (run.Has(EventKind.Lockout)) Interlocked.Increment(ref locked);
            if (run.Has(EventKind.InsideFreezing)) Interlocked.Increment(ref froze);
        }, iter: 120);
        Assert.True(dry > 2 && locked > 2 && froze > 2, $"Too tame: {dry} dry, {locked} locked out, {froze} froze.");
    }

    private static Rig Busy => Heated() with
    {
        Coach = TwoNodes(110) with { InternalGains_W = 800, GroundConductance_W_K = 25, GroundTemperature_K = 275 },
        Appliances = [Draw(2000, 0.3)],
        Site = new SiteSpecification { Hookup = true },
        Power = new PowerSpecification
        {
            Battery = BatterySpecification.Of(BatteryChemistry.Flooded, 100 * NominalVoltage.AmpereHour_J) with { InitialCharge_frac = 0.8 },
            Panels = [new SolarPanelSpecification { Rated_W = 60 }],
            Loads = [new ElectricLoad { Name = "lights", Power_W = 24, Hours = [new ClockWindow(17 * 3600, 22 * 3600)] }],
            Converter = new ConverterSpecification { Rated_A = 5 },
        },
    };

    private static WeatherSeries Dull => Changing(_ => -8, 72, 72, sun_W_m2: 100);

    [Theory]
    [InlineData("Drawn")]
    [InlineData("CylinderHeat")]
    [InlineData("VapourEnthalpy")]
    [InlineData("Burnt")]
    [InlineData("Useful")]
    [InlineData("Flue")]
    [InlineData("Gains")]
    [InlineData("Loss")]
    [InlineData("Ground")]
    [InlineData("Solar")]
    [InlineData("Converter")]
    [InlineData("Load")]
    [InlineData("BatteryLoss")]
    public void Flux_misread_by_one_part_in_ten_thousand_opens_the_ledger(string flux)
    {
        IntegralKind kind = Enum.Parse<IntegralKind>(flux);
        Trace run = Run(Busy, Dull, 12, ledger: new Ledger(kind, 1.0001));
        Assert.False(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
        Assert.True(Run(Busy, Dull, 12, ledger: new Ledger(kind, 1)).Result.Ledger.Closes);
    }

    [Fact]
    public void Every_flux_is_covered_by_the_misreading_test()
        => Assert.Equal(Enum.GetNames<IntegralKind>().Length - 1,
            typeof(LedgerTests).GetMethod(nameof(Flux_misread_by_one_part_in_ten_thousand_opens_the_ledger))!
                .GetCustomAttributes(typeof(InlineDataAttribute), false).Length);

    [Fact]
    public void Residual_of_an_idle_run_is_compared_with_the_floor()
    {
        Rig rig = new() { Cylinders = [Bottle() with { InitialTemperature_K = 263.15 }] };
        LedgerBalance l = Run(rig with { Cylinders = [rig.Cylinders[0].Fixed(2)] }, Steady(-10), 5).Result.Ledger;
        Assert.True(l.Closes);
        Assert.Equal(l.CylinderEnergy_J / 1000, l.CylinderEnergy_frac, 1e-15);
        Assert.Equal(0, l.Mass_kg);
    }

    [Fact]
    public void Ledger_with_a_NaN_residual_does_not_close()
    {
        Assert.False(new LedgerBalance(0, 0, 0, double.NaN, 0, 0, 0, 0).Closes);
        Assert.False(new LedgerBalance(0, 0, 0, 0, 0, 0, 0, double.NaN).Closes);
        Assert.False(new LedgerBalance(0, 0, 0, 0, 0, -2e-6, 0, 0).Closes);
        Assert.True(new LedgerBalance(9, 1e-6, 0, -1e-6, 0, 0, 0, 1e-6).Closes);
    }
}
