using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class ModelChecksPageTests
{
    [Fact]
    public void The_tables_of_docs_model_checks_md_are_what_the_model_gives()
        => GeneratedPage.AssertCurrent("model-checks.md", ModelChecksPage.Parts());
}
