using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Model;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Ensemble;

/// <summary>The errors that members are given.</summary>
public class ErrorGridTests
{
    private const int Members = 6000;

    // The first numbers from the seed 1234567, from memory of the algorithm's published examples.
    [Theory]
    [InlineData(0, 6457827717110365317)]
    [InlineData(1, 3203168211198807973)]
    [InlineData(2, 9817491932198370423)]
    [InlineData(3, 4593380528125082431)]
    public void The_counter_is_mixed_as_published(ulong place, ulong number) => Assert.Equal(number, CounterRandom.Number(1234567, place));

    [Fact]
    public void Every_number_lies_between_none_and_all()
        => Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[0, 100_000], Gen.Int[0, 7], Gen.Int[0, 10_000]).Sample((seed, member, purpose, place) =>
        {
            double u = CounterRandom.Of(seed, member).Uniform((CounterRandom.Purpose)purpose, place);
            return u is > 0 and < 1;
        });

    [Fact]
    public void The_spread_of_the_temperature_grows_with_lead_as_asked()
    {
        ErrorSizes sizes = new() { Temperature = new(2, ""), TemperatureGrowth = new(0.5, ""), Tail = new(12, "") };
        double[][] paths = Paths(sizes);

        // With 12 degrees of freedom kurtosis is 3.75, so the relative error of the variance is sqrt(2.75 / n); four of them.
        double within = 4 * Math.Sqrt(2.75 / Members);
        foreach (int hour in (int[])[0, 12, 24, 48, 72])
        {
            double asked_K = 2 + 0.5 * (hour / 24.0 - 1);
            double variance = paths.Average(p => p[hour] * p[hour]);
            Assert.InRange(variance / (asked_K * asked_K), 1 - within, 1 + within);
            Assert.InRange(paths.Average(p => p[hour]) / asked_K, -4 / Math.Sqrt(Members), 4 / Math.Sqrt(Members));
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    [InlineData(24)]
    [Trait("Category", "Slow")]
    public void The_correlation_in_time_is_as_asked(int hours)
    {
        ErrorSizes sizes = new() { CorrelationTime = new(24 * 3600, ""), Tail = new(1000, "") };
        double[][] paths = Paths(sizes);
        double asked = Math.Exp(-hours / 24.0);
        double xx = paths.Sum(p => p[30] * p[30]), yy = paths.Sum(p => p[30 + hours] * p[30 + hours]), xy = paths.Sum(p => p[30] * p[30 + hours]);
        Assert.Equal(asked, xy / Math.Sqrt(xx * yy), 4 * (1 - asked * asked) / Math.Sqrt(Members));
    }

    [Fact]
    public void The_usual_tails_are_about_those_of_day_ahead_forecasts()
    {
        double[][] paths = Paths(new ErrorSizes());
        Assert.InRange(paths.Average(p => Math.Abs(p[24]) <= 3 / 1.8 ? 1.0 : 0), 0.64, 0.74);
        Assert.InRange(paths.Average(p => Math.Abs(p[24]) >= 10 / 1.8 ? 1.0 : 0), 0.01, 0.03);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_winds_logarithm_has_the_spread_that_is_asked()
    {
        double[] path = new double[Grid(new()).Count];
        double[] last = [.. Enumerable.Range(0, Members).Select(i =>
        {
            Grid(new()).Wind(CounterRandom.Of(1, i), 0.4, path);
            return path[^1];
        })];
        Assert.Equal(0.4, Math.Sqrt(last.Average(x => x * x)), 4 * 0.4 / Math.Sqrt(2 * Members));
    }

    [Fact]
    public void Shifted_air_keeps_its_relative_humidity_within_a_few_parts_in_a_hundred()
    {
        WeatherSeries weather = new([new(Rigs.Start, 265, 3, 261), new(Rigs.Start.AddHours(1), 265, 3, 261)], new WeatherDefaults(), new());
        ShiftedWeather shifted = new(weather);
        double Humidity(double warmer_K)
        {
            shifted.Shift(0, warmer_K, 1.5);
            int row = 0;
            WeatherSample s = shifted.Series.At(0, ref row);
            Assert.Equal(265 + warmer_K, s.Air_K, 9);
            Assert.Equal(4.5, s.Wind_m_s, 9);
            Assert.True(s.Sky_K < s.Air_K);
            return s.VapourPressure_Pa / SaturationVapour.PressureOverWater_Pa(s.Air_K);
        }

        double plain = Humidity(0);
        Assert.All((double[])[-12, -3, 3, 12], warmer_K => Assert.Equal(plain, Humidity(warmer_K), 0.04));
        shifted.Shift(0, 0, 1);
        int first = 0, again = 0;
        Assert.Equal(weather.At(0, ref first), shifted.Series.At(0, ref again));
    }

    private static ErrorGrid Grid(ErrorSizes sizes) => new([Rigs.Changing(_ => -5, 80)], Rigs.Start, Rigs.Start.AddHours(80), sizes);

    private static double[][] Paths(ErrorSizes sizes)
    {
        ErrorGrid grid = Grid(sizes);
        double[][] paths = new double[Members][];
        for (int i = 0; i < Members; i++)
        {
            CounterRandom numbers = CounterRandom.Of(1, i);
            grid.Temperature(numbers, numbers.TailScale(sizes.Tail.Value), paths[i] = new double[grid.Count]);
        }

        return paths;
    }
}
