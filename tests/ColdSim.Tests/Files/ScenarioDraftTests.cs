using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Drafts;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files;

public class ScenarioDraftTests
{
    private const string Rig = """
        # Two on the tongue.
        [weather]
        file = "w.csv"
        [cylinder] # the only one
        size = "20 lb"
        tare = "18 lb"     # as stamped
        left = "10 lb"     # weighed
        [cylinder.surroundings]
        sky_view = 0.3
        [thermostat]
        day = "66 °F"      # in the evening
        """;

    private static readonly Fixtures.OneFile Weather = new("w.csv", Fixtures.Weather);

    private static ScenarioDraft Draft(string text = Rig) => new(text, "s.toml", Weather);

    private static ReadResult Read(string text) => ScenarioReader.ReadText(text, "s.toml", Weather);

    [Fact]
    public void Without_changes_it_is_the_scenario_as_written()
        => Assert.Equal(Read(Rig).Scenario!.Rig.Cylinders[0], Draft().With([]).Scenario!.Rig.Cylinders[0]);

    [Fact]
    public void A_tried_value_is_read_as_if_somebody_had_written_it_and_the_text_stays()
    {
        ScenarioDraft draft = Draft();
        Scenario tried = draft.With([new("cylinder.left", "\"12 lb\"")]).Scenario!;
        Assert.Equal(12 * 0.45359237, tried.Rig.Cylinders[0].Contents_kg, 1e-9);
        Assert.Equal(10 * 0.45359237, draft.With([]).Scenario!.Rig.Cylinders[0].Contents_kg, 1e-9);
        Assert.Equal(Rig, draft.Text);
    }

    [Fact]
    public void The_last_of_two_changes_of_one_key_counts()
        => Assert.Equal(
            13 * 0.45359237, Draft().With([new("cylinder.left", "\"12 lb\""), new("cylinder.left", "\"13 lb\"")]).Scenario!.Rig.Cylinders[0].Contents_kg, 1e-9);

    [Theory]
    [InlineData("cylinder.left", "\"900 lb\"")]
    [InlineData("cylinder.left", "\"12 feet\"")]
    [InlineData("cylinder.left", "12 lb")]
    public void What_the_file_could_not_hold_cannot_be_tried(string key, string value)
    {
        ReadResult read = Draft().With([new(key, value)]);
        Assert.Null(read.Scenario);
        Assert.Contains("accepted", Assert.Single(read.Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_that_is_none_is_refused_with_the_nearest_name()
        => Assert.Equal("left", Assert.Single(Draft().With([new("cylinder.leftt", "\"12 lb\"")]).Problems).Nearest);

    [Theory]
    [InlineData("cylinder.left", "\"10 lb\"")]
    [InlineData("cylinder.1.left", "\"10 lb\"")]
    [InlineData("cylinder.surroundings.sky_view", "0.3")]
    [InlineData("thermostat.night", null)]
    [InlineData("coach.length", null)]
    public void A_key_is_told_as_it_is_written(string key, string? value) => Assert.Equal(value, Draft().Written(key));

    [Fact]
    public void A_kept_change_replaces_the_value_and_no_comment()
        => Assert.Equal(
            Rig.Replace("\"10 lb\"", "\"12 lb\"", StringComparison.Ordinal).Replace("0.3", "0.5", StringComparison.Ordinal),
            Draft().WrittenWith([new("cylinder.left", "\"12 lb\""), new("cylinder.surroundings.sky_view", "0.5")]));

    [Fact]
    public void Another_size_leaves_nothing_of_the_old_plate()
    {
        string written = Draft().WrittenWith([new("cylinder.size", "\"30 lb\"")]);
        Assert.DoesNotContain("tare", written, StringComparison.Ordinal);
        Assert.Contains("left = \"10 lb\"     # weighed", written, StringComparison.Ordinal);
        Assert.Equal("30 lb", Read(written).Scenario!.Rig.Cylinders[0].Name);
    }

    // Each row: what is tried. Written into the file it must be the same rig.
    [Theory]
    [InlineData("thermostat.night", "\"55 °F\"")]
    [InlineData("cylinder.blanket.power", "\"100 W\"")]
    [InlineData("cylinder.2.size", "\"30 lb\"", "cylinder.2.left", "\"20 lb\"", "arrangement.kind", "\"changeover\"")]
    [InlineData("cylinder.2.size", "\"20 lb\"", "cylinder.2.blanket.power", "\"60 W\"", "cylinder.left", "\"3 lb\"")]
    [InlineData("cylinder.1.blanket.power", "\"60 W\"", "cylinder.2.size", "\"20 lb\"")]
    [InlineData("place.elevation", "\"4,900 ft\"")]
    public void What_is_kept_in_the_file_is_what_was_tried(params string[] pairs)
    {
        KeyChange[] changes = [.. pairs.Chunk(2).Select(p => new KeyChange(p[0], p[1]))];
        ScenarioDraft draft = Draft();
        Scenario tried = draft.With(changes).Scenario!;
        ReadResult kept = Read(draft.WrittenWith(changes));
        Assert.Empty(kept.Problems);
        Assert.Equal(tried.Rig.Cylinders, kept.Scenario!.Rig.Cylinders);
        Assert.Equal(tried.Rig.Arrangement, kept.Scenario.Rig.Arrangement);
        Assert.Equal(tried.Rig.Thermostat, kept.Scenario.Rig.Thermostat);
        Assert.Equal(tried.Rig.Site.Elevation_m, kept.Scenario.Rig.Site.Elevation_m);
        foreach (string comment in (string[])["# Two on the tongue.", "# the only one", "# weighed", "# in the evening"])
            Assert.Contains(comment, draft.WrittenWith(changes), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_kept_as_an_option_is_what_was_tried()
    {
        KeyChange[] changes = [new("cylinder.left", "\"12 lb\""), new("thermostat.night", "\"55 °F\"")];
        ScenarioDraft draft = Draft();
        string written = draft.WrittenWithOption("colder \"nights\"", changes);
        Assert.StartsWith(Rig, written, StringComparison.Ordinal);
        ReadResult read = Read(written);
        Assert.Empty(read.Problems);
        Assert.Equal("colder \"nights\"", Assert.Single(read.Options).Name);
        Assert.Equal(draft.With(changes).Scenario!.Rig.Thermostat, read.Options[0].Scenario.Rig.Thermostat);
    }

    [Fact]
    public void A_table_in_one_line_is_not_changed_in_place_but_refused()
    {
        ScenarioDraft draft = Draft("weather = { file = \"w.csv\" }\ncylinder = { size = \"20 lb\" }\n");
        Assert.Null(draft.Written("cylinder.size"));
        Assert.Equal("30 lb", draft.With([new("cylinder.size", "\"30 lb\"")]).Scenario!.Rig.Cylinders[0].Name);
        Assert.Contains("given twice", Assert.Throws<InvalidOperationException>(() => draft.WrittenWith([new("cylinder.size", "\"30 lb\"")])).Message, StringComparison.Ordinal);
    }
}
