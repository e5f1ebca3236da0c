using System.Text.Json;
using ColdSim.Files.Results;
using ColdSim.Planning.Explain;
using ColdSim.Tests.Planning.Explain;
using Xunit;

namespace ColdSim.Tests.Files;

public class ExplainResultsTests
{
    internal const string Title = "## The explanation";

    [Fact]
    public void The_page_and_the_document_have_the_same_keys()
    {
        SortedSet<string> written = new(StringComparer.Ordinal);
        using MemoryStream stream = new();
        ExplainJson.Write(Explained.Of(Limit.Regulator), stream);
        ResultsTests.Collect(JsonDocument.Parse(stream.ToArray()).RootElement, "", written);
        string[] page = [.. DocPage.Lines("json.md").SkipWhile(l => l != Title).Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal))
            .Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Select(l => l.Split('`')[1]).Order(StringComparer.Ordinal)];
        Assert.Equal(written, page);
    }

    [Fact]
    public void Every_word_is_on_the_page()
    {
        string page = string.Join('\n', DocPage.Lines("json.md"));
        Assert.All(Enum.GetValues<Limit>().Select(ExplainJson.Word), w => Assert.Contains($"`{w}`", page, StringComparison.Ordinal));
        Assert.All(Enum.GetValues<RemedyKind>().Select(ExplainJson.Word), w => Assert.Contains($"`{w}`", page, StringComparison.Ordinal));
    }
}
