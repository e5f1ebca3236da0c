using ColdSim.Model.Coach;
using ColdSim.Planning.Quick;
using Xunit;

namespace ColdSim.Tests.Files;

public class GradedCoachTests
{
    [Theory]
    [InlineData(CoachGrade.Good, "good")]
    [InlineData(CoachGrade.Ordinary, "ordinary")]
    [InlineData(CoachGrade.Leaky, "leaky")]
    public void A_coach_by_its_grade_is_the_same_with_and_without_a_file(CoachGrade grade, string word)
    {
        CoachSpecification written = Fixtures.Read($"[coach]\ngrade = \"{word}\"\nlength = \"7 m\"\n" + Fixtures.Least).Scenario!.Rig.Coach!;
        CoachSpecification quick = GradedCoach.Of(grade, 7);
        Assert.Equal(written.HeatLoss.Sum(l => l.Conductance_W_K), quick.HeatLoss.Sum(l => l.Conductance_W_K), 1e-9);
        Assert.Equal(
            (written.AirCapacity_J_K, written.FurnishingsCapacity_J_K, written.Coupling_W_K),
            (quick.AirCapacity_J_K, quick.FurnishingsCapacity_J_K, quick.Coupling_W_K));
    }
}
