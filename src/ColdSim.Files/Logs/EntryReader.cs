using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Files.Logs;

/// <summary>The columns of a log in their order.</summary>
internal enum LogField
{
    /// <summary>The time of the reading.</summary>
    Time,

    /// <summary>The cylinder's name.</summary>
    Cylinder,

    /// <summary>The method of reading.</summary>
    Method,

    /// <summary>The value that was read.</summary>
    Reading,

    /// <summary>The liquid's temperature.</summary>
    Temperature,

    /// <summary>Further data of the reading.</summary>
    Details,

    /// <summary>Free text.</summary>
    Note,
}

/// <summary>One fault of an entry.</summary>
/// <param name="Field">The column.</param>
/// <param name="Detail">The detail's name, or empty.</param>
/// <param name="What">What was found.</param>
/// <param name="Accepted">What is accepted, or null.</param>
/// <param name="Nearest">The nearest name, or null.</param>
internal sealed record EntryFault(LogField Field, string Detail, string What, string? Accepted, string? Nearest = null)
{
    /// <summary>The option of <c>coldsim log add</c> that the fault belongs to, then what is wrong.</summary>
    /// <param name="method">The entry's method.</param>
    public string AsOption(string method)
    {
        string option = Field switch
        {
            LogField.Reading => $"--{method}: ",
            LogField.Temperature => "--temperature: ",
            LogField.Details => $"--{Detail}: ",
            _ => "",
        };
        return $"{option}{What}{(Accepted is null ? "" : $"; {Accepted}")}{(Nearest is null ? "" : $"; did you mean '{Nearest}'?")}";
    }
}

/// <summary>Turns one entry into a reading; used both for a line about to be written and for one read back.</summary>
/// <param name="entry">The entry.</param>
/// <param name="cylinder">The scenario's cylinder.</param>
internal sealed class EntryReader(LogEntry entry, CylinderSpecification cylinder)
{
    private const double RestedError_K = 4 * FahrenheitDegree_K;
    private const double DrawnError_K = 9 * FahrenheitDegree_K;
    private readonly List<EntryFault> _faults = [];

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<EntryFault> Faults => _faults;

    /// <summary>The reading that an entry is, or everything that is wrong with it.</summary>
    /// <param name="entry">What somebody entered.</param>
    /// <param name="rig">Whose cylinder was read.</param>
    public static (LogReading? Reading, IReadOnlyList<EntryFault> Faults) Read(LogEntry entry, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(rig);
        if (LogCylinders.PlaceOf(rig, entry.Cylinder) is not { } place)
            return (null, [new EntryFault(LogField.Cylinder, "", $"a cylinder called '{Quote.Of(entry.Cylinder)}'", LogCylinders.Accepted(rig))]);
        EntryReader reader = new(entry with { Cylinder = rig.Cylinders[place].Name }, rig.Cylinders[place]);
        LogReading? reading = reader.Read(0);
        return (reading is null ? null : reading with { Cylinder = place }, reader.Faults);
    }

    /// <summary>The reading, or null where there are faults.</summary>
    /// <param name="line">Its line in the log.</param>
    public LogReading? Read(int line)
    {
        if (!entry.Cylinder.Equals(cylinder.Name, StringComparison.OrdinalIgnoreCase))
            Fault(LogField.Cylinder, $"a cylinder called '{Quote.Of(entry.Cylinder)}'", $"accepted: the scenario's, '{Quote.Of(cylinder.Name)}'");
        if (!LogMethods.All.Contains(entry.Method, StringComparer.Ordinal))
        {
            Fault(LogField.Method, $"'{Quote.Of(entry.Method)}' is not a way of reading", $"accepted: {string.Join(", ", LogMethods.All)}", NearestName.Of(entry.Method, LogMethods.All));
            return null;
        }

        CheckDetails();
        GaugeReading reading = Reading();
        if (_faults.Count > 0)
            return null;
        try
        {
            _ = GaugeReport.Of(new() { Cylinder = GaugedCylinder.Of(cylinder), Readings = [reading] });
        }
        catch (ImpossibleReadingException e)
        {
            Fault(LogField.Reading, e.Message, null);
            return null;
        }

        return new LogReading { Line = line, Time = entry.Time, Reading = reading, Filled = Has(LogMethods.Filled), Checked = Has(LogMethods.Checked), Note = entry.Note };
    }

    private GaugeReading Reading() => entry.Method switch
    {
        "weight" => new WeightReading
        {
            Name = "weight",
            Scale_kg = Number(Dimension.Mass, "0 kg", "1,000 kg"),
            ScaleError_kg = Detail("scale-error", Dimension.Mass, "1 g", "100 kg"),
            Tare_kg = Detail("tare", Dimension.Mass, "0 kg", "1,000 kg") ?? cylinder.Tare_kg,
            TareError_kg = Detail("tare-error", Dimension.Mass, "1 g", "100 kg"),
            Accessories_kg = Detail("accessories", Dimension.Mass, "0 kg", "100 kg") ?? 0,
            Ice_kg = Detail("ice", Dimension.Mass, "0 kg", "100 kg") ?? 0,
        },
        "line" or "frost-line" => new LineReading
        {
            Name = entry.Method == "line" ? "line" : "frost line",
            Height_m = Number(Dimension.Length, "0 m", "5 m"),
            Foot_m = Detail("foot", Dimension.Length, "0 m", "5 m") ?? 0,
            Frost = entry.Method == "frost-line",
            LineError_m = Detail("line-error", Dimension.Length, "0.1 mm", "1 m"),
            Level = Level(),
        },
        "echo-time" => Echo(EchoShown.Time, Dimension.Duration, "0 ms", "20 ms"),
        "echo-height" => Echo(EchoShown.Height, Dimension.Length, "0 m", "5 m"),
        "echo-percent" => Echo(Choice("percent-of", "height", "volume") == "volume" ? EchoShown.PartOfVolume : EchoShown.PartOfHeight, Dimension.Ratio, "0 %", "100 %"),
        _ => new FloatReading
        {
            Name = "float",
            Shown_frac = Number(Dimension.Ratio, "0 %", "100 %"),
            ShownError_frac = Detail("float-error", Dimension.Ratio, "0.01 %", "100 %"),
            Level = Level(),
        },
    };

