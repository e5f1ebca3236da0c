using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Commands;

/// <summary>What is reported of a weather file's rows, gathered row by row.</summary>
/// <param name="below_K">The threshold. [K]</param>
/// <param name="nights">Whether its nights are wanted.</param>
internal sealed class WeatherLook(double below_K, bool nights)
{
    private RunningDigest? _digest;
    private RunningNights? _nights;

    /// <summary>What the rows have.</summary>
    public ColumnCounts Has { get; } = new();

    /// <summary>Air over time.</summary>
    public AirCurve Air { get; } = new();

    /// <summary>The rows at a glance; two or more.</summary>
    public WeatherDigest Digest => _digest!.Read();

    /// <summary>The whole nights.</summary>
    public IReadOnlyList<ColdNight> Nights => _nights?.Nights ?? [];

    /// <summary>Takes the next row.</summary>
    /// <param name="row">As it is at the place.</param>
    /// <param name="clock">The clock that noon is read from, the same for all rows.</param>
    public void Take(in WeatherRow row, TimeSpan clock)
    {
        (_digest ??= new RunningDigest(clock, below_K)).Add(row);
        if (nights)
            (_nights ??= new RunningNights(clock)).Add(row);
        Air.Add(row);
        Has.Add(row);
    }
}
