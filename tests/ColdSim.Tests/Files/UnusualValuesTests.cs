using System.Globalization;
using System.Text;
using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Docs;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>What is odd and within the limits is run, with one warning that gives the value and what is usual.</summary>
public class UnusualValuesTests
{
    private const string Cylinder = "\n[cylinder]\nsize = \"20 lb\"\n";
    private const string Plated = "\n[cylinder]\nwater_capacity = \"21.6 kg\"\ndiameter = \"31 cm\"\n";
    private const string Place = "[place]\nlatitude = 45.1\nlongitude = -111.4\n";
    private const string Furnace = "[furnace]\ninput = \"20,000 BTU/h\"\n[thermostat]\nday = \"64 °F\"\n[coach]\nlength = \"20 ft\"\ngrade = \"good\"\n";
    private const string Surfaces = "[[coach.surface]]\nkind = \"wall\"\narea = \"30 m²\"\n[[coach.surface]]\nkind = \"roof\"\narea = \"15 m²\"\n[[coach.surface]]\nkind = \"floor\"\narea = \"15 m²\"\n";

    private static ReadResult Run(string scenario, string? weather = null) => Fixtures.Read("[weather]\nfile = \"w.csv\"\n" + scenario, weather ?? Fixtures.Weather);

    private static string TheWarning(string scenario, string? weather = null)
    {
        ReadResult read = Run(scenario, weather);
        Assert.Empty(read.Problems);
        return Assert.Single(read.Warnings, w => w.Contains("; usual: ", StringComparison.Ordinal));
    }

    private static void AssertNone(string scenario, string? weather = null)
    {
        ReadResult read = Run(scenario, weather);
        Assert.Empty(read.Problems);
        Assert.DoesNotContain(read.Warnings, w => w.Contains("; usual: ", StringComparison.Ordinal));
    }

    /// <summary>A scenario with a value of a key beyond what is usual, and another within it.</summary>
    private static readonly Dictionary<string, (Func<string, string> Scenario, string Odd, string Usual)> Keys = new(StringComparer.Ordinal)
    {
        ["place.elevation"] = (v => Cylinder + $"[place]\nelevation = \"{v}\"", "5,200 m", "5,200 ft"),
        ["stop.elevation"] = (v => Cylinder + $"[[stop]]\nname = \"A\"\nfrom = 2025-01-14T16:00:00-07:00\nto = 2025-01-14T20:00:00-07:00\nelevation = \"{v}\"", "5,200 m", "5,200 ft"),
        ["cylinder.blanket.power"] = (v => Cylinder + $"[cylinder.blanket]\npower = \"{v}\"", "2 kW", "120 W"),
        ["thermostat.day"] = (v => Cylinder + $"[thermostat]\nday = \"{v}\"\nnight = \"5 °C\"", "35 °C", "18 °C"),
        ["thermostat.night"] = (v => Cylinder + $"[thermostat]\nday = \"18 °C\"\nnight = \"{v}\"", "0 °C", "14 °C"),
        ["people.count"] = (v => Cylinder + "[coach]\nlength = \"20 ft\"\ngrade = \"good\"\n" + $"[people]\ncount = {v}", "20", "4"),
        ["people.wakes_below"] = (v => Cylinder + $"[people]\nwakes_below = \"{v}\"", "20 °C", "45 °F"),
        ["coach.heat_loss"] = (v => Cylinder + $"[coach]\nheat_loss = \"{v}\"\nlength = \"20 ft\"", "2,000 W/K", "110 W/K"),
        ["coach.length"] = (v => Cylinder + $"[coach]\ngrade = \"good\"\nlength = \"{v}\"", "18 m", "18 ft"),
        ["coach.width"] = (v => Cylinder + $"[coach]\ngrade = \"good\"\nlength = \"18 ft\"\nwidth = \"{v}\"", "6 m", "7 ft"),
        ["coach.leakage_area"] = (v => Cylinder + $"[coach]\ngrade = \"good\"\nlength = \"18 ft\"\nleakage_area = \"{v}\"", "1,500 cm²", "50 cm²"),
        ["coach.gains"] = (v => Cylinder + $"[coach]\ngrade = \"good\"\nlength = \"18 ft\"\ngains = \"{v}\"", "5 kW", "60 W"),
        ["coach.surface.area"] = (v => Cylinder + "[coach]\nlength = \"18 ft\"\n" + Surfaces + $"[[coach.surface]]\nkind = \"wall\"\narea = \"{v}\"", "215 m²", "215 ft²"),
    };

