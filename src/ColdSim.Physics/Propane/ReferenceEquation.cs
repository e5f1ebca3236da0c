using static ColdSim.Physics.Propane.PropaneConstants;

namespace ColdSim.Physics.Propane;

/// <summary>The reference equation of state of propane: the Helmholtz energy as a function of temperature and density.</summary>
/// <remarks>
/// Lemmon, McLinden, Wagner, J. Chem. Eng. Data 54 (2009) 3141. a/(RT) = α⁰ + αʳ with τ = Tc/T, δ = ρ/ρc. Every other property is
/// a derivative of it, so energies, pressures and latent heats agree with each other. Used here from 190 to 400 K. The constants
/// a1 and a2 put h = 200 kJ/kg and s = 1 kJ/(kg·K) on saturated liquid at 0 °C.
/// </remarks>
public static class ReferenceEquation
{
    private const double A1 = -4.970583;
    private const double A2 = 4.29352;

    private static readonly double[] V = [3.043, 5.874, 9.337, 7.922];
    private static readonly double[] U = [1.062478, 3.344237, 5.363757, 11.762957];

    // Terms 1-11: n δ^d τ^t exp(-δ^l), no exponential where l is 0.
    private static readonly PowerTerm[] Power =
    [
        new(0.042910051, 1.00, 4, 0),
        new(1.7313671, 0.33, 1, 0),
        new(-2.4516524, 0.80, 1, 0),
        new(0.34157466, 0.43, 2, 0),
        new(-0.46047898, 0.90, 2, 0),
        new(-0.66847295, 2.46, 1, 1),
        new(0.20889705, 2.09, 3, 1),
        new(0.19421381, 0.88, 6, 1),
        new(-0.22917851, 1.09, 6, 1),
        new(-0.60405866, 3.25, 2, 2),
        new(0.066680654, 4.62, 3, 2),
    ];

    // Terms 12-18: n δ^d τ^t exp[-η(δ-ε)² - β(τ-γ)²].
    private static readonly GaussTerm[] Gauss =
    [
        new(0.017534618, 0.76, 1, 0.963, 2.33, 0.684, 1.283),
        new(0.33874242, 2.50, 1, 1.977, 3.47, 0.829, 0.6936),
        new(0.22228777, 2.75, 1, 1.917, 3.15, 1.419, 0.788),
        new(-0.23219062, 3.05, 2, 2.307, 3.19, 0.817, 0.473),
        new(-0.09220694, 2.55, 2, 2.546, 0.92, 1.500, 0.8577),
        new(-0.47575718, 8.40, 4, 3.28, 18.8, 1.426, 0.271),
        new(-0.017486824, 6.75, 1, 14.6, 547.8, 1.093, 0.948),
    ];

    /// <summary>The state at a temperature and a density.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    /// <returns>Properties of the single phase at that point; inside the two-phase dome those of the metastable phase.</returns>
    public static PropaneState At(double t_K, double rho_kg_m3)
    {
        double tau = CriticalTemperature_K / t_K;
        double delta = rho_kg_m3 / CriticalDensity_kg_m3;
        double logTau = Math.Log(tau);

        // Sums of the residual part and its derivatives, each multiplied by its powers of δ and τ (δ·αδ, δ²·αδδ, τ·ατ, ...).
        double a = 0, ad = 0, add = 0, at = 0, att = 0, adt = 0;

        foreach (ref readonly PowerTerm k in Power.AsSpan())
        {
            double x = k.L == 0 ? 0 : k.L == 1 ? delta : delta * delta;
            double term = k.N * IntegerPower(delta, k.D) * Math.Exp(k.T * logTau - x);
            double d = k.D - k.L * x;
            a += term;
            ad += term * d;
            add += term * (d * (d - 1) - k.L * k.L * x);
            at += term * k.T;
            att += term * k.T * (k.T - 1);
            adt += term * d * k.T;
        }

        foreach (ref readonly GaussTerm k in Gauss.AsSpan())
        {
            double fromEps = delta - k.Eps, fromGamma = tau - k.Gamma;
            double term = k.N * IntegerPower(delta, k.D)
                * Math.Exp(k.T * logTau - k.Eta * fromEps * fromEps - k.Beta * fromGamma * fromGamma);
            double d = k.D - 2 * k.Eta * delta * fromEps;
            double t = k.T - 2 * k.Beta * tau * fromGamma;
            a += term;
            ad += term * d;
            add += term * (d * d - k.D - 2 * k.Eta * delta * delta);
            at += term * t;
            att += term * (t * t - k.T - 2 * k.Beta * tau * tau);
            adt += term * d * t;
        }

        // Ideal part.
        double ideal = Math.Log(delta) + 3 * logTau + A1 + A2 * tau;
        double idealT = 3 + A2 * tau, idealTt = -3;
        for (int i = 0; i < V.Length; i++)
        {
            double ut = U[i] * tau, e = Math.Exp(-ut);
            ideal += V[i] * Math.Log(1 - e);
            idealT += V[i] * ut * e / (1 - e);
            idealTt -= V[i] * ut * ut * e / ((1 - e) * (1 - e));
        }

        return new PropaneState(t_K, rho_kg_m3, ideal + a, ad, add, idealT + at, idealTt + att, adt);
    }

    private static double IntegerPower(double x, int n) => n switch
    {
        1 => x,
        2 => x * x,
        3 => x * x * x,
        4 => x * x * (x * x),
        6 => x * x * x * (x * x * x),
        _ => throw new ArgumentOutOfRangeException(nameof(n), n, "The equation has exponents 1, 2, 3, 4 and 6."),
    };

    private readonly record struct PowerTerm(double N, double T, int D, int L);

    private readonly record struct GaussTerm(double N, double T, int D, double Eta, double Beta, double Gamma, double Eps);
}
