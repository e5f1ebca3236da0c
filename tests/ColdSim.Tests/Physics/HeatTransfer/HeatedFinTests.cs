using ColdSim.Physics.HeatTransfer;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Physics.HeatTransfer;

public class HeatedFinTests
{
    private const double LongestMarched = 15;

    // Example 3.9: a very long rod of 5 mm with its root at 100 °C in air of 25 °C, h = 100 W/(m²K); heat lost through the root by metal. A rod
    // is a fin as thick as a quarter of its diameter.
    [Theory]
    [InlineData(398, 8.3)]
    [InlineData(180, 5.6)]
    [InlineData(14, 1.6)]
    [Outside("Incropera and DeWitt", Field.HeatTransfer, FromMemory = true)]
    public void A_long_rod_loses_what_the_textbook_says(double conductivity_W_mK, double heat_W)
    {
        double length_m = Fin.EffectiveLength_m(100, conductivity_W_mK, 0.005 / 4, 10);
        Assert.Equal(heat_W, 100 * Math.PI * 0.005 * length_m * 75, 0.06);
    }

    // Example 3.7: 1.5 MW/m³ made in 50 mm of k = 75 W/(m K), one side insulated: that side is at 140 °C and the other at 115 °C.
    [Fact]
    [Outside("Incropera and DeWitt", Field.HeatTransfer, FromMemory = true)]
    public void A_wall_that_makes_heat_is_as_much_hotter_at_its_insulated_side_as_the_textbook_says()
    {
        HeatedFin fin = HeatedFin.Of(0, 75, 1, 0.05, 1e20);
        Assert.Equal(140 - 115, fin.TipOverMean * 1.5e6 * 0.05 / fin.ToRoot_W_mK, 1e-3);
    }

    [Fact]
    public void A_heated_fin_solves_its_own_equation()
        => Gen.Select(Gen.Double[0, 40], Gen.Double[10, 200], Gen.Double[0.001, 0.005], Gen.Double[0.001, 0.8], Gen.Double[30, 400]).Sample((h, k, t, longest, film) =>
        {
            // Superposition loses as many digits as the solutions grow by over the fin, which is the exponential of its length by 1/m.
            double length = Math.Min(longest, LongestMarched * Math.Sqrt(k * t / h));

            // Marched from the tip of an excess of 1 with two sources; what makes the root meet its film is found by superposition.
            (double root, double mean, double flux) March(double source, double tip)
            {
                const int n = 4000;
                double dx = length / n, theta = tip, q = 0, sum = 0;
                for (int i = 0; i < n; i++)
                {
                    double middle = theta + 0.5 * dx * q / (k * t);
                    q += (h * middle - source) * dx;
                    sum += middle * dx;
                    theta += q * dx / (k * t);
                }

                return (theta, sum / length, -q);
            }

            var (aRoot, aMean, aFlux) = March(0, 1);
            var (bRoot, bMean, bFlux) = March(1000, 0);
            double wet = Math.Sqrt(k * t * (film + h)), tip = (wet * bRoot - bFlux) / (aFlux - wet * aRoot);
            double mean = tip * aMean + bMean, into = tip * aFlux + bFlux;
            HeatedFin fin = HeatedFin.Of(h, k, t, length, film);
            Assert.Equal(1, fin.ToRoot_W_mK / (into / mean), 2e-3);
            Assert.Equal(1, fin.TipOverMean / (tip / mean), 2e-3);
        }, iter: 60);

    // Its tip loses what it receives, so that it is as warm as a wall without a root; what is not lost along it goes into the root.
    [Fact]
    public void A_long_fin_keeps_its_balance_of_heat()
        => Gen.Select(Gen.Double[1, 40], Gen.Double[10, 200], Gen.Double[0.001, 0.005], Gen.Double[LongestMarched, 60], Gen.Double[30, 400]).Sample((h, k, t, x, film) =>
        {
            double length = x * Math.Sqrt(k * t / h);
            HeatedFin fin = HeatedFin.Of(h, k, t, length, film);
            Assert.Equal(1, fin.ToRoot_W_mK / (h * length * (fin.TipOverMean - 1)), 1e-5);
        });

