using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Planning.Trips;
using Xunit;

namespace ColdSim.Tests.Files;

public class TripResultsTests
{
    [Fact]
    public void The_page_and_the_document_have_the_same_keys()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(Json().RootElement, "", written);
        ResultsTests.Collect(Json(WithEverything).RootElement, "", written);
        string[] page = [.. DocPage.Lines("json.md").SkipWhile(l => l != "## The trip").Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal))
            .Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Select(l => l.Split('`')[1]).Order(StringComparer.Ordinal)];
        Assert.Equal(written, page);
    }

    [Fact]
    public void Every_word_is_on_the_page()
    {
        string page = string.Join('\n', DocPage.Lines("json.md"));
        string[] words = [.. Enum.GetValues<RefillKind>().Select(TripJson.Of), .. Enum.GetValues<FillingEnd>().Select(TripJson.Of), .. Enum.GetValues<WaitKind>().Select(TripJson.Of)];
        Assert.All(words, w => Assert.Contains($"`{w}`", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Numbers_and_words_stand_under_their_keys()
    {
        JsonElement root = Json().RootElement;
        Assert.Equal(14, root.GetProperty("nights").GetArrayLength());
        JsonElement second = root.GetProperty("refills")[1];
        Assert.Equal(("fill", "weight", "cannot_wait"), (second.GetProperty("kind").GetString(), second.GetProperty("stopped_by").GetString(), second.GetProperty("wait").GetString()));
        Assert.Equal("2027-01-18T09:00:00-07:00", second.GetProperty("too_late").GetString());
        Assert.Equal(2, root.GetProperty("nights")[7].GetProperty("refills")[0].GetInt32());
        Assert.True(root.GetProperty("totals").GetProperty("ledger_closes").GetBoolean());
    }

    [Fact]
    public void Csv_has_a_row_a_night()
    {
        using StringWriter text = new();
        TripCsv.Write(FortnightStoryTests.Story.Value, text);
        string[] lines = text.ToString().Split('\n');
        Assert.Equal(
            "night from,night to,stop,verdict,outside low [°C],inside low [°C],gas used [kg],margin [W],changes,blankets [Wh],refills,"
            + "left left at dawn [kg],right left at dawn [kg]",
            lines[0]);
        Assert.StartsWith("2027-01-08T16:00:00-07:00,2027-01-09T12:00:00-07:00,Osprey Bench,holds,", lines[1], StringComparison.Ordinal);
        Assert.Equal(16, lines.Length);
    }

    [Fact]
    public void Who_drew_what_water_and_the_12_V_side_stand_in_each_night()
    {
        JsonElement night = Json(WithEverything).RootElement.GetProperty("nights")[0];
        Assert.Equal(["furnace", "stove"], night.GetProperty("gas_by_appliance").EnumerateArray().Select(g => g.GetProperty("name").GetString()));
        Assert.Equal(0.62, night.GetProperty("power").GetProperty("charge_low_frac").GetDouble());
        Assert.Equal("dump valve", night.GetProperty("water")[0].GetProperty("name").GetString());
        Assert.Equal(JsonValueKind.Null, Json().RootElement.GetProperty("nights")[0].GetProperty("power").ValueKind);
    }

    private static TripReport WithEverything => FortnightStoryTests.Story.Value with
    {
        Nights = [FortnightStoryTests.Story.Value.Nights[0] with { Night = Reports.Short().Nights[0] }],
    };

    private static JsonDocument Json(TripReport? report = null)
    {
        using MemoryStream stream = new();
        TripJson.Write(report ?? FortnightStoryTests.Story.Value, stream);
        return JsonDocument.Parse(stream.ToArray());
    }
}
