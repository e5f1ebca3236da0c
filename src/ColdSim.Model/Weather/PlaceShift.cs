using System.Globalization;
using ColdSim.Model.Site;
using ColdSim.Physics.Flow;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Weather;

/// <summary>Carries weather from where it was measured to where the coach stands; each step is told.</summary>
/// <remarks>
/// The wind is brought to the mast of the model, 10 m up in the open, and no further: shelter at the coach and the cylinder is in the
/// model's own coefficients, and a wind profile here as well would apply it twice.
/// </remarks>
public sealed record PlaceShift
{
    private const double Mast_m = 10;
    private const double Rim_rad = -0.833 * Math.PI / 180;

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

    /// <summary>The weather at the place.</summary>
    /// <param name="rows">As measured.</param>
    /// <param name="site">The place.</param>
    /// <param name="wind_m_s">Stands in where a row has no wind.</param>
    /// <param name="notes">What was done, a sentence each.</param>
    /// <exception cref="ArgumentException">A hollow, and the site has no position.</exception>
    public IReadOnlyList<WeatherRow> Apply(IReadOnlyList<WeatherRow> rows, SiteSpecification site, double wind_m_s, out IReadOnlyList<string> notes)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(site);
        List<string> said = [];
        notes = said;
        if (StationElevation_m is null && WindHeight_m is null && HollowDrop_K <= 0)
            return rows;
        WeatherRow[] shifted = [.. rows];
        if (StationElevation_m is { } station_m)
            Lift(shifted, station_m, site.Elevation_m, said);
        if (WindHeight_m is { } height_m)
            ToMast(shifted, height_m, said);
        if (HollowDrop_K > 0)
            Cool(shifted, site, wind_m_s, said);
        return shifted;
    }

    private void Lift(WeatherRow[] rows, double from_m, double to_m, List<string> said)
    {
        double change_K = -Lapse_K_m * (to_m - from_m);
        double pressures = StandardAtmosphere.Pressure_Pa(to_m) / StandardAtmosphere.Pressure_Pa(from_m);
        for (int i = 0; i < rows.Length; i++)
            rows[i] = Cooled(rows[i], -change_K) with { Pressure_Pa = rows[i].Pressure_Pa * pressures };
        said.Add(Text($"weather: temperature shifted by {change_K:+0.0;-0.0;0.0} K from {from_m:0} m to {to_m:0} m, {Lapse_K_m * 1000:0.##} K per km; pressure likewise, as in the standard atmosphere"));
    }

    private void ToMast(WeatherRow[] rows, double height_m, List<string> said)
    {
        double factor = WindProfile.Factor(Mast_m, Terrain.Open) / WindProfile.Factor(height_m, WindTerrain);
        for (int i = 0; i < rows.Length; i++)
            rows[i] = rows[i] with { Wind_m_s = rows[i].Wind_m_s is { } wind ? Math.Min(100, wind * factor) : null };
        string where = WindTerrain switch { Terrain.OpenWater => "over water", Terrain.Wooded => "among woods", Terrain.City => "in a city", _ => "in the open" };
        said.Add(Text($"weather: wind measured at {height_m:0.#} m {where} brought to 10 m in the open, times {factor:0.00}; shelter at the coach is the model's own"));
    }

    private void Cool(WeatherRow[] rows, SiteSpecification site, double standIn_m_s, List<string> said)
    {
        if (site is not { Latitude_deg: double latitude, Longitude_deg: double longitude })
            throw new ArgumentException("A hollow needs the site's latitude and longitude.", nameof(site));
        int nights = 0, calm = 0;
        List<int> dark = [];
        long night = long.MinValue;
        for (int i = 0; i <= rows.Length; i++)
        {
            long of = i < rows.Length ? SolarNight(rows[i].Time, longitude) : long.MaxValue;
            if (of != night)
            {
                Close();
                night = of;
            }
            if (i < rows.Length && IsDark(rows[i].Time, latitude, longitude))
                dark.Add(i);
        }
        said.Add(Text($"weather: {HollowDrop_K:0.#} K colder from sunset to sunrise in {calm} of {nights} nights, those with a mean wind of at most {HollowCalm_m_s:0.#} m/s, as stated for a hollow"));

        void Close()
        {
            if (dark.Count == 0)
                return;
            nights++;
            if (dark.Average(i => rows[i].Wind_m_s ?? standIn_m_s) <= HollowCalm_m_s)
            {
                calm++;
                foreach (int i in dark)
                    rows[i] = Cooled(rows[i], HollowDrop_K);
            }
            dark.Clear();
        }
    }

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
