using System.CommandLine;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;

namespace ColdSim.App.Commands;

/// <summary>Reads the options of <c>weather</c>; every fault is told at once.</summary>
internal sealed class WeatherInputs(ParseResult parsed, WeatherOptions o)
{
    private const double Zero_K = 273.15;
    private readonly List<string> _faults = [];
    private readonly List<FileProblem> _problems = [];

    private delegate bool Reader<T>(string text, out T value, out string fault);

    public WeatherRequest Request()
    {
        WeatherRequest request = Read();
        if (request is { From: { } from, To: { } to } && from.IsNotBefore(to))
            _faults.Add("--from lies after --to, or at it");
        return request;
    }

    public double Below_K() => Read<UnitsNet.Temperature>(o.Below, QuantityText.TryParseTemperature, t => t.Kelvins, 183.15, 333.15, "-90 to 60 °C") ?? Zero_K;

    public NightWish? Night()
    {
        if (parsed.GetValue(o.Night) is not { } text)
            return null;
        if (NightWish.Read(text) is { } wish)
            return wish;
        _faults.Add($"--night takes {NightWish.Accepted}, not '{text}'");
        return null;
    }

    /// <summary>The shift but for the station's elevation, which the file may tell; and the place's elevation.</summary>
    public (PlaceShift Shift, double? Elevation_m) Shift()
    {
        PlaceShift none = new();
        double? elevation_m = Length(o.Elevation, -430, 6000, "-430 to 6,000 m");
        PlaceShift shift = new()
        {
            StationElevation_m = Length(o.StationElevation, -430, 6000, "-430 to 6,000 m"),
            Lapse_K_m = parsed.GetValue(o.Lapse) / 1000 ?? none.Lapse_K_m,
            WindHeight_m = Length(o.WindHeight, 0.5, 200, "0.5 to 200 m"),
            WindTerrain = parsed.GetValue(o.WindTerrain) switch { "water" => Terrain.OpenWater, "wooded" => Terrain.Wooded, "city" => Terrain.City, _ => Terrain.Open },
            HollowDrop_K = Read<UnitsNet.TemperatureDelta>(o.Hollow, QuantityText.TryParseTemperatureDelta, d => d.Kelvins, 0, 20, "0 to 20 K") ?? 0,
            HollowCalm_m_s = Read<UnitsNet.Speed>(o.HollowCalm, QuantityText.TryParseSpeed, s => s.MetersPerSecond, 0, 10, "0 to 10 m/s") ?? none.HollowCalm_m_s,
        };
        if (elevation_m is null && (shift.StationElevation_m is not null || parsed.GetValue(o.Lapse) is not null))
            _faults.Add("--station-elevation and --lapse want --elevation, the place's own");
        if (parsed.GetValue(o.Latitude) is null != parsed.GetValue(o.Longitude) is null)
            _faults.Add("--latitude and --longitude belong together");
        return (shift, elevation_m);
    }

    /// <summary>Ends the command where anything was wrong.</summary>
    public void Finish()
    {
        if (_faults.Count + _problems.Count > 0)
            throw CommandFault.Input([.. _problems.Select(p => p.ToString()), .. _faults.Select(f => $"coldsim: {f}"), "See 'coldsim weather --help'."]);
    }

    private WeatherRequest Read() => new()
    {
        Format = Format(),
        Offset = Offset(),
        From = Edge(o.From, endOfDay: false),
        To = Edge(o.To, endOfDay: true),
        Bridge = Read<UnitsNet.Duration>(o.Bridge, QuantityText.TryParseDuration, d => d.Hours, 3, 31 * 24, "3 h to 31 d") is { } hours ? TimeSpan.FromHours(hours) : TimeSpan.FromHours(3),
        Year = parsed.GetValue(o.Year) is { } year ? (int)year : null,
        Map = Map(),
    };

    private WeatherFormat? Format()
    {
        if (parsed.GetValue(o.Format) is not { } word)
            return null;
        foreach ((string known, WeatherFormat format) in WeatherFormatNames.Choices)
        {
            if (known == word)
                return format;
        }

        IEnumerable<string> words = WeatherFormatNames.Choices.Select(c => c.Name);
        string hint = NearestName.Of(word, words) is { } nearest ? $"did you mean '{nearest}'?" : $"there are {string.Join(", ", words)}";
        _faults.Add($"--format: there is no '{word}'; {hint}");
        return null;
    }

    private ColumnMap? Map()
    {
        if (parsed.GetValue(o.Columns) is not { } path)
            return null;
        if (parsed.GetValue(o.Format) is not null)
            _faults.Add("--columns and --format do not go together: a file is read by its map or as a known layout");
        if (path.Length == 0)
        {
            _faults.Add("--columns takes a file's name");
            return null;
        }

        (ColumnMap? map, IReadOnlyList<FileProblem> problems) = ColumnsFile.Read(path);
        _problems.AddRange(problems);
        return map;
    }

    private TimeSpan? Offset()
    {
        if (parsed.GetValue(o.Offset) is not { } text)
            return null;
        if (InstantText.TryOffset(text, out TimeSpan offset))
            return offset;
        _faults.Add($"--offset takes an offset from UTC such as \"-07:00\" or Z, not '{text}'");
        return null;
    }

    private WindowEdge? Edge(Option<string?> option, bool endOfDay)
    {
        if (parsed.GetValue(option) is not { } text)
            return null;
        if (WindowEdge.Read(text, endOfDay) is { } edge)
            return edge;
        _faults.Add($"{option.Name} takes a date, perhaps with a time, such as 2025-01-14 or 2025-01-14T16:00-07:00, not '{text}'");
        return null;
    }

    private double? Length(Option<string?> option, double low, double high, string limits)
        => Read<UnitsNet.Length>(option, QuantityText.TryParseLength, l => l.Meters, low, high, limits);

    private double? Read<T>(Option<string?> option, Reader<T> reader, Func<T, double> si, double low, double high, string limits)
    {
        if (parsed.GetValue(option) is not { } text)
            return null;
        if (!reader(text, out T value, out string fault))
        {
            _faults.Add($"{option.Name}: {fault}");
            return null;
        }

        double read = si(value);
        if (read >= low - 1e-9 && read <= high + 1e-9)
            return read;
        _faults.Add($"{option.Name}: {text} is out of range; accepted: {limits}");
        return null;
    }
}
