using ColdSim.Planning.Gauges;
using Xunit;

namespace ColdSim.Tests.Planning.Gauges;

public class CombinedEstimateTests
{
    private static readonly GaugedCylinder Cylinder = GaugeReadingTests.Cylinder("20 lb");

    private static CombinedEstimate Combined(params GaugeReading[] readings) => CombinedEstimate.Of([.. readings.Select(r => r.Estimate(Cylinder))]);

    [Fact]
    public void Weighings_with_one_tare_gain_on_the_scale_alone()
    {
        CombinedEstimate both = Combined(GaugeReadingTests.Weighed("weight 1", 14.0), GaugeReadingTests.Weighed("weight 2", 14.1), GaugeReadingTests.Weighed("weight 3", 14.2));
        Assert.Equal(6.1, both.Mass.Kilograms, 1e-9);
        Assert.Equal(Math.Sqrt(0.09 * 0.09 / 3 + 0.12 * 0.12), both.StandardUncertainty.Kilograms, 1e-9);
        Assert.Null(both.Disagreement);
    }

    [Fact]
    public void A_free_reading_beside_two_weighings_follows_the_closed_form()
    {
        LineReading line = new() { Name = "line", Height_m = 0.19, Level = GaugeReadingTests.At(263.15) };
        ContentsEstimate free = line.Estimate(Cylinder);
        CombinedEstimate all = Combined(GaugeReadingTests.Weighed("weight 1", 14.0), GaugeReadingTests.Weighed("weight 2", 14.1), line);

        // The two weighings are first one reading of 6.05 kg with half the scale's variance and the whole of the tare's; the rest is inverse variance.
        double a = 1 / (0.09 * 0.09 / 2 + 0.12 * 0.12), b = 1 / Math.Pow(free.StandardUncertainty.Kilograms, 2);
        Assert.Equal((a * 6.05 + b * free.Mass.Kilograms) / (a + b), all.Mass.Kilograms, 1e-9);
        Assert.Equal(Math.Sqrt(1 / (a + b)), all.StandardUncertainty.Kilograms, 1e-9);
        Assert.Equal(1, all.Weights.Sum(), 1e-12);
    }

    [Fact]
    public void Levels_share_the_liquid_s_temperature()
    {
        EchoReading echo = new() { Name = "echo", Shown = EchoShown.Time, Value = 3e-4, Level = GaugeReadingTests.At(263.15) };
        ContentsEstimate one = echo.Estimate(Cylinder);
        CombinedEstimate both = CombinedEstimate.Of([one, one]);
        double shared = one.Shares.Where(s => s.Input.Shared).Sum(s => s.Change_kg * s.Change_kg), own = one.Shares.Where(s => !s.Input.Shared).Sum(s => s.Change_kg * s.Change_kg);
        Assert.Equal(Math.Sqrt(shared + own / 2), both.StandardUncertainty.Kilograms, 1e-9);
        Assert.True(both.StandardUncertainty > one.StandardUncertainty / Math.Sqrt(2));
    }

    [Fact]
    public void Readings_that_disagree_name_the_error_that_needs_least()
    {
        // A quarter of an inch on the line is more than an eighth of a kilogram; nearly two kilograms apart, the line is the cheaper reason.
        CombinedEstimate lined = Combined(
            GaugeReadingTests.Weighed("weight", 14), new LineReading { Name = "line", Height_m = 0.12, Level = GaugeReadingTests.At(263.15) });
        Assert.Equal("weight", lined.Disagreement!.More);
        Assert.Equal("line", lined.Disagreement.Cause.Name);
        Assert.True(lined.Disagreement.CauseTimes > 3);

        CombinedEstimate tared = Combined(
            GaugeReadingTests.Weighed("weight", 14), new LineReading { Name = "line", Height_m = 0.14, LineError_m = 0.0005, Level = GaugeReadingTests.At(263.15) });
        Assert.Equal("tare", tared.Disagreement!.Cause.Name);
        Assert.True(tared.Disagreement.CauseTimes > 0);

        // Two weighings share the tare, so it cannot be the reason.
        CombinedEstimate scales = Combined(GaugeReadingTests.Weighed("weight 1", 14), GaugeReadingTests.Weighed("weight 2", 14.6));
        Assert.Equal("scale", scales.Disagreement!.Cause.Name);
    }

    [Fact]
    public void A_reading_without_an_error_of_its_own_is_refused()
        => Assert.Throws<ImpossibleReadingException>(() => Combined(
            new WeightReading { Name = "weight 1", Scale_kg = 14, Tare_kg = 8, ScaleError_kg = 0 },
            new WeightReading { Name = "weight 2", Scale_kg = 14, Tare_kg = 8, ScaleError_kg = 0 }));
}
