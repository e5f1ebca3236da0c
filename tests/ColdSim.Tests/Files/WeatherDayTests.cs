using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>Weather as lows and highs of days.</summary>
public class WeatherDayTests
{
    private const string Days = """
        [weather]
        [[weather.day]]
        date = 2031-01-14
        low = "-10 °C"
        high = "0 °C"
        wind = "3 m/s"
        cloud = "20 %"
        [[weather.day]]
        date = 2031-01-15
        low = "-20 °C"
        high = "-6 °C"

        """;

    private const string Rig = "[cylinder]\nsize = \"20 lb\"\n";

    private static Scenario Good(string text)
    {
        ReadResult read = Fixtures.Read(text);
        Assert.Equal([], read.Problems.Select(p => p.ToString()));
        return read.Scenario!;
    }

    private static double Air_C(Scenario scenario, int hour)
    {
        int row = 0;
        return Math.Round(scenario.Weather.At(hour * 3600, ref row).Air_K - 273.15, 6);
    }

    [Fact]
    public void The_air_is_at_the_low_at_seven_and_at_the_high_at_three()
    {
        Scenario scenario = Good(Days + Rig);
        Assert.Equal((-10, 0, -10, -20), (Air_C(scenario, 7), Air_C(scenario, 15), Air_C(scenario, 23), Air_C(scenario, 31)));
        Assert.Equal(TimeSpan.FromHours(36), scenario.Weather.Last - scenario.Weather.First);
        Assert.Contains(scenario.Assumptions, a => a.StartsWith("weather: made of 2 days: each low at 07:00, each high at 15:00, half a cosine between them", StringComparison.Ordinal));
        Assert.Contains("sun: not given for the days; assumed 0 W/m²", scenario.Assumptions);
        Assert.Contains(scenario.Assumptions, a => a.StartsWith("wind: missing in 13 of 37 rows", StringComparison.Ordinal));
    }

    [Fact]
    public void Their_clock_is_the_starts_or_the_meridians()
    {
        Assert.Equal(TimeSpan.FromHours(-7), Good(Days + "[run]\nstart = 2031-01-14T18:00:00-07:00\n" + Rig).Weather.First.Offset);
        Scenario scenario = Good("[place]\nlatitude = 46\nlongitude = 15\n" + Days + Rig);
        Assert.Equal(new DateTimeOffset(2031, 1, 14, 16, 0, 0, TimeSpan.FromHours(1)), scenario.Start);
    }

    [Theory]
    [InlineData("date = 2031-01-15", "date = 2031-01-16", "2031-01-16 does not follow 2031-01-14; accepted: 2031-01-15; every day in order")]
    [InlineData("high = \"-6 °C\"", "high = \"-26 °C\"", "'high' is below 'low'; accepted: the warmest of the day")]
    [InlineData("date = 2031-01-15\n", "", "[weather.day] lacks 'date'")]
    [InlineData("low = \"-20 °C\"\n", "", "[weather.day] lacks 'low'")]
    [InlineData("[weather]\n", "[weather]\nfile = \"w.csv\"\n", "'file' beside [[weather.day]]; accepted: without it; the days have no file")]
    [InlineData("[weather]\n", "[weather]\nyear = 2030\n", "'year' beside [[weather.day]]")]
    public void A_faulty_day_is_reported(string right, string wrong, string expected)
        => Assert.Contains(Fixtures.Faults(Days.Replace(right, wrong, StringComparison.Ordinal) + Rig), f => f.Contains(expected, StringComparison.Ordinal));

    [Fact]
    public void One_day_alone_is_no_night()
        => Assert.Contains("one day only; accepted: two or more; a night needs the next morning's low", Assert.Single(Fixtures.Faults(Days[..Days.LastIndexOf("[[", StringComparison.Ordinal)] + Rig)), StringComparison.Ordinal);
}
