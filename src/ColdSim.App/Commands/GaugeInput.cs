using System.CommandLine;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Geometry;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Units;
using ColdSim.Planning.Gauges;

namespace ColdSim.App.Commands;

/// <summary>Reads the options of <c>gauge</c>; all faults are reported together.</summary>
internal sealed class GaugeInput(ParseResult parsed, GaugeOptions o) : OptionInput(parsed)
{
    private const double RestedError_K = 4 / 1.8;
    private const double DrawnError_K = 9 / 1.8;
    private const double UsualWall_m = 0.0021;

    public GaugeQuestion Weight()
    {
        GaugedCylinder? cylinder = Cylinder();
        Needs(o.Scale);
        Needs(o.Tare);
        return Asked(cylinder, [WeightOf("weight", Mass(o.Scale) ?? double.NaN)], Temperature(o.Temperature), rested: false);
    }

    public GaugeQuestion Echo()
    {
        GaugedCylinder? cylinder = Cylinder();
        LevelInputs level = Level();
        (EchoShown Shown, double? Value, double? Error)[] given =
        [
            .. Given(o.Time) ? [(EchoShown.Time, Time(o.Time, Text(o.Time)!), Time(o.EchoError, Text(o.EchoError)))] : Array.Empty<(EchoShown, double?, double?)>(),
            .. Given(o.EchoHeight) ? [(EchoShown.Height, Length(o.EchoHeight), Length(o.EchoError))] : Array.Empty<(EchoShown, double?, double?)>(),
            .. Given(o.EchoPercent) ? [(Percent(), Part(o.EchoPercent), Part(o.EchoError))] : Array.Empty<(EchoShown, double?, double?)>(),
        ];
        if (given.Length != 1)
            Faults.Add("give one of --time, --height and --percent");
        (EchoShown shown, double? value, double? error) = given.FirstOrDefault();
        return Asked(cylinder, [EchoOf("echo", shown, value ?? double.NaN, error, level)], level.Temperature_K, Parsed.GetValue(o.Rested));
    }

    public GaugeQuestion Line()
    {
        GaugedCylinder? cylinder = Cylinder();
        Needs(o.LineHeight);
        LevelInputs level = Level();
        return Asked(
            cylinder, [LineOf("line", Length(o.LineHeight) ?? double.NaN, Parsed.GetValue(o.LineBy) == "frost", level)],
            level.Temperature_K, Parsed.GetValue(o.Rested));
    }

    public GaugeQuestion Float()
    {
        GaugedCylinder? cylinder = Cylinder();
        Needs(o.FloatPercent);
        LevelInputs level = Level();
        return Asked(cylinder, [FloatOf("float", Part(o.FloatPercent) ?? double.NaN, level)], level.Temperature_K, Parsed.GetValue(o.Rested));
    }

    public GaugeQuestion Pressure()
    {
        GaugedCylinder? cylinder = Cylinder();
        Needs(o.Pressure);
        PressureReading reading = PressureRead();
        return Asked(cylinder, [], reading.Temperature_K, reading.Rested) with { Pressure = reading };
    }

