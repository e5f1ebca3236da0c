using ColdSim.Model.Coach;
using ColdSim.Model.Engine;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Coach;

public class CoachBodyTests
{
    [Fact]
    public void Furnishings_that_follow_the_air_within_two_seconds_are_air()
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 200e3, FurnishingsCapacity_J_K = 1000, Coupling_W_K = 1000 });
        Assert.False(body.HasFurnishings);
        Assert.Equal(201e3, body.AirCapacity_J_K);
    }

    [Fact]
    public void Air_has_at_least_the_capacity_with_which_it_follows_in_two_seconds()
    {
        CoachBody body = new(TwoNodes(100) with { AirCapacity_J_K = 10, FurnishingsCapacity_J_K = 1e6, Coupling_W_K = 900 });
        Assert.Equal(2 * (900 + body.Envelope_W_K + body.Specification.GroundConductance_W_K), body.AirCapacity_J_K);
    }

    [Fact]
    public void A_coach_almost_without_air_takes_no_more_steps_than_two_a_second()
    {
        CoachSpecification coach = TwoNodes(3000) with { AirCapacity_J_K = 150, FurnishingsCapacity_J_K = 45e3, Coupling_W_K = 16 };
        Trace run = Run(Heated() with { Coach = coach }, Steady(-10), 0.5);
        Assert.InRange(run.Steps.Count, 1, 3600);
        Assert.True(run.Result.Ledger.Closes, run.Result.Ledger.ToString());
    }
}
