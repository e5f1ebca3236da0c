using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class CommandsPageTests
{
    [Fact]
    public void The_generated_parts_of_docs_commands_md_are_current()
        => GeneratedPage.AssertCurrent("commands.md", CommandsPage.Parts());
}
