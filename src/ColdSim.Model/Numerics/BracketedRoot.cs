using System.Runtime.CompilerServices;

namespace ColdSim.Model.Numerics;

/// <summary>A function of one variable that can be followed to its zero without a delegate, and so without allocating.</summary>
internal interface IFunction
{
    /// <summary>The value at x.</summary>
    double At(double x);
}

/// <summary>Root finding for the step loop: inverse quadratic interpolation inside a bracket, and halving where that is not to be trusted.</summary>
/// <remarks>
/// Chandrupatla, Advances in Engineering Software 28 (1997) 145. The library's root finders take delegates, which the step loop would
/// have to allocate.
/// </remarks>
internal static class BracketedRoot
{
    private const int MaximumIterations = 200;

    // The nearest that a trial comes to an end of the bracket, as a part of the tolerance: near the zero one end stays put, and a trial
    // just past the zero brings it in.
    private const double Margin = 0.25;

    /// <summary>Narrows a bracket around a change of sign.</summary>
    /// <param name="f">Function whose zero is sought.</param>
    /// <param name="a">One end of the bracket.</param>
    /// <param name="fa">Value there.</param>
    /// <param name="b">The other end.</param>
    /// <param name="fb">Value there, of the other sign or zero.</param>
    /// <param name="tolerance">Width of the bracket that is narrow enough.</param>
    /// <returns>The end of the final bracket that lies on the side of <paramref name="b"/>'s sign.</returns>
    public static double Root<TFunction>(ref TFunction f, double a, double fa, double b, double fb, double tolerance)
        where TFunction : IFunction
    {
        if (fb == 0) return b;
        bool positive = fb > 0;

        // The last trial, the other end of the bracket, and the point before them; the first trial is where the chord crosses zero.
        double near = a, fNear = fa, far = b, fFar = fb, part = fa / (fa - fb);
        for (int i = 0; i < MaximumIterations && Math.Abs(far - near) > tolerance; i++)
        {
            double margin = Math.Min(0.5, Margin * tolerance / Math.Abs(far - near));
            if (!(part >= margin)) part = margin;
            else if (part > 1 - margin) part = 1 - margin;
            double x = near + part * (far - near), before, fBefore;

            // The bracket is as narrow as numbers are.
            if (x == near || x == far) break;
            double fx = f.At(x);
            if (fx == 0) return x;
            if (fx > 0 == fNear > 0)
            {
                (before, fBefore) = (near, fNear);
            }
            else
            {
                (before, fBefore) = (far, fFar);
                (far, fFar) = (near, fNear);
            }

            (near, fNear) = (x, fx);
            part = Next(near, fNear, far, fFar, before, fBefore);
        }

        return fNear > 0 == positive ? near : far;
    }

    // Where the parabola through three points, as a function of the value, crosses zero; half where it may turn back within the bracket.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Next(double near, double fNear, double far, double fFar, double before, double fBefore)
    {
        double xi = (near - far) / (before - far), phi = (fNear - fFar) / (fBefore - fFar);
        if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
        return fNear / (fFar - fNear) * fBefore / (fFar - fBefore)
            + (before - near) / (far - near) * fNear / (fBefore - fNear) * fFar / (fBefore - fFar);
    }
}