    public GaugeQuestion Combine()
    {
        GaugedCylinder? cylinder = Cylinder();
        bool weighed = Texts(o.Weights).Length > 0;
        if (weighed)
            Needs(o.Tare);
        PressureReading? pressure = Given(o.Pressure) ? PressureRead() : null;
        LiquidTemperature? liquid = pressure is null ? null : LiquidTemperature.Of(pressure.Temperature_K, pressure.TemperatureError_K, pressure);
        bool levels = ((Option<string[]>[])[o.Lines, o.FrostLines, o.EchoTimes, o.EchoHeights, o.EchoPercents, o.Heights, o.Floats]).Any(x => Texts(x).Length > 0);
        LevelInputs? level = levels ? LevelWith(liquid) : null;
        List<GaugeReading> readings =
        [
            .. Each(o.Weights, "weight", (text, name) => WeightOf(name, MassOf(o.Weights, text) ?? double.NaN)),
            .. Each(o.Lines, "line", (text, name) => LineOf(name, LengthOf(o.Lines, text) ?? double.NaN, frost: false, level!)),
            .. Each(o.FrostLines, "frost line", (text, name) => LineOf(name, LengthOf(o.FrostLines, text) ?? double.NaN, frost: true, level!)),
            .. Each(o.EchoTimes, "echo time", (text, name) => EchoOf(name, EchoShown.Time, Time(o.EchoTimes, text) ?? double.NaN, null, level!)),
            .. Each(o.EchoHeights, "echo height", (text, name) => EchoOf(name, EchoShown.Height, LengthOf(o.EchoHeights, text) ?? double.NaN, null, level!)),
            .. Each(o.EchoPercents, "echo percent", (text, name) => EchoOf(name, Percent(), PartOf(o.EchoPercents, text) ?? double.NaN, null, level!)),
            .. Each(o.Heights, "level", (text, name) => HeightOf(name, PartOf(o.Heights, text) ?? double.NaN, level!)),
            .. Each(o.Floats, "float", (text, name) => FloatOf(name, PartOf(o.Floats, text) ?? double.NaN, level!)),
        ];
        if (readings.Count == 0 && pressure is not null)
            Faults.Add("a pressure does not say how much is left; give a weight or a level too, such as --level \"34 %\"");
        else if (readings.Count + (pressure is null ? 0 : 1) < 2)
            Faults.Add("give at least two readings, such as --weight \"31.2 lb\" --line \"5.1 in\"");
        return Asked(cylinder, readings, level?.Temperature_K ?? liquid?.Temperature_K ?? Temperature(o.Temperature), Parsed.GetValue(o.Rested)) with
        {
            Pressure = pressure,
            Liquid = liquid,
        };
    }

    private PressureReading PressureRead()
    {
        double elevation_m = Read<UnitsNet.Length>(o.Elevation, QuantityText.TryParseLength, l => l.Meters, -450, 5000, "-450 to 5,000 m (-1,400 to 16,400 ft)") ?? 0;
        PressureReading reading = new()
        {
            Gauge_Pa = Pressure(o.Pressure, 0) ?? double.NaN,
            Air_Pa = StandardAtmosphere.Pressure_Pa(elevation_m),
            Temperature_K = Temperature(o.Temperature),
            TemperatureError_K = TemperatureError_K(),
            Rested = Parsed.GetValue(o.Rested),
        };
        return Pressure(o.PressureError, 1) is { } error_Pa ? reading with { GaugeError_Pa = error_Pa } : reading;
    }

    private GaugeQuestion Asked(GaugedCylinder? cylinder, IReadOnlyList<GaugeReading> readings, double? t_K, bool rested)
    {
        double? furnace_W = Read<UnitsNet.Power>(o.Furnace, QuantityText.TryParsePower, p => (double)p.Watts, 500, 60_000, "0.5 to 60 kW (1,700 to 205,000 BTU/h)");
        double? assumed_K = Temperature(o.Assumed);
        if (Faults.Count > 0)
        {
            throw CommandFault.Input(
                [.. Faults.Distinct().Select(f => $"coldsim: {f}"), $"See 'coldsim gauge {Parsed.CommandResult.Command.Name} --help'."]);
        }

        return new()
        {
            Cylinder = cylinder!,
            Readings = readings,
            Temperature_K = t_K,
            Rested = rested,
            Assumed_K = assumed_K ?? DriftTable.Assumed_K,
            Furnace_W = furnace_W,
        };
    }

    private GaugedCylinder? Cylinder()
    {
        bool own = Given(o.WaterCapacity) || Given(o.Diameter);
        if (Given(o.Cylinder) == own)
        {
            Faults.Add("give --cylinder, or --water-capacity with --diameter");
            return null;
        }

        double? offMiddle_m = Length(o.OffMiddle);
        if (own)
            return Own() is { } made ? made with { OffMiddle_m = offMiddle_m } : null;
        string name = Text(o.Cylinder)!;
        if (CommonOptions.Size(name, "--cylinder", out string fault) is not { } size)
        {
            Faults.Add(fault);
            return null;
        }

        return new()
        {
            Name = size.Name,
            Orientation = size.Orientation,
            Volume_m3 = size.Volume_m3,
            OutsideDiameter_m = size.OutsideDiameter_m,
            WallThickness_m = size.WallThickness_m,
            LegalFill_kg = size.LegalFill_kg,
            OffMiddle_m = offMiddle_m,
        };
    }

