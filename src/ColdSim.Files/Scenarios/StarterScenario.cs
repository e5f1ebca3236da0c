using System.Globalization;
using System.Text;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;

namespace ColdSim.Files.Scenarios;

/// <summary>A scenario to begin with: commented, complete, and marked as invented.</summary>
public static class StarterScenario
{
    /// <summary>The weather file that <see cref="Text(string)"/> names unless another is asked for.</summary>
    public const string WeatherFile = "weather.csv";

    private static readonly DateTimeOffset FirstHour = new(2025, 1, 14, 12, 0, 0, TimeSpan.FromHours(-7));
    private const int Hours = 72;

    // Where the comments begin.
    private const int CommentColumn = 32;

    /// <summary>The scenario.</summary>
    /// <param name="weatherFile">The weather file it names.</param>
    public static string Text(string weatherFile = WeatherFile)
    {
        ArgumentException.ThrowIfNullOrEmpty(weatherFile);
        return Commented().Replace("WEATHER_FILE", weatherFile.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    /// <summary>Three days of invented cold weather, as CSV.</summary>
    public static string WeatherText()
    {
        using StringWriter text = new(CultureInfo.InvariantCulture);
        WeatherCsvWriter.Write([.. Enumerable.Range(0, Hours + 1).Select(Row)], text,
            " Invented weather, not a measurement: a cold spell that deepens over three nights.\n Replace it with a forecast or a record of your own.");
        return text.ToString();
    }

    /// <summary>The scenario and the weather beside it, weather first.</summary>
    /// <param name="path">The scenario's file.</param>
    public static IReadOnlyList<(string Path, string Text)> FilesOf(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        string weatherName = Path.GetFileNameWithoutExtension(path) + ".weather.csv";
        return [(Path.Combine(Path.GetDirectoryName(path) ?? "", weatherName), WeatherText()), (path, Text(weatherName))];
    }

    // The template with the comments and defaults that the keys' declarations have.
    private static string Commented()
    {
        StringBuilder text = new();
        ScenarioSection section = ScenarioKeys.Root;
        foreach (string line in Template.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
        {
            if (line.StartsWith('['))
                section = ScenarioKeys.All.FirstOrDefault(s => s.Name == line.Trim('[', ']')).Section ?? section;
            bool hasComment = line.EndsWith(CommentMark, StringComparison.Ordinal);
            string shown = hasComment ? line[..^CommentMark.Length] : line;
            if (shown.EndsWith(DefaultMark, StringComparison.Ordinal))
                shown = $"{shown[..^DefaultMark.Length]}\"{KeyOf(section, line).DefaultShown}\"";
            if (hasComment)
                shown = $"{shown.PadRight(CommentColumn)}# {KeyOf(section, line).Comment}";
            text.Append(shown).Append('\n');
        }
        return text.ToString();
    }

    private static ScenarioKey KeyOf(ScenarioSection section, string line)
        => section.Keys.First(k => k.Name == line.TrimStart('#', ' ').Split(' ')[0]);

    // A daily swing of 7 K about a mean that falls 4 K a day; coldest at 07:00, some wind by day.
    private static WeatherRow Row(int hour)
    {
        DateTimeOffset time = FirstHour.AddHours(hour);
        double clock = time.Hour;
        double swing = -Math.Cos((clock - 7) / 24 * 2 * Math.PI);
        double air_C = -10 - (4 * hour / 24.0) + (7 * swing);
        double wind = 1.5 + (2.0 * Math.Max(0, swing));
        double sun = 420 * Math.Max(0, Math.Sin((clock - 8) / 9 * Math.PI)) * (clock is >= 8 and <= 17 ? 1 : 0);
        return new WeatherRow(time, air_C + ConversionFactors.ZeroCelsius_K, wind, air_C - 3 + ConversionFactors.ZeroCelsius_K, sun, 0.25);
    }

    // A line that ends in the mark of a comment gets the key's; one that ends in the mark of a default gets that.
    private const string CommentMark = " #", DefaultMark = "DEFAULT";

    private const string Template = """
        # A ColdSim scenario. Every quantity is a text with its unit, in either system: "20 lb" or "9 kg".
        # Lines that begin with # are comments; those with a value show what is taken when the line is left out.
        # All keys are described in docs/scenario.md.

        title = "Three cold nights"

        [place]
        name = "An invented trailhead"
        elevation = "5,300 ft"
        latitude = 44.5 #
        longitude = -110.5 #

        [weather]
        file = "WEATHER_FILE" #

        # The run begins at the first 16:00 in the weather; start = another date and time changes that.
        [run]
        nights = 3

        [cylinder]
        size = "20 lb" #
        left = "80 %" #

        [cylinder.surroundings]
        wind_exposure = 0.3 #
        sky_view = 0.5 #
        sun_exposure = 0 #

        # Under a cover or in a locker the cylinders chill their air, and gas falls short at a low some 5 to 10 °F warmer:
        # [enclosure]
        # kind = "tongue cover"         # or "open", "by the wall", "ventilated locker"; its openings stay open

        [regulator]
        rated_flow = "160,000 BTU/h"
        rated_inlet = "30 psi"
        # set_point = DEFAULT

        [furnace]
        input = "25,000 BTU/h" #
        efficiency = "77 %"
        # altitude = DEFAULT #

        [thermostat]
        day = "20 °C"
        night = "61 °F"
        night_hours = "22:00-06:30"

        [people]
        awake = ["06:30-22:30"]
        count = 2

        # The heat loss may be measured (heat_loss = "110 W/K"), built from [[coach.surface]],
        # or guessed from the length and a grade: "good", "ordinary" or "leaky".
        [coach]
        length = "24 ft"
        width = "8 ft"
        grade = "ordinary"
        gains = "60 W" #

        # Other gas, at a known rate:
        # [[draw]]
        # name = "refrigerator"
        # rate = "1,500 BTU/h"

        [verdict]
        short_allowance = "5 min"
        below_set_point = "1 K"
        dawn = "07:00"

        # What else could be taken or done: 'coldsim compare' runs each and ranks them.
        [[option]]
        name = "100 lb cylinder"
        [option.set]
        "cylinder.size" = "100 lb"

        [[option]]
        name = "100 lb, 55 °F at night"
        [option.set]
        "cylinder.size" = "100 lb"
        "thermostat.night" = "55 °F"

        """;
}
