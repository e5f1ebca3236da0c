using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Ensemble;
using ColdSim.Tests.Planning.Ensemble;
using Xunit;

namespace ColdSim.Tests.App.Text.Answers;

public class ChanceAnswerTests
{
    [Fact]
    public void The_chance_is_said_first_and_beside_the_wanted_one()
    {
        Answer answer = ChanceAnswer.Of(HandChances.Report, UnitStyle.Us);
        Assert.Equal("CHANCE 41 % (38 to 44 %) that both nights hold: about as likely as not.", answer.Verdict);
        Assert.StartsWith("That is below the 90 % you want: 412 of 1,000 runs hold.", answer.Consequences[0], StringComparison.Ordinal);
        Assert.Equal("CHANCE 41 % that both nights hold, below the 90 % you want", answer.Brief);
    }

    [Fact]
    public void What_reaches_the_wanted_chance_is_to_do_and_the_cheapest_is_first()
    {
        Answer answer = ChanceAnswer.Of(HandChances.Report, UnitStyle.Us);
        Assert.Equal(["40 lb: 91 % (89 to 93 %), costs 22.40", "100 lb: 99 % (98 to 99.3 %), costs 41.50"], answer.Actions);
        Assert.Empty(ChanceAnswer.Of(HandChances.ByYears, UnitStyle.Us).Actions);
    }

    [Fact]
    public void The_night_that_holds_least_is_the_last_to_be_left_out()
    {
        AnswerTable table = ChanceAnswer.Of(HandChances.Report, UnitStyle.Us).Table!;
        Assert.True(table.Rows[1].Importance > table.Rows[0].Importance);
        Assert.Equal("1 more, each 99.7 % or more.", table.More([0]));
    }

    [Fact]
    public void One_year_is_not_taken_for_a_chance_and_fits_a_terminal()
    {
        ChanceReport one = HandChances.ByYears with { Asked = 1, Done = 1, Years = [2027], AllNights = new Proportion(0, 1), IsTypicalYear = true };
        IReadOnlyList<AnswerLine> lines = AnswerLayout.Fit(ChanceAnswer.Of(one, UnitStyle.Us), AnswerLayout.Rows);
        Assert.InRange(lines.Count, 1, AnswerLayout.Rows);
        Assert.Contains("one year says little of a chance", string.Join(' ', lines.Select(l => l.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_of_the_members_says_so_first()
        => Assert.StartsWith(
            "Interrupted after 40 of 1,000", ChanceAnswer.Of(HandChances.Report with { Done = 40 }, UnitStyle.Us).Consequences[0], StringComparison.Ordinal);
}
