using System.Text.Json;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary><c>coldsim tonight</c> of a rig that has a file, of several cylinders without one, and of this very moment.</summary>
public sealed class TonightRigTests : IDisposable
{
    private const double Pound_kg = 0.45359237;
    private static readonly string[] Quick = ["tonight", "--low", "-8 °F", "--furnace", "30000 BTU/h"];
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public TonightRigTests()
    {
        foreach (string file in Directory.GetFiles(DocPage.Scenarios))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
    }

    private string Changeover => Path.Combine(_folder, "changeover.toml");

    private static DateTimeOffset Dusk => new(2027, 2, 20, 17, 30, 0, TimeSpan.FromHours(-7));

    private Shell Run(int code, DateTimeOffset now, params string[] words)
    {
        Shell shell = new() { Clock = new FixedClock(now), Settings = _folder };
        int ended = shell.Run(words);
        Assert.True(code == ended, shell.Error + shell.Out);
        return shell;
    }

    private JsonElement Json(DateTimeOffset now, params string[] words)
    {
        using JsonDocument json = JsonDocument.Parse(Run(0, now, [.. words, "--json"]).Out);
        return json.RootElement.Clone();
    }

    private static double Left(JsonElement run) => run.GetProperty("summary").GetProperty("left_at_start_kg").GetDouble();

