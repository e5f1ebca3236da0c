using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;

namespace ColdSim.Fuzz.Rigs;

/// <summary>Draws a value for a declared key, as the file has it, from all that the declaration accepts; null where nothing is drawn for its kind.</summary>
internal sealed class ValueDraw(Random random)
{
    private int _names;

    public string? Of(ScenarioKey key) => key switch
    {
        TextKey { Words.Count: > 0 } text => Quoted(Pick(text.Words)),
        TextKey { Name: "name" } => Quoted("n" + (++_names).ToString(CultureInfo.InvariantCulture)),
        TextKey { IsNeeded: true } text => Quoted(text.Such),
        FlagKey => random.Next(2) == 0 ? "true" : "false",
        NumberKey number => Plain(Between(number.Low, number.High, number.Default.Si)),
        WholeKey whole => WholeBetween(whole).ToString(CultureInfo.InvariantCulture),
        QuantityKey quantity => Quoted(Of(quantity)),
        ChoiceKey choice => Quoted(Pick([.. choice.Words])),
        TimeKey => Quoted(Clock()),
        SpansKey spans => Of(spans),
        _ => null,
    };

    /// <summary>A value between limits: each end one time in twelve, else as often near what is usual as anywhere.</summary>
    public double Between(double low, double high, double? usual)
    {
        int kind = random.Next(12);
        if (kind == 0) return low;
        if (kind == 1) return high;
        if (kind < 7 && usual is > 0 and double near) return Math.Clamp(near * Math.Exp(0.5 * (random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5) * 2), low, high);
        return kind < 9 && low >= 0 ? Logarithmic(Math.Max(low, 1e-4 * high), high) : low + (high - low) * random.NextDouble();
    }

    public double Logarithmic(double low, double high) => low * Math.Pow(high / low, random.NextDouble());

    public T Pick<T>(IReadOnlyList<T> all) => all[random.Next(all.Count)];

    public bool Chance(double p) => random.NextDouble() < p;

    public string Clock() => string.Create(CultureInfo.InvariantCulture, $"{random.Next(24):00}:{5 * random.Next(12):00}");

    public static string Quoted(string text) => $"\"{text}\"";

    public static string Plain(double value) => value.ToString("G7", CultureInfo.InvariantCulture);

    private string Of(QuantityKey key)
    {
        if (key.Words.Count > 0 && Chance(0.2)) return Pick(key.Words);
        QuantityRange range = Pick(key.Ranges);
        double? usual = range == key.Ranges[0] ? key.DefaultSi : null;
        double si = Between(range.LowSi, range.HighSi, usual ?? range.Si(range.Example));
        if (si == range.LowSi) return range.Low;
        if (si == range.HighSi) return range.High;
        UnitSpelling unit = SpellingTable.All.First(u => u.Dimension == range.Dimension && u.Offset == 0);
        return $"{Plain(si / unit.Factor)} {unit.Spellings[0]}";
    }

    private int WholeBetween(WholeKey key) => random.Next(4) switch
    {
        0 => key.Low,
        1 => key.High,
        _ => random.Next(key.Low, key.High + 1),
    };

    private string Of(SpansKey key)
    {
        if (key.IsSingle) return Quoted($"{Clock()}-{Clock()}");
        string[] spans = [.. Enumerable.Range(0, random.Next(1, 3)).Select(i => Span(i, key.HasFlow))];
        return $"[{string.Join(", ", spans)}]";
    }

    private string Span(int half, bool hasFlow)
    {
        int from = 12 * half + random.Next(6), to = from + random.Next(1, 6);
        string flow = hasFlow ? $" {Plain(Logarithmic(0.05, 20))} L/min" : "";
        return Quoted(string.Create(CultureInfo.InvariantCulture, $"{from:00}:{5 * random.Next(12):00}-{to:00}:{5 * random.Next(12):00}") + flow);
    }
}
