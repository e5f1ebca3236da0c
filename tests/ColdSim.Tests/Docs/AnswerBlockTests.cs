using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class AnswerBlockTests
{
    public static TheoryData<string> Pages
        => [.. Directory.EnumerateFiles(Path.GetDirectoryName(DocPage.PathOf("model.md"))!, "*.md").Select(p => Path.GetFileName(p)!).Append("../README.md")
            .Where(AnswerBlocks.Has).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_shows_the_answers_that_the_program_gives(string page) => await AnswerBlocks.AssertCurrentAsync(page);
}
