using System.Globalization;
using System.Text;
using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;

namespace ColdSim.Fuzz.Rigs;

/// <summary>A drawn scenario with its weather: two texts.</summary>
internal sealed record DrawnRig(int Number, string Scenario, string Weather);

/// <summary>
/// Draws legal rigs from the declarations of the scenario file: sections and keys by chance, each value from its declared range. What the reader
/// refuses is taken out again, line by line, until the rest is a scenario, so that nothing here knows which keys go together.
/// </summary>
internal sealed class RigDraw
{
    private const int MostRepairs = 80;

    // Trips and comparisons are other questions; prices, places of files and statistics change nothing of a run.
    private static readonly HashSet<string> Left = ["weather", "stop", "refill", "option", "chance", "verdict"];

    private static readonly Dictionary<string, double> Presence = new()
    {
        ["place"] = 0.9,
        ["gas"] = 0.25,
        ["regulator"] = 0.4,
        ["arrangement"] = 0.9,
        ["people"] = 0.5,
        ["draw"] = 0.5,
        ["heater"] = 0.2,
        ["surroundings"] = 0.7,
        ["blanket"] = 0.4,
        ["fit"] = 0.05,
    };

    private readonly Random _random;
    private readonly ValueDraw _value;
    private readonly List<Line> _lines = [];
    private bool _bold;

    private RigDraw(Random random) => (_random, _value) = (random, new ValueDraw(random));

    /// <summary>The legal rig of a number.</summary>
    public static DrawnRig Of(int number)
    {
        Random random = FuzzOptions.RandomOf(number);
        while (true)
        {
            RigDraw draw = new(random);
            int days = random.Next(12) == 0 ? 8 : random.Next(1, 4);
            string weather = new WeatherDraw(random).Of(days + 1);
            draw.Write(days);
            if (draw.Legal(weather) is { } scenario) return new DrawnRig(number, scenario, weather);
        }
    }

    private void Write(int days)
    {
        _bold = _value.Chance(0.3);
        Header("[weather]");
        Key("file = \"weather.csv\"");
        Header("[run]");
        Key(string.Create(CultureInfo.InvariantCulture, $"start = 2027-01-12T{12 + _random.Next(11):00}:{_random.Next(60):00}:00-07:00"));
        Key(string.Create(CultureInfo.InvariantCulture, $"nights = {_random.Next(1, days + 1)}"));
        if (_value.Chance(0.2)) Key($"step = \"{_value.Pick<string>(["1 s", "10 s", "30 s", "60 s", "120 s", "5 min", "10 min"])}\"");
        bool heated = _value.Chance(0.6), battery = _value.Chance(0.3);
        int cylinders = _value.Chance(0.45) ? 1 : _random.Next(2, 5);
        foreach (ScenarioSection section in ScenarioKeys.Root.Below)
        {
            if (Left.Contains(section.Name) || section.Name == "run") continue;
            if (section.Name == "cylinder")
            {
                for (int i = 0; i < cylinders; i++) Table("", section, many: cylinders > 1);
                continue;
            }

            double presence = section.Name switch
            {
                "furnace" or "thermostat" => heated ? 1 : 0,
                "coach" => heated ? 1 : 0.3,
                "battery" => battery ? 1 : 0,
                "solar" or "load" or "converter" or "generator" => battery ? 0.5 : 0,
                _ => Presence.GetValueOrDefault(section.Name, 0.15),
            };
            int most = section.Form == TableForm.Many ? 3 : 1;
            for (int i = 0; i < most && _value.Chance(i == 0 ? presence : 0.3); i++) Table("", section, section.Form != TableForm.One);
        }
    }