    [Fact]
    public void Tonight_of_a_rig_runs_its_cylinders_with_what_is_left_through_the_low_that_is_given()
    {
        JsonElement run = Json(Dusk, "tonight", "--rig", Changeover, "--low", "-8 °F", "--left", "1/3,full", "--wind", "5 mph");
        Assert.Equal("Tonight: Changeover at Ember Gap", run.GetProperty("title").GetString());
        Assert.Equal(1, run.GetProperty("nights").GetArrayLength());
        Assert.Equal("2027-02-20T18:00:00-07:00", run.GetProperty("start").GetString());
        Assert.Equal(4.0 / 3 * 0.42 * 47.6 * Pound_kg, Left(run), 3);
        Assert.Equal((-8 - 32) / 1.8, run.GetProperty("nights")[0].GetProperty("outside_low_c").GetDouble(), 2);
        Assert.Equal(["left", "right"], run.GetProperty("cylinders").EnumerateArray().Select(c => c.GetString()));
        Assert.DoesNotContain("weather file", run.GetProperty("assumptions").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_kept_rig_is_used_where_no_rig_and_no_cylinder_is_given()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "coldsim"));
        File.Copy(Changeover, Path.Combine(_folder, "coldsim", "rig.toml"));
        File.Copy(Path.Combine(_folder, "cold-snap-weather.csv"), Path.Combine(_folder, "coldsim", "cold-snap-weather.csv"));
        Assert.Equal("Tonight: Changeover at Ember Gap", Json(Dusk, "tonight", "--low", "-8 °F").GetProperty("title").GetString());
        Assert.Equal("Tonight", Json(Dusk, [.. Quick, "--cylinder", "20 lb", "--left", "full"]).GetProperty("title").GetString());
    }

    [Fact]
    public void A_rig_with_a_log_holds_what_was_read_last_unless_what_is_left_is_given()
    {
        string[] words = ["tonight", "--rig", Path.Combine(_folder, "three-days.toml"), "--low", "10 °F"];
        Assert.Equal(15.6 * Pound_kg, Left(Json(Dusk, words)), 3);
        Assert.StartsWith("From the log: 15.6 lb left Fri 15 Jan 16:15 (line 8).", Run(0, Dusk, [.. words, "--json"]).Error, StringComparison.Ordinal);
        Assert.Equal(40 * Pound_kg, Left(Json(Dusk, [.. words, "--no-log"])), 1);
        Assert.Equal(20 * Pound_kg, Left(Json(Dusk, [.. words, "--left", "1/2"])), 1);
    }

    [Fact]
    public void A_weather_file_and_the_rigs_own_weather_count_where_they_cover_tonight()
    {
        DateTimeOffset within = new(2027, 1, 13, 17, 0, 0, TimeSpan.FromHours(-7));
        string weather = Path.Combine(_folder, "cold-snap-weather.csv");
        JsonElement own = Json(within, "tonight", "--rig", Changeover), given = Json(within, "tonight", "--rig", Changeover, "--weather", weather);
        Assert.Equal(own.GetProperty("nights")[0].GetProperty("outside_low_c").GetDouble(), given.GetProperty("nights")[0].GetProperty("outside_low_c").GetDouble(), 6);
        Assert.Contains("does not cover tonight; give --low", Run(2, Dusk, "tonight", "--rig", Changeover).Error, StringComparison.Ordinal);
        Assert.Contains($"{weather}:", Run(2, Dusk, "tonight", "--rig", Changeover, "--weather", weather).Error, StringComparison.Ordinal);
        Assert.Contains("drop --low or --weather", Run(2, within, "tonight", "--rig", Changeover, "--weather", weather, "--low", "0 °F").Error, StringComparison.Ordinal);
        Assert.Contains("no file 'none.csv'", Run(2, within, "tonight", "--rig", Changeover, "--weather", "none.csv").Error, StringComparison.Ordinal);
        string broken = Path.Combine(_folder, "broken.csv");
        File.WriteAllText(broken, "no weather\n");
        Assert.Contains($"{broken}:1:", Run(2, within, "tonight", "--rig", Changeover, "--weather", broken).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("drop --cylinder to run the file, or drop --rig", "--rig", "changeover.toml", "--cylinder", "20 lb")]
    [InlineData("drop --furnace, --grade to run the file", "--rig", "changeover.toml", "--furnace", "7 kW", "--grade", "leaky")]
    [InlineData("--left has 1 value for 2 cylinders; give one for each, such as --left 1/3,full", "--rig", "changeover.toml", "--left", "1/3")]
    [InlineData("--left: 'some' is neither a part of a full one", "--rig", "changeover.toml", "--left", "some,full")]
    [InlineData("there is no file", "--rig", "none.toml")]
    [InlineData("--left has 1 value for 3 cylinders", "--cylinder", "2x20 lb,30 lb", "--left", "full", "--furnace", "7 kW")]
    [InlineData("a changeover takes two cylinders, not 3", "--cylinder", "3x20 lb", "--left", "full,full,full", "--furnace", "7 kW", "--joined", "changeover")]
    [InlineData("'side by side' is not a way to join cylinders; accepted: together, changeover, by-hand", "--cylinder", "2x20 lb", "--left", "full,full", "--furnace", "7 kW", "--joined", "side by side")]
    [InlineData("--joined: there is one cylinder", "--cylinder", "20 lb", "--left", "full", "--furnace", "7 kW", "--joined", "together")]
    [InlineData("accepted: \"propane\", \"special-duty propane\"", "--cylinder", "20 lb", "--left", "full", "--furnace", "7 kW", "--gas", "butane")]
    [InlineData("winter blend open together cannot be simulated", "--cylinder", "2x20 lb", "--left", "full,full", "--furnace", "7 kW", "--gas", "winter blend", "--joined", "together")]
    [InlineData("--blanket:", "--cylinder", "20 lb", "--left", "full", "--furnace", "7 kW", "--blanket", "warm")]
    [InlineData("--now and --start both say when", "--cylinder", "20 lb", "--left", "full", "--furnace", "7 kW", "--now", "--start", "20:00")]
    [InlineData("--inside-now goes with --now", "--cylinder", "20 lb", "--left", "full", "--furnace", "7 kW", "--inside-now", "50 °F")]
    [InlineData("up to 4", "--cylinder", "5x20 lb", "--left", "full", "--furnace", "7 kW")]
    public void What_does_not_fit_together_is_told_with_what_to_drop_or_write(string message, params string[] words)
        => Assert.Contains(message, Run(2, Dusk, ["tonight", "--low", "0 °F", .. words.Select(w => w.EndsWith(".toml", StringComparison.Ordinal) ? Path.Combine(_folder, w) : w)]).Error, StringComparison.Ordinal);

    [Fact]
    public void Several_cylinders_without_a_file_are_joined_as_is_said()
    {
        string[] two = [.. Quick, "--cylinder", "20 lb", "--cylinder", "30 lb", "--left", "1/3", "--left", "full"];
        JsonElement hand = Json(Dusk, two), changeover = Json(Dusk, [.. two, "--joined", "changeover"]), together = Json(Dusk, [.. Quick, "--cylinder", "20 lb,30 lb", "--left", "1/3,full", "--joined", "together"]);
        Assert.Equal(["20 lb", "30 lb"], hand.GetProperty("cylinders").EnumerateArray().Select(c => c.GetString()));
        Assert.Equal(Left(hand), Left(together), 6);
        Assert.Equal(Left(hand), Left(Json(Dusk, [.. two, "--joined", "by hand"])), 6);
        double[] Each(JsonElement run) => [.. run.GetProperty("nights")[0].GetProperty("each_left_at_end_kg").EnumerateArray().Select(e => e.GetDouble())];
        Assert.True(Each(together)[1] < Each(changeover)[1], "open together the full one is drawn from the start");
        Assert.Contains("on an automatic changeover", Run(0, Dusk, [.. two, "--joined", "changeover", "--full"]).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_blanket_and_a_blend_are_run_and_told()
    {
        string[] one = [.. Quick, "--cylinder", "20 lb", "--left", "1/3"];
        JsonElement bare = Json(Dusk, one), warm = Json(Dusk, [.. one, "--blanket", "90 W"]), blend = Json(Dusk, [.. one, "--gas", "Winter blend"]);
        double Short(JsonElement run) => run.GetProperty("summary").GetProperty("short_time_s").GetDouble();
        Assert.True(Short(warm) < Short(bare));
        Assert.True(Short(blend) > Short(bare));
        Assert.Equal("winter blend", blend.GetProperty("gas").GetString());
        Assert.Contains("each blanket powered all night", warm.GetProperty("assumptions").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Now_starts_at_the_clocks_minute_as_warm_as_it_is_and_tells_the_next_hour()
    {
        DateTimeOffset night = new(2027, 1, 15, 3, 10, 40, TimeSpan.FromHours(-7));
        string[] words = [.. Quick, "--cylinder", "20 lb,30 lb", "--left", "1/4,empty", "--now", "--inside-now", "48 °F"];
        JsonElement run = Json(night, words), hour = run.GetProperty("next_hour");
        Assert.Equal("2027-01-15T03:10:00-07:00", run.GetProperty("start").GetString());
        Assert.Equal("2027-01-15T04:10:00-07:00", hour.GetProperty("to").GetString());
        Assert.InRange(hour.GetProperty("inside_low_c").GetDouble(), -20, (48 - 32) / 1.8 + 0.01);
        Assert.True(hour.GetProperty("inside_if_out_c").GetDouble() < hour.GetProperty("inside_at_end_c").GetDouble());
        Assert.Equal(0, hour.GetProperty("if_out").GetProperty("fifty_fahrenheit_after_s").GetDouble());
        Assert.Equal(JsonValueKind.Null, Json(night, [.. Quick, "--cylinder", "20 lb", "--left", "1/4"]).GetProperty("next_hour").ValueKind);
        string text = Run(0, night, [.. words, "--full"]).Out;
        Assert.Contains("The next hour, from 03:10\n", text, StringComparison.Ordinal);
        Assert.Contains("if the furnace stays out, at ", text.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All(text.Split('\n'), l => Assert.True(l.Length <= 80, l));
    }

    [Theory]
    [InlineData(9, "2027-01-15T09:00:00+00:00")]
    [InlineData(13, "2027-01-15T13:00:00+00:00")]
    [InlineData(23, "2027-01-15T23:00:00+00:00")]
    public void Now_is_now_at_any_hour_of_a_rig_too(int hour, string start)
    {
        DateTimeOffset now = new(2027, 1, 15, hour, 0, 0, TimeSpan.Zero);
        JsonElement run = Json(now, "tonight", "--rig", Changeover, "--now", "--low", "0 °F", "--left", "full,full");
        Assert.Equal(start, run.GetProperty("start").GetString());
        Assert.Equal(JsonValueKind.Object, run.GetProperty("next_hour").ValueKind);
    }

    [Fact]
    public void A_furnace_without_any_gas_left_is_short_already()
    {
        DateTimeOffset night = new(2027, 1, 15, 3, 10, 0, TimeSpan.FromHours(-7));
        string text = Run(0, night, [.. Quick, "--cylinder", "20 lb", "--left", "empty", "--now", "--inside-now", "41 °F", "--full"]).Out;
        Assert.Contains("Gas is short already.", text, StringComparison.Ordinal);
        Assert.Contains("--left: 'empty'", Run(2, night, [.. Quick, "--cylinder", "20 lb", "--left", "empty"]).Error, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
