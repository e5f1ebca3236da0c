using ColdSim.Model.Numerics;
using Xunit;

namespace ColdSim.Tests.Model.Numerics;

public class QuarticTests
{
    private static readonly Quartic Some = new(3, -2, 0.7, 0.25);

    [Fact]
    public void It_is_the_polynomial_of_its_coefficients()
        => Assert.Equal(3 * 0.3 - 2 * Math.Pow(0.3, 2) + 0.7 * Math.Pow(0.3, 3) + 0.25 * Math.Pow(0.3, 4), Some.At(0.3), 1e-15);

    [Theory]
    [InlineData(0, 0.4)]
    [InlineData(0.3, 0.7)]
    [InlineData(0.25, 0.1)]
    public void A_piece_of_it_follows_the_whole(double begin, double length)
    {
        Quartic piece = Some.Over(begin, length);
        for (double x = 0; x <= 1; x += 0.25) Assert.Equal(Some.At(begin + x * length) - Some.At(begin), piece.At(x), 1e-14);
    }
}
