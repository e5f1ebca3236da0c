using ColdSim.Model;
using ColdSim.Model.Coach;
using ColdSim.Model.Engine;
using Xunit;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Engine;

public class ConvergenceOrderTests
{
    private const double Air_J_K = 0.25e6, Furnishings_J_K = 1.6e6, Loss_W_K = 150, Coupling_W_K = 400;
    private const double Inside_C = 20, Outside_C = -20, Time_s = 600;

    // A coach of two nodes that cools without furnace, sun or infiltration is smooth and linear: its inputs are constant and no event
    // function crosses zero, so the error against the closed form is the integrator's alone.
    [Theory]
    [InlineData(75)]
    [InlineData(50)]
    [InlineData(37.5)]
    public void Run_of_a_cooling_coach_converges_with_the_fifth_order_of_the_integrator(double step_s)
    {
        double order = Math.Log2(Error_K(step_s) / Error_K(step_s / 2));

        Assert.InRange(order, 4.7, 5.3);
    }

    private static double Error_K(double step_s)
    {
        CoachSpecification coach = OneNode(Loss_W_K, Air_J_K, Furnishings_J_K, Coupling_W_K, Inside_C);
        Trace run = Run(new Rig { Cylinders = [Bottle()], Coach = coach }, Steady(Outside_C, 24), Time_s / 3600, step_s);
        Assert.All(run.Steps, s => Assert.Equal(step_s, s.To.Time_s - s.From.Time_s, 1e-6));
        return Math.Abs(run.Last.Inside_K - Zero_K - Exact_C());
    }

    // Two exponentials: the eigenvalues of the two by two system, weighted for both nodes starting at one temperature.
    private static double Exact_C()
    {
        double a = -(Loss_W_K + Coupling_W_K) / Air_J_K, b = Coupling_W_K / Air_J_K, c = Coupling_W_K / Furnishings_J_K, d = -c;
        double root = Math.Sqrt((a - d) * (a - d) + 4 * b * c);
        double fast = 0.5 * (a + d - root), slow = 0.5 * (a + d + root);
        double weight = (a + b - slow) / (fast - slow);
        return Outside_C + (Inside_C - Outside_C) * (weight * Math.Exp(fast * Time_s) + (1 - weight) * Math.Exp(slow * Time_s));
    }
}
