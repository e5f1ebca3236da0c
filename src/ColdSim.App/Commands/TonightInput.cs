using System.CommandLine;
using System.Globalization;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Units;
using ColdSim.Planning.Quick;

namespace ColdSim.App.Commands;

/// <summary>Reads the options of <c>tonight</c>; all faults are reported together.</summary>
internal sealed class TonightInput(ParseResult parsed, TonightOptions o) : OptionInput(parsed)
{
    public QuickQuestion Question(TimeProvider clock)
    {
        double? low_K = Temperature(o.Low, -60, 40);
        double? high_K = Temperature(o.High, -60, 50);
        if (high_K < low_K)
            Faults.Add("--high is below --low");
        CylinderSpecification? cylinder = Cylinder();
        QuickQuestion question = new()
        {
            Noon = NoonBefore(clock),
            Start = Clock(o.Start) ?? new TimeOnly(18, 0),
            Low_K = low_K ?? double.NaN,
            High_K = high_K,
            Cylinder = cylinder!,
            Furnace_W = Power(o.Furnace, 500, 60_000) ?? double.NaN,
            CoachLength_m = Length(o.Length, 2, 20, "2 to 20 m (7 to 65 ft)"),
            Grade = Parsed.GetResult(o.Grade) is { Implicit: false }
                ? Enum.Parse<CoachGrade>(Parsed.GetValue(o.Grade)!, ignoreCase: true) : null,
            SetPoint_K = Temperature(o.Inside, 0, 35),
            MastWind_m_s = Speed(o.Wind),
            WindShelter_frac = Part(o.WindShelter),
            Elevation_m = Length(o.Elevation, -450, 5000, "-450 to 5,000 m (-1,400 to 16,400 ft)"),
        };
        return Faults.Count == 0 ? question : throw CommandFault.Input([.. Faults.Select(f => $"coldsim: {f}"), "See 'coldsim tonight --help'."]);
    }

    /// <summary>Before six in the morning, tonight is the night that is going on.</summary>
    private static DateTimeOffset NoonBefore(TimeProvider clock)
    {
        DateTimeOffset now = clock.GetLocalNow();
        return new DateTimeOffset(now.Date.AddDays(now.Hour < 6 ? -1 : 0).AddHours(12), now.Offset);
    }

    private CylinderSpecification? Cylinder()
    {
        if (Parsed.GetValue(o.Cylinder) is not { } name)
            return null;
        if (CommonOptions.Size(name, "--cylinder", out string fault) is not { } size)
        {
            Faults.Add(fault);
            return null;
        }

        CylinderSpecification cylinder = size.Full();
        return Contents_kg(cylinder.LegalFill_kg) is { } kg ? cylinder with { Contents_kg = kg } : cylinder;
    }

    private double? Contents_kg(double full_kg)
    {
        if (Parsed.GetValue(o.Left) is not { } text)
            return null;
        if (text.Trim().Equals("full", StringComparison.OrdinalIgnoreCase))
            return full_kg;
        bool part = QuantityText.TryParseRatio(text, out UnitsNet.Ratio ratio, out _);
        if (!part && !QuantityText.TryParseMass(text, out _, out _))
        {
            Faults.Add($"--left: '{Quote.Of(text)}' is neither a part of a full one, such as 1/3 or \"40 %\", nor a mass, such as \"7 lb\"");
            return null;
        }

        double kg = part ? ratio.DecimalFractions * full_kg
            : QuantityText.TryParseMass(text, out UnitsNet.Mass mass, out _) ? mass.Kilograms : double.NaN;
        if (kg > 0 && kg <= full_kg * (1 + 1e-9))
            return kg;
        Faults.Add(string.Create(CultureInfo.InvariantCulture,
            $"--left: '{Quote.Of(text)}' must be more than nothing and no more than full, {full_kg / ConversionFactors.Pound_kg:0.0} lb ({full_kg:0.00} kg)"));
        return null;
    }

    private double? Temperature(Option<string?> option, double min_C, double max_C)
        => Read<UnitsNet.Temperature>(option, QuantityText.TryParseTemperature, t => t.Kelvins, min_C + ConversionFactors.ZeroCelsius_K, max_C + ConversionFactors.ZeroCelsius_K,
            FormattableString.Invariant($"{min_C} to {max_C} °C ({min_C * 1.8 + 32:0} to {max_C * 1.8 + 32:0} °F)"));

    private double? Power(Option<string?> option, double min_W, double max_W)
        => Read<UnitsNet.Power>(option, QuantityText.TryParsePower, p => (double)p.Watts, min_W, max_W, "0.5 to 60 kW (1,700 to 205,000 BTU/h)");

    private double? Length(Option<string?> option, double min_m, double max_m, string range)
        => Read<UnitsNet.Length>(option, QuantityText.TryParseLength, l => l.Meters, min_m, max_m, range);

    private double? Speed(Option<string?> option)
        => Read<UnitsNet.Speed>(option, QuantityText.TryParseSpeed, s => s.MetersPerSecond, 0, 50, "0 to 50 m/s (110 mph)");

    private double? Part(Option<string?> option)
        => Read<UnitsNet.Ratio>(option, QuantityText.TryParseRatio, r => r.DecimalFractions, 0, 1, "0 to 1");

    private TimeOnly? Clock(Option<string?> option)
    {
        if (Parsed.GetValue(option) is not { } text)
            return null;
        if (TimeOnly.TryParseExact(text, ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time))
            return time;
        Faults.Add($"{option.Name}: '{Quote.Of(text)}' is not a clock time such as 18:00");
        return null;
    }
}
