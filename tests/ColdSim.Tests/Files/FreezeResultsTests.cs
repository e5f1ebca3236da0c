using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Planning.Freezing;
using Xunit;

namespace ColdSim.Tests.Files;

public class FreezeResultsTests
{
    [Fact]
    public void The_document_has_the_keys_of_its_figures()
    {
        using MemoryStream stream = new();
        JsonReport.Write(new FreezeOutlook(Reports.Short().Scenario with { StartedFrom = Reports.LogStart }, [Reports.Stop]), stream);
        using JsonDocument document = JsonDocument.Parse(stream.ToArray());
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(document.RootElement, "", written);
        ResultsTests.AssertKeys("freeze", written);
    }
}
