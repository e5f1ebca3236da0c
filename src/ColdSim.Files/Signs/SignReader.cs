using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Diagnosis;
using UnitsNet;

namespace ColdSim.Files.Signs;

/// <summary>One fault of what was given.</summary>
/// <param name="Name">The name under which it was given, such as "air".</param>
/// <param name="What">What was found and what is accepted.</param>
internal sealed record SignFault(string Name, string What);

/// <summary>Reads what is seen and heard, by names and texts, into a question; all faults are reported together.</summary>
/// <remarks>The command's options, the questions at a terminal and the form on the screen are all read by it.</remarks>
/// <param name="given">Texts by the names of the signs, such as "stove": those of the options of <c>coldsim diagnose</c>.</param>
/// <param name="rig">The person's rig; null where there is none.</param>
internal sealed class SignReader(IReadOnlyDictionary<string, string> given, Scenario? rig)
{
    private const double MostLeft_frac = 1.3;
    private const double MostVolts = 20;

    private static readonly (string Name, Sign Sign)[] Words =
    [
        ("stove", Sign.Stove), ("furnace", Sign.Furnace), ("fan", Sign.Fan), ("regulator", Sign.Regulator), ("vents", Sign.Vents),
            ("return", Sign.Return),
        ("load", Sign.Load), ("by-day", Sign.ByDay), ("reopened", Sign.Reopened), ("reset", Sign.Reset), ("gas", Sign.Gas),
    ];

    private static readonly (string Name, Sign Sign)[] Deeds = [("opened-fast", Sign.OpenedFast), ("swapped", Sign.Swapped),
        ("filled", Sign.Filled)];

    private const string NoDeed = "nothing";

    private readonly Dictionary<Sign, int> _signs = [];
    private readonly List<string> _assumed = [];

    private delegate bool Reader<T>(string text, out T value, out string fault);

    /// <summary>What may have been done just before; any number of them with commas, or the last one alone.</summary>
    public static IReadOnlyList<string> DeedWords { get; } = [.. Deeds.Select(d => d.Name), NoDeed];

    /// <summary>How a wall feels, in the order of <see cref="WallFeel"/>.</summary>
    public static IReadOnlyList<string> WallWords { get; } = ["same", "colder", "much-colder"];

    /// <summary>What is wrong.</summary>
    public List<SignFault> Faults { get; } = [];

    /// <summary>The question; to be used only without faults.</summary>
    public DiagnosisQuestion Question()
    {
        DiagnosisRig of = Rig();
        CylinderReadings readings = new()
        {
            Air_K = Quantity<Temperature>("air", QuantityText.TryParseTemperature, t => t.Kelvins, 213.15, 323.15,
                "-60 to 50 °C (-76 to 122 °F)"),
            Pressure_Pa = Quantity<Pressure>("pressure", QuantityText.TryParsePressure, p => p.Pascals, 0, 2e6, "0 to 20 bar (290 psi)"),
            FrostLine_m = Text("frost-line") == "none" ? 0
                : Quantity<Length>("frost-line", QuantityText.TryParseLength, l => l.Meters, 0.001, 2, "none, or 1 mm to 2 m"),
        };
        readings = Wall(Left(readings, of.Cylinder));
        foreach ((string name, Sign sign) in Words)
            Word(name, sign);
        Did();
        double? board_V = Board_V();
        if (rig is not null && rig.Rig.Gas.IsMixed && !_signs.ContainsKey(Sign.Gas))
            _signs[Sign.Gas] = SignStates.Find(Sign.Gas, "mixed")!.Value;
        if (rig is not null || Text("elevation") is not null)
            _signs[Sign.Elevation] = SignStates.OfElevation(of.Elevation_m);
        if (readings.Air_K is null)
            _assumed.Add("air of a winter's night, not known how cold: --air");
        return new() { Rig = of, Readings = readings, Board_V = board_V, Signs = _signs, Assumptions = _assumed };
    }

    private DiagnosisRig Rig()
    {
        DiagnosisRig of = rig is null ? OwnRig() : DiagnosisRig.Of(rig.Rig);
        double? elevation_m = Quantity<Length>("elevation", QuantityText.TryParseLength, l => l.Meters, -450, 5000,
            "-450 to 5,000 m (-1,400 to 16,400 ft)");
        if (elevation_m is null && rig is null)
            _assumed.Add("sea level");
        double use = Text("use") is not { } word ? Assumed("the furnace burned half of the last eight hours", DiagnosisRig.UsualUse_frac)
            : RecentUse.Find(word)?.Use_frac ?? Wrong("use", word, string.Join(", ", RecentUse.All.Select(u => u.Word)));
        return of with { Elevation_m = elevation_m ?? of.Elevation_m, Use_frac = use };
    }

    private DiagnosisRig OwnRig()
    {
        double furnace_W = Quantity<Power>("furnace-input", QuantityText.TryParsePower, p => (double)p.Watts, 500, 60_000,
            "0.5 to 60 kW (1,700 to 205,000 BTU/h)")
            ?? Assumed("furnace of 30,000 BTU/h (8.8 kW)", DiagnosisRig.UsualFurnace_W);
        if (Text("cylinder") is not { } name)
            _assumed.Add("one 20 lb cylinder");
        else if (SizeText.Find(name, "--cylinder", out string fault) is { } size)
            return new() { Cylinder = size.Full(), Furnace_W = furnace_W };
        else
            Fault("cylinder", fault);
        return new() { Furnace_W = furnace_W };
    }

