using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.App.Text.Answers;

public class OneLineTests
{
    [Fact]
    public void A_long_verdict_loses_its_last_clause_and_not_half_a_word()
        => Assert.Equal(
            "HOLDS with \"30 lb, skirt, film and 55 °F at night\", 12 lb left at the end",
            OneLine.Of("HOLDS with \"30 lb, skirt, film and 55 °F at night\", 12 lb left at the end, inside 54 °F at the coldest"));

    [Fact]
    public void A_name_is_not_cut_at_its_own_comma()
        => Assert.EndsWith("...", OneLine.Of($"HOLDS with \"{new string('a', 45)}, b {new string('c', 60)}\", 12 lb left"), StringComparison.Ordinal);

    [Fact]
    public void Nothing_is_longer_than_a_line_and_what_fits_is_whole()
        => Gen.String[Gen.Char["ab ,.\""], 0, 200].Sample(text => Assert.True(
            OneLine.Of(text).Length <= Wrap.Columns && (text.Length > Wrap.Columns || OneLine.Of(text) == text)));
}
