namespace ColdSim.Planning.Limits;

/// <summary>The lows that are tried: from the warmest downwards by even steps, so that what is stated is what was run.</summary>
/// <param name="Warmest_K">The warmest night's low. [K]</param>
/// <param name="Step_K">From one to the next, the tolerance of every limit. [K]</param>
/// <param name="Steps">How many steps there are.</param>
public sealed record LimitAxis(double Warmest_K, double Step_K, int Steps)
{
    /// <summary>15 to -50 °C by half degrees.</summary>
    public static LimitAxis Celsius { get; } = new(273.15 + 15, 0.5, 130);

    /// <summary>59 to -58 °F by whole degrees, which is the same range.</summary>
    public static LimitAxis Fahrenheit { get; } = new(273.15 + 15, 1 / 1.8, 117);

    /// <summary>The coldest night's low. [K]</summary>
    public double Coldest_K => Low_K(Steps);

    /// <summary>The low after so many steps. [K]</summary>
    public double Low_K(int step) => Warmest_K - step * Step_K;
}