    [Fact]
    public void A_short_fin_has_the_series_and_the_closed_form_alike()
    {
        // Either side of the place where one goes over to the other.
        HeatedFin Of(double x) => HeatedFin.Of(x * x * 0.1, 50, 0.002, 1, 130);
        Assert.Equal(1, Of(0.0200001).ToRoot_W_mK / Of(0.0199999).ToRoot_W_mK, 1e-7);
        Assert.Equal(1, Of(0.0200001).TipOverMean / Of(0.0199999).TipOverMean, 1e-7);
        Assert.InRange(Of(1e-9).TipOverMean, 1, 1.5);
    }

    [Fact]
    public void A_strip_gives_to_its_neighbour_what_a_march_over_both_says()
        => Gen.Select(Gen.Double[1, 40], Gen.Double[0.5, 60], Gen.Double[0.02, 0.5], Gen.Double[0.01, 0.5], Gen.Double[0.01, 0.5]).Sample((under, beside, sheet, a, b) =>
        {
            // Implicit relaxation on a grid over half of either strip; heat 1000 W/m² on the first.
            const int n = 400;
            double da = a / n, db = b / n;
            double[] lower = new double[2 * n], middle = new double[2 * n], upper = new double[2 * n], right = new double[2 * n];
            for (int i = 0; i < 2 * n; i++)
            {
                double d = i < n ? da : db, sink = i < n ? under : beside;
                double left = i == 0 ? 0 : sheet / (0.5 * (d + (i - 1 < n ? da : db))), next = i == 2 * n - 1 ? 0 : sheet / (0.5 * (d + (i + 1 < n ? da : db)));
                (lower[i], upper[i], middle[i], right[i]) = (-left, -next, left + next + sink * d, i < n ? 1000 * d : 0);
            }

            for (int i = 1; i < 2 * n; i++)
            {
                double w = lower[i] / middle[i - 1];
                middle[i] -= w * upper[i - 1];
                right[i] -= w * right[i - 1];
            }

            double[] excess = new double[2 * n];
            excess[^1] = right[^1] / middle[^1];
            for (int i = 2 * n - 2; i >= 0; i--) excess[i] = (right[i] - upper[i] * excess[i + 1]) / middle[i];
            double mean = 0, over = 0;
            for (int i = 0; i < n; i++) mean += excess[i] / n;
            for (int i = n; i < 2 * n; i++) over += beside * excess[i] * db;
            HeatedStrip strip = HeatedStrip.Of(under, beside, sheet, a, b);
            Assert.Equal(1, strip.Beside_W_mK / (over / mean), 5e-3);
            Assert.Equal(1, strip.MiddleOverMean / (excess[0] / mean), 5e-3);
        }, iter: 60);

    [Fact]
    public void A_strip_without_a_neighbour_keeps_its_heat()
        => Assert.Equal(new HeatedStrip(0, 1), HeatedStrip.Of(5, 8, 0.1, 0.4, 0));

    [Fact]
    public void A_strip_that_conducts_well_has_the_series_and_the_closed_form_alike()
    {
        // Either side of the place where one goes over to the other, with a neighbour that takes much, so that the strip's own shape counts.
        HeatedStrip Of(double x) => HeatedStrip.Of(x * x, 1e4, 1, 1, 1);
        Assert.Equal(1, (Of(0.0200001).MiddleOverMean - 1) / (Of(0.0199999).MiddleOverMean - 1), 3e-5);
        Assert.Equal(1, Of(0.0200001).Beside_W_mK / Of(0.0199999).Beside_W_mK, 1e-6);

        // Evenly heated between edges held cold: the middle is half as warm again as the mean, and the edge takes 3 k t over half the width.
        HeatedStrip held = HeatedStrip.Of(1e-8, 1e12, 1, 1, 1);
        Assert.Equal(1.5, held.MiddleOverMean, 1e-4);
        Assert.Equal(3, held.Beside_W_mK, 1e-4);
    }
}
