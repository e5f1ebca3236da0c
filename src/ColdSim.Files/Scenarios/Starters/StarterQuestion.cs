using ColdSim.Files.Quantities;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Scenarios.Starters;

/// <summary>A question about a rig: what is asked, what an empty answer means, and how an answer goes into the rig.</summary>
/// <param name="Text">What is asked, with an example.</param>
/// <param name="Default">What holds where nothing is answered or it is not known.</param>
/// <param name="Put">The rig with the answer in it.</param>
internal sealed record StarterQuestion(string Text, string Default, Func<StarterRig, string, StarterRig> Put)
{
    /// <summary>The nine questions, in the order in which they are asked.</summary>
    /// <param name="metric">Whether examples and defaults are metric.</param>
    public static IReadOnlyList<StarterQuestion> All(bool metric)
    {
        StarterRig unknown = StarterRig.Unknown(metric);
        StarterCylinder cylinder = unknown.Cylinders[0];
        return
        [
            new($"Place, and height above the sea ({(metric ? "Alp, 1,600 m" : "Trailhead, 5,300 ft")})", "the weather file's, else sea level", Place),
            new($"Coach: length and build: good, ordinary or leaky ({unknown.Length}, leaky)", $"{unknown.Length}, {unknown.Grade}", Coach),
            new(
                "Cylinders with what is left, and how joined: by hand, changeover or together\n"
                    + (metric ? "  (11 kg half; or 11 kg 1/3 + 11 kg full, changeover)" : "  (20 lb half; or 30 lb 1/3 + 30 lb full, changeover)"),
                $"{cylinder.Size} {cylinder.Left}", Cylinders),
            new("Cylinders are: open, by the wall, under a tongue cover, or in a ventilated locker", "somewhat sheltered", (rig, answer) => rig with { CylindersAt = Kind(answer) }),
            new("Furnace: input on its plate, such as 25,000 BTU/h or 4 kW", unknown.Furnace, (rig, answer) => rig with { Furnace = answer }),
            new("Thermostat by day and by night", $"{unknown.Day}, {unknown.Night}", Thermostat),
            new("House battery: kind and capacity (lithium 200 Ah), or none", "none", Battery),
            new("How many people, and when somebody is up", $"{unknown.People}, {unknown.Awake}", People),
            new($"Weather: a file, or the coming nights' lows ({(metric ? "-12 °C, -9 °C" : "-8 °F, 2 °F")}), or invented", "invented", Weather),
        ];
    }

    /// <summary>Whether an answer means that it is not known.</summary>
    public static bool IsUnknown(string answer)
        => answer.Trim() is "" or "?" or "-"
            || answer.Trim().TrimEnd('.').ToUpperInvariant() is "DON'T KNOW" or "DONT KNOW" or "I DON'T KNOW" or "UNKNOWN" or "NO IDEA";

