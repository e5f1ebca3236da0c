using ColdSim.Files.Scenarios;
using ColdSim.Physics.Propane;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Nights;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Gauges;

public class ExpectedReadingsTests
{
    private static readonly Lazy<RunReport> OneCylinder = new(() => Run("cold-snap.toml"));
    private static readonly Lazy<RunReport> Changeover = new(() => Run("changeover.toml"));
    private static readonly Lazy<RunReport> Blanket = new(() => Run("blanket-or-second.toml"));
    private static readonly Lazy<RunReport> Mixed = new(() => Run("mixed-gas.toml"));

    // Every hour of the first day and night.
    private static IEnumerable<ExpectedReadings> Hourly(RunReport run)
        => Enumerable.Range(0, 16).Select(h => ExpectedReadings.Of(run, run.Scenario.Start.AddHours(h), null));

    private static RunReport Run(string demo)
        => NightRun.Of(ScenarioReader.Read(Path.Combine(DocPage.Scenarios, demo)).Scenario! with { Nights = 1 });

    [Theory]
    [InlineData("one")]
    [InlineData("two")]
    public void Every_instrument_fed_back_into_its_method_gives_the_contents(string rig)
    {
        RunReport run = (rig == "one" ? OneCylinder : Changeover).Value;
        foreach (ExpectedCylinder cylinder in Hourly(run).SelectMany(e => e.Cylinders))
        {
            GaugedCylinder vessel = GaugedCylinder.Of(run.Scenario.Rig.Cylinders[cylinder.Place]);
            foreach (InstrumentReadings shown in (InstrumentReadings[])[cylinder.Then, cylinder.Warmed])
            {
                LevelInputs level = GaugeReadingTests.At(shown.Liquid.Kelvins);
                GaugeReading[] readings =
                [
                    new WeightReading { Name = "weight", Scale_kg = shown.Scale.Kilograms, Tare_kg = cylinder.Tare.Kilograms, Ice_kg = shown.Frost.Kilograms },
                    new HeightReading { Name = "level", Shown_frac = shown.OfHeight.DecimalFractions, Level = level },
                    new LineReading { Name = "line", Height_m = shown.Line.Meters, Level = level },
                    new EchoReading { Name = "time", Shown = EchoShown.Time, Value = shown.EchoTime!.Value.Seconds, Level = level },
                    new EchoReading { Name = "height", Shown = EchoShown.Height, Value = shown.EchoHeight!.Value.Meters, Level = level },
                    new EchoReading { Name = "of height", Shown = EchoShown.PartOfHeight, Value = shown.EchoOfHeight!.Value.DecimalFractions, Level = level },
                    new EchoReading { Name = "of volume", Shown = EchoShown.PartOfVolume, Value = shown.EchoOfVolume!.Value.DecimalFractions, Level = level },
                    new EchoReading { Name = "of full", Shown = EchoShown.PartOfFull, Value = shown.EchoOfFull!.Value.DecimalFractions, Level = level },
                ];
                Assert.All(readings, r => Assert.Equal(1, r.Estimate(vessel).Mass.Kilograms / shown.Gas.Kilograms, 1e-6));
            }
        }
    }

    [Fact]
    public void A_scale_shows_what_is_in_the_cylinder_whatever_its_temperature()
        => Assert.All(Hourly(OneCylinder.Value), e =>
        {
            Assert.Equal(e.Chosen.Then.Gas, e.Chosen.Warmed.Gas);
            Assert.Equal((e.Chosen.Tare + e.Chosen.Then.Gas + e.Chosen.Then.Frost).Kilograms, e.Chosen.Then.Scale.Kilograms, 1e-12);
        });