    private GaugedCylinder? Own()
    {
        Needs(o.WaterCapacity);
        Needs(o.Diameter);
        double? volume_m3 = Text(o.WaterCapacity) is { } text && QuantityText.TryParseMass(text, out _, out _)
            ? Read<UnitsNet.Mass>(o.WaterCapacity, text, QuantityText.TryParseMass, m => m.Kilograms / 1000, 0.001, 10, "1 to 10,000 kg of water")
            : Read<UnitsNet.Volume>(o.WaterCapacity, QuantityText.TryParseVolume, v => v.CubicMeters, 0.001, 10, "1 to 10,000 L");
        double? diameter_m = Read<UnitsNet.Length>(o.Diameter, QuantityText.TryParseLength, l => l.Meters, 0.1, 2, "0.1 to 2 m (4 to 78 in)");
        double? wall_m = Read<UnitsNet.Length>(o.Wall, QuantityText.TryParseLength, l => l.Meters, 0.0005, 0.01, "0.5 to 10 mm (0.02 to 0.4 in)");
        if (volume_m3 is not { } volume || diameter_m is not { } diameter)
            return null;
        double thickness_m = wall_m ?? UsualWall_m;
        // The estimate varies capacity and diameter by their errors, and the vessel must exist there too.
        if (volume * 0.95 < PressureVessel.HeadsVolume_m3(diameter * 1.02, thickness_m))
        {
            Faults.Add($"--water-capacity: '{Quote.Of(Text(o.WaterCapacity) ?? "")}' is too little for '{Quote.Of(Text(o.Diameter) ?? "")}' across: two 2:1 heads alone hold as much");
            return null;
        }

        return new()
        {
            Name = "own",
            Orientation = Parsed.GetValue(o.Orientation) == "horizontal" ? Orientation.Horizontal : Orientation.Upright,
            Volume_m3 = volume,
            OutsideDiameter_m = diameter,
            WallThickness_m = thickness_m,
            LegalFill_kg = StandardSize.LegalFill_frac * 1000 * volume,
            DiameterError_frac = 0.005,
        };
    }

    private LevelInputs Level()
    {
        Needs(o.Temperature);
        return Tilted(Temperature(o.Temperature) ?? double.NaN, TemperatureError_K(), Given(o.TemperatureError) ? "given" : "assumption");
    }

    private LevelInputs Tilted(double t_K, double error_K, string basis)
    {
        double? tilt = Parsed.GetValue(o.Tilt);
        return new()
        {
            Temperature_K = t_K,
            TemperatureError_K = error_K,
            TemperatureBasis = basis,
            Tilt_rad = (tilt ?? 1) * Math.PI / 180,
            TiltBasis = tilt is null ? "assumption" : "given",
        };
    }

    // A pressure replaces the thermometer, or makes it surer.
    private LevelInputs LevelWith(LiquidTemperature? liquid) => liquid switch
    {
        null => Level(),
        { Source: TemperatureSource.Pressure or TemperatureSource.Both } => Tilted(liquid.Temperature_K, liquid.Error_K, "from the pressure"),
        _ => Tilted(liquid.Temperature_K, liquid.Error_K, Given(o.TemperatureError) ? "given" : "assumption"),
    };

    private WeightReading WeightOf(string name, double scale_kg) => new()
    {
        Name = name,
        Scale_kg = scale_kg,
        ScaleError_kg = MassError(o.ScaleError),
        Tare_kg = Mass(o.Tare) ?? double.NaN,
        TareError_kg = MassError(o.TareError),
        Accessories_kg = Mass(o.Accessories) ?? 0,
        Ice_kg = Mass(o.Ice) ?? 0,
    };

