using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class ScenarioPageTests
{
    [Fact]
    public void The_generated_tables_of_docs_scenario_md_are_current()
        => GeneratedPage.AssertCurrent("scenario.md", ScenarioPage.Parts());
}
