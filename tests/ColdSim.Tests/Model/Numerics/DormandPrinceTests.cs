using ColdSim.Model.Numerics;
using Xunit;

namespace ColdSim.Tests.Model.Numerics;

public class DormandPrinceTests
{
    private static readonly RungeKuttaMethod DormandPrince = RungeKuttaMethod.DormandPrince;
    private static readonly double[] Nodes = [0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1];

    // Rows of the tableau; the rate after the step is a seventh stage with the weights of the step.
    private static double[][] Rows() =>
        [.. Enumerable.Range(0, 7).Select(stage => Padded(stage == 0 ? [] : stage < DormandPrince.Stages ? DormandPrince.Stage(stage).ToArray() : DormandPrince.Weights.ToArray()))];

    private static double[] Padded(double[] row) => [.. row, .. new double[7 - row.Length]];

    private static double[] Fifth() => Padded(DormandPrince.Weights.ToArray());

    private static double[] Times(double[] a, double[] b) => [.. a.Zip(b, (x, y) => x * y)];

    private static double Sum(double[] weights, double[] of) => weights.Zip(of, (w, x) => w * x).Sum();

    private static double[] Through(double[] of) => [.. Rows().Select(row => Sum(row, of))];

    // Values of every rooted tree up to an order with the reciprocal of its density: Hairer, Nørsett and Wanner, tables II.2.1 and II.2.2.
    private static (double[] Tree, double Density)[] Trees(int upTo)
    {
        double[] one = [.. Enumerable.Repeat(1.0, 7)], c = Nodes, c2 = Times(c, c), c3 = Times(c2, c), ac = Through(c), ac2 = Through(c2), aac = Through(ac);
        (double[], double, int)[] all =
        [
            (one, 1, 1), (c, 2, 2), (c2, 3, 3), (ac, 6, 3), (c3, 4, 4), (Times(c, ac), 8, 4), (ac2, 12, 4), (aac, 24, 4),
            (Times(c2, c2), 5, 5), (Times(c2, ac), 10, 5), (Times(c, ac2), 15, 5), (Times(c, aac), 30, 5), (Times(ac, ac), 20, 5),
            (Through(c3), 20, 5), (Through(Times(c, ac)), 40, 5), (Through(ac2), 60, 5), (Through(aac), 120, 5),
        ];
        return [.. all.Where(t => t.Item3 <= upTo).Select(t => (t.Item1, t.Item2))];
    }

    [Fact]
    public void Each_row_of_the_tableau_adds_up_to_its_node()
        => Assert.All(Rows().Zip(Nodes), pair => Assert.Equal(pair.Second, pair.First.Sum(), 1e-14));

    [Fact]
    public void The_step_meets_every_condition_of_fifth_order()
        => Assert.All(Trees(5), t => Assert.Equal(1 / t.Density, Sum(Fifth(), t.Tree), 1e-14));

    [Fact]
    public void The_embedded_method_meets_every_condition_of_fourth_order_and_not_of_fifth()
    {
        double[] embedded = [.. Fifth().Zip(DormandPrince.Error.ToArray(), (b, e) => b - e)];
        Assert.All(Trees(4), t => Assert.Equal(1 / t.Density, Sum(embedded, t.Tree), 1e-14));
        Assert.Contains(Trees(5), t => Math.Abs(1 / t.Density - Sum(embedded, t.Tree)) > 1e-4);
    }

    // A method of fourth order in every part of the step: the conditions with the power of the part.
    [Theory]
    [InlineData(0.125)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(1)]
    public void The_continuous_extension_meets_every_condition_of_fourth_order_in_every_part(double part)
    {
        double[] weights = new double[7];
        DormandPrince.Within(part, weights);
        int[] orders = [1, 2, 3, 3, 4, 4, 4, 4];
        Assert.All(Trees(4).Zip(orders), pair => Assert.Equal(Math.Pow(part, pair.Second) / pair.First.Density, Sum(weights, pair.First.Tree), 1e-13));
    }

    [Fact]
    public void The_continuous_extension_ends_in_the_step()
    {
        double[] weights = new double[7];
        DormandPrince.Within(1, weights);
        Assert.All(Fifth().Zip(weights), pair => Assert.Equal(pair.First, pair.Second, 1e-15));
    }
}
