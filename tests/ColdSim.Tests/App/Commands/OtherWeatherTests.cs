using System.Text.Json;
using ColdSim.Tests.Files.Weather;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary><c>--weather</c> of the commands that run a scenario.</summary>
public sealed class OtherWeatherTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-weather-").FullName;
    private readonly string _scenario;
    private readonly string _weather;

    public OtherWeatherTests()
    {
        _scenario = Write("trip.toml", """
            [weather]
            file = "gone.csv"
            from = 2020-01-01
            station_elevation = "100 m"
            [run]
            start = 2020-01-14T16:00:00-07:00
            nights = 1
            [cylinder]
            size = "20 lb"
            [furnace]
            input = "20,000 BTU/h"
            [thermostat]
            day = "10 °C"
            [coach]
            length = "20 ft"
            grade = "good"
            [[option]]
            name = "larger"
            [option.set]
            "cylinder.size" = "30 lb"

            """);
        _weather = Write("a.epw", Samples.EpwOf([(2031, 1, 29), (2031, 1, 30), (2031, 1, 31)]));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static Shell Run(int code, params string[] words)
    {
        Shell shell = new();
        int ended = shell.Run(words);
        Assert.True(code == ended, shell.Error + shell.Out);
        return shell;
    }

    [Fact]
    public void Every_command_that_runs_takes_another_weather_file()
    {
        foreach (string[] words in (string[][])[["run", _scenario], ["compare", _scenario], ["explain", _scenario], ["limits", _scenario, "--fills", "80"], ["freeze", _scenario, "--at", "2031-01-30T04:00"], ["check", _scenario]])
        {
            Assert.Contains("gone.csv", Run(2, words).Error, StringComparison.Ordinal);
            Run(0, [.. words, "--weather", _weather]);
        }
    }

    [Fact]
    public void A_start_outside_that_file_gives_way_to_its_first_afternoon()
    {
        using JsonDocument json = JsonDocument.Parse(Run(0, "run", _scenario, "--weather", _weather, "--json").Out);
        string assumed = json.RootElement.GetProperty("assumptions").ToString();
        Assert.Contains("the start 2020-01-14T16:00-07:00 lies outside", assumed, StringComparison.Ordinal);
        Assert.Contains("place: elevation 1600 m, as the weather file says", assumed, StringComparison.Ordinal);
        Assert.Equal("2031-01-29T16:00:00-07:00", json.RootElement.GetProperty("start").GetString());
    }

    [Fact]
    public void A_file_that_is_missing_or_faulty_is_refused_by_its_own_name()
    {
        Assert.Contains("coldsim: --weather: there is no file 'none.csv'", Run(2, "run", _scenario, "--weather", "none.csv").Error, StringComparison.Ordinal);
        string bad = Write("bad.csv", "no weather\n");
        Assert.Contains($"{bad}:1:", Run(2, "run", _scenario, "--weather", bad).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Stops_with_their_own_weather_are_not_run_in_another()
    {
        const string stop = "[[stop]]\nname = \"A\"\nfrom = 2031-01-29T16:00:00\nto = 2031-01-30T16:00:00\n", own = "[stop.weather]\nfile = \"a.epw\"\n", rig = "[cylinder]\nsize = \"20 lb\"\n";
        Assert.Contains(
            "apart.toml:5:1: the stop has a weather of its own, in whose place no other file can be read; accepted: --weather with a scenario of one weather",
            Run(2, "trip", Write("apart.toml", stop + own + rig), "--weather", _weather).Error, StringComparison.Ordinal);
        Run(0, "trip", Write("one.toml", stop + "[weather]\nfile = \"gone.csv\"\n" + rig), "--weather", _weather);
    }

    [Fact]
    public void Tonight_puts_the_rigs_hollow_and_place_on_another_file()
    {
        string rig = Write("hollow.toml", File.ReadAllText(_scenario).Replace("file = \"gone.csv\"", "hollow = \"5 K\"", StringComparison.Ordinal));
        string csv = Write("w.csv", "# Position: 40, -105\n# Elevation: 2000 m\n" + Nights("-5"));
        string[] words = ["tonight", "--weather", csv, "--left", "full", "--json"];
        using JsonDocument plain = JsonDocument.Parse(Run(0, [.. words, "--rig", Write("plain.toml", File.ReadAllText(rig).Replace("hollow = \"5 K\"", "", StringComparison.Ordinal))]).Out);
        using JsonDocument hollow = JsonDocument.Parse(Run(0, [.. words, "--rig", rig]).Out);
        Assert.Equal((-5.0, -10.0), (Low(plain), Low(hollow)));
        Assert.Contains("place: elevation 2000 m, as the weather file says", hollow.RootElement.GetProperty("assumptions").ToString(), StringComparison.Ordinal);

        static double Low(JsonDocument run) => Math.Round(run.RootElement.GetProperty("nights")[0].GetProperty("outside_low_c").GetDouble(), 6);
    }

    // Three days around today by the hour.
    private static string Nights(string air_C)
    {
        System.Text.StringBuilder csv = new("time,air [°C]\n");
        for (int h = 0; h < 72; h++)
            csv.Append(System.Globalization.CultureInfo.InvariantCulture, $"{new DateTimeOffset(DateTime.Today.AddDays(-1).AddHours(h)):yyyy-MM-dd'T'HH:mmzzz},{air_C}\n");
        return csv.ToString();
    }

    [Fact]
    public void Tonight_without_a_rig_is_at_the_height_of_its_weather_file()
    {
        string[] words = ["tonight", "--weather", Write("w.csv", "# Elevation: 2000 m\n" + Nights("-5")), "--cylinder", "20 lb", "--left", "full", "--furnace", "20000 BTU/h", "--json"];
        Assert.Contains("elevation 2000 m, as the weather file says", Run(0, words).Out, StringComparison.Ordinal);
        Assert.DoesNotContain("as the weather file says", Run(0, [.. words, "--elevation", "1000 m"]).Out, StringComparison.Ordinal);
    }
}
