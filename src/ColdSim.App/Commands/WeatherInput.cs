using System.CommandLine;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;
using ColdSim.Physics.Units;

namespace ColdSim.App.Commands;

/// <summary>Reads the options of <c>weather</c>; all faults are reported together.</summary>
internal sealed class WeatherInput(ParseResult parsed, WeatherOptions o, IFiles files) : OptionInput(parsed)
{
    // A cold snap of middle latitudes.
    private const int UsualNights = 3;

    private readonly List<FileProblem> _problems = [];

    protected override double Rounding => 1e-9;

    /// <summary>What is asked of a file.</summary>
    /// <exception cref="CommandFault">Something is wrong with the options.</exception>
    public WeatherQuestion Question(string path)
    {
        WeatherRequest request = Request();
        double below_K = Read<UnitsNet.Temperature>(o.Below, QuantityText.TryParseTemperature, t => t.Kelvins, 183.15, 333.15, "-90 to 60 °C") ?? ConversionFactors.ZeroCelsius_K;
        SpellQuestion? spell = Spell();
        (PlaceShift shift, double? elevation_m) = Shift();
        if (Faults.Count + _problems.Count > 0)
            throw CommandFault.Input([.. _problems.Select(p => p.ToString()), .. Faults.Select(f => $"coldsim: {f}"), "See 'coldsim weather --help'."]);
        return new(path, request, below_K, spell, shift, elevation_m, Parsed.GetValue(o.Latitude), Parsed.GetValue(o.Longitude));
    }

    protected override string OutOfRange(string text, string range) => $"{Quote.Of(text)} is out of range; accepted: {range}";

    private WeatherRequest Request()
    {
        WeatherRequest request = Given();
        if (request is { From: { } from, To: { } to } && from.IsNotBefore(to))
            Faults.Add("--from lies after --to, or at it");
        return request;
    }

    private SpellQuestion? Spell()
    {
        string[] asked = [.. new Option[] { o.Night, o.Coldest, o.Spell }.Where(IsGiven).Select(option => option.Name)];
        if (asked.Length > 1)
            Faults.Add($"{asked[0]} and {asked[1]} do not go together: one answer has one list or one pick");
        if (IsGiven(o.Nights) && !IsGiven(o.Spell))
            Faults.Add("--nights goes with --spell");
        if (Parsed.GetValue(o.Coldest) is { } coldest)
            return new(o.Coldest.Name, (int)coldest, null);
        if (Parsed.GetValue(o.Night) is { } night)
            return Picked(o.Night, night, 1);
        return Parsed.GetValue(o.Spell) is { } spell ? Picked(o.Spell, spell, (int)(Parsed.GetValue(o.Nights) ?? UsualNights)) : null;
    }

    private SpellQuestion? Picked(Option option, string text, int nights)
    {
        if (SpellRule.Read(text) is { } rule)
            return new(option.Name, nights, rule);
        Faults.Add($"{option.Name} takes {SpellRule.Accepted}, not '{Quote.Of(text)}'");
        return null;
    }

    /// <summary>The shift without the station's elevation, which the file may state; and the place's elevation.</summary>
    private (PlaceShift Shift, double? Elevation_m) Shift()
    {
        PlaceShift none = new();
        double? elevation_m = Length(o.Elevation, -430, 6000, "-430 to 6,000 m");
        PlaceShift shift = new()
        {
            StationElevation_m = Length(o.StationElevation, -430, 6000, "-430 to 6,000 m"),
            Lapse_K_m = Parsed.GetValue(o.Lapse) / 1000 ?? none.Lapse_K_m,
            WindHeight_m = Length(o.WindHeight, 0.5, 200, "0.5 to 200 m"),
            WindTerrain = Parsed.GetValue(o.WindTerrain) switch { "water" => Terrain.OpenWater, "wooded" => Terrain.Wooded, "city" => Terrain.City, _ => Terrain.Open },
            HollowDrop_K = Read<UnitsNet.TemperatureDelta>(o.Hollow, QuantityText.TryParseTemperatureDelta, d => d.Kelvins, 0, 20, "0 to 20 K") ?? 0,
            HollowCalm_m_s = Read<UnitsNet.Speed>(o.HollowCalm, QuantityText.TryParseSpeed, s => s.MetersPerSecond, 0, 10, "0 to 10 m/s") ?? none.HollowCalm_m_s,
        };
        if (elevation_m is null && (shift.StationElevation_m is not null || Parsed.GetValue(o.Lapse) is not null))
            Faults.Add("--station-elevation and --lapse want --elevation, the place's own");
        if (Parsed.GetValue(o.Latitude) is null != Parsed.GetValue(o.Longitude) is null)
            Faults.Add("--latitude and --longitude belong together");
        return (shift, elevation_m);
    }

    private WeatherRequest Given() => new()
    {
        Format = Format(),
        Offset = Offset(),
        From = Edge(o.From, endOfDay: false),
        To = Edge(o.To, endOfDay: true),
        Bridge = Read<UnitsNet.Duration>(o.Bridge, QuantityText.TryParseDuration, d => d.Hours, 3, 31 * 24, "3 h to 31 d") is { } hours ? TimeSpan.FromHours(hours) : TimeSpan.FromHours(3),
        Year = Parsed.GetValue(o.Year) is { } year ? (int)year : null,
        Map = Map(),
        Near = Parsed.GetValue(o.Latitude) is { } latitude && Parsed.GetValue(o.Longitude) is { } longitude ? (latitude, longitude) : null,
    };

    private WeatherFormat? Format()
    {
        if (Parsed.GetValue(o.Format) is not { } word)
            return null;
        foreach ((string known, WeatherFormat format) in WeatherFormatNames.Choices)
        {
            if (known == word)
                return format;
        }

        IEnumerable<string> words = WeatherFormatNames.Choices.Select(c => c.Name);
        string hint = NearestName.Of(word, words) is { } nearest ? $"did you mean '{nearest}'?" : $"there are {string.Join(", ", words)}";
        Faults.Add($"--format: there is no '{Quote.Of(word)}'; {hint}");
        return null;
    }

    private ColumnMap? Map()
    {
        if (Parsed.GetValue(o.Columns) is not { } path)
            return null;
        if (Parsed.GetValue(o.Format) is not null)
            Faults.Add("--columns and --format do not go together: a file is read by its map or as a known layout");
        if (path.Length == 0)
        {
            Faults.Add("--columns takes a file's name");
            return null;
        }

        (ColumnMap? map, IReadOnlyList<FileProblem> problems) = ColumnsFile.Read(path, files.Open);
        _problems.AddRange(problems);
        return map;
    }

    private TimeSpan? Offset()
    {
        if (Parsed.GetValue(o.Offset) is not { } text)
            return null;
        if (InstantText.TryOffset(text, out TimeSpan offset))
            return offset;
        Faults.Add($"--offset takes an offset from UTC such as \"-07:00\" or Z, not '{Quote.Of(text)}'");
        return null;
    }

    private WindowEdge? Edge(Option<string?> option, bool endOfDay)
    {
        if (Parsed.GetValue(option) is not { } text)
            return null;
        if (WindowEdge.Read(text, endOfDay) is { } edge)
            return edge;
        Faults.Add($"{option.Name} takes a date, perhaps with a time, such as 2025-01-14 or 2025-01-14T16:00-07:00, not '{Quote.Of(text)}'");
        return null;
    }

    private double? Length(Option<string?> option, double low, double high, string limits)
        => Read<UnitsNet.Length>(option, QuantityText.TryParseLength, l => l.Meters, low, high, limits);
}
