using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class DiagnosePageTests
{
    [Fact]
    public void The_tables_of_docs_diagnose_md_are_those_of_the_program()
        => GeneratedPage.AssertCurrent("diagnose.md", DiagnosePage.Parts());
}
