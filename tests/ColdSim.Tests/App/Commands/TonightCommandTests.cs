using System.CommandLine;
using System.Text.Json;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Quick;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class TonightCommandTests
{
    // 42 % of 47.6 lb of water.
    private const double Full_kg = 0.42 * 47.6 * 0.45359237;

    private static readonly string[] Least = ["tonight", "--low", "-8 °F", "--cylinder", "20 lb", "--left", "1/3", "--furnace", "25000 BTU/h"];

    [Fact]
    public void Tonight_answers_without_a_file()
    {
        DateTimeOffset now = new(2027, 1, 14, 17, 30, 0, TimeSpan.FromHours(-7));
        Scenario run = Asked(now, Least);
        Shell shell = new() { Clock = new FixedClock(now) };
        Assert.Equal(0, shell.Run([.. Least, "--full"]));
        Assert.Equal(new DateTimeOffset(2027, 1, 14, 18, 0, 0, TimeSpan.FromHours(-7)), run.Start);
        Assert.Equal(1, run.Nights);
        Assert.Equal(Full_kg / 3, run.Rig.Cylinders[0].Contents_kg, 1e-9);
        Assert.Equal(25_000 * 0.29307107017222, run.Rig.Furnace!.Input_W, 1e-6);
        Assert.Equal(20 * 24 * 0.3048, run.Rig.Coach!.HeatLoss.Sum(i => i.Conductance_W_K), 1e-9);
        Assert.Contains("Thursday night, 14 to 15 January, runs short", shell.Out, StringComparison.Ordinal);
        Assert.Contains("- afternoon high 18 °F above the low", shell.Out, StringComparison.Ordinal);
        Assert.Contains("within 30 % either way", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Tonight_accepts_every_option()
    {
        DateTimeOffset now = new(2027, 1, 14, 23, 30, 0, TimeSpan.Zero);
        string[] words =
        [
            .. Least, "--length", "7 m", "--grade", "leaky", "--inside", "15 °C", "--high", "-2 °C", "--wind", "5 mph",
            "--wind-exposure", "0.8", "--elevation", "5,200 ft", "--start", "0:30",
        ];
        Scenario run = Asked(now, words);
        Shell shell = new() { Clock = new FixedClock(now) };
        Assert.Equal(0, shell.Run([.. words, "--full"]));
        Assert.Equal(new DateTimeOffset(2027, 1, 15, 0, 30, 0, TimeSpan.Zero), run.Start);
        Assert.Equal(26 * 7, run.Rig.Coach!.HeatLoss[0].Conductance_W_K, 1e-9);
        Assert.Equal(7 * 2.4 * 80_000, run.Rig.Coach.FurnishingsCapacity_J_K, 1e-6);
        Assert.Equal(288.15, run.Rig.Thermostat!.NightSetPoint_K, 1e-9);
        Assert.Equal(288.15, run.Rig.Thermostat.DaySetPoint_K, 1e-9);
        Assert.Equal(0.8, run.Rig.Cylinders[0].Surroundings.WindExposure_frac, 1e-12);
        Assert.Equal(5200 * 0.3048, run.Rig.Site.Elevation_m, 1e-6);
        Assert.DoesNotContain("afternoon high", shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("sea level", shell.Out.Split("Assumed")[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Tonight_still_reads_the_old_name_of_the_wind_at_the_cylinder()
        => Assert.Equal(0.8, Asked(new DateTimeOffset(2027, 1, 14, 12, 0, 0, TimeSpan.Zero), [.. Least, "--wind-shelter", "0.8"]).Rig.Cylinders[0].Surroundings.WindExposure_frac, 1e-12);

    [Theory]
    [InlineData(18, "2027-01-14")]
    [InlineData(9, "2027-01-14")]
    [InlineData(5, "2027-01-13")]
    public void Tonight_is_the_night_going_on_until_six(int hour, string evening)
    {
        Assert.Equal(evening, Asked(new(2027, 1, 14, hour, 0, 0, TimeSpan.Zero), Least).Start.ToString("yyyy-MM-dd", null));
    }

    [Fact]
    public void The_weather_covers_the_night_on_any_date()
    {
        foreach (int month in (int[])[1, 4, 7])
        {
            Scenario run = Asked(new(2027, month, 14, 20, 0, 0, TimeSpan.FromHours(2)), Least);
            Assert.Equal(TimeSpan.FromHours(-6), run.Weather.First - run.Start);
            Assert.Equal(TimeSpan.FromHours(19), run.Weather.Last - run.Start);
        }
    }

    [Fact]
    public void All_faults_are_reported_at_once()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run(
            "tonight", "--low", "5", "--cylinder", "21 lb", "--left", "2", "--furnace", "900 kW", "--start", "25:00", "--elevation", "9 miles"));
        Assert.Contains("coldsim: --low: '5' has no unit", shell.Error, StringComparison.Ordinal);
        Assert.Contains("coldsim: --cylinder: '21 lb' is not a common size; there are 5 lb, 10 lb, 20 lb", shell.Error, StringComparison.Ordinal);
        Assert.Contains("coldsim: --furnace: '900 kW' must be 0.5 to 60 kW", shell.Error, StringComparison.Ordinal);
        Assert.Contains("coldsim: --start: '25:00' is not a clock time such as 18:00", shell.Error, StringComparison.Ordinal);
        Assert.Contains("coldsim: --elevation:", shell.Error, StringComparison.Ordinal);
        Assert.EndsWith("See 'coldsim tonight --help'.\n", shell.Error, StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Theory]
    [InlineData("2", "no more than full")]
    [InlineData("25 lb", "no more than full")]
    [InlineData("0 lb", "more than nothing")]
    [InlineData("some", "neither a part of a full one")]
    public void More_left_than_fits_is_refused(string left, string message)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("tonight", "--low", "-8F", "--cylinder", "20lb", "--left", left, "--furnace", "7 kW"));
        Assert.Contains(message, shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("full", Full_kg)]
    [InlineData("40 %", Full_kg * 0.4)]
    [InlineData("7 lb", 7 * 0.45359237)]
    public void What_is_left_is_a_part_or_a_mass(string left, double kg)
    {
        Scenario run = Asked(new(2027, 1, 14, 18, 0, 0, TimeSpan.Zero), "tonight", "--low", "-8F", "--cylinder", "20lb", "--left", left, "--furnace", "7 kW");
        Assert.Equal(kg, run.Rig.Cylinders[0].Contents_kg, 1e-9);
    }

    [Fact]
    public void A_high_below_the_low_is_refused()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run([.. Least, "--high", "-20 °F"]));
        Assert.Contains("--high is below --low", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_options_are_all_named()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("tonight"));
        Assert.Equal(
            "coldsim: --low is missing\ncoldsim: --cylinder is missing\ncoldsim: --left is missing\n"
            + "coldsim: --furnace is missing\n"
            + "coldsim: or name your rig with --rig FILE; 'coldsim new --mine' keeps one for every night\nSee 'coldsim tonight --help'.\n",
            shell.Error);
    }

    [Fact]
    public void Json_is_all_there_is_on_standard_output()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run([.. Least, "--json"]));
        using JsonDocument document = JsonDocument.Parse(shell.Out);
        Assert.Contains("assumed: ordinary coach", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(15, 10)]
    [InlineData(7, -10)]
    [InlineData(23, 0)]
    [InlineData(11, 0)]
    [InlineData(0, -1.950903220161282)]
    public void A_night_falls_from_its_high_at_three_to_its_low_at_seven(double clock_h, double air)
        => Assert.Equal(air, NightShape.Air_K(clock_h, -10, 10), 1e-9);

    [Fact]
    public void A_night_has_hourly_rows_past_the_next_noon()
    {
        DateTimeOffset noon = new(2027, 1, 14, 12, 0, 0, TimeSpan.FromHours(-7));
        IReadOnlyList<WeatherRow> rows = NightShape.Rows(noon, 250, 260);
        Assert.Equal(26, rows.Count);
        Assert.Equal(noon.AddHours(25), rows[^1].Time);
        Assert.Equal(250, rows.Min(r => r.Air_K), 1e-9);
        Assert.Equal(260, rows.Max(r => r.Air_K), 1e-9);
    }

    /// <summary>The scenario that the words ask to be run.</summary>
    private static Scenario Asked(DateTimeOffset now, params string[] words)
    {
        TonightOptions options = new();
        Command command = new("tonight");
        options.AddTo(command);
        using Host host = new(Stream.Null, TextWriter.Null) { Clock = new FixedClock(now) };
        return new TonightInput(command.Parse(words[1..]), options, UnitStyle.Us, host).Scenario();
    }
}
