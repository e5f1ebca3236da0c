using System.Globalization;
using System.Text;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>Sentences that name quantities in fixed units, in the units that the reader asked for.</summary>
/// <remarks>
/// What is assumed is worded where a file is read, in the unit of the key's declaration, and cautions name a limit in both systems. Here
/// "125 °F (52 °C)" becomes one of the two, and a quantity of the other system is converted to as many figures as it has, two at least. What a
/// person named, such as "20 lb" for a cylinder, does not come here.
/// </remarks>
internal static class OwnUnits
{
    private const int LeastFigures = 2, MostFigures = 4;
    private const double FootSquared_m2 = Foot_m * Foot_m, FootCubed_m3 = Foot_m * Foot_m * Foot_m;

    // A unit of one system, how many of the other's make one of it, and from where both scales count.
    private static readonly Pair[] Pairs =
    [
        new("°C", "°F", 1.8, 32), new(" K", " °F", 1.8),
        new("W/K per metre", "BTU/h per °F per foot", FahrenheitDegree_K / BtuPerHour_W * Foot_m),
        new("W/K per m", "BTU/h per °F per ft", FahrenheitDegree_K / BtuPerHour_W * Foot_m),
        new("m²K/W", "h·ft²·°F/BTU", BtuPerHour_W / FootSquared_m2 / FahrenheitDegree_K),
        new("W/m²K", "BTU/h·ft²·°F", FootSquared_m2 * FahrenheitDegree_K / BtuPerHour_W),
        new("W/mK", "BTU/h·ft·°F", Foot_m * FahrenheitDegree_K / BtuPerHour_W), new("W/K", "BTU/h per °F", FahrenheitDegree_K / BtuPerHour_W),
        new("kJ/K", "BTU/°F", 1000 * FahrenheitDegree_K / Btu_J), new("MJ/K", "BTU/°F", 1e6 * FahrenheitDegree_K / Btu_J),
        new("MJ/kg", "BTU/lb", 1e6 * Pound_kg / Btu_J), new("kg/h", "lb/h", 1 / Pound_kg), new("kg", "lb", 1 / Pound_kg),
        new("m³/h", "ft³/h", 1 / FootCubed_m3), new("m³", "ft³", 1 / FootCubed_m3), new("m²", "ft²", 1 / FootSquared_m2),
        new("cm²", "in²", 1e-4 / (Inch_m * Inch_m)),
        new("m/s", "mph", 1 / MilePerHour_m_s), new("km/h", "mph", KilometrePerHour_m_s / MilePerHour_m_s), new("mm", "in", 0.001 / Inch_m),
        new("m", "ft", 1 / Foot_m), new("cm", "in", 0.01 / Inch_m), new("L/min", "gal/min", Litre_m3 / Gallon_m3), new("L", "gal", Litre_m3 / Gallon_m3),
        new("mbar", "inH2O", 100 / InchOfWater_Pa), new("mbar", "psi", 100 / Psi_Pa), new("kPa", "psi", 1000 / Psi_Pa), new("bar", "psi", 1e5 / Psi_Pa),
        new("kW", "BTU/h", 1000 / BtuPerHour_W), new("MJ", "BTU", 1e6 / Btu_J),
    ];

    /// <summary>Sentences in the reader's units.</summary>
    public static IEnumerable<string> InOwn(this UnitStyle units, IEnumerable<string> texts)
    {
        foreach (string text in texts)
            yield return units.InOwn(text);
    }

    /// <summary>A sentence in the reader's units.</summary>
    /// <param name="units">The reader's.</param>
    /// <param name="text">The sentence.</param>
    public static string InOwn(this UnitStyle units, string text)
    {
        // Whose key it is comes first, and may be a name with a quantity in it.
        int named = text.IndexOf(": ", StringComparison.Ordinal) + 1;
        StringBuilder own = new(text, 0, named, text.Length + 16);
        for (int i = named; i < text.Length;)
        {
            if (!BeginsNumber(text, i) || Quantity(text, i) is not { } first)
            {
                own.Append(text[i++]);
                continue;
            }

            // The same in both systems: "125 °F (52 °C)".
            if (first.End + 2 < text.Length && text[first.End] == ' ' && text[first.End + 1] == '(' && Quantity(text, first.End + 2) is { } second
                && second.End < text.Length && text[second.End] == ')' && second.Unit.IsUs != first.Unit.IsUs)
            {
                Quantified kept = first.Unit.IsUs == units.IsUs ? first : second;
                own.Append(text, kept.Begin, kept.End - kept.Begin);
                i = second.End + 1;
                continue;
            }

            if (first.Unit.IsUs == units.IsUs)
                own.Append(text, i, first.End - i);
            else
                Convert(own, text, first);
            i = first.End;
        }

        return own.ToString();
    }

