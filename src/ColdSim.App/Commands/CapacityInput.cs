using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Units;
using ColdSim.Planning.Capacity;

namespace ColdSim.App.Commands;

/// <summary>Reads the options of <c>capacity</c>; all faults are reported together.</summary>
internal sealed class CapacityInput(ParseResult parsed, CapacityOptions o) : OptionInput(parsed)
{
    private const int MostLows = 10, MostFills = 7, MostTimes = 6, Rows = 7;
    private const double Coldest_C = -60, Warmest_C = 40, ShortestHours = 0.25, LongestHours = 48;

    private static readonly double[] Fills = [1, 0.8, 0.6, 0.4, 0.2, 0.1];

    /// <summary>What is asked.</summary>
    /// <param name="units">Whose degrees the temperatures step by where none are given.</param>
    /// <exception cref="CommandFault">Something is wrong.</exception>
    public CapacityQuestion Question(UnitStyle units)
    {
        StandardSize? size = CommonOptions.Size(Parsed.GetRequiredValue(o.Cylinder), "CYLINDER", out string fault);
        if (size is null)
            Faults.Add(fault);
        List<double> lows_K = Each(o.Low, Low_K, MostLows), fills_frac = size is null ? [] : Each(o.Fill, text => Fill_frac(text, size), MostFills);
        List<CapacityTime> times = Each(o.Time, Time, MostTimes);
        if (times.Count > 1 && fills_frac.Count != 1)
            Faults.Add("--for: several times go with one --fill, such as --fill \"40 %\"; or give one time");
        double? wind_m_s = Read<UnitsNet.Speed>(o.Wind, QuantityText.TryParseSpeed, s => s.MetersPerSecond, 0, 50, "0 to 50 m/s (110 mph)");
        if (Faults.Count > 0)
            throw CommandFault.Input([.. Faults.Select(f => $"coldsim: {f}"), "See 'coldsim capacity --help'."]);
        return new()
        {
            Cylinder = size!.Full(),
            Lows_K = lows_K.Count > 0 ? lows_K : [.. Enumerable.Range(0, Rows).Select(i => Usual_K(i, units))],
            Fills_frac = fills_frac.Count > 0 ? fills_frac : Fills,
            Times = times.Count > 0 ? times : fills_frac.Count == 1 ? CapacityTime.Usual : [CapacityTime.Hours(4)],
            MastWind_m_s = wind_m_s,
        };
    }

    private static double Usual_K(int row, UnitStyle units)
        => units.IsUs ? (30 - 10 * row + ConversionFactors.ZeroFahrenheit_R) / 1.8 : 5 - 5 * row + ConversionFactors.ZeroCelsius_K;

    private List<T> Each<T>(Option<string[]> option, Func<string, T?> read, int most)
        where T : struct
    {
        List<T> all = [];
        foreach (string text in (Parsed.GetValue(option) ?? []).SelectMany(v => v.Split(',', StringSplitOptions.TrimEntries)))
        {
            if (read(text) is { } value && !all.Contains(value))
                all.Add(value);
        }

        if (all.Count > most)
            Faults.Add($"{option.Name}: {all.Count} values; accepted: up to {most}");
        return all;
    }

    private double? Low_K(string text)
        => Read<UnitsNet.Temperature>(
            o.Low, text, QuantityText.TryParseTemperature, t => t.Kelvins, Coldest_C + ConversionFactors.ZeroCelsius_K, Warmest_C + ConversionFactors.ZeroCelsius_K,
            "-60 to 40 °C (-76 to 104 °F)");

    private double? Fill_frac(string text, StandardSize size)
    {
        if (text.Equals("full", StringComparison.OrdinalIgnoreCase))
            return 1;
        bool part = QuantityText.TryParseRatio(text, out UnitsNet.Ratio ratio, out _);
        if (!part && !QuantityText.TryParseMass(text, out _, out _))
        {
            Faults.Add($"--fill: '{Quote.Of(text)}' is neither a part of a full one, such as 1/3 or \"40 %\", nor a mass, such as \"7 lb\"");
            return null;
        }

        double frac = part ? ratio.DecimalFractions : QuantityText.TryParseMass(text, out UnitsNet.Mass mass, out _) ? mass.Kilograms / size.LegalFill_kg : double.NaN;
        if (frac >= 0.01 - 1e-12 && frac <= 1 + 1e-9)
            return Math.Min(1, frac);
        Faults.Add(FormattableString.Invariant(
            $"--fill: '{Quote.Of(text)}' must be 1 % or more, and no more than full, {size.LegalFill_kg / ConversionFactors.Pound_kg:0.0} lb ({size.LegalFill_kg:0.00} kg)"));
        return null;
    }

    private CapacityTime? Time(string text)
    {
        switch (text.Replace(' ', '-').ToLowerInvariant())
        {
            case "night": return CapacityTime.Night;
            case "without-end": return CapacityTime.WithoutEnd;
        }

        if (!QuantityText.TryParseDuration(text, out UnitsNet.Duration time, out _))
        {
            Faults.Add($"--for: '{Quote.Of(text)}' is not a time; accepted: such as 4h or \"90 min\", night, without-end");
            return null;
        }

        if (time.Hours >= ShortestHours - 1e-9 && time.Hours <= LongestHours + 1e-9)
            return CapacityTime.Hours(time.Hours);
        Faults.Add($"--for: '{Quote.Of(text)}' must be 15 min to 48 h; for longer give without-end");
        return null;
    }
}
