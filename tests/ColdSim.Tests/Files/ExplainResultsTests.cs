using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Explain;
using ColdSim.Tests.Planning.Explain;
using Xunit;

namespace ColdSim.Tests.Files;

public class ExplainResultsTests
{
    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(Json(Explained.Of(Limit.Regulator)), "", written);
        ResultsTests.Collect(Json(Blended), "", written);
        Explanation plain = Explained.Of(Limit.Regulator);
        ResultsTests.Collect(
            Json(plain with { Report = plain.Report with { Scenario = plain.Report.Scenario with { StartedFrom = Reports.LogStart } } }), "", written);
        ResultsTests.Collect(
            Json(plain with { Plan = plain.Plan! with { Pairs = [plain.Plan.Singles[0]], Spare = new SpareMargin(1, 2), LeaveBefore = plain.Shortage } }), "", written);
        ResultsTests.AssertKeys("explain", written);
    }

    [Fact]
    public void The_chain_of_cause_has_a_blends_fields_which_are_null_for_propane_alone()
    {
        JsonElement chain = Json(Blended).GetProperty("chain"), propane = Json(Explained.Of(Limit.Regulator)).GetProperty("chain");
        Assert.Equal(0.55, chain.GetProperty("liquid").GetProperty("n_butane").GetDouble());
        Assert.Equal((3.5, -22), (chain.GetProperty("left_behind_kg").GetDouble(), chain.GetProperty("left_behind_at_c").GetDouble()));
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (propane.GetProperty("liquid").ValueKind, propane.GetProperty("left_behind_kg").ValueKind));
    }

    private static Explanation Blended => Explained.Of(Limit.Regulator) with
    {
        Chain = Explained.Of(Limit.Regulator).Chain with { Liquid = new(0.25, 0.55, 0.2), Blend = Reports.Short().Nights[0].Blends[0] },
    };

    private static JsonElement Json(Explanation explanation)
    {
        using MemoryStream stream = new();
        JsonReport.Write(explanation, stream);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
