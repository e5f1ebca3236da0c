using ColdSim.Planning.Diagnosis;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Planning.Diagnosis;

public class LikelihoodTableTests
{
    public static TheoryData<Sign> Signs => [.. Enum.GetValues<Sign>()];

    [Theory]
    [MemberData(nameof(Signs))]
    public void Every_row_adds_up_to_one_and_has_a_weight_for_each_state(Sign sign) => Assert.All(LikelihoodTable.Of(sign), row =>
    {
        Assert.Equal(SignStates.Of(sign).Count, row.Weights.Count);
        Assert.Equal(1, row.Weights.Sum(), 1e-9);
    });

    [Theory]
    [MemberData(nameof(Signs))]
    public void Every_row_names_a_source_of_the_page_or_says_that_there_is_none(Sign sign)
    {
        string[] sources = [.. DocPage.Lines("sources.md").Where(l => l.StartsWith("## ", StringComparison.Ordinal)).Select(l => l[3..])];
        Assert.All(LikelihoodTable.Of(sign), row => Assert.Contains(row.Basis, sources.Append(LikelihoodTable.NoSource)));
    }

    [Theory]
    [MemberData(nameof(Signs))]
    public void No_state_is_impossible_because_people_misread(Sign sign)
    {
        for (int state = 0; state < SignStates.Of(sign).Count; state++)
            Assert.All(Enum.GetValues<Cause>(), c => Assert.InRange(LikelihoodTable.Likelihood(sign, state, c), 0.01, 0.99));
    }

    [Fact]
    public void Priors_add_up_to_one() => Assert.Equal(1, Enum.GetValues<Cause>().Sum(LikelihoodTable.Prior), 1e-9);
}
