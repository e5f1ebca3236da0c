using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
[Trait("Category", "Slow")]
public class ScreenKeysPageTests
{
    [Fact]
    public void The_keys_of_docs_screen_keys_md_are_those_that_the_pages_declare()
        => GeneratedPage.AssertCurrent("screen-keys.md", ScreenKeysPage.Parts());
}
