using System.Globalization;
using System.Text;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Scenarios;

/// <summary>A scenario to begin with: commented, complete, and marked as invented.</summary>
public static class StarterScenario
{
    /// <summary>The weather file that <see cref="Text(string)"/> names unless told otherwise.</summary>
    public const string WeatherFile = "weather.csv";

    private static readonly DateTimeOffset FirstHour = new(2025, 1, 14, 12, 0, 0, TimeSpan.FromHours(-7));
    private const int Hours = 72;

    /// <summary>The scenario.</summary>
    /// <param name="weatherFile">The weather file it names.</param>
    public static string Text(string weatherFile = WeatherFile)
    {
        ArgumentException.ThrowIfNullOrEmpty(weatherFile);
        return Template.Replace("WEATHER_FILE", weatherFile.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    /// <summary>Three days of invented cold weather, as CSV.</summary>
    public static string WeatherText()
    {
        using StringWriter text = new(CultureInfo.InvariantCulture);
        WeatherCsvWriter.Write([.. Enumerable.Range(0, Hours + 1).Select(Row)], text,
            " Invented weather, not a measurement: a cold spell that deepens over three nights.\n Replace it with a forecast or a record of your own.");
        return text.ToString();
    }

    /// <summary>Writes the scenario, and its weather beside it.</summary>
    /// <param name="path">The scenario's file.</param>
    /// <returns>The weather's file.</returns>
    /// <exception cref="IOException">One of the two is there already, or cannot be written.</exception>
    public static string Write(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        string weatherName = Path.GetFileNameWithoutExtension(path) + ".weather.csv";
        string weatherPath = Path.Combine(Path.GetDirectoryName(path) ?? "", weatherName);
        foreach (string there in new[] { path, weatherPath }.Where(File.Exists))
            throw new IOException($"'{there}' is there already.");
        AtomicFile.Write(weatherPath, s => s.Write(Encoding.UTF8.GetBytes(WeatherText())));
        AtomicFile.Write(path, s => s.Write(Encoding.UTF8.GetBytes(Text(weatherName))));
        return weatherPath;
    }

    // A daily swing of 7 K about a mean that falls 4 K a day; coldest at 07:00, some wind by day.
    private static WeatherRow Row(int hour)
    {
        DateTimeOffset time = FirstHour.AddHours(hour);
        double clock = time.Hour;
        double swing = -Math.Cos((clock - 7) / 24 * 2 * Math.PI);
        double air_C = -10 - (4 * hour / 24.0) + (7 * swing);
        double wind = 1.5 + (2.0 * Math.Max(0, swing));
        double sun = 420 * Math.Max(0, Math.Sin((clock - 8) / 9 * Math.PI)) * (clock is >= 8 and <= 17 ? 1 : 0);
        return new WeatherRow(time, air_C + 273.15, wind, air_C - 3 + 273.15, sun, 0.25);
    }

    private const string Template = """
        # A ColdSim scenario. Every quantity is a text with its unit, in either system: "20 lb" or "9 kg".
        # Lines that begin with # are comments; those with a value show what is taken when the line is left out.
        # All keys are described in docs/scenario.md.

        title = "Three cold nights"

        [place]
        name = "An invented trailhead"
        elevation = "5,300 ft"
        latitude = 44.5                 # degrees, north positive
        longitude = -110.5              # degrees, east positive

        [weather]
        file = "WEATHER_FILE"           # beside this file; its columns are described in docs/weather-csv.md

        [run]
        start = 2025-01-14T16:00:00-07:00
        nights = 3

        [cylinder]
        size = "20 lb"                  # or water_capacity and diameter from the plate
        left = "80 %"                   # of the legal filling; or a mass, such as "12 lb"

        [cylinder.surroundings]
        wind_shelter = 0.3              # part of the weather's wind that reaches it: 1 in the open, 0 in a closed box
        sky_view = 0.5                  # part of the sky it sees
        sun_exposure = 0                # part of the sun that reaches it

        [regulator]
        rated_flow = "160,000 BTU/h"
        rated_inlet = "30 psi"
        # set_point = "11 inH2O"

        [furnace]
        input = "25,000 BTU/h"          # from the plate
        efficiency = "77 %"
        # altitude = "fixed orifice"    # or "code percentage"

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
        gains = "60 W"                  # lamps, refrigerator, and other things that always run; people come on top

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
