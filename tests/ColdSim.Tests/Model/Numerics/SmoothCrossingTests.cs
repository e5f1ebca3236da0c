using ColdSim.Model.Numerics;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Numerics;

public class SmoothCrossingTests
{
    private const double Tolerance = 1e-2;

    private sealed class Counted(Func<double, double> f)
    {
        public int Calls { get; private set; }

        public double At(double x)
        {
            Calls++;
            return f(x);
        }
    }

    private readonly struct Wrapped(Counted f) : IFunction
    {
        public double At(double x) => f.At(x);
    }

    private static (double X, int Calls) EventValue(Func<double, double> f, Func<double, double> slope, double b)
    {
        Counted counted = new(f);
        Wrapped wrapped = new(counted);
        return (SmoothCrossing.Past(ref wrapped, f(0), slope(0), b, f(b), slope(b), Tolerance), counted.Calls);
    }

    // Air that a furnace warms and a sensor that follows it: a sum of two exponentials, time constants as coaches have them.
    [Theory]
    [InlineData(3000, 400, 1.5)]
    [InlineData(800, 250, 1.5)]
    [InlineData(250, 180, 3)]
    public void A_sensor_that_warms_through_its_band_is_found_by_a_trial_or_two(double slow_s, double fast_s, double mostOnAverage)
    {
        const int places = 181;
        int trials = 0;
        for (int i = 1; i < places; i++)
        {
            double at = 90.0 * i / places, level = Level(at);
            (double x, int calls) = EventValue(t => Level(t) - level, Slope, 90);
            Assert.InRange(x - at, 0, Tolerance);
            trials += calls;
        }

        Assert.InRange(trials / (places - 1.0), 1, mostOnAverage);

        double Level(double t) => 1 - Math.Exp(-t / slow_s) + 0.3 * (1 - Math.Exp(-t / fast_s));
        double Slope(double t) => Math.Exp(-t / slow_s) / slow_s + 0.3 * Math.Exp(-t / fast_s) / fast_s;
    }

    [Fact]
    public void Slopes_that_mislead_cost_trials_but_not_the_crossing()
        => Gen.Select(Gen.Double[0.02, 0.98], Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[0.3, 2]).Sample((root, slopeA, slopeB, bend) =>
        {
            double at = 90 * root;
            Counted f = new(x => Math.Sinh(bend * (x - at) / 90));
            Wrapped wrapped = new(f);
            double x = SmoothCrossing.Past(ref wrapped, Math.Sinh(-bend * root), slopeA, 90, Math.Sinh(bend * (1 - root)), slopeB, Tolerance);
            Assert.InRange(x - at, 0, 2 * Tolerance);
        }, iter: 5000);

    [Fact]
    public void Start_on_the_crossing_counts_as_past_it()
        => Assert.InRange(EventValue(t => t, _ => 1, 90).X, 0, Tolerance);
}