    private CylinderReadings Left(CylinderReadings readings, CylinderSpecification cylinder)
    {
        double? scale_kg = Mass("scale"), tare_kg = Mass("tare");
        if (tare_kg is not null && scale_kg is null)
            Fault("tare", "goes with --scale");
        if (Text("left") is { } text)
        {
            if (scale_kg is not null)
                Fault("scale", "give --left or --scale, not both");
            return readings with { Left_frac = Left_frac(text, cylinder) };
        }

        if (scale_kg is not { } shown_kg)
            return readings;
        double empty_kg = tare_kg ?? Assumed("tare usual for the size", cylinder.Tare_kg);
        return readings with
        {
            Left_frac = InRange("scale", Text("scale")!, (shown_kg - empty_kg) / cylinder.LegalFill_kg),
            Scale_kg = shown_kg,
            Tare_kg = empty_kg,
        };
    }

    private double? Left_frac(string text, CylinderSpecification cylinder)
    {
        if (text.Equals("full", StringComparison.OrdinalIgnoreCase))
            return 1;
        if (text.Equals("empty", StringComparison.OrdinalIgnoreCase))
            return 0;
        if (QuantityText.TryParseRatio(text, out Ratio part, out _))
            return InRange("left", text, part.DecimalFractions);
        if (QuantityText.TryParseMass(text, out Mass mass, out _))
            return InRange("left", text, mass.Kilograms / cylinder.LegalFill_kg);
        Fault("left", $"'{Quote.Of(text)}' is neither a part of a full one, such as 1/3 or \"40 %\", nor a mass, such as \"7 lb\"");
        return null;
    }

    private double? InRange(string name, string text, double left_frac)
    {
        if (left_frac is >= -0.1 and <= MostLeft_frac)
            return Math.Max(0, left_frac);
        Fault(name, $"'{Quote.Of(text)}' means "
            + $"{(left_frac < 0 ? "less than an empty cylinder" : "more than liquid from bottom to top")}; check the size and the tare");
        return null;
    }

    private CylinderReadings Wall(CylinderReadings readings)
    {
        int feel = Array.IndexOf([.. WallWords], Text("wall"));
        return feel >= 0 ? readings with { WallFeel = (WallFeel)feel }
            : readings with
            {
                Wall_K = Quantity<Temperature>("wall", QuantityText.TryParseTemperature, t => t.Kelvins, 193.15, 353.15,
                    "same, colder, much-colder, or -80 to 80 °C"),
            };
    }

    private void Word(string name, Sign sign)
    {
        if (Text(name) is not { } word)
            return;
        if (SignStates.Find(sign, word) is { } state)
            _signs[sign] = state;
        else
            Fault(name, $"'{Quote.Of(word)}' is none of {string.Join(", ", SignStates.Of(sign))}");
    }

    // What is not named is not known; "nothing" says that none of it was done.
    private void Did()
    {
        foreach (string word in (Text("did") ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            (string Name, Sign Sign)[] deeds = word == NoDeed ? Deeds : [.. Deeds.Where(d => d.Name == word)];
            if (deeds.Length == 0)
                Fault("did", $"'{Quote.Of(word)}' is none of {string.Join(", ", DeedWords)}");
            foreach ((_, Sign sign) in deeds)
                _signs[sign] = word == NoDeed ? 1 : 0;
        }
    }

    private double? Board_V()
    {
        if (Text("volts") is not { } text)
            return null;
        if (double.TryParse(text.TrimEnd('V', 'v', ' '), NumberStyles.Float, CultureInfo.InvariantCulture, out double volts)
            && volts is >= 0 and <= MostVolts)
        {
            _signs[Sign.Volts] = SignStates.OfVolts(volts);
            return volts;
        }

        Fault("volts", $"'{Quote.Of(text)}' must be 0 to 20 V, such as \"11.2 V\"");
        return null;
    }

    private double? Mass(string name)
        => Quantity<Mass>(name, QuantityText.TryParseMass, m => m.Kilograms, 0.1, 500, "0.1 to 500 kg (1,100 lb)");

    private double? Quantity<T>(string name, Reader<T> read, Func<T, double> si, double min, double max, string range)
    {
        if (Text(name) is not { } text)
            return null;
        if (!read(text, out T value, out string fault))
        {
            Fault(name, fault);
            return null;
        }

        if (si(value) >= min && si(value) <= max)
            return si(value);
        Fault(name, $"'{Quote.Of(text)}' must be {range}");
        return null;
    }

    private double Assumed(string what, double value)
    {
        _assumed.Add(what);
        return value;
    }

    private double Wrong(string name, string text, string accepted)
    {
        Fault(name, $"'{Quote.Of(text)}' is none of {accepted}");
        return DiagnosisRig.UsualUse_frac;
    }

    private void Fault(string name, string what) => Faults.Add(new(name, what));

    private string? Text(string name) => given.TryGetValue(name, out string? text) ? text.Trim() : null;
}
