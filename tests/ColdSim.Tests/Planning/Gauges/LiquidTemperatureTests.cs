using ColdSim.Physics.Propane;
using ColdSim.Planning.Gauges;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Gauges;

public class LiquidTemperatureTests
{
    private const double Air_Pa = 101_325, T_K = 258.15;

    private static PressureReading Read(double gauge_Pa, double error_Pa = 5000) => new() { Gauge_Pa = gauge_Pa, GaugeError_Pa = error_Pa, Air_Pa = Air_Pa };

    private static double Saturation_Pa(double t_K) => PropaneSaturation.Pressure_Pa(t_K) - Air_Pa;

    [Fact]
    public void The_pressure_of_pure_propane_gives_its_temperature_back()
        => Gen.Double[235, 310].Sample(t_K => Assert.Equal(t_K, LiquidTemperature.Of(null, 5, Read(Saturation_Pa(t_K)))!.Temperature_K, 1e-6), iter: 50);

    [Fact]
    public void Without_a_thermometer_the_grade_is_most_of_the_error_and_less_than_a_guess_of_9_F()
    {
        LiquidTemperature known = LiquidTemperature.Of(null, 5, Read(Saturation_Pa(T_K), 1))!;
        Assert.Equal(TemperatureSource.Pressure, known.Source);

        // Three per cent of ethane puts the same pressure some 4 K lower, five per cent of heavier gas some 1.5 K higher, from propane's own curve.
        double colder_K = T_K - Boils_K(Saturation_Pa(T_K) + Air_Pa, 0.03), warmer_K = Boils_K((Saturation_Pa(T_K) + Air_Pa) / 0.95, 0) - T_K;
        Assert.Equal(Math.Sqrt((colder_K * colder_K - colder_K * warmer_K + warmer_K * warmer_K) / 3), known.Error_K, 1e-3);
        Assert.InRange(known.Error_K, 1, 5);
    }

    [Fact]
    public void Two_that_agree_are_weighted_by_inverse_variance()
    {
        LiquidTemperature both = LiquidTemperature.Of(T_K + 1, 2, Read(Saturation_Pa(T_K)))!;
        double u_K = both.ByPressure!.Error_K, weight = 4 / (4 + u_K * u_K);
        Assert.Equal(TemperatureSource.Both, both.Source);
        Assert.Equal(T_K + 1 - weight, both.Temperature_K, 1e-6);
        Assert.Equal(1 / Math.Sqrt(1 / 4.0 + 1 / (u_K * u_K)), both.Error_K, 1e-9);
        Assert.True(both.Error_K < Math.Min(2, u_K));
    }

    [Theory]
    [InlineData(-25, TemperatureSource.PressureTooLow)]
    [InlineData(25, TemperatureSource.PressureTooHigh)]
    public void A_pressure_that_contradicts_the_thermometer_is_not_used(double off_K, object source)
    {
        LiquidTemperature known = LiquidTemperature.Of(T_K, 2, Read(Saturation_Pa(T_K + off_K)))!;
        Assert.Equal(source, known.Source);
        Assert.Equal((T_K, 2), (known.Temperature_K, known.Error_K));
        Assert.Equal(Math.Sign(off_K), Math.Sign(known.Difference!.Value));
        Assert.True(Math.Abs(known.Difference.Value) > LiquidTemperature.Clear);
    }

    [Fact]
    public void A_level_with_a_pressure_is_surer_than_with_a_guess_and_means_the_same_mass()
    {
        GaugedCylinder cylinder = GaugeReadingTests.Cylinder("20 lb");
        LiquidTemperature known = LiquidTemperature.Of(null, 5, Read(Saturation_Pa(T_K)))!;
        ContentsEstimate By(double t_K, double error_K) => new EchoReading
        {
            Name = "echo",
            Shown = EchoShown.PartOfFull,
            Value = 0.4,
            Level = new() { Temperature_K = t_K, TemperatureError_K = error_K },
        }.Estimate(cylinder);
        ContentsEstimate guessed = By(T_K, 5), read = By(known.Temperature_K, known.Error_K);
        Assert.Equal(guessed.Mass.Kilograms, read.Mass.Kilograms, 1e-6);
        double Share(ContentsEstimate e) => Math.Abs(e.Shares.Single(s => s.Input.Name == "liquid temperature").Change_kg);
        Assert.True(Share(read) < 0.7 * Share(guessed), $"{Share(guessed)} {Share(read)}");
    }

    [Fact]
    public void Without_either_nothing_is_known() => Assert.Null(LiquidTemperature.Of(null, 5, null));

    // By bisection of propane's own curve, apart from the reading's own search.
    private static double Boils_K(double p_Pa, double ethane_frac)
    {
        double low_K = 200, high_K = 330;
        for (int i = 0; i < 60; i++)
        {
            double middle_K = 0.5 * (low_K + high_K);
            (low_K, high_K) = PressureReading.WithEthane_Pa(middle_K, ethane_frac) < p_Pa ? (middle_K, high_K) : (low_K, middle_K);
        }

        return low_K;
    }
}
