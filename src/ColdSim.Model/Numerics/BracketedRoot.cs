namespace ColdSim.Model.Numerics;

/// <summary>A function of one variable that can be followed to its zero without a delegate, and so without allocating.</summary>
internal interface IFunction
{
    /// <summary>The value at x.</summary>
    double At(double x);
}

/// <summary>Root finding for the step loop: false position with the Illinois modification, and halving where that is slow.</summary>
/// <remarks>
/// Dowell and Jarratt, BIT 11 (1971) 168. The library's root finders take delegates, which the step loop would have to allocate.
/// </remarks>
internal static class FalsePosition
{
    private const int MaximumIterations = 200;
    private const int Patience = 2;

    /// <summary>Narrows a bracket around a change of sign.</summary>
    /// <param name="f">The function.</param>
    /// <param name="a">One end.</param>
    /// <param name="fa">Value there.</param>
    /// <param name="b">The other end.</param>
    /// <param name="fb">Value there, of the other sign or zero.</param>
    /// <param name="tolerance">Width of the bracket that is narrow enough.</param>
    /// <returns>The end of the final bracket that lies on the side of <paramref name="b"/>'s sign.</returns>
    public static double Root<TFunction>(ref TFunction f, double a, double fa, double b, double fb, double tolerance)
        where TFunction : IFunction
    {
        int side = 0;
        bool positive = fb > 0;
        for (int i = 0; i < MaximumIterations && Math.Abs(b - a) > tolerance && fb != 0; i++)
        {
            double x = b - fb * (b - a) / (fb - fa);
            // A step that lands on an end makes no progress, nor do steps that keep to one side where the function is steep on one
            // side of its zero and level on the other; halving does.
            if (Math.Abs(side) > Patience || !(x > Math.Min(a, b) && x < Math.Max(a, b))) x = 0.5 * (a + b);

            // Near the zero of a smooth function one end stays put; a step just past the zero brings it in.
            double margin = 0.25 * tolerance;
            if (Math.Abs(x - b) < margin) x = b + (a > b ? margin : -margin);
            else if (Math.Abs(x - a) < margin) x = a + (b > a ? margin : -margin);

            double fx = f.At(x);
            if (fx == 0) return x;
            if (fx > 0 == positive)
            {
                (b, fb) = (x, fx);
                if (side > 0) fa *= 0.5;
                side = Math.Max(side, 0) + 1;
            }
            else
            {
                (a, fa) = (x, fx);
                if (side < 0) fb *= 0.5;
                side = Math.Min(side, 0) - 1;
            }
        }

        return b;
    }
}
