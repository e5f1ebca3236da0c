using ColdSim.Files.Weather;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.App.Commands;

/// <summary>The rows of one reading on their way: carried to the place, put on the clock to show, handed on.</summary>
/// <param name="question">What is asked.</param>
/// <param name="next">Receives the rows.</param>
/// <param name="cancel">Ends the reading.</param>
internal sealed class PlacedRows(WeatherQuestion question, Action<WeatherRow> next, CancellationToken cancel) : IRowSink
{
    private const int Often = 1024;

    private readonly List<string> _notes = [];
    private PlaceShifter? _shifter;
    private WeatherSource? _source;
    private TimeSpan? _clock;
    private bool _reclocked;
    private long _rows;

    /// <summary>Rows so far; may be asked from another thread.</summary>
    public long Rows => Volatile.Read(ref _rows);

    /// <summary>The clock that noon is read from; known with the first row.</summary>
    public TimeSpan Clock => _clock ?? TimeSpan.Zero;

    /// <summary>Why the rows cannot be carried to the place; null where they can.</summary>
    public CommandFault? Refusal { get; private set; }

    public void Begin(WeatherSource source)
    {
        _source = source;
        SiteSpecification site = new()
        {
            Elevation_m = question.Elevation_m ?? source.Station.Elevation_m ?? 0,
            Latitude_deg = question.Latitude_deg ?? source.Station.Latitude_deg,
            Longitude_deg = question.Longitude_deg ?? source.Station.Longitude_deg,
        };
        PlaceShift shift = question.Shift;
        if (question.Elevation_m is not null && shift.StationElevation_m is null)
            shift = shift with { StationElevation_m = source.Station.Elevation_m };
        if (question.Elevation_m is not null && shift.StationElevation_m is null)
            Refusal = CommandFault.Input("coldsim: --elevation: the file does not say how high the station is; give --station-elevation");
        else if (shift.HollowDrop_K > 0 && site.Latitude_deg is null)
            Refusal = CommandFault.Input("coldsim: --hollow: the file does not say where the sun sets; give --latitude and --longitude");
        else
            _shifter = new PlaceShifter(shift, site, new WeatherDefaults().Wind_m_s, Hand);
        _reclocked = source.Format.IsInUtc();
        if (_reclocked && question.Request.Offset is null)
            _clock = Meridian(site);
    }

    public void Take(in WeatherRow row)
    {
        if (_rows % Often == 0)
            cancel.ThrowIfCancellationRequested();
        Volatile.Write(ref _rows, _rows + 1);
        _clock ??= question.Request.Offset ?? row.Time.Offset;
        _shifter?.Take(row);
    }

    /// <summary>Hands the last rows on, and says what was done on the way.</summary>
    public IReadOnlyList<string> Finish() => [.. _shifter?.Finish() ?? [], .. _notes];

    private void Hand(WeatherRow row)
        => next(_reclocked && row.Time.Offset != Clock ? row with { Time = row.Time.ToOffset(Clock) } : row);

    // Times in UTC put noon in the small hours; the meridian's clock is near enough to a local one.
    private TimeSpan? Meridian(SiteSpecification site)
    {
        if (site.Longitude_deg is not { } longitude)
        {
            _notes.Add("times are in UTC, and so is noon; --offset states a local clock");
            return null;
        }

        TimeSpan meridian = MeridianClock.Of(longitude);
        _notes.Add($"times are in UTC; shown by the clock of the meridian, UTC{InstantText.OfOffset(meridian)}; --offset states another");
        return meridian;
    }
}
