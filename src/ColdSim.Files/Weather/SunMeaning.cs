using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>What an irradiance beside a time stands for.</summary>
public enum SunMeaning
{
    /// <summary>The irradiance at that instant.</summary>
    Instant,

    /// <summary>The mean of the hour that ends then.</summary>
    HourBefore,

    /// <summary>The mean of the hour that begins then.</summary>
    HourAfter,
}

/// <summary>Turns means over hours into values at the stamps, so that straight lines between them carry the same energy.</summary>
/// <remarks>The value at a stamp is the mean of the hours on its two sides; for the hour behind it one row waits for the next.</remarks>
/// <param name="meaning">What the file's numbers are.</param>
/// <param name="next">Takes the rows, in order.</param>
internal sealed class SunAtStamps(SunMeaning meaning, RowHandler next)
{
    private WeatherRow? _waiting;
    private double? _before;

    /// <summary>Whether a value was replaced.</summary>
    public bool Changed { get; private set; }

    public void Take(in WeatherRow row)
    {
        switch (meaning)
        {
            case SunMeaning.HourBefore:
                if (_waiting is { } waiting)
                    next(Mean(waiting, row.Time - waiting.Time <= WeatherGaps.Longest ? row.Sun_W_m2 : null));
                _waiting = row;
                break;
            case SunMeaning.HourAfter:
                next(Mean(row, _before));
                _before = row.Sun_W_m2;
                break;
            default:
                next(row);
                break;
        }
    }

    /// <summary>Hands the last row on.</summary>
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
