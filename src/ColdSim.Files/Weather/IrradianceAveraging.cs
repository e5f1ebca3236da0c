using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>The time over which an irradiance is averaged, as seen from its timestamp.</summary>
public enum IrradianceAveraging
{
    /// <summary>The irradiance at that instant.</summary>
    Instantaneous,

    /// <summary>The mean of the hour that ends then.</summary>
    HourEnding,

    /// <summary>The mean of the hour that begins then.</summary>
    HourBeginning,
}

/// <summary>Turns hourly means into values at the timestamps, so that straight lines between them carry the same energy.</summary>
/// <remarks>The value at a timestamp is the mean of the hours on its two sides; for the hour after it one row waits for the next.</remarks>
/// <param name="averaging">The averaging of the file's numbers.</param>
/// <param name="next">Receives the rows, in order.</param>
internal sealed class IrradianceAtTimestamps(IrradianceAveraging averaging, RowHandler next)
{
    private WeatherRow? _waiting;
    private double? _before;

    /// <summary>Whether a value was replaced.</summary>
    public bool Changed { get; private set; }

    public void Take(in WeatherRow row)
    {
        switch (averaging)
        {
            case IrradianceAveraging.HourEnding:
                if (_waiting is { } waiting)
                    next(Mean(waiting, row.Time - waiting.Time <= WeatherGaps.Longest ? row.Sun_W_m2 : null));
                _waiting = row;
                break;
            case IrradianceAveraging.HourBeginning:
                next(Mean(row, _before));
                _before = row.Sun_W_m2;
                break;
            default:
                next(row);
                break;
        }
    }

    /// <summary>Passes on the last row.</summary>
    public void Finish()
    {
        if (_waiting is { } last)
            next(last);
        _waiting = null;
    }

    private WeatherRow Mean(in WeatherRow row, double? other)
    {
        if (row.Sun_W_m2 is not { } own || other is not { } beside)
            return row;
        Changed = true;
        return row with { Sun_W_m2 = (own + beside) / 2 };
    }
}
