using ColdSim.Model.Numerics;
using Xunit;

namespace ColdSim.Tests.Model.Numerics;

public class BogackiShampineTests
{
    private static readonly RungeKuttaMethod Method = RungeKuttaMethod.BogackiShampine;

    // The rate after the step is a fourth stage with the weights of the step.
    private static double[] Row(int stage) => Padded(stage == 0 ? [] : stage < Method.Stages ? Method.Stage(stage).ToArray() : Method.Weights.ToArray());

    private static double[] Padded(double[] row) => [.. row, .. new double[4 - row.Length]];

    private static double Node(int stage) => Row(stage).Sum();

    private static double Sum(double[] weights, Func<int, double> of) => weights.Select((w, i) => w * of(i)).Sum();

    private static double Through(int stage) => Sum(Row(stage), Node);

    [Fact]
    public void The_step_meets_every_condition_of_third_order()
    {
        double[] step = Padded(Method.Weights.ToArray());
        Assert.Equal(1, step.Sum(), 1e-15);
        Assert.Equal(1.0 / 2, Sum(step, Node), 1e-15);
        Assert.Equal(1.0 / 3, Sum(step, i => Node(i) * Node(i)), 1e-15);
        Assert.Equal(1.0 / 6, Sum(step, Through), 1e-15);
    }

    [Fact]
    public void The_embedded_method_is_of_second_order_and_not_of_third()
    {
        double[] embedded = [.. Padded(Method.Weights.ToArray()).Zip(Method.Error.ToArray(), (b, e) => b - e)];
        Assert.Equal(1, embedded.Sum(), 1e-15);
        Assert.Equal(1.0 / 2, Sum(embedded, Node), 1e-15);
        Assert.True(Math.Abs(1.0 / 3 - Sum(embedded, i => Node(i) * Node(i))) > 1e-3);
    }

    // Of second order in every part of the step, and of third at its end: a cubic that has the states and the rates of both ends.
    [Theory]
    [InlineData(0.125)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void The_continuous_extension_follows_a_quadratic_rate_of_time_in_every_part(double part)
    {
        double[] weights = new double[4];
        Method.Within(part, weights);
        Assert.Equal(part, weights.Sum(), 1e-15);
        Assert.Equal(part * part / 2, Sum(weights, Node), 1e-15);
        Assert.Equal(part * part * part / 3, Sum(weights, i => Node(i) * Node(i)), 1e-15);
    }
}
