namespace ColdSim.Physics.Fluids;

/// <summary>A reference equation of state: the Helmholtz energy of a fluid as a function of temperature and density.</summary>
/// <remarks>
/// a/(RT) = α⁰ + αʳ with τ = Tc/T, δ = ρ/ρc. The ideal part is ln δ + c ln τ + a1 + a2 τ + Σ v ln(1 − exp(−u τ)), the residual part a
/// sum of power, exponential and Gaussian terms. Every other property is a derivative of it, so energies, pressures and latent
/// heats agree with each other.
/// </remarks>
internal sealed class HelmholtzEquation
{
    private readonly double _tc_K, _rhoc_kg_m3, _r_J_kgK;
    private readonly IdealTerm _ideal;
    private readonly EinsteinTerm[] _einstein;
    private readonly PowerTerm[] _power;
    private readonly GaussTerm[] _gauss;
    private readonly HelmholtzTerms _terms;

    internal HelmholtzEquation(
        double tc_K, double rhoc_kg_m3, double r_J_kgK, IdealTerm ideal, EinsteinTerm[] einstein, PowerTerm[] power, GaussTerm[] gauss)
    {
        (_tc_K, _rhoc_kg_m3, _r_J_kgK, _ideal, _einstein, _power, _gauss) = (tc_K, rhoc_kg_m3, r_J_kgK, ideal, einstein, power, gauss);
        _terms = new HelmholtzTerms(einstein, power, gauss);
    }

    /// <summary>The state at a temperature and a density.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    /// <returns>Properties of the single phase at that point; inside the two-phase dome those of the metastable phase.</returns>
    public FluidState At(double t_K, double rho_kg_m3)
    {
        double tau = _tc_K / t_K;
        double delta = rho_kg_m3 / _rhoc_kg_m3;
        double logTau = Math.Log(tau);

        // Sums of the residual part and its derivatives, each multiplied by its powers of δ and τ (δ·αδ, δ²·αδδ, τ·ατ, ...).
        double a = 0, ad = 0, add = 0, at = 0, att = 0, adt = 0;

        foreach (ref readonly PowerTerm k in _power.AsSpan())
        {
            double x = k.L == 0 ? 0 : k.L == 1 ? delta : k.L == 2 ? delta * delta : delta * delta * delta;
            double term = k.N * IntegerPower(delta, k.D) * Math.Exp(k.T * logTau - x);
            double d = k.D - k.L * x;
            a += term;
            ad += term * d;
            add += term * (d * (d - 1) - k.L * k.L * x);
            at += term * k.T;
            att += term * k.T * (k.T - 1);
            adt += term * d * k.T;
        }

        foreach (ref readonly GaussTerm k in _gauss.AsSpan())
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
        double ideal = Math.Log(delta) + _ideal.LogTau * logTau + _ideal.A1 + _ideal.A2 * tau;
        double idealT = _ideal.LogTau + _ideal.A2 * tau, idealTt = -_ideal.LogTau;
        foreach (ref readonly EinsteinTerm k in _einstein.AsSpan())
        {
            double ut = k.U * tau, e = Math.Exp(-ut);
            ideal += k.V * Math.Log(1 - e);
            idealT += k.V * ut * e / (1 - e);
            idealTt -= k.V * ut * ut * e / ((1 - e) * (1 - e));
        }

        return new FluidState(_r_J_kgK, t_K, rho_kg_m3, ideal + a, ad, add, idealT + at, idealTt + att, adt);
    }

    /// <summary>The state at a temperature and a density without its entropy and Gibbs energy, which are then not a number: cheaper.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    /// <returns>Properties of the single phase at that point.</returns>
    public FluidState EnergyAt(double t_K, double rho_kg_m3)
    {
        double tau = _tc_K / t_K, delta = rho_kg_m3 / _rhoc_kg_m3;
        _terms.Sum(tau, delta, out double ad, out double add, out double at, out double att, out double adt);
        double idealT = _ideal.LogTau + _ideal.A2 * tau, idealTt = -_ideal.LogTau;
        _terms.SumVibrations(tau, ref idealT, ref idealTt);
        return new FluidState(_r_J_kgK, t_K, rho_kg_m3, double.NaN, ad, add, idealT + at, idealTt + att, adt);
    }

    /// <summary>The same equation for a dilute vapour, by a table.</summary>
    internal DiluteSeries Dilute() => new(_tc_K, _rhoc_kg_m3, _r_J_kgK, _ideal, _einstein, _power, _gauss);

    private static double IntegerPower(double x, int n)
    {
        double x2 = x * x;
        return n switch
        {
            1 => x,
            2 => x2,
            3 => x2 * x,
            4 => x2 * x2,
            5 => x2 * x2 * x,
            6 => x2 * x * (x2 * x),
            7 => x2 * x * (x2 * x2),
            8 => x2 * x2 * (x2 * x2),
            10 => x2 * x2 * x * (x2 * x2 * x),
            _ => throw new ArgumentOutOfRangeException(nameof(n), n, "The equations have exponents 1 to 8 and 10."),
        };
    }
}

/// <summary>The plain part of the ideal gas: LogTau ln τ + A1 + A2 τ.</summary>
internal readonly record struct IdealTerm(double LogTau, double A1, double A2);

/// <summary>A vibration of the ideal gas: V ln(1 − exp(−U τ)).</summary>
internal readonly record struct EinsteinTerm(double V, double U);

/// <summary>N δ^D τ^T exp(−δ^L), no exponential where L is 0.</summary>
internal readonly record struct PowerTerm(double N, double T, int D, int L);

/// <summary>N δ^D τ^T exp[−Eta (δ − Eps)² − Beta (τ − Gamma)²].</summary>
internal readonly record struct GaussTerm(double N, double T, int D, double Eta, double Beta, double Gamma, double Eps);
