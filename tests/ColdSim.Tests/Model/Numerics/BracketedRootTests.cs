using ColdSim.Model.Numerics;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Numerics;

public class BracketedRootTests
{
    private readonly struct Wrapped(Func<double, double> f) : IFunction
    {
        public double At(double x) => f(x);
    }

    private static void Check(Func<double, double> f, double a, double b, double root, double tolerance)
    {
        Wrapped w = new(f);
        double x = BracketedRoot.Root(ref w, a, f(a), b, f(b), tolerance);
        Assert.InRange(Math.Abs(x - root), 0, tolerance);
        // On b's side: never past the root towards a.
        Assert.True(f(x) == 0 || Math.Sign(f(x)) == Math.Sign(f(b)));
    }

    [Fact]
    public void Roots_of_all_kinds_are_found_from_either_side()
        => Gen.Select(Gen.Double[0.05, 0.95], Gen.Int[0, 6], Gen.Bool, Gen.Double[-12, -6]).Sample((root, kind, swap, exponent) =>
        {
            Func<double, double> f = kind switch
            {
                0 => x => x - root,
                1 => x => x * x * x - root * root * root,
                2 => x => Math.Exp(20 * x) - Math.Exp(20 * root),
                3 => x => Math.Sqrt(x) - Math.Sqrt(root),
                4 => x => Math.Sign(x - root) * Math.Sqrt(Math.Abs(x - root)),
                5 => x => Math.Sqrt(1 - x) - Math.Sqrt(1 - root),
                // Level on one side, as a stage that is wide open.
                _ => x => Math.Max(-0.01, 1e3 * (x - root)),
            };
            Check(f, swap ? 1 : 0, swap ? 0 : 1, root, Math.Pow(10, exponent));
        }, iter: 5000);

    [Fact]
    public void Bracket_closes_on_a_jump()
        => Gen.Select(Gen.Double[0.01, 0.99], Gen.Bool).Sample((at, swap) => Check(x => x < at ? -1 : 5, swap ? 1 : 0, swap ? 0 : 1, at, 1e-9));

    [Fact]
    public void Root_at_the_far_end_is_found()
    {
        Wrapped w = new(x => x - 1);
        Assert.Equal(1, BracketedRoot.Root(ref w, 0, -1, 1, 0, 1e-9));
    }

    [Fact]
    public void A_root_at_the_near_end_is_found()
        => Check(x => x, 0, 1, 0, 1e-9);
}