    private void Table(string above, ScenarioSection section, bool many)
    {
        string name = above.Length == 0 ? section.Name : $"{above}.{section.Name}";
        Header(many ? $"[[{name}]]" : $"[{name}]");
        HashSet<string> unused = [.. section.Ways.SelectMany(w => w)], needed = [];
        if (section.Ways.Count > 0)
        {
            IReadOnlyList<string> way = _value.Chance(0.6) ? section.Ways[0] : _value.Pick(section.Ways);
            needed = [.. way];
            unused.ExceptWith(way);
        }

        foreach (ScenarioKey key in section.Keys)
        {
            if (unused.Contains(key.Name)) continue;
            bool must = key.IsNeeded || needed.Contains(key.Name);
            if (!must && !_value.Chance(key.Name is "left" or "name" or "hookup" or "kind" or "supply" ? 0.9 : key.Name is "stuck_on" ? 0.5 : _bold ? 0.35 : 0.15)) continue;
            if (Value(section, key) is { } value) Key($"{key.Name} = {value}");
        }

        foreach (ScenarioSection below in section.Below)
        {
            if (unused.Contains(below.Name)) continue;
            bool must = below.IsNeeded || needed.Contains(below.Name);
            int most = below.Form == TableForm.One ? 1 : 4;
            for (int i = 0; i < most && (must && i == 0 || _value.Chance(i == 0 ? Presence.GetValueOrDefault(below.Name, 0.2) : 0.5)); i++)
                Table(name, below, below.Form != TableForm.One);
        }
    }

    // A few values are drawn where something happens: cylinders that are empty, nearly empty or a little too full, shells of a shape that there is.
    private string? Value(ScenarioSection section, ScenarioKey key) => (section.Name, key.Name) switch
    {
        ("cylinder", "left") => ValueDraw.Quoted(_random.Next(10) switch
        {
            0 => "0 %",
            1 => ValueDraw.Plain(_value.Logarithmic(0.01, 3)) + " %",
            2 => ValueDraw.Plain(90 + 30 * _random.NextDouble()) + " %",
            _ => ValueDraw.Plain(1 + 99 * _random.NextDouble()) + " %",
        }),
        ("cylinder", "water_capacity") => Shell(),
        ("cylinder", "diameter") => ValueDraw.Quoted(ValueDraw.Plain(_diameter_m) + " m"),
        ("cylinder", "wall" or "metal_mass" or "tare" or "legal_fill") when !_value.Chance(0.3) => null,
        ("furnace", "stops_at") => string.Create(
            CultureInfo.InvariantCulture, $"2027-01-{12 + _random.Next(2)}T{_random.Next(13, 24):00}:{_random.Next(60):00}:00"),
        _ => _value.Of(key),
    };

    private double _diameter_m;

    private string Shell()
    {
        double volume_m3 = 1e-3 * _value.Logarithmic(1, 5000);
        _diameter_m = Math.Clamp(2 * Math.Cbrt(1.5 * volume_m3 / Math.PI) * (0.4 + 0.55 * _random.NextDouble()), 0.1, 3);
        return ValueDraw.Quoted(ValueDraw.Plain(volume_m3 * 1e3) + " L");
    }

    private string? Legal(string weather)
    {
        for (int i = 0; i < MostRepairs; i++)
        {
            string text = string.Join('\n', _lines.Select(l => l.Text)) + "\n";
            ReadResult read = ScenarioReader.ReadText(text, "rig.toml", new OneWeather(weather));
            if (read.Scenario is not null) return text;
            FileProblem problem = read.Problems[0];
            if (problem.File != "rig.toml" || problem.Line < 1 || problem.Line > _lines.Count || !Remove(problem.Line - 1)) return null;
        }

        return null;
    }

    // A refused key goes; a refused table goes with those below it.
    private bool Remove(int at)
    {
        Line line = _lines[at];
        if (!line.IsHeader)
        {
            _lines.RemoveAt(at);
            return true;
        }

        string name = line.Text.Trim('[', ']');
        if (name is "weather" or "run") return false;
        int end = at + 1;
        while (end < _lines.Count && (!_lines[end].IsHeader || _lines[end].Text.Trim('[', ']').StartsWith(name + ".", StringComparison.Ordinal))) end++;
        _lines.RemoveRange(at, end - at);
        return true;
    }

    private void Header(string text) => _lines.Add(new Line(text, true));

    private void Key(string text) => _lines.Add(new Line(text, false));

    private readonly record struct Line(string Text, bool IsHeader);

    private sealed class OneWeather(string text) : IWeatherSource
    {
        private readonly byte[] _bytes = Encoding.UTF8.GetBytes(text);

        public bool TryOpen(string file, out Stream? stream, out string shown)
        {
            (stream, shown) = (new MemoryStream(_bytes), file);
            return true;
        }
    }
}
