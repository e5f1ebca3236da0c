using ColdSim.Model.Numerics;
using ColdSim.Model.Thermostat;
using Xunit;

namespace ColdSim.Tests.Model.Thermostat;

public class SensorLagTests
{
    private const double Air_K = 290, Sensor_K = 284;

    public static TheoryData<double> Ratios => [1e-6, 0.01, 0.2, 0.3, 0.999, 1.001, 2, 7, 40];

    [Theory]
    [MemberData(nameof(Ratios))]
    public void In_steady_air_it_comes_closer_by_an_exponential(double ratio)
        => Assert.Equal(Air_K + (Sensor_K - Air_K) * Math.Exp(-ratio), SensorLag.After_K(Sensor_K, ratio, Air_K, default), 1e-12);

    // Air a0 + r·t: in the end the sensor is behind by the lag; here over a step of length 1, so that the lag is 1/ratio.
    [Theory]
    [MemberData(nameof(Ratios))]
    public void Behind_air_that_rises_evenly_it_is_late_by_the_lag(double ratio)
    {
        const double rise_K = 3;
        double lag = 1 / ratio, expected_K = Air_K + rise_K * (1 - lag) + (Sensor_K - Air_K + rise_K * lag) * Math.Exp(-ratio);
        Assert.Equal(expected_K, SensorLag.After_K(Sensor_K, ratio, Air_K, new Quartic(rise_K, 0, 0, 0)), 1e-13 * (1 + rise_K * lag) + 1e-12);
    }

    // Two halves of a step are the whole step, for a polynomial of any coefficients: the second begins where the first ends.
    [Theory]
    [MemberData(nameof(Ratios))]
    public void Two_halves_of_a_step_make_the_whole(double ratio)
    {
        Quartic air = new(4, -6, 3, 1.5);
        double middle_K = SensorLag.After_K(Sensor_K, 0.5 * ratio, Air_K, air.Over(0, 0.5));
        double end_K = SensorLag.After_K(middle_K, 0.5 * ratio, Air_K + air.At(0.5), air.Over(0.5, 0.5));
        Assert.Equal(end_K, SensorLag.After_K(Sensor_K, ratio, Air_K, air), 1e-11);
    }

    // By parts, for a power k of the time alone and lag 1: S(h) = Σ (−1)ʲ k!/(k−j)! hᵏ⁻ʲ − (−1)ᵏ k! e⁻ʰ.
    [Theory]
    [InlineData(1, 5.0)]
    [InlineData(2, 5.0)]
    [InlineData(3, 5.0)]
    [InlineData(4, 5.0)]
    [InlineData(3, 0.8)]
    [InlineData(4, 0.8)]
    public void Air_that_rises_with_a_power_of_time_gives_the_integral_by_parts(int power, double time)
    {
        double expected = 0, factor = 1;
        for (int j = 0; j <= power; j++)
        {
            expected += factor * Math.Pow(time, power - j);
            factor *= -(power - j);
        }

        double factorial = Enumerable.Range(1, power).Aggregate(1.0, (product, i) => product * i);
        expected -= (power % 2 == 0 ? 1 : -1) * factorial * Math.Exp(-time);
        double top = Math.Pow(time, power);
        Quartic air = new(power == 1 ? top : 0, power == 2 ? top : 0, power == 3 ? top : 0, power == 4 ? top : 0);
        Assert.Equal(expected, SensorLag.After_K(0, time, 0, air), 1e-11 * Math.Max(1, top));
    }
}
