using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class JsonPageTests
{
    [Fact]
    public void The_tables_are_as_the_figures_write_them()
        => GeneratedPage.AssertCurrent("json.md", JsonPage.Documents.ToDictionary(d => d.Key, d => JsonPage.Table(d.Value)));
}