    private EchoReading Echo(EchoShown shown, Dimension dimension, string low, string high) => new()
    {
        Name = entry.Method.Replace('-', ' '),
        Shown = shown,
        Value = Number(dimension, low, high),
        ValueError = Detail("echo-error", dimension, low, high),
        Assumed_K = Detail("assumed-temperature", Dimension.Temperature, "-60 °C", "55 °C") ?? DriftTable.Assumed_K,
        PositionError_m = Detail("position-error", Dimension.Length, "0 m", "1 m") ?? Inch_m,
        PositionGiven = Has("position-error"),
        Level = Level(),
    };

    private LevelInputs Level()
    {
        double t_K = ZeroCelsius_K;
        if (entry.Temperature.Length == 0)
            Fault(LogField.Temperature, "no liquid temperature, and a level means nothing without it", "accepted: such as 10 °F or -12 °C");
        else
            t_K = Quantity(LogField.Temperature, "", entry.Temperature, Dimension.Temperature, "-60 °C", "55 °C") ?? t_K;
        double? error_K = Detail("temperature-error", Dimension.TemperatureDifference, "0.01 K", "30 K");
        double? tilt_deg = Degrees();
        return new()
        {
            Temperature_K = t_K,
            TemperatureError_K = error_K ?? (Has("rested") ? RestedError_K : DrawnError_K),
            TemperatureBasis = error_K is null ? "assumption" : "given",
            Tilt_rad = (tilt_deg ?? 1) * Degree_rad,
            TiltBasis = tilt_deg is null ? "assumption" : "given",
        };
    }

    private double? Degrees()
    {
        if (Text("tilt") is not { } text)
            return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double degrees) && degrees is >= 0 and <= 15)
            return degrees;
        _faults.Add(new(LogField.Details, "tilt", $"'{Quote.Of(text)}' is not a tilt", "accepted: degrees from 0 to 15"));
        return null;
    }

    private void CheckDetails()
    {
        IReadOnlyList<string> known = LogMethods.DetailsOf(entry.Method);
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (LogDetail detail in entry.Details)
        {
            if (!known.Contains(detail.Name, StringComparer.Ordinal))
                _faults.Add(new(LogField.Details, detail.Name, $"unknown detail '{Quote.Of(detail.Name)}' of {entry.Method}", $"accepted: {string.Join(", ", known)}", NearestName.Of(detail.Name, known)));
            else if (!seen.Add(detail.Name))
                _faults.Add(new(LogField.Details, detail.Name, $"'{Quote.Of(detail.Name)}' is given twice", null));
            else if (LogMethods.IsWord(detail.Name) != (detail.Value.Length == 0))
                _faults.Add(new(LogField.Details, detail.Name, $"'{Quote.Of(detail.ToString())}'", detail.Value.Length == 0 ? $"accepted: {detail.Name}=VALUE" : $"accepted: the word {detail.Name} alone"));
        }
    }

    private string Choice(string name, params string[] words)
    {
        string word = Text(name) ?? words[0];
        if (!words.Contains(word, StringComparer.Ordinal))
            _faults.Add(new(LogField.Details, name, $"'{Quote.Of(word)}'", $"accepted: {string.Join(", ", words)}"));
        return word;
    }

    private double Number(Dimension dimension, string low, string high)
        => Quantity(LogField.Reading, "", entry.Reading, dimension, low, high) ?? 0;

    private double? Detail(string name, Dimension dimension, string low, string high)
        => Text(name) is { Length: > 0 } text ? Quantity(LogField.Details, name, text, dimension, low, high) : null;

    private double? Quantity(LogField field, string detail, string text, Dimension dimension, string low, string high)
    {
        if (SiText.Read(text, dimension, out double si) is { } fault)
        {
            _faults.Add(new(field, detail, fault.What, fault.Accepted, fault.Nearest));
            return null;
        }

        SiText.Read(low, dimension, out double least);
        SiText.Read(high, dimension, out double most);
        if (si >= least && si <= most)
            return si;
        _faults.Add(new(field, detail, $"'{Quote.Of(text)}'", $"accepted: {low} to {high}"));
        return null;
    }

    private string? Text(string name) => entry.Details.Where(d => d.Name == name).Select(d => d.Value).FirstOrDefault();

    private bool Has(string name) => entry.Details.Any(d => d.Name == name);

    private void Fault(LogField field, string what, string? accepted, string? nearest = null) => _faults.Add(new(field, "", what, accepted, nearest));
}
