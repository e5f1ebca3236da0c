using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Tests.Planning.Limits;
using Xunit;

namespace ColdSim.Tests.Files;

public class LimitsResultsTests
{
    [Fact]
    public void The_page_and_the_document_have_the_same_keys()
    {
        using MemoryStream stream = new();
        JsonReport.Write(HandLimits.Chart, stream);
        using JsonDocument document = JsonDocument.Parse(stream.ToArray());
        SortedSet<string> written = new(StringComparer.Ordinal);
        ResultsTests.Collect(document.RootElement, "", written);
        string[] page = [.. DocPage.Lines("json.md").SkipWhile(l => l != "## The limits").Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal))
            .Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Select(l => l.Split('`')[1]).Order(StringComparer.Ordinal)];
        Assert.Equal(written, page);
    }

    [Fact]
    public void Csv_has_a_row_a_cell()
    {
        using StringWriter text = new();
        CsvReport.Write(HandLimits.Chart, text);
        Assert.Equal(1 + 20 + 1, text.ToString().Split('\n').Length);
    }
}
