using System.Globalization;
using ColdSim.Model.Site;
using ColdSim.Physics.Flow;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Weather;

/// <summary>Carries weather to the place row by row; a hollow holds the rows of one night, until it is known whether that was calm.</summary>
internal sealed class PlaceShifter
{
    private const double Mast_m = 10;
    private const double Rim_rad = -0.833 * Math.PI / 180;

    private readonly PlaceShift _shift;
    private readonly SiteSpecification _site;
    private readonly double _standIn_m_s;
    private readonly Action<WeatherRow> _next;
    private readonly double _colder_K;
    private readonly double _pressures;
    private readonly double _winds;
    private readonly List<(WeatherRow Row, bool Dark)> _night = [];
    private long _of = long.MinValue;
    private int _nights;
    private int _calm;

    /// <summary>A shifter of the rows of one weather.</summary>
    /// <param name="shift">Shifts to apply.</param>
    /// <param name="site">The place.</param>
    /// <param name="wind_m_s">Wind assumed where a row has none. [m/s]</param>
    /// <param name="next">Takes the rows as they are at the place, in order.</param>
    /// <exception cref="ArgumentException">A hollow, and the site has no position.</exception>
    public PlaceShifter(PlaceShift shift, SiteSpecification site, double wind_m_s, Action<WeatherRow> next)
    {
        ArgumentNullException.ThrowIfNull(shift);
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(next);
        if (shift.HollowDrop_K > 0 && site is not { Latitude_deg: not null, Longitude_deg: not null })
            throw new ArgumentException("A hollow needs the site's latitude and longitude.", nameof(site));
        (_shift, _site, _standIn_m_s, _next) = (shift, site, wind_m_s, next);
        if (shift.StationElevation_m is { } from_m)
        {
            _colder_K = shift.Lapse_K_m * (site.Elevation_m - from_m);
            _pressures = StandardAtmosphere.Pressure_Pa(site.Elevation_m) / StandardAtmosphere.Pressure_Pa(from_m);
        }

        if (shift.WindHeight_m is { } height_m)
            _winds = WindProfile.Factor(Mast_m, Terrain.Open) / WindProfile.Factor(height_m, shift.WindTerrain);
    }

    /// <summary>Takes the next row as it was measured.</summary>
    public void Take(in WeatherRow measured)
    {
        WeatherRow row = measured;
        if (_shift.StationElevation_m is not null)
            row = Cooled(row, _colder_K) with { Pressure_Pa = row.Pressure_Pa * _pressures };
        if (_shift.WindHeight_m is not null)
            row = row with { Wind_m_s = row.Wind_m_s is { } wind ? Math.Min(100, wind * _winds) : null };
        if (_shift.HollowDrop_K <= 0)
        {
            _next(row);
            return;
        }

        long night = SolarNight(row.Time, _site.Longitude_deg!.Value);
        if (night != _of)
            Close();
        _of = night;
        _night.Add((row, IsDark(row.Time, _site.Latitude_deg!.Value, _site.Longitude_deg.Value)));
    }

    /// <summary>Hands the last rows on, and says what was done, a sentence each.</summary>
    public IReadOnlyList<string> Finish()
    {
        Close();
        List<string> said = [];
        if (_shift.StationElevation_m is { } from_m)
            said.Add(Text($"weather: temperature shifted by {-_colder_K:+0.0;-0.0;0.0} K from {from_m:0} m to {_site.Elevation_m:0} m, {_shift.Lapse_K_m * 1000:0.##} K per km; pressure likewise, as in the standard atmosphere"));
        if (_shift.WindHeight_m is { } height_m)
            said.Add(Text($"weather: wind measured at {height_m:0.#} m {Where(_shift.WindTerrain)} brought to 10 m in the open, times {_winds:0.00}; shelter at the coach is the model's own"));
        if (_shift.HollowDrop_K > 0)
            said.Add(Text($"weather: {_shift.HollowDrop_K:0.#} K colder from sunset to sunrise in {_calm} of {_nights} nights, those with a mean wind of at most {_shift.HollowCalm_m_s:0.#} m/s, as stated for a hollow"));
        return said;
    }

    private void Close()
    {
        bool calm = false;
        if (_night.Exists(n => n.Dark))
        {
            _nights++;
            calm = _night.Where(n => n.Dark).Average(n => n.Row.Wind_m_s ?? _standIn_m_s) <= _shift.HollowCalm_m_s;
            _calm += calm ? 1 : 0;
        }

        foreach ((WeatherRow row, bool dark) in _night)
            _next(calm && dark ? Cooled(row, _shift.HollowDrop_K) : row);
        _night.Clear();
    }

    private static string Where(Terrain terrain) => terrain switch
    {
        Terrain.OpenWater => "over water",
        Terrain.Wooded => "among woods",
        Terrain.City => "in a city",
        _ => "in the open",
    };

    // Air that cools below its dew point gives its moisture off; the dew point follows.
    private static WeatherRow Cooled(WeatherRow row, double by_K)
    {
        double air_K = row.Air_K - by_K;
        return row with { Air_K = air_K, DewPoint_K = row.DewPoint_K is { } dew_K ? Math.Min(dew_K, air_K) : null };
    }

    private static bool IsDark(DateTimeOffset time, double latitude, double longitude)
    {
        DateTimeOffset utc = time.ToUniversalTime();
        return SunPosition.At(utc.DayOfYear, DateTime.IsLeapYear(utc.Year) ? 366 : 365, utc.TimeOfDay.TotalHours, latitude, longitude).Altitude_rad < Rim_rad;
    }

    // From one noon by the sun to the next.
    private static long SolarNight(DateTimeOffset time, double longitude)
        => (long)Math.Floor((time.UtcTicks / (double)TimeSpan.TicksPerDay) + (longitude / 360) - 0.5);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