    private static void Convert(StringBuilder own, string text, Quantified quantity)
    {
        foreach ((int begin, int end) in quantity.Numbers)
        {
            double value = double.Parse(text.AsSpan(begin, end - begin).ToString().Replace('−', '-'), NumberStyles.Number, CultureInfo.InvariantCulture);
            int figures = Math.Clamp(FiguresOf(text.AsSpan(begin, end - begin)), LeastFigures, MostFigures);
            own.Append(Rounded(quantity.Unit.Of(value), quantity.Unit.IsTemperature, figures));
            if (end != quantity.Numbers[^1].End)
                own.Append(" to ");
        }

        if (!quantity.Unit.Other.StartsWith(' '))
            own.Append(' ');
        own.Append(quantity.Unit.Other);
    }

    // Zeros at the end of a whole number are no figures.
    private static int FiguresOf(ReadOnlySpan<char> number)
    {
        if (!number.Contains('.'))
            number = number.TrimEnd("0,");
        int figures = 0;
        foreach (char c in number.TrimStart("-−0."))
            figures += char.IsAsciiDigit(c) ? 1 : 0;
        return figures;
    }

    private static string Rounded(double value, bool temperature, int figures)
    {
        if (temperature)
            return UnitStyle.Number(Math.Round(value, MidpointRounding.AwayFromZero), 0);
        if (value == 0)
            return "0";
        int before = (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;
        double unit = Math.Pow(10, before - figures);
        double rounded = Math.Round(value / unit) * unit;
        return rounded.ToString(before >= figures ? "#,0" : "0." + new string('#', figures - before), CultureInfo.InvariantCulture);
    }

    private static bool BeginsNumber(string text, int at)
        => (char.IsAsciiDigit(text[at]) || (text[at] is '-' or '−' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1])))
            && (at == 0 || text[at - 1] is ' ' or '(' or '"' or '\u00a0');

    // A number, or two with "to" between, and a unit that the other system has too; null where it is none.
    private static Quantified? Quantity(string text, int begin)
    {
        int end = NumberEnd(text, begin);
        if (end < 0)
            return null;
        if (Unit(text, end) is { } unit)
            return new(begin, unit.End, [(begin, end)], unit.Unit);
        const string to = " to ";
        if (string.CompareOrdinal(text, end, to, 0, to.Length) != 0)
            return null;
        int next = end + to.Length, nextEnd = NumberEnd(text, next);
        return nextEnd >= 0 && Unit(text, nextEnd) is { } last ? new(begin, last.End, [(begin, end), (next, nextEnd)], last.Unit) : null;
    }

    private static int NumberEnd(string text, int begin)
    {
        if (begin >= text.Length || !BeginsNumber(text, begin))
            return -1;
        int end = begin + 1;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] is '.' or ',' && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1]))))
            end++;
        return end;
    }

    private static (int End, OtherUnit Unit)? Unit(string text, int at)
    {
        (int End, OtherUnit Unit)? longest = null;
        foreach (Pair pair in Pairs)
        {
            foreach (bool us in (ReadOnlySpan<bool>)[false, true])
            {
                string unit = us ? pair.Us : pair.Si;
                string written = unit.StartsWith(' ') ? unit : " " + unit;

                // Of a difference's units only the kelvin is its own; degrees Fahrenheit are read as a temperature.
                if ((us && unit.StartsWith(' ')) || string.CompareOrdinal(text, at, written, 0, written.Length) != 0)
                    continue;
                int end = at + written.Length;
                bool whole = end == text.Length || !(char.IsLetterOrDigit(text[end]) || text[end] is '/' or '·' or '²' or '³');

                // "0.3 in the open" is no length.
                if (unit == "in" && end + 1 < text.Length && text[end] == ' ' && text[end + 1] != '(')
                    whole = false;
                if (whole && (longest is null || end > longest.Value.End))
                    longest = (end, new OtherUnit(pair, us));
            }
        }

        return longest;
    }

    private sealed record Pair(string Si, string Us, double UsPerSi, double ZeroInUs = 0);

    private readonly record struct OtherUnit(Pair Pair, bool IsUs)
    {
        public string Other => IsUs ? Pair.Si : Pair.Us;

        public bool IsTemperature => Pair.ZeroInUs != 0;

        public double Of(double value) => IsUs ? (value - Pair.ZeroInUs) / Pair.UsPerSi : value * Pair.UsPerSi + Pair.ZeroInUs;
    }

    private readonly record struct Quantified(int Begin, int End, (int Begin, int End)[] Numbers, OtherUnit Unit);
}