    private EchoReading EchoOf(string name, EchoShown shown, double value, double? error, LevelInputs level) => new()
    {
        Name = name,
        Shown = shown,
        Value = value,
        ValueError = error,
        Assumed_K = Temperature(o.Assumed) ?? DriftTable.Assumed_K,
        PositionError_m = Length(o.PositionError) ?? 0.0254,
        PositionGiven = Given(o.PositionError),
        Level = level,
    };

    private LineReading LineOf(string name, double height_m, bool frost, LevelInputs level) => new()
    {
        Name = name,
        Height_m = height_m,
        Foot_m = Length(o.Foot) ?? 0,
        Frost = frost,
        LineError_m = Length(o.LineError),
        Level = level,
    };

    private HeightReading HeightOf(string name, double shown_frac, LevelInputs level) => new()
    {
        Name = name,
        Shown_frac = shown_frac,
        ShownError_frac = Part(o.HeightError),
        Level = level,
    };

    private FloatReading FloatOf(string name, double shown_frac, LevelInputs level) => new()
    {
        Name = name,
        Shown_frac = shown_frac,
        ShownError_frac = Part(o.FloatError),
        Level = level,
    };

    private IEnumerable<GaugeReading> Each(Option<string[]> option, string name, Func<string, string, GaugeReading> make)
    {
        string[] texts = Texts(option);
        return texts.Select((text, i) => make(text, texts.Length == 1 ? name : $"{name} {i + 1}"));
    }

    private EchoShown Percent() => Parsed.GetValue(o.PercentOf) switch
    {
        "volume" => EchoShown.PartOfVolume,
        "full" => EchoShown.PartOfFull,
        _ => EchoShown.PartOfHeight,
    };

    private double TemperatureError_K()
        => Read<UnitsNet.TemperatureDelta>(o.TemperatureError, QuantityText.TryParseTemperatureDelta, d => d.Kelvins, 0.01, 30, "0.01 to 30 K (0.02 to 54 °F)")
            ?? (Parsed.GetValue(o.Rested) ? RestedError_K : DrawnError_K);

    private double? Temperature(Option<string?> option)
        => Read<UnitsNet.Temperature>(option, QuantityText.TryParseTemperature, t => t.Kelvins, ConversionFactors.ZeroCelsius_K - 60, ConversionFactors.ZeroCelsius_K + 55, "-60 to 55 °C (-76 to 131 °F)");

    private double? Mass(Option<string?> option) => MassOf(option, Text(option));

    private double? MassOf(Option option, string? text)
        => Read<UnitsNet.Mass>(option, text, QuantityText.TryParseMass, m => m.Kilograms, 0, 1000, "0 to 1,000 kg (2,200 lb)");

    private double? MassError(Option<string?> option)
        => Read<UnitsNet.Mass>(option, QuantityText.TryParseMass, m => m.Kilograms, 0.001, 100, "1 g to 100 kg (0.002 to 220 lb)");

    private double? Length(Option<string?> option) => LengthOf(option, Text(option));

    private double? LengthOf(Option option, string? text)
        => Read<UnitsNet.Length>(option, text, QuantityText.TryParseLength, l => l.Meters, 0, 5, "0 to 5 m (16 ft)");

    private double? Time(Option option, string? text)
        => Read<UnitsNet.Duration>(option, text, QuantityText.TryParseDuration, d => d.Seconds, 0, 0.02, "0 to 20 ms");

    private double? Part(Option<string?> option) => PartOf(option, Text(option));

    private double? PartOf(Option option, string? text)
        => Read<UnitsNet.Ratio>(option, text, QuantityText.TryParseRatio, r => r.DecimalFractions, 0, 1, "0 to 100 %");

    private double? Pressure(Option<string?> option, double min_Pa)
        => Read<UnitsNet.Pressure>(option, QuantityText.TryParsePressure, p => p.Pascals, min_Pa, 3e6, "0 to 3 MPa (435 psi)");

    private void Needs(Option<string?> option)
    {
        if (!Given(option))
            Faults.Add($"{option.Name} is missing");
    }

    private bool Given(Option<string?> option) => Text(option) is not null;

    // A subcommand has only its part of the options.
    private string[] Texts(Option<string[]> option) => Parsed.GetResult(option) is null ? [] : Parsed.GetValue(option) ?? [];
}
