using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Fits;

/// <summary>Finite differences of the simulator in place of derivatives, wide enough to exceed the noise of its burner cycles.</summary>
/// <remarks>
/// A furnace burns in whole cycles, so the simulated mass at an instant jumps by part of a cycle when a parameter moves by a hair. Each step
/// starts at a third of its prior's spread and is doubled, twice at most, until the use over the log moves by <see cref="Cycles"/> burner
/// cycles between its two sides, or a temperature or pressure by more than the cycles do. A parameter that cannot move them so far is one of
/// which the readings say nothing.
/// </remarks>
internal sealed class FitSteps
{
    /// <summary>How many burner cycles a difference must span.</summary>
    public const double Cycles = 5;

    private const double Start = 1.0 / 3;
    private const int Doublings = 2;

    private readonly FitRun _run;
    private readonly IReadOnlyList<FitPrior> _priors;
    private readonly double[] _steps;

    public FitSteps(FitRun run, IReadOnlyList<FitPrior> priors, FittedFactors at)
    {
        _run = run;
        double cycle_kg = run.At(at).Cycle_kg;
        double[] steps = new double[priors.Count];
        Parallel.For(0, priors.Count, run.Cancelled, i => steps[i] = Wide(priors[i], at, cycle_kg));
        _priors = [.. priors.Where((_, i) => steps[i] > 0)];
        _steps = [.. steps.Where(s => s > 0)];
    }

    /// <summary>The parameters that the readings say something of.</summary>
    public IReadOnlyList<FitPrior> Priors => _priors;

    /// <summary>Their steps, in spreads of their priors.</summary>
    public IReadOnlyList<double> Steps => _steps;

    /// <summary>Factors at a point, in spreads of the priors from their middles.</summary>
    public FittedFactors At(IReadOnlyList<double> z)
    {
        FittedFactors factors = FittedFactors.None;
        for (int i = 0; i < _priors.Count; i++)
            factors = factors.With(_priors[i].Kind, _priors[i].Middle + z[i] * _priors[i].Spread);
        return factors;
    }

    /// <summary>Change of each observation's value per spread of each parameter, in the observation's unit.</summary>
    public Matrix<double> Jacobian(IReadOnlyList<double> z)
    {
        int rows = _run.Problem.Observations.Count;
        Matrix<double> j = Matrix<double>.Build.Dense(rows, _priors.Count);
        double[][] sides = new double[2 * _priors.Count][];
        Parallel.For(0, sides.Length, _run.Cancelled, k =>
        {
            double[] moved = [.. z];
            moved[k / 2] += k % 2 == 0 ? _steps[k / 2] : -_steps[k / 2];
            sides[k] = _run.At(At(moved)).Values;
        });
        for (int p = 0; p < _priors.Count; p++)
        {
            for (int i = 0; i < rows; i++)
                j[i, p] = (sides[2 * p][i] - sides[2 * p + 1][i]) / (2 * _steps[p]);
        }

        return j;
    }

    private double Wide(FitPrior prior, FittedFactors at, double cycle_kg)
    {
        double middle = double.IsNaN(at.Coordinate(prior.Kind)) ? prior.Middle : at.Coordinate(prior.Kind);
        double step = Start;
        for (int doublings = 0; doublings <= Doublings; doublings++, step *= 2)
        {
            FitPrediction up = _run.At(at.With(prior.Kind, middle + step * prior.Spread)), down = _run.At(at.With(prior.Kind, middle - step * prior.Spread));
            if (Math.Abs(up.Used_kg - down.Used_kg) > Cycles * cycle_kg || MovesAnother(up, down))
                return step;
        }

        return 0;
    }

    private bool MovesAnother(FitPrediction up, FitPrediction down)
    {
        IReadOnlyList<FitObservation> observations = _run.Problem.Observations;
        for (int i = 0; i < observations.Count; i++)
        {
            if (observations[i].Clear is { } clear && Math.Abs(up.Values[i] - down.Values[i]) > clear)
                return true;
        }

        return false;
    }
}
