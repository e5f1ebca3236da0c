using ColdSim.Model.Site;
using ColdSim.Physics.Flow;

namespace ColdSim.Model.Weather;

/// <summary>Adjusts weather from where it was measured to the site; each step is reported.</summary>
/// <remarks>
/// The wind is brought to the mast of the model, 10 m up in the open, and no further: shelter at the coach and the cylinder is in the
/// model's own coefficients, and a wind profile here as well would apply it twice.
/// </remarks>
internal sealed record PlaceShift
{
    /// <summary>Where the temperature was measured, above the sea; null shifts nothing. [m]</summary>
    public double? StationElevation_m { get; init; }

    /// <summary>How much colder it is per metre up; the standard atmosphere's unless stated. [K/m]</summary>
    public double Lapse_K_m { get; init; } = 0.0065;

    /// <summary>Height above ground at which the wind was measured; null for the mast's 10 m in the open. [m]</summary>
    public double? WindHeight_m { get; init; }

    /// <summary>The country round the anemometer.</summary>
    public Terrain WindTerrain { get; init; } = Terrain.Open;

    /// <summary>How much colder a hollow is from sunset to sunrise of a calm night. [K]</summary>
    public double HollowDrop_K { get; init; }

    /// <summary>The mean wind up to which a night counts as calm. [m/s]</summary>
    public double HollowCalm_m_s { get; init; } = 2;

    /// <summary>Whether anything is done at all.</summary>
    public bool Changes => StationElevation_m is not null || WindHeight_m is not null || HollowDrop_K > 0;

    /// <summary>The weather at the place.</summary>
    /// <param name="rows">As measured.</param>
    /// <param name="site">The place.</param>
    /// <param name="wind_m_s">Wind assumed where a row has none. [m/s]</param>
    /// <param name="notes">What was done, a sentence each.</param>
    /// <exception cref="ArgumentException">A hollow, and the site has no position.</exception>
    public IReadOnlyList<WeatherRow> Apply(IReadOnlyList<WeatherRow> rows, SiteSpecification site, double wind_m_s, out IReadOnlyList<string> notes)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(site);
        notes = [];
        if (!Changes)
            return rows;
        List<WeatherRow> shifted = new(rows.Count);
        PlaceShifter shifter = new(this, site, wind_m_s, shifted.Add);
        foreach (WeatherRow row in rows)
            shifter.Take(row);
        notes = shifter.Finish();
        return shifted;
    }
}
