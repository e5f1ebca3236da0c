namespace ColdSim.Model.Numerics;

/// <summary>Coefficients of Dormand and Prince's Runge–Kutta method of fifth order and its continuous extension of fourth.</summary>
/// <remarks>Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, 2nd edition (1993), table II.5.2 and section II.6.</remarks>
internal static class DormandPrince
{
    /// <summary>Number of stages; the rate after the step is one more for the continuous extension.</summary>
    public const int Stages = 6;

    private static readonly double[][] Tableau =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
    ];

    private static readonly double[] WeightsOfStages = [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84];

    private static readonly double[] ErrorWeights = [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    private static readonly double[] DenseWeights =
    [
        -12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799, -10690763975.0 / 1880347072, 701980252875.0 / 199316789632,
        -1453857185.0 / 822651844, 69997945.0 / 29380423,
    ];

    /// <summary>Weights of the stages in the step.</summary>
    public static ReadOnlySpan<double> Weights => WeightsOfStages;

    /// <summary>Weights of the stages, and of the rate after the step, in the difference from the embedded method of fourth order.</summary>
    public static ReadOnlySpan<double> Error => ErrorWeights;

    /// <summary>Weights of the stages, and of the rate after the step, in the highest term of the continuous extension.</summary>
    public static ReadOnlySpan<double> Dense => DenseWeights;

    /// <summary>Weights of the stages, and of the rate after the step, in the state after a part of the step.</summary>
    /// <param name="part">Part of the step, 0 to 1.</param>
    /// <param name="weights">Receives the weights, one more than there are stages.</param>
    public static void Within(double part, Span<double> weights)
    {
        double left = 1 - part, first = part * left, second = part * first, third = second * left, step = part - first + 2 * second;
        for (int i = 0; i < Stages; i++) weights[i] = step * WeightsOfStages[i] + third * DenseWeights[i];
        weights[0] += first - second;
        weights[Stages] = third * DenseWeights[Stages] - second;
    }

    /// <summary>Weights of the earlier stages in the state of a stage.</summary>
    /// <param name="stage">Which, from 1.</param>
    public static ReadOnlySpan<double> Stage(int stage) => Tableau[stage];
}
