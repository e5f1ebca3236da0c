using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Planning.Freezing;
using Xunit;

namespace ColdSim.Tests.Files;

public class FreezeResultsTests
{
    [Fact]
    public void The_page_and_the_document_have_the_same_keys()
    {
        using MemoryStream stream = new();
        JsonReport.Write(new FreezeOutlook(Reports.Short().Scenario, [Reports.Stop]), stream);
        using JsonDocument document = JsonDocument.Parse(stream.ToArray());
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(document.RootElement, "", written);
        string[] page = [.. DocPage.Lines("json.md").SkipWhile(l => l != "## The times to freezing").Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal))
            .Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Select(l => l.Split('`')[1]).Order(StringComparer.Ordinal)];
        Assert.Equal(written, page);
    }
}
