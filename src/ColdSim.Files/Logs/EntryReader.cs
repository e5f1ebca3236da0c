using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Files.Logs;

/// <summary>Turns one entry into a reading; used both for a line about to be written and for one read back.</summary>
/// <param name="entry">The entry.</param>
/// <param name="cylinder">The scenario's cylinder.</param>
internal sealed class EntryReader(LogEntry entry, CylinderSpecification cylinder)
{
    private const double RestedError_K = 4 * FahrenheitDegree_K;
    private const double DrawnError_K = 9 * FahrenheitDegree_K;
    private readonly EntryFields _fields = new(entry);

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<EntryFault> Faults => _fields.Faults;

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
            _fields.Add(LogField.Cylinder, $"a cylinder called '{Quote.Of(entry.Cylinder)}'", $"accepted: the scenario's, '{Quote.Of(cylinder.Name)}'");
        if (!_fields.HasMethod())
            return null;

        _fields.CheckDetails();
        GaugeReading reading = Reading();
        if (_fields.Faults.Count > 0)
            return null;
        try
        {
            _ = GaugeReport.Of(new() { Cylinder = GaugedCylinder.Of(cylinder), Readings = [reading] });
        }
        catch (ImpossibleReadingException e)
        {
            _fields.Add(LogField.Reading, e.Message, null);
            return null;
        }

        return new LogReading { Line = line, Time = entry.Time, Reading = reading, Filled = _fields.Has(LogMethods.Filled), Checked = _fields.Has(LogMethods.Checked), Note = entry.Note };
    }

    private GaugeReading Reading() => entry.Method switch
    {
        "weight" => new WeightReading
        {
            Name = "weight",
            Scale_kg = _fields.Number(Dimension.Mass, "0 kg", "1,000 kg"),
            ScaleError_kg = _fields.Detail("scale-error", Dimension.Mass, "1 g", "100 kg"),
            Tare_kg = _fields.Detail("tare", Dimension.Mass, "0 kg", "1,000 kg") ?? cylinder.Tare_kg,
            TareError_kg = _fields.Detail("tare-error", Dimension.Mass, "1 g", "100 kg"),
            Accessories_kg = _fields.Detail("accessories", Dimension.Mass, "0 kg", "100 kg") ?? 0,
            Ice_kg = _fields.Detail("ice", Dimension.Mass, "0 kg", "100 kg") ?? 0,
        },
        "line" or "frost-line" => new LineReading
        {
            Name = entry.Method == "line" ? "line" : "frost line",
            Height_m = _fields.Number(Dimension.Length, "0 m", "5 m"),
            Foot_m = _fields.Detail("foot", Dimension.Length, "0 m", "5 m") ?? 0,
            Frost = entry.Method == "frost-line",
            LineError_m = _fields.Detail("line-error", Dimension.Length, "0.1 mm", "1 m"),
            Level = Level(),
        },
        "echo-time" => Echo(EchoShown.Time, Dimension.Duration, "0 ms", "20 ms"),
        "echo-height" => Echo(EchoShown.Height, Dimension.Length, "0 m", "5 m"),
        "echo-percent" => Echo(_fields.Choice("percent-of", "height", "volume") == "volume" ? EchoShown.PartOfVolume : EchoShown.PartOfHeight, Dimension.Ratio, "0 %", "100 %"),
        _ => new FloatReading
        {
            Name = "float",
            Shown_frac = _fields.Number(Dimension.Ratio, "0 %", "100 %"),
            ShownError_frac = _fields.Detail("float-error", Dimension.Ratio, "0.01 %", "100 %"),
            Level = Level(),
        },
    };

    private EchoReading Echo(EchoShown shown, Dimension dimension, string low, string high) => new()
    {
        Name = entry.Method.Replace('-', ' '),
        Shown = shown,
        Value = _fields.Number(dimension, low, high),
        ValueError = _fields.Detail("echo-error", dimension, low, high),
        Assumed_K = _fields.Detail("assumed-temperature", Dimension.Temperature, "-60 °C", "55 °C") ?? DriftTable.Assumed_K,
        PositionError_m = _fields.Detail("position-error", Dimension.Length, "0 m", "1 m") ?? Inch_m,
        PositionGiven = _fields.Has("position-error"),
        Level = Level(),
    };

    private LevelInputs Level()
    {
        double t_K = ZeroCelsius_K;
        if (entry.Temperature.Length == 0)
            _fields.Add(LogField.Temperature, "no liquid temperature, and a level means nothing without it", "accepted: such as 10 °F or -12 °C");
        else
            t_K = _fields.Quantity(LogField.Temperature, "", entry.Temperature, Dimension.Temperature, "-60 °C", "55 °C") ?? t_K;
        double? error_K = _fields.Detail("temperature-error", Dimension.TemperatureDifference, "0.01 K", "30 K");
        double? tilt_deg = Degrees();
        return new()
        {
            Temperature_K = t_K,
            TemperatureError_K = error_K ?? (_fields.Has("rested") ? RestedError_K : DrawnError_K),
            TemperatureBasis = error_K is null ? "assumption" : "given",
            Tilt_rad = (tilt_deg ?? 1) * Degree_rad,
            TiltBasis = tilt_deg is null ? "assumption" : "given",
        };
    }

    private double? Degrees()
    {
        if (_fields.Text("tilt") is not { } text)
            return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double degrees) && degrees is >= 0 and <= 15)
            return degrees;
        _fields.AddDetail("tilt", $"'{Quote.Of(text)}' is not a tilt", "accepted: degrees from 0 to 15");
        return null;
    }
}
