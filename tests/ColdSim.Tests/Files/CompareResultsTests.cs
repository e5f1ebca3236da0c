using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Planning.Compare;
using ColdSim.Tests.Planning.Compare;
using Xunit;

namespace ColdSim.Tests.Files;

public class CompareResultsTests
{
    [Fact]
    public void Json_has_numbers_times_and_words_under_their_keys()
    {
        JsonElement root = Json().RootElement;
        Assert.Equal(Ranking.Rule, root.GetProperty("rule").GetString());
        Assert.True(root.GetProperty("any_holds").GetBoolean());
        JsonElement[] rows = [.. root.GetProperty("options").EnumerateArray()];
        Assert.Equal(["40 lb", "100 lb", "a skirt all round, with film over every window", "as it is", "overfilled"], rows.Select(r => r.GetProperty("name").GetString()));
        Assert.Equal([1, 1, 3, 4, 5], rows.Select(r => r.GetProperty("rank").GetInt32()));
        Assert.Equal([false, false, false, true, false], rows.Select(r => r.GetProperty("as_it_is").GetBoolean()));
        Assert.Equal([false, true, false, false, false], rows.Select(r => r.GetProperty("on_ground").GetBoolean()));
        Assert.Equal("2027-01-16T04:06:00-07:00", rows[3].GetProperty("first_short").GetString());
        Assert.Equal(697 * 60, rows[3].GetProperty("short_time_s").GetDouble());
        Assert.Equal("gas gone", rows[3].GetProperty("verdict").GetString());
        Assert.False(rows[4].GetProperty("holds").GetBoolean());
        Assert.Equal("liquid_full", rows[4].GetProperty("end").GetString());
    }

    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(Json(HandRows.Several with { Base = HandRows.Several.Base with { StartedFrom = Reports.LogStart } }).RootElement, "", written);
        ResultsTests.AssertKeys("compare", written);
    }

    [Fact]
    public void Csv_has_a_row_an_option_the_best_first()
    {
        using StringWriter text = new();
        CsvReport.Write(HandRows.Several, text);
        string[] lines = text.ToString().Split('\n');
        Assert.Equal(
            "rank,option,cylinders,holds,verdict,end,nights,nights held,first short,UTC offset,short [min],dry at,inside low [°C],gas used [kg],gas used [MJ],"
            + "cylinder changes,blanket [Wh],left at start [kg],left at end [kg],cost,"
            + "flat at,voltage gone [min],charge low [%],water freezes at,left behind [kg],first failure,freezing [h],lowest of water and inside [°C],"
            + "no heat [h],cold kelvin-hours,no flame [min],weak flame [min],locked out with gas [min]",
            lines[0]);
        Assert.Equal("1,40 lb,20 lb,yes,holds,complete,3,3,,,0.0,,13.10,10.430,524.9,0,0.0,12.000,1.570,,,,,,,,0.00,,0.00,0.0,0.0,0.0,0.0", lines[1]);
        Assert.StartsWith("3,\"a skirt all round, with film over every window\",", lines[3], StringComparison.Ordinal);
        Assert.Equal("4,as it is,20 lb,no,gas gone,complete,3,1,2027-01-16 04:06:00,-07:00,697.0,2027-01-17 04:12:00,-1.00,9.030,454.5,0,0.0,12.000,2.970,,,,,,,2027-01-16 04:06:00,3.20,-1.00,11.20,96.0,697.0,0.0,0.0", lines[4]);
        Assert.Equal(7, lines.Length);
    }

    private static JsonDocument Json(ColdSim.Planning.Compare.Comparison? comparison = null)
    {
        using MemoryStream stream = new();
        JsonReport.Write(comparison ?? HandRows.Several, stream);
        return JsonDocument.Parse(stream.ToArray());
    }
}
