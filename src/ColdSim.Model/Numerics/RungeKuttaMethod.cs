namespace ColdSim.Model.Numerics;

/// <summary>Coefficients of an explicit Runge–Kutta method whose last rate is that after the step, with its embedded method and its continuous extension.</summary>
/// <remarks>Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, 2nd edition (1993), section II.4, table II.5.2 and section II.6.</remarks>
internal sealed class RungeKuttaMethod
{
    private readonly double[][] _tableau;
    private readonly double[] _weights, _error, _dense;

    private RungeKuttaMethod(double[][] tableau, double[] weights, double[] error, double[] dense)
    {
        (_tableau, _weights, _error, _dense) = (tableau, weights, error, dense);
        Nodes = new double[weights.Length + 1];
        for (int i = 0; i < weights.Length; i++)
        {
            foreach (double weight in tableau[i]) Nodes[i] += weight;
        }

        Nodes[^1] = 1;
    }

    /// <summary>Dormand and Prince's of fifth order, embedded fourth, continuous extension of fourth.</summary>
    public static RungeKuttaMethod DormandPrince { get; } = new(
        [
            [],
            [1.0 / 5],
            [3.0 / 40, 9.0 / 40],
            [44.0 / 45, -56.0 / 15, 32.0 / 9],
            [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
            [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        ],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40],
        [
            -12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799, -10690763975.0 / 1880347072, 701980252875.0 / 199316789632,
            -1453857185.0 / 822651844, 69997945.0 / 29380423,
        ]);

    /// <summary>Bogacki and Shampine's of third order, embedded second, with the cubic through both ends as its continuous extension.</summary>
    public static RungeKuttaMethod BogackiShampine { get; } = new(
        [[], [1.0 / 2], [0, 3.0 / 4]],
        [2.0 / 9, 1.0 / 3, 4.0 / 9],
        [-5.0 / 72, 1.0 / 12, 1.0 / 9, -1.0 / 8],
        [0, 0, 0, 0]);

    /// <summary>Number of stages; the rate after the step is one more for the continuous extension.</summary>
    public int Stages => _weights.Length;

    /// <summary>The part of the step at which each stage is, and the rate after it.</summary>
    public double[] Nodes { get; }

    /// <summary>Weights of the stages in the step.</summary>
    public ReadOnlySpan<double> Weights => _weights;

    /// <summary>Weights of the stages, and of the rate after the step, in the difference from the embedded method.</summary>
    public ReadOnlySpan<double> Error => _error;

    /// <summary>Weights of the stages, and of the rate after the step, in the term of the continuous extension beyond the cubic through both ends.</summary>
    public ReadOnlySpan<double> Dense => _dense;

    /// <summary>Weights of the earlier stages in the state of a stage.</summary>
    /// <param name="stage">Which, from 1.</param>
    public ReadOnlySpan<double> Stage(int stage) => _tableau[stage];

    /// <summary>Weights of the stages, and of the rate after the step, in the state after a part of the step.</summary>
    /// <param name="part">Part of the step, 0 to 1.</param>
    /// <param name="weights">Receives the weights, one more than there are stages.</param>
    public void Within(double part, Span<double> weights)
    {
        double left = 1 - part, first = part * left, second = part * first, third = second * left, step = part - first + 2 * second;
        for (int i = 0; i < _weights.Length; i++) weights[i] = step * _weights[i] + third * _dense[i];
        weights[0] += first - second;
        weights[_weights.Length] = third * _dense[_weights.Length] - second;
    }
}
