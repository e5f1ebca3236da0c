using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Planning.Actions;

/// <summary>The amounts that a person can set or buy, in the units that the person reads.</summary>
/// <param name="Degree_K">Step of a set point. [K]</param>
/// <param name="Zero_K">A set point from which the steps are counted. [K]</param>
/// <param name="Mass_kg">Step of a mass of gas. [kg]</param>
/// <param name="WeatherDegree_K">Step by which a forecast may be colder. [K]</param>
public sealed record AmountGrid(double Degree_K, double Zero_K, double Mass_kg, double WeatherDegree_K)
{
    /// <summary>Whole degrees Fahrenheit and whole pounds.</summary>
    public static AmountGrid Us { get; } = new(
        FahrenheitDegree_K, ZeroFahrenheit_R * FahrenheitDegree_K, Pound_kg, FahrenheitDegree_K);

    /// <summary>Half degrees Celsius and half kilograms; the weather in whole degrees.</summary>
    public static AmountGrid Metric { get; } = new(0.5, ZeroCelsius_K, 0.5, 1);

    /// <summary>The set points below one, the highest first.</summary>
    /// <param name="from_K">The one. [K]</param>
    /// <param name="lowest_K">The lowest. [K]</param>
    public double[] SetPointsBelow(double from_K, double lowest_K)
    {
        int first = (int)Math.Ceiling((from_K - Zero_K) / Degree_K - 1e-6) - 1, last = (int)Math.Ceiling((lowest_K - Zero_K) / Degree_K - 1e-6);
        return [.. Enumerable.Range(0, Math.Max(0, first - last + 1)).Select(i => Zero_K + (first - i) * Degree_K)];
    }

    /// <summary>The amounts from one step up to an end, which is reached by the last of them.</summary>
    /// <param name="from">Where the steps begin; not one of them.</param>
    /// <param name="to">The end.</param>
    /// <param name="step">The step; amounts are whole multiples of it.</param>
    public static double[] Upwards(double from, double to, double step)
    {
        int first = (int)Math.Floor(from / step + 1e-6) + 1, last = (int)Math.Ceiling(to / step - 1e-6);
        return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(i => i * step)];
    }
}
