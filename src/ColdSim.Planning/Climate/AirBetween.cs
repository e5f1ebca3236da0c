using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>Air temperature on the straight line between two rows.</summary>
internal static class AirBetween
{
    public static double At(in WeatherRow before, in WeatherRow after, DateTimeOffset time)
        => before.Air_K + (after.Air_K - before.Air_K) * ((time - before.Time) / (after.Time - before.Time));
}
