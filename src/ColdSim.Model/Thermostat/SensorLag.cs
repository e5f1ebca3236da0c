using ColdSim.Model.Numerics;

namespace ColdSim.Model.Thermostat;

/// <summary>A first-order lag, τ dS/dt = A − S, solved exactly over a step in which A is a polynomial of fourth degree.</summary>
/// <remarks>
/// S(h) = e⁻ᶻ S₀ + z Σ k! aₖ φₖ₊₁(−z) with z = h/τ, A = Σ aₖ θᵏ over θ = 0 … 1, and the functions φ₀(x) = eˣ, φₖ₊₁(x) = (φₖ(x) − 1/k!)/x of exponential
/// integrators (Hochbruck and Ostermann, Acta Numerica 19, 2010). A step may so be longer than the lag, which a Runge–Kutta step may not.
/// </remarks>
internal static class SensorLag
{
    // Below it the recurrence upwards loses digits by cancellation, and the series needs few terms.
    private const double LargestBySeries = 1;

    // 5!/(j + 5)!: φ₅(−z) = Σ (−z)ʲ/(j + 5)!, of which fourteen terms are exact up to 1.
    private const double C1 = 1.0 / 6, C2 = C1 / 7, C3 = C2 / 8, C4 = C3 / 9, C5 = C4 / 10, C6 = C5 / 11, C7 = C6 / 12, C8 = C7 / 13, C9 = C8 / 14, C10 = C9 / 15,
        C11 = C10 / 16, C12 = C11 / 17, C13 = C12 / 18;

    /// <summary>The sensor after a step. [K]</summary>
    /// <param name="sensor_K">The sensor at its start. [K]</param>
    /// <param name="ratio">Length of the step over the lag, above 0.</param>
    /// <param name="a0">Air at the start. [K]</param>
    /// <param name="air">How the air departs from that over the step. [K]</param>
    public static double After_K(double sensor_K, double ratio, double a0, in Quartic air)
    {
        double phi1, phi2, phi3, phi4, phi5;
        if (ratio <= LargestBySeries)
        {
            // Even and odd terms are two short chains instead of one long.
            double square = ratio * ratio;
            double even = Fused(Fused(Fused(Fused(Fused(Fused(C12, square, C10), square, C8), square, C6), square, C4), square, C2), square, 1);
            double odd = Fused(Fused(Fused(Fused(Fused(Fused(C13, square, C11), square, C9), square, C7), square, C5), square, C3), square, C1);
            phi5 = (even - ratio * odd) * (1.0 / 120);
            phi4 = 1.0 / 24 - ratio * phi5;
            phi3 = 1.0 / 6 - ratio * phi4;
            phi2 = 0.5 - ratio * phi3;
            phi1 = 1 - ratio * phi2;
        }
        else
        {
            phi1 = (1 - Math.Exp(-ratio)) / ratio;
            phi2 = (1 - phi1) / ratio;
            phi3 = (0.5 - phi2) / ratio;
            phi4 = (1.0 / 6 - phi3) / ratio;
            phi5 = (1.0 / 24 - phi4) / ratio;
        }

        // Written as a departure from the sensor's own temperature, so that nothing is lost where both are the same.
        return sensor_K + ratio * ((a0 - sensor_K) * phi1 + air.First * phi2 + 2 * air.Second * phi3 + 6 * air.Third * phi4 + 24 * air.Fourth * phi5);
    }

    private static double Fused(double sum, double x, double next) => sum * x + next;
}
