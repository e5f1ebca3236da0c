using ColdSim.Model.Site;

namespace ColdSim.Model.Weather;

/// <summary>Weather over time, linear between its rows; knots in seconds since its first row.</summary>
public sealed class WeatherSeries
{
    /// <summary>Builds the series from rows in order of time.</summary>
    /// <param name="rows">At least two, strictly ascending instants.</param>
    /// <param name="defaults">What stands in for missing columns and values.</param>
    /// <param name="site">Elevation for pressure, position for the sun.</param>
    /// <exception cref="ArgumentException">Fewer than two rows, or not ascending.</exception>
    public WeatherSeries(IReadOnlyList<WeatherRow> rows, WeatherDefaults defaults, SiteSpecification site)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(defaults);
        ArgumentNullException.ThrowIfNull(site);
        if (rows.Count < 2)
            throw new ArgumentException("Weather needs at least two rows.", nameof(rows));
        First = rows[0].Time;
        Last = rows[^1].Time;
    }

    /// <summary>Instant of the first row.</summary>
    public DateTimeOffset First { get; }

    /// <summary>Instant of the last row.</summary>
    public DateTimeOffset Last { get; }
}
