using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Tests.Planning.Limits;
using Xunit;

namespace ColdSim.Tests.Files;

public class LimitsResultsTests
{
    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        using MemoryStream stream = new();
        JsonReport.Write(HandLimits.Chart with { Scenario = HandLimits.Chart.Scenario with { StartedFrom = Reports.LogStart } }, stream);
        using JsonDocument document = JsonDocument.Parse(stream.ToArray());
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(document.RootElement, "", written);
        ResultsTests.AssertKeys("limits", written);
    }

    [Fact]
    public void Csv_has_a_row_a_cell()
    {
        using StringWriter text = new();
        CsvReport.Write(HandLimits.Chart, text);
        Assert.Equal(1 + 20 + 4 + 1, text.ToString().Split('\n').Length);
    }
}