    private static StarterRig Place(StarterRig rig, string answer)
    {
        string[] parts = answer.Split(", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        bool ends = parts.Length > 0 && IsA(parts[^1], Dimension.Length);
        string name = string.Join(", ", ends ? parts[..^1] : parts);
        bool sea = name.Equals("sea level", StringComparison.OrdinalIgnoreCase);
        return rig with { Place = sea || name.Length == 0 ? rig.Place : name, Elevation = ends ? parts[^1] : sea ? "0 m" : rig.Elevation };
    }

    private static StarterRig Coach(StarterRig rig, string answer)
    {
        string[] words = answer.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        string? grade = words.FirstOrDefault(w => w.ToUpperInvariant() is "GOOD" or "ORDINARY" or "LEAKY");
        string length = string.Join(' ', words.Where(w => w != grade));
        return rig with { Grade = grade?.ToLowerInvariant() ?? rig.Grade, Length = length.Length > 0 ? length : rig.Length };
    }

    private static StarterRig Cylinders(StarterRig rig, string answer)
    {
        List<StarterCylinder> cylinders = [];
        string joined = rig.Joined;
        string list = answer.Replace(" and ", "+", StringComparison.OrdinalIgnoreCase);
        foreach (string part in list.Split(['+', ';', ','], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (part.ToUpperInvariant() is "BY HAND" or "CHANGEOVER" or "TOGETHER")
            {
                joined = part.ToLowerInvariant();
                continue;
            }

            (int count, string one) = CountedSize.Find(part) is { } counted ? (counted.Count, counted.Size) : (1, part);
            for (int i = 0; i < Math.Min(count, 9); i++)
                cylinders.Add(Cylinder(one));
        }

        return cylinders.Count == 0 ? rig : rig with { Cylinders = cylinders, Joined = joined };
    }

    // The size's name, then what is left; "20lb" is the same name.
    private static StarterCylinder Cylinder(string text)
    {
        foreach (string name in StandardSize.All.Select(s => s.Name).OrderByDescending(n => n.Length))
        {
            foreach (string written in (string[])[name, name.Replace(" ", "", StringComparison.Ordinal)])
            {
                if (text.StartsWith(written, StringComparison.OrdinalIgnoreCase))
                    return new(name, text[written.Length..].Trim() is { Length: > 0 } left ? left : StarterRig.UsualLeft);
            }
        }

        return new(text, StarterRig.UsualLeft);
    }

    // As somebody says it; what holds none of the words goes to the scenario's reader, which says what is accepted.
    private static string Kind(string answer)
    {
        foreach ((string word, string kind) in (ReadOnlySpan<(string, string)>)
                 [("cover", "tongue cover"), ("locker", "ventilated locker"), ("compartment", "ventilated locker"), ("wall", "by the wall"), ("ground", "by the wall"), ("open", "open")])
        {
            if (answer.Contains(word, StringComparison.OrdinalIgnoreCase))
                return kind;
        }

        return answer.Trim();
    }

    private static StarterRig Thermostat(StarterRig rig, string answer)
    {
        string[] parts = answer.Replace(" and ", ",", StringComparison.OrdinalIgnoreCase)
            .Split([',', '/'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return parts.Length == 0 ? rig : rig with { Day = parts[0], Night = parts.Length > 1 ? string.Join(", ", parts[1..]) : parts[0] };
    }

    private static StarterRig Battery(StarterRig rig, string answer)
    {
        string[] words = answer.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        if (words is [var only] && only.ToUpperInvariant() is "NONE" or "NO")
            return rig with { Chemistry = null };
        int first = Array.FindIndex(words, w => char.IsAsciiDigit(w[0]));
        if (first < 0)
            return rig with { Chemistry = answer.Trim() };
        int last = first + 1 < words.Length && words[first + 1].Equals("Ah", StringComparison.OrdinalIgnoreCase) ? first + 1 : first;
        string kind = string.Join(' ', words.Where((_, i) => i < first || i > last));
        return rig with { Chemistry = kind.Length > 0 ? kind : "flooded", Capacity = string.Join(' ', words[first..(last + 1)]) };
    }

    private static StarterRig People(StarterRig rig, string answer)
    {
        string[] parts = answer.Split([',', ' '], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        string? span = parts.FirstOrDefault(p => p.Contains(':', StringComparison.Ordinal));
        return rig with { Awake = span ?? rig.Awake, People = parts.FirstOrDefault(p => p != span) ?? rig.People };
    }

    private static StarterRig Weather(StarterRig rig, string answer)
    {
        if (answer.Trim().Equals("invented", StringComparison.OrdinalIgnoreCase))
            return rig with { Lows = [], WeatherFile = null };
        string[] lows = answer.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return lows.Length > 0 && lows.All(l => IsA(l, Dimension.Temperature))
            ? rig with { Lows = lows, WeatherFile = null }
            : rig with { Lows = [], WeatherFile = answer.Trim() };
    }

    private static bool IsA(string text, Dimension dimension) => SiText.Read(text, dimension, out _) is null;
}