    /// <summary>Scenarios by what is unusual of their values beside each other, and the same set right.</summary>
    private static readonly (string Where, string Words, string Odd, string Usual)[] Combinations =
    [
        ("thermostat.night", "the night's set point, 18 °C (64 °F), is above the day's, 14 °C (57 °F)", Cylinder + "[thermostat]\nday = \"14 °C\"\nnight = \"18 °C\"", Cylinder + "[thermostat]\nday = \"18 °C\"\nnight = \"14 °C\""),
        ("thermostat.night_hours", "by day", Cylinder + "[thermostat]\nday = \"18 °C\"\nnight_hours = \"06:00-22:00\"", Cylinder + "[thermostat]\nday = \"18 °C\"\nnight_hours = \"22:00-06:00\""),
        ("furnace.input", "the furnace gives 0.25 kW", Cylinder + Furnace.Replace("20,000 BTU/h", "320 W", StringComparison.Ordinal), Cylinder + Furnace),
        ("furnace.input", "the furnace gives 38.5 kW", Cylinder + Furnace.Replace("20,000 BTU/h", "50 kW", StringComparison.Ordinal), Cylinder + Furnace),
        ("cylinder.tare", "tare 3 kg", Plated + "metal_mass = \"2.9 kg\"\ntare = \"3 kg\"", Plated + "metal_mass = \"6.5 kg\"\ntare = \"17.6 lb\""),
        ("cylinder.tare", "tare 18 kg", Plated + "metal_mass = \"7 kg\"\ntare = \"18 kg\"", Plated),
        ("cylinder.metal_mass", "metal_mass 9 kg with a tare of 8 kg", Plated + "metal_mass = \"9 kg\"\ntare = \"8 kg\"", Plated + "metal_mass = \"7 kg\"\ntare = \"8 kg\""),
        ("cylinder.legal_fill", "legal_fill 11 kg", Plated + "legal_fill = \"11 kg\"", Plated + "legal_fill = \"20 lb\""),
        ("enclosure", "openings of 20 cm²", Cylinder + "[enclosure]\nkind = \"ventilated locker\"\nlow_opening = \"10 cm²\"\nhigh_opening = \"10 cm²\"", Cylinder + "[enclosure]\nkind = \"ventilated locker\""),
        ("coach.surface", "have no roof", Cylinder + "[coach]\nlength = \"18 ft\"\n" + Surfaces.Replace("roof", "wall", StringComparison.Ordinal), Cylinder + "[coach]\nlength = \"18 ft\"\n" + Surfaces),
        ("coach.surface", "windows of 40 m² (431 ft²) in all", Cylinder + "[coach]\nlength = \"18 ft\"\n" + Surfaces + "[[coach.surface]]\nkind = \"window\"\narea = \"40 m²\"", Cylinder + "[coach]\nlength = \"18 ft\"\n" + Surfaces + "[[coach.surface]]\nkind = \"window\"\narea = \"40 ft²\""),
        ("place.longitude", "longitude 111.4 with a clock 7 h behind UTC", Cylinder + Place.Replace("-111.4", "111.4", StringComparison.Ordinal), Cylinder + Place),
        ("cylinder.left", "'left' is 1 without a unit, read as all of the legal filling, 9.07 kg", Cylinder + "left = 1", Cylinder + "left = 0.9"),
        ("cylinder.left", "'left' is 1 without a unit", Cylinder + "left = \"1\"", Cylinder + "left = \"1 lb\""),
    ];

    [Fact]
    public void A_value_beyond_the_usual_gets_one_warning_and_one_within_it_none()
    {
        foreach ((string key, (Func<string, string> scenario, string odd, string usual)) in Keys)
        {
            string warning = TheWarning(scenario(odd));
            Assert.StartsWith("s.toml:", warning, StringComparison.Ordinal);
            Assert.Contains($"'{key.Split('.')[^1]}' is {odd}; usual: ", warning, StringComparison.Ordinal);
            AssertNone(scenario(usual));
        }
    }

    [Fact]
    public void Values_that_are_unusual_beside_each_other_get_one_warning()
    {
        foreach ((string where, string words, string odd, string usual) in Combinations)
        {
            string warning = TheWarning(odd);
            Assert.Contains(words, warning, StringComparison.Ordinal);
            Assert.StartsWith("s.toml:", warning, StringComparison.Ordinal);
            Assert.DoesNotContain("s.toml:1:1:", warning, StringComparison.Ordinal);
            AssertNone(usual);
            Assert.Contains(where, UnusualScenario.All.Select(u => u.Where).Append(CylinderSection.LeftIsOne.Where));
        }
    }

