using ColdSim.Planning.Gauges;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Gauges;

public class RepetitionTests
{
    private static readonly GaugedCylinder Cylinder = GaugeReadingTests.Cylinder("20 lb");

    private static CombinedEstimate Combined(params GaugeReading[] readings) => CombinedEstimate.Of([.. readings.Select(r => r.Estimate(Cylinder))]);

    private static LineReading Line(string name, double height_m) => new() { Name = name, Height_m = height_m, Level = GaugeReadingTests.At(263.15) };

    private static EchoReading Echo(double time_s) => new() { Name = "echo", Shown = EchoShown.Time, Value = time_s, Level = GaugeReadingTests.At(263.15) };

    [Fact]
    public void A_single_reading_has_nothing_to_compare_a_repetition_with() => Assert.Null(Combined(GaugeReadingTests.Weighed("weight", 14)).Repetition);

    [Fact]
    public void What_a_repetition_brings_is_what_reading_it_once_more_brings()
        => Gen.Select(Gen.Double[10, 15], Gen.Double[0.1, 0.2], Gen.Double[2e-4, 4e-4], Gen.Int[0, 2]).Sample(
            (scale_kg, height_m, time_s, again) =>
            {
                GaugeReading[] readings = [GaugeReadingTests.Weighed("weight", scale_kg), Line("line", height_m), Echo(time_s)];
                Repetition next = Combined(readings).Repetition!;
                CombinedEstimate with = Combined([.. readings, readings[again]]);
                Assert.Equal(with.StandardUncertainty.Kilograms, next.Repeated_kg[again], 1e-12);
            },
            iter: 100);

    [Fact]
    public void Reading_the_same_again_narrows_and_never_below_what_the_readings_share()
        => Gen.Select(Gen.Double[0.1, 0.2], Gen.Int[2, 60]).Sample(
            (height_m, times) =>
            {
                ContentsEstimate one = Line("line", height_m).Estimate(Cylinder);
                double shared_kg = Math.Sqrt(one.Shares.Where(s => s.Input.Shared).Sum(s => s.Change_kg * s.Change_kg));
                double before_kg = one.StandardUncertainty.Kilograms, after_kg = CombinedEstimate.Of([.. Enumerable.Repeat(one, times)]).StandardUncertainty.Kilograms;
                double fewer_kg = CombinedEstimate.Of([.. Enumerable.Repeat(one, times - 1)]).StandardUncertainty.Kilograms;
                Assert.True(after_kg < before_kg && after_kg < fewer_kg, $"{before_kg} {fewer_kg} {after_kg}");
                Assert.True(after_kg > shared_kg, $"{after_kg} is below {shared_kg}");
            },
            iter: 50);

    [Fact]
    public void The_one_to_repeat_narrows_the_result_most()
    {
        Repetition next = Combined(GaugeReadingTests.Weighed("weight", 14), Line("line", 0.185), Echo(3.5e-4)).Repetition!;
        Assert.Equal(RepeatReason.Narrows, next.Reason);
        Assert.Equal(next.Repeated_kg.Min(), next.Repeated_kg[next.Reading]);
        Assert.All(next.FromOthers, off => Assert.InRange(off, -Repetition.Outlier, Repetition.Outlier));
    }

    [Fact]
    public void A_reading_that_all_others_contradict_is_the_one_to_repeat_whatever_it_counts()
    {
        Repetition next = Combined(
            GaugeReadingTests.Weighed("weight 1", 14), GaugeReadingTests.Weighed("weight 2", 14.05), Line("line", 0.10), Echo(3.6e-4)).Repetition!;
        Assert.Equal(RepeatReason.Outlier, next.Reason);
        Assert.Equal(2, next.Reading);
        Assert.True(next.FromOthers[2] < -Repetition.Outlier);
    }

    [Fact]
    public void A_reading_against_all_others_follows_the_closed_form_of_two_free_ones()
    {
        ContentsEstimate weight = GaugeReadingTests.Weighed("weight", 14).Estimate(Cylinder), line = Line("line", 0.15).Estimate(Cylinder);
        double apart = (weight.Mass.Kilograms - line.Mass.Kilograms)
            / Math.Sqrt(Math.Pow(weight.StandardUncertainty.Kilograms, 2) + Math.Pow(line.StandardUncertainty.Kilograms, 2));
        Repetition next = CombinedEstimate.Of([weight, line]).Repetition!;
        Assert.Equal(apart, next.FromOthers[0], 1e-9);
        Assert.Equal(-apart, next.FromOthers[1], 1e-9);
    }

    [Fact]
    public void Of_two_that_contradict_each_other_the_less_certain_one_is_repeated()
    {
        Repetition next = Combined(GaugeReadingTests.Weighed("weight", 14), Line("line", 0.08)).Repetition!;
        Assert.Equal(RepeatReason.Outlier, next.Reason);
        Assert.Equal(1, next.Reading);
    }

    [Fact]
    public void Where_the_tare_makes_most_of_the_error_weighing_again_is_not_advised()
    {
        WeightReading[] weighings = [.. Enumerable.Range(1, 4).Select(i => new WeightReading { Name = $"weight {i}", Scale_kg = 14, ScaleError_kg = 0.03, Tare_kg = 8, TareError_kg = 0.2 })];
        Repetition next = Combined(weighings).Repetition!;
        Assert.Equal(RepeatReason.SharedError, next.Reason);
        Assert.Equal("tare", next.Shared!.Name);
    }
}