    [Fact]
    public void A_cold_liquid_reads_low_on_every_gauge_but_the_scale_and_comes_back_as_it_warms()
    {
        ExpectedCylinder cylinder = ExpectedReadings.Of(OneCylinder.Value, null, null).Chosen;
        Assert.True(cylinder.Then.Liquid < cylinder.Warmed.Liquid);
        Assert.True(cylinder.Then.OfHeight < cylinder.Warmed.OfHeight);
        Assert.True(cylinder.Then.OfVolume < cylinder.Warmed.OfVolume);
        Assert.True(cylinder.Then.Line < cylinder.Warmed.Line);
        Assert.True(cylinder.Then.EchoOfHeight < cylinder.Warmed.EchoOfHeight);
        Assert.True(cylinder.Warmed.EchoOfHeight - cylinder.Then.EchoOfHeight > cylinder.Warmed.OfHeight - cylinder.Then.OfHeight);
        Assert.True(cylinder.Then.Gauge < cylinder.Warmed.Gauge);
    }

    [Fact]
    public void The_usual_time_is_when_the_liquid_is_coldest_in_the_first_night()
    {
        ExpectedReadings usual = ExpectedReadings.Of(OneCylinder.Value, null, null);
        Assert.True(usual.IsUsualInstant);
        Assert.InRange(usual.At, OneCylinder.Value.Scenario.Start, OneCylinder.Value.Nights[0].To);
        Assert.All(Hourly(OneCylinder.Value), e => Assert.True(e.Chosen.Then.Liquid.Kelvins >= usual.Chosen.Then.Liquid.Kelvins - 1e-9));
    }

    [Fact]
    public void A_pressure_gauge_shows_the_liquid_s_temperature()
        => Assert.All(Hourly(OneCylinder.Value), e => Assert.Equal(
            PropaneSaturation.Pressure_Pa(e.Chosen.Then.Liquid.Kelvins) - PropaneSaturation.Pressure_Pa(e.Chosen.Warmed.Liquid.Kelvins),
            e.Chosen.Then.Gauge.Pascals - e.Chosen.Warmed.Gauge.Pascals, 2.0));

    [Fact]
    public void The_wall_is_between_liquid_and_air_and_colder_where_liquid_wets_it()
        => Assert.All(Hourly(OneCylinder.Value).Where(e => e.Chosen.Then.Liquid.Kelvins < e.Outside.Kelvins - 5), e =>
        {
            Assert.InRange(e.Chosen.Then.WallBelow!.Value.Kelvins, e.Chosen.Then.Liquid.Kelvins, e.Chosen.Then.WallAbove!.Value.Kelvins);
            Assert.True(e.Chosen.Then.WallAbove < e.Outside);
        });

    [Fact]
    public void Two_cylinders_each_have_their_own_readings_and_one_is_in_use()
    {
        ExpectedReadings readings = ExpectedReadings.Of(Changeover.Value, Changeover.Value.Scenario.Start.AddHours(8), 1);
        Assert.Equal(2, readings.Cylinders.Count);
        Assert.Equal(1, readings.Chosen.Place);
        Assert.Single(readings.Cylinders, c => c.InUse);
    }

    [Fact]
    public void Under_a_blanket_the_wall_above_the_level_is_its_hottest_place()
    {
        ExpectedReadings[] heated = [.. Hourly(Blanket.Value).Where(e => e.Run.Scenario.Rig.Cylinders[e.Chosen.Place].Blanket is not null)];
        Assert.All(heated, e => Assert.True(e.Chosen.Then.WallAbove!.Value.Kelvins >= e.Chosen.Then.Liquid.Kelvins - 1e-9));
    }

    [Fact]
    public void A_mixed_gas_has_no_echo_because_its_speed_of_sound_is_not_known_here()
    {
        ExpectedReadings readings = ExpectedReadings.Of(Mixed.Value, Mixed.Value.Scenario.Start.AddHours(3), null);
        Assert.Null(readings.Chosen.Then.EchoTime);
        Assert.Null(readings.Chosen.Then.EchoOfFull);
        Assert.True(readings.Chosen.Then.OfHeight.Percent > 0);
    }

    [Fact]
    public void A_time_that_the_run_does_not_reach_is_refused()
    {
        Assert.Throws<TimeOutsideRunException>(() => ExpectedReadings.Of(OneCylinder.Value, OneCylinder.Value.Scenario.Start.AddMinutes(-1), null));
        Assert.Throws<TimeOutsideRunException>(() => ExpectedReadings.Of(OneCylinder.Value, OneCylinder.Value.Scenario.Start.AddDays(9), null));
    }
}
