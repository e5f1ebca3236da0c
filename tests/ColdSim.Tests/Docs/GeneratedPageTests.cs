using Xunit;

namespace ColdSim.Tests.Docs;

[Trait("Category", "Docs")]
public class GeneratedPageTests
{
    private static readonly Dictionary<string, string> Parts = new() { ["keys a"] = "| one |\n| two |\n" };

    [Fact]
    public void What_is_between_the_markers_is_replaced_and_the_prose_stays()
        => Assert.Equal(
            "before\n<!-- generated: keys a -->\n| one |\n| two |\n<!-- end -->\nafter\n",
            GeneratedPage.Renew("before\n<!-- generated: keys a -->\n| old |\n<!-- end -->\nafter\n", Parts));

    [Theory]
    [InlineData("no part")]
    [InlineData("<!-- generated: keys a -->\n")]
    [InlineData("<!-- generated: keys b -->\n<!-- end -->")]
    [InlineData("<!-- generated: keys a -->\n<!-- end -->\n<!-- end -->")]
    [InlineData("<!-- generated: keys a -->\n<!-- end -->\n<!-- generated: keys a -->\n<!-- end -->")]
    public void A_page_whose_markers_are_not_those_of_the_parts_is_refused(string page)
        => Assert.Throws<InvalidOperationException>(() => GeneratedPage.Renew(page, Parts));
}
