namespace ColdSim.Model.Numerics;

/// <summary>The root of a function that changes little from one call to the next: the secant method from the last root, a bracket where that fails.</summary>
internal sealed class FollowedRoot
{
    private const int MaximumIterations = 6;

    // Secants that step over the root this late go back and forth about a kink.
    private const int LateIteration = 2;
    private const double Settling = 0.1;

    // A secant step leaves an error of the order of its product with the step before it; one along the slope of an earlier call may leave more.
    private const double SmallProduct = 1e-15;
    private const double SmallFirstStep = 1e-12;

    private const double Tolerance = 1e-14;
    private const double SlopeOver = 1e-6;

    // The last root as a part of its bracket, and the slope there by that part: both change less than the bracket does.
    private double _part = double.NaN;
    private double _slope;

    /// <summary>Forgets the last root: the next function is another.</summary>
    public void Forget() => _part = double.NaN;

    /// <summary>The root between two ends at which the function has different signs.</summary>
    /// <param name="f">Function whose zero is sought.</param>
    /// <param name="low">One end of the bracket.</param>
    /// <param name="high">The other end, above 0 and the larger.</param>
    public double Root<TFunction>(ref TFunction f, double low, double high)
        where TFunction : IFunction
    {
        double followed = Follow(ref f, low, high);
        return double.IsNaN(followed) ? Bracketed(ref f, low, high) : followed;
    }

    /// <summary>The root between two ends at which the function has different signs, by nothing but them; followed from there by the next call.</summary>
    /// <param name="f">Function whose zero is sought.</param>
    /// <param name="low">One end of the bracket.</param>
    /// <param name="high">The other end, above 0 and the larger.</param>
    public double Bracketed<TFunction>(ref TFunction f, double low, double high)
        where TFunction : IFunction
        => Bracketed(ref f, low, high - low, 1, f.At(high), 0, f.At(low));

    /// <summary>The root by secants from the last one alone; NaN where there was none, or where they lead nowhere.</summary>
    /// <param name="f">Function whose zero is sought.</param>
    /// <param name="low">One end of the bracket.</param>
    /// <param name="high">The other end, above 0 and the larger.</param>
    public double Follow<TFunction>(ref TFunction f, double low, double high)
        where TFunction : IFunction
    {
        double width = high - low, part = _part, slope = _slope, small = SmallFirstStep;
        double value = part > 0 && part < 1 ? f.At(low + part * width) : double.NaN;
        for (int i = 0; i < MaximumIterations; i++)
        {
            double next = part - value / slope;
            if (double.IsNaN(next)) break;
            bool isWithin = next > 0 && next < 1;
            if (!isWithin) next = 0.5 * (next <= 0 ? part : part + 1);
            double step = next - part;
            if (isWithin && Math.Abs(step) <= small)
            {
                (_part, _slope) = (next, slope);
                return low + next * width;
            }

            double valueNext = f.At(low + next * width);
            if (i >= LateIteration && valueNext > 0 != value > 0 && Math.Abs(valueNext) > Settling * Math.Abs(value))
                return Bracketed(ref f, low, width, part, value, next, valueNext);
            slope = (valueNext - value) / step;
            (part, value, small) = (next, valueNext, SmallProduct / Math.Abs(step));
        }

        return double.NaN;
    }

    private double Bracketed<TFunction>(ref TFunction f, double low, double width, double a, double valueAtA, double b, double valueAtB)
        where TFunction : IFunction
    {
        double root = BracketedRoot.Root(ref f, low + a * width, valueAtA, low + b * width, valueAtB, Tolerance * (low + width));
        double beside = root - SlopeOver * (root - low);
        _part = (root - low) / width;
        _slope = (f.At(root) - f.At(beside)) / (root - beside) * width;
        return root;
    }
}
