using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>What the liquid's temperature is known from.</summary>
internal enum TemperatureSource
{
    /// <summary>A thermometer.</summary>
    Thermometer,

    /// <summary>The pressure alone.</summary>
    Pressure,

    /// <summary>Both, which agree.</summary>
    Both,

    /// <summary>The thermometer; the pressure is clearly too low for it.</summary>
    PressureTooLow,

    /// <summary>The thermometer; the pressure is clearly too high for it.</summary>
    PressureTooHigh,
}

/// <summary>The liquid's temperature as the level readings use it: from a thermometer, from the pressure, or from both.</summary>
/// <remarks>
/// Two independent values of one temperature are weighted by inverse variance. Where they differ by more than <see cref="Clear"/> standard uncertainties
/// of their difference, the pressure is not that of propane liquid as warm as the thermometer says, so it is not used.
/// </remarks>
internal sealed record LiquidTemperature
{
    /// <summary>The pressure and the thermometer contradict each other beyond this many standard uncertainties of their difference.</summary>
    public const double Clear = 2;

    /// <summary>The temperature. [K]</summary>
    public required double Temperature_K { get; init; }

    /// <summary>Its standard uncertainty. [K]</summary>
    public required double Error_K { get; init; }

    /// <summary>What it is known from.</summary>
    public required TemperatureSource Source { get; init; }

    /// <summary>What the pressure alone says; null where it says nothing.</summary>
    public PressureTemperature? ByPressure { get; init; }

    /// <summary>What the thermometer alone says; null where none was read. [K]</summary>
    public double? ByThermometer_K { get; init; }

    /// <summary>By how much the pressure's temperature is above the thermometer's, in standard uncertainties of the difference; null without both.</summary>
    public double? Difference { get; init; }

    /// <summary>The temperature from what was read; null where neither says one.</summary>
    /// <param name="thermometer_K">The thermometer's; null without one. [K]</param>
    /// <param name="thermometerError_K">Its standard uncertainty. [K]</param>
    /// <param name="pressure">The pressure; null where none was read.</param>
    public static LiquidTemperature? Of(double? thermometer_K, double thermometerError_K, PressureReading? pressure)
    {
        PressureTemperature? byPressure = pressure is null ? null : PressureTemperature.Of(pressure);
        if (thermometer_K is not double t_K)
        {
            return byPressure is null ? null : new()
            {
                Temperature_K = byPressure.Temperature_K,
                Error_K = byPressure.Error_K,
                Source = TemperatureSource.Pressure,
                ByPressure = byPressure,
            };
        }

        LiquidTemperature alone = new()
        {
            Temperature_K = t_K,
            Error_K = thermometerError_K,
            Source = TemperatureSource.Thermometer,
            ByThermometer_K = t_K,
        };
        return byPressure is null ? alone : alone.With(byPressure);
    }

    private LiquidTemperature With(PressureTemperature byPressure)
    {
        double variance = byPressure.Error_K * byPressure.Error_K + Error_K * Error_K;
        double difference = (byPressure.Temperature_K - Temperature_K) / Math.Sqrt(variance);
        LiquidTemperature both = this with { ByPressure = byPressure, Difference = difference };
        if (difference < -Clear) return both with { Source = TemperatureSource.PressureTooLow };
        if (difference > Clear) return both with { Source = TemperatureSource.PressureTooHigh };
        double weight = Error_K * Error_K / variance;
        return both with
        {
            Temperature_K = Temperature_K + weight * (byPressure.Temperature_K - Temperature_K),
            Error_K = byPressure.Error_K * Error_K / Math.Sqrt(variance),
            Source = TemperatureSource.Both,
        };
    }
}

/// <summary>The temperature of liquid propane that has a pressure.</summary>
/// <param name="Temperature_K">Of pure propane. [K]</param>
/// <param name="Error_K">Its standard uncertainty: the gauge's, and the grade's. [K]</param>
/// <remarks>
/// The grade lets the liquid be anywhere from where 3 % of ethane has that pressure to where 5 % of heavier gas lowers it (see
/// <see cref="PressureReading"/>). The root mean square of an even distribution over that span, about pure propane, counts.
/// </remarks>
internal sealed record PressureTemperature(double Temperature_K, double Error_K)
{
    /// <summary>Reads it off a pressure.</summary>
    /// <param name="reading">The pressure.</param>
    /// <returns>Null where no liquid between -80 and 80 °C has that pressure.</returns>
    public static PressureTemperature? Of(PressureReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        double p_Pa = reading.Gauge_Pa + reading.Air_Pa;
        if (PressureReading.Boiling(p_Pa) is not { } pure || PressureReading.Boiling(p_Pa, PressureReading.Ethane_frac) is not { } lighter
            || PressureReading.Boiling(p_Pa / (1 - PressureReading.Heavier_frac)) is not { } heavier)
            return null;
        double colder_K = lighter.Kelvins - pure.Kelvins, warmer_K = heavier.Kelvins - pure.Kelvins;
        double gradeVariance = (colder_K * colder_K + colder_K * warmer_K + warmer_K * warmer_K) / 3;
        double gauge_K = OffBy_K(p_Pa, reading.GaugeError_Pa, pure);
        return new(pure.Kelvins, Math.Sqrt(gradeVariance + gauge_K * gauge_K));
    }

    // The greater of the changes up and down, as with every other input; at a very low pressure only upwards is there anything to read.
    private static double OffBy_K(double p_Pa, double error_Pa, Temperature at) => Math.Max(
        PressureReading.Boiling(p_Pa + error_Pa) is { } up ? up.Kelvins - at.Kelvins : 0,
        PressureReading.Boiling(p_Pa - error_Pa) is { } down ? at.Kelvins - down.Kelvins : 0);
}
