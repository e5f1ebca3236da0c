namespace ColdSim.Model.Numerics;

/// <summary>Where a smooth function that starts below zero and ends above it crosses zero, by the cubic through both ends and their slopes.</summary>
/// <remarks>
/// The interpolating polynomial of a continuous Runge–Kutta method (cubic Hermite; Hairer, Nørsett, Wanner, Solving Ordinary
/// Differential Equations I, II.6) is nearly the function itself over a step, so that its zero is tried once; what the trial leaves is
/// left to <see cref="BracketedRoot"/>.
/// </remarks>
internal static class SmoothCrossing
{
    private const int Iterations = 6;

    // A trial is aimed past the zero by this part of the tolerance, and taken where the chord says that it missed by no more than all of it.
    private const double Aim = 0.5;

    /// <summary>A point above zero, past the crossing by no more than a tolerance.</summary>
    /// <param name="f">Function whose zero crossing is sought.</param>
    /// <param name="fa">Value at 0, below zero.</param>
    /// <param name="slopeA">Slope there.</param>
    /// <param name="b">End of the interval, which begins at 0.</param>
    /// <param name="fb">Value there, above zero.</param>
    /// <param name="slopeB">Slope there.</param>
    /// <param name="tolerance">How far past is near enough.</param>
    public static double Past<TFunction>(ref TFunction f, double fa, double slopeA, double b, double fb, double slopeB, double tolerance)
        where TFunction : IFunction
    {
        double x = ZeroOfCubic(fa, slopeA, b, fb, slopeB) + Aim * tolerance;
        if (!(x > 0 && x < b)) return BracketedRoot.Root(ref f, 0, fa, b, fb, tolerance);
        double fx = f.At(x);
        if (fx <= 0) return BracketedRoot.Root(ref f, x, fx, b, fb, tolerance);
        return fx * x <= tolerance * (fx - fa) ? x : BracketedRoot.Root(ref f, 0, fa, x, fx, tolerance);
    }

    // Newton's method from the chord's zero; NaN or outside where the cubic is no picture of a crossing.
    private static double ZeroOfCubic(double fa, double slopeA, double b, double fb, double slopeB)
    {
        double rise = fb - fa, da = slopeA * b, db = slopeB * b;
        double c2 = 3 * rise - 2 * da - db, c3 = da + db - 2 * rise;
        double u = -fa / rise;
        for (int i = 0; i < Iterations; i++)
        {
            double step = (fa + u * (da + u * (c2 + u * c3))) / (da + u * (2 * c2 + u * 3 * c3));
            u -= step;
            if (Math.Abs(step) < 1e-9) break;
        }

        return u * b;
    }
}