    [Fact]
    public void Everything_that_is_declared_has_its_case_here()
    {
        Assert.Equal(UnusualValuesPageTests.Keys().Select(k => k.Name).Order(StringComparer.Ordinal), Keys.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(
            UnusualScenario.All.Select(u => u.Where).Append(CylinderSection.LeftIsOne.Where).Distinct().Order(StringComparer.Ordinal),
            Combinations.Select(c => c.Where).Distinct().Order(StringComparer.Ordinal));
        Assert.All(UnusualScenario.All.Concat<UnusualValue>(UnusualWeather.All).Concat(UnusualRows.Declared), u => Assert.True(u.Usual.Length > 0 && u.Basis.Length > 0, u.Noticed));
    }

    [Fact]
    public void The_demos_have_nothing_unusual()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios, "*.toml"))
        {
            ReadResult read = ScenarioReader.Read(file);
            Assert.DoesNotContain(read.Warnings, w => w.Contains("; usual: ", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void An_option_is_warned_of_alone_and_the_scenario_only_once()
    {
        ReadResult read = Run(Cylinder + "[coach]\nlength = \"18 ft\"\ngrade = \"good\"\ngains = \"5 kW\"\n[[option]]\nname = \"crowd\"\nset = { \"people.count\" = 20 }\n");
        string[] unusual = [.. read.Warnings.Where(w => w.Contains("; usual: ", StringComparison.Ordinal))];
        Assert.Equal(2, unusual.Length);
        Assert.StartsWith("option 'crowd': s.toml:", unusual[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_warning_comes_before_a_run_and_a_check_and_the_run_is_made()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "w.csv"), Fixtures.Weather);
            string path = Path.Combine(folder, "odd.toml");
            File.WriteAllText(path, "[weather]\nfile = \"w.csv\"\n" + Cylinder + Furnace + "gains = \"5 kW\"\n");
            foreach (string[] words in (string[][])[["check", path], ["run", path], ["run", path, "--json"]])
            {
                Shell shell = new();
                Assert.Equal(0, shell.Run(words));
                Assert.Contains("odd.toml:13:9: 'gains' is 5 kW; usual: up to 1 kW", shell.Error, StringComparison.Ordinal);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // Hours of a week from noon, with the air by the hour.
    private static string Week(string unit, string month, Func<int, double> air, string more = "", Func<int, string>? cell = null)
    {
        StringBuilder text = new($"time,air [{unit}]{more}\n");
        DateTimeOffset start = DateTimeOffset.Parse($"2025-{month}-14T12:00:00-07:00", CultureInfo.InvariantCulture);
        for (int hour = 0; hour < 168; hour++)
            text.Append(CultureInfo.InvariantCulture, $"{start.AddHours(hour):yyyy-MM-dd'T'HH:mmzzz},{air(hour):0.0}{cell?.Invoke(hour)}\n");
        return text.ToString();
    }

    // By day and night, in the number's own unit.
    private static Func<int, double> Swing(double mean, double swing) => hour => mean + (swing / 2 * Math.Cos(2 * Math.PI * (hour - 3) / 24));

    [Theory]
    [InlineData("°C", "01", 24, 18, "looks like °F")]
    [InlineData("°C", "01", 14, 21, "looks like °F")]
    [InlineData("°F", "07", 17, 12, "looks like °C")]
    [InlineData("°F", "01", -1, 6, "looks like °C")]
    public void Degrees_of_the_other_scale_are_noticed_by_the_season_the_position_and_the_swing(string unit, string month, double mean, double swing, string words)
    {
        string warning = TheWarning(Cylinder + Place, Week(unit, month, Swing(mean, swing)));
        Assert.Contains(words, warning, StringComparison.Ordinal);
        Assert.Contains($"under the heading {unit}", warning, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("°C", "01", -5, 10)]
    [InlineData("°C", "01", 11, 12)]
    [InlineData("°C", "07", 29, 16)]
    [InlineData("°C", "01", -38, 8)]
    [InlineData("°F", "01", -20, 15)]
    [InlineData("°F", "01", 24, 18)]
    [InlineData("°F", "07", 80, 30)]
    public void A_warm_spell_and_a_cold_snap_are_not(string unit, string month, double mean, double swing)
        => AssertNone(Cylinder + Place, Week(unit, month, Swing(mean, swing)));

    [Fact]
    public void A_dew_point_above_the_air_is_the_airs_and_over_one_kelvin_a_warning()
    {
        string warning = TheWarning(Cylinder, Week("°C", "01", Swing(-5, 10), ",dew point [°C]", hour => hour == 5 ? ",9.0" : ",-12"));
        Assert.Contains("w.csv:7: dew point above the air in 1 row, by up to ", warning, StringComparison.Ordinal);
        string little = Week("°C", "01", _ => -5, ",dew point [°C]", hour => hour < 3 ? ",-4.5" : ",-12");
        AssertNone(Cylinder, little);
        ReadResult read = Run(Cylinder, little);
        Assert.Contains(read.Warnings, w => w.Contains("dew point up to 1 K above the air in 3 rows, read as the air's temperature", StringComparison.Ordinal));
    }

    [Fact]
    public void A_jump_of_over_25_K_an_hour_is_a_warning_and_is_run()
    {
        string chinook = Week("°C", "01", hour => hour < 50 ? -20 : 7);
        Assert.Contains("w.csv:52: the air changes by 27 K from one row to the next", TheWarning(Cylinder, chinook), StringComparison.Ordinal);
        AssertNone(Cylinder, Week("°C", "01", hour => hour < 50 ? -18 : 6));
    }

    [Fact]
    public void Cloud_that_is_never_over_one_per_cent_is_a_fraction()
    {
        string warning = TheWarning(Cylinder, Week("°C", "01", Swing(-5, 10), ",cloud [%]", hour => hour % 3 == 0 ? ",0.4" : ",1"));
        Assert.Contains("cloud is never over 1 %", warning, StringComparison.Ordinal);
        AssertNone(Cylinder, Week("°C", "01", Swing(-5, 10), ",cloud [%]", _ => ",0"));
        AssertNone(Cylinder, Week("°C", "01", Swing(-5, 10), ",cloud [%]", _ => ",40"));
    }

    [Fact]
    public void A_storm_beyond_any_is_noticed()
    {
        Assert.Contains("w.csv:9: wind of 60 m/s", TheWarning(Cylinder, Week("°C", "01", Swing(-5, 10), ",wind [m/s]", hour => hour == 7 ? ",60" : ",4")), StringComparison.Ordinal);
        AssertNone(Cylinder, Week("°C", "01", Swing(-5, 10), ",wind [m/s]", _ => ",25"));
    }

    [Theory]
    [InlineData("wind [m/s]", "-99.9")]
    [InlineData("wind [m/s]", "999")]
    [InlineData("dew point [°C]", "-99.9")]
    [InlineData("dew point [°C]", "99")]
    [InlineData("sun [W/m²]", "-9999")]
    [InlineData("sun [W/m²]", "9999")]
    [InlineData("pressure [hPa]", "99999")]
    [InlineData("cloud [tenths]", "99", "cloud")]
    public void Nines_are_marks_for_what_is_not_known(string heading, string mark, string mapped = "")
    {
        string weather = Week("°C", "01", Swing(-5, 10), "," + heading, hour => hour is 5 or 6 ? "," + mark : heading[0] switch { 'p' => ",900", 'd' => ",-15", _ => ",4" });
        string map = mapped.Length == 0 ? "" : $"[weather.columns]\ntime = \"time\"\nair = \"air [°C]\"\n{mapped} = \"{heading}\"\n";
        string warning = TheWarning(map + Cylinder, weather);
        Assert.Contains($"w.csv:7: {heading[..heading.IndexOf(" [", StringComparison.Ordinal)]} {mark} and 1 more: read as not known", warning, StringComparison.Ordinal);
    }

    [Fact]
    public void Ninety_nine_is_a_value_where_the_column_may_have_it()
        => AssertNone(Cylinder, Week("°C", "01", Swing(-5, 10), ",cloud [%]", _ => ",99"));

    [Fact]
    public void A_row_whose_air_is_marked_as_not_known_is_left_out()
    {
        string weather = Week("°C", "01", hour => hour == 5 ? -99.9 : -5);
        Assert.Contains("w.csv:7: air -99.9: read as not known", TheWarning(Cylinder, weather), StringComparison.Ordinal);
        Assert.Equal(167, Run(Cylinder, weather).Scenario!.Weather.Count);
        Assert.Contains(Run(Cylinder, Week("°C", "01", _ => -99.9)).Problems, p => p.What.Contains("every air temperature is marked as not known", StringComparison.Ordinal));
    }

    [Fact]
    public void A_station_on_the_other_side_of_the_world_has_east_for_west()
    {
        IReadOnlyList<WeatherRow> rows = [new(new(2025, 1, 14, 12, 0, 0, TimeSpan.Zero), 268), new(new(2025, 1, 14, 13, 0, 0, TimeSpan.Zero), 268)];
        WeatherResult Of(double longitude) => new() { Rows = rows, Problems = [], Warnings = [], Notes = [], Station = new() { Latitude_deg = 45, Longitude_deg = longitude } };
        string?[] Found(double station, double place)
            => [.. UnusualWeather.All.Select(u => u.Find(new(Of(station), new() { Latitude_deg = 45.1, Longitude_deg = place })))];
        Assert.Contains("east for west", Assert.Single(Found(-111.4, 111.4), f => f is not null), StringComparison.Ordinal);
        Assert.DoesNotContain("east for west", Assert.Single(Found(-111.4, -100), f => f is not null)!, StringComparison.Ordinal);
        Assert.All(Found(-111.4, -111), Assert.Null);
    }
}
