using ColdSim.Files.Weather;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Decides what carries weather from its station to the place, and does it; a temperature is shifted only between two heights that are given.</summary>
internal sealed class StationShift
{
    // Between what a place may be high; files mark a height that is not known by one beyond.
    private const double Lowest_m = -430, Highest_m = 6000;

    private readonly SectionReader _section;
    private readonly PlaceShift _shift;

    /// <summary>Decides it.</summary>
    /// <param name="section"><c>[weather]</c>.</param>
    /// <param name="shift">What is asked for; its height of the station is the one that the scenario gives.</param>
    /// <param name="given">The place as far as the scenario gives it.</param>
    /// <param name="station">What the file says of itself.</param>
    /// <param name="instead">Whether the file takes the place of the scenario's, so that the scenario says nothing of its station.</param>
    public StationShift(SectionReader section, PlaceShift shift, GivenPlace given, WeatherStation station, bool instead)
    {
        _section = section;
        Station = station with { Elevation_m = shift.StationElevation_m ?? (station.Elevation_m is >= Lowest_m and <= Highest_m ? station.Elevation_m : null) };
        Site = given.Completed(Station);
        bool lapse = section.Has(WeatherKeys.Lapse), asked = lapse || shift.StationElevation_m is not null;
        IsShifted = asked && given.HasElevation && Station.Elevation_m is not null;
        _shift = shift with { StationElevation_m = IsShifted ? Station.Elevation_m : null };
        if (!asked || IsShifted)
            return;
        if (Station.Elevation_m is { } own_m)
            section.Reading.Assume($"weather: not shifted: [place] gives no elevation, so the place is as high as the weather's, {own_m:0} m");
        else if (instead)
            section.Reading.Assume($"weather: not shifted: the file does not say how high its station is");
        else
            section.Report(WeatherKeys.Lapse, "'lapse' without the station's elevation, which the file does not say", "accepted: 'station_elevation' beside it");
    }

    /// <summary>Where the weather is from, with the height that the scenario gives it.</summary>
    public WeatherStation Station { get; }

    /// <summary>The place, with the weather's own height and position where the scenario gives none.</summary>
    public SiteSpecification Site { get; }

    /// <summary>Whether the temperature is shifted.</summary>
    public bool IsShifted { get; }

    /// <summary>The rows as they are at the place; what was done is named among the assumptions.</summary>
    /// <param name="rows">As they were read.</param>
    /// <param name="wind_m_s">Wind assumed where a row has none. [m/s]</param>
    public IReadOnlyList<WeatherRow> Apply(IReadOnlyList<WeatherRow> rows, double wind_m_s)
    {
        if (_shift.HollowDrop_K > 0 && Site.Latitude_deg is null)
        {
            _section.Report(WeatherKeys.Hollow, "'hollow' needs to know when the sun sets", "accepted: latitude and longitude under [place]");
            return rows;
        }

        IReadOnlyList<WeatherRow> carried = _shift.Apply(rows, Site, wind_m_s, out IReadOnlyList<string> notes);
        _section.Reading.Assumptions.AddRange(notes);
        return carried;
    }
}
