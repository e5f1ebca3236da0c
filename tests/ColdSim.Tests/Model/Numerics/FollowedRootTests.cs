using ColdSim.Model.Numerics;
using Xunit;

namespace ColdSim.Tests.Model.Numerics;

public class FollowedRootTests
{
    private sealed class Calls
    {
        public int Count { get; set; }
    }

    private readonly struct Cube(double of, Calls calls) : IFunction
    {
        public double At(double x)
        {
            calls.Count++;
            return x * x * x - of;
        }
    }

    // Hardly rises up to the kink, steeply after it.
    private readonly struct Kinked(double kink, double at) : IFunction
    {
        public double At(double x) => x < kink ? 1e-4 * (x - kink) - at : x - kink - at;
    }

    [Fact]
    public void A_root_that_moves_a_little_is_found_to_the_last_digits_in_a_few_calls()
    {
        FollowedRoot root = new();
        Calls calls = new();
        for (double of = 20; of < 30; of += 0.02)
        {
            calls.Count = 0;
            Cube cube = new(of, calls);
            Assert.Equal(Math.Cbrt(of), root.Root(ref cube, 1, 4), 1e-13);
            if (of > 20) Assert.InRange(calls.Count, 1, 4);
        }
    }

    [Fact]
    public void A_root_that_jumps_or_lies_at_a_kink_is_found_all_the_same()
    {
        FollowedRoot root = new();
        Random random = new(5);
        for (int i = 0; i < 500; i++)
        {
            double kink = 1 + 2 * random.NextDouble(), at = (i % 2 == 0 ? -1e-5 : 1e-2) * random.NextDouble();
            Kinked kinked = new(kink, at);
            Assert.Equal(at > 0 ? kink + at : kink + at * 1e4, root.Root(ref kinked, 0.5, 4), 1e-9);
        }
    }

    [Fact]
    public void A_root_follows_its_bracket()
    {
        FollowedRoot root = new();
        for (int i = 0; i < 40; i++)
        {
            double low = 100 + 0.5 * i, high = 300 - 3 * i;
            Calls calls = new();
            Cube cube = new(Math.Pow(0.5 * (low + high), 3), calls);
            Assert.Equal(0.5 * (low + high), root.Root(ref cube, low, high), 1e-10);
        }
    }
}
