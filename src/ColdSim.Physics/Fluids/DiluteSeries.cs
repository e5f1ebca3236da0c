using System.Runtime.Intrinsics;

namespace ColdSim.Physics.Fluids;

/// <summary>The Helmholtz energy of a dilute vapour: a power series of its density, whose coefficients are tabulated over temperature.</summary>
/// <remarks>
/// α⁰(τ) + αʳ(τ, δ) without ln δ is Σ bₖ(T) δᵏ, k from 0, the virial series of the equation. Each bₖ is a polynomial of fifth degree between nodes
/// that have its value and its first two derivatives by temperature, so that it has a second derivative without jumps. Every property is a
/// derivative of this one function: energy, pressure and heat capacity agree with each other to the last digit, as those of the equation do.
/// </remarks>
internal sealed class DiluteSeries
{
    /// <summary>Lowest temperature of the tables. [K]</summary>
    public const double Lowest_K = 200;

    /// <summary>Highest temperature of the tables. [K]</summary>
    public const double Highest_K = 640;

    /// <summary>Highest density for which the powers suffice. [kg/m³]</summary>
    public const double Highest_kg_m3 = 30;

    private const int Orders = 16;
    private const int Degree = 5;
    private const double Spacing_K = 2;

    private static readonly int Rows = Orders / Vector256<double>.Count;
    private static readonly Vector256<double>[] Order = OrdersByRow();

    private readonly double _tc_K, _rhoc_kg_m3, _r_J_kgK;

    // For each interval and each power of the place in it, from the lowest up, the coefficients of all orders.
    private readonly Vector256<double>[] _coefficients;

    public DiluteSeries(
        double tc_K, double rhoc_kg_m3, double r_J_kgK, IdealTerm ideal, EinsteinTerm[] einstein, PowerTerm[] power, GaussTerm[] gauss)
    {
        (_tc_K, _rhoc_kg_m3, _r_J_kgK) = (tc_K, rhoc_kg_m3, r_J_kgK);
        int intervals = (int)Math.Round((Highest_K - Lowest_K) / Spacing_K);
        double[][] densities = new double[power.Length + gauss.Length][];
        for (int i = 0; i < densities.Length; i++) densities[i] = i < power.Length ? OfDensity(power[i]) : OfDensity(gauss[i - power.Length]);
        double[,] from = new double[3, Orders], to = new double[3, Orders];
        _coefficients = new Vector256<double>[intervals * (Degree + 1) * Rows];
        SetNode(Lowest_K, ideal, einstein, power, gauss, densities, to);
        for (int i = 0; i < intervals; i++)
        {
            (from, to) = (to, from);
            SetNode(Lowest_K + (i + 1) * Spacing_K, ideal, einstein, power, gauss, densities, to);
            for (int k = 0; k < Orders; k++) SetInterval(i, k, from, to);
        }
    }

    /// <summary>The state at a temperature within the table and a density.</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="rho_kg_m3">Density, above 0. [kg/m³]</param>
    public FluidState At(double t_K, double rho_kg_m3)
    {
        double place = (t_K - Lowest_K) * (1 / Spacing_K);
        int interval = (int)place, row = interval * (Degree + 1) * Rows;
        double delta = rho_kg_m3 / _rhoc_kg_m3, square = delta * delta, times = square * square;
        Vector256<double> x = Vector256.Create(place - interval), powers = Vector256.Create(1, delta, square, square * delta), step = Vector256.Create(times);
        Vector256<double> sum = default, sumK = default, sumKk = default, slope = default, slopeK = default, bend = default;
        for (int r = 0; r < Rows; r++, powers *= step)
        {
            ref readonly Vector256<double> c = ref _coefficients[row + r];
            Vector256<double> c1 = _coefficients[row + Rows + r], c2 = _coefficients[row + 2 * Rows + r], c3 = _coefficients[row + 3 * Rows + r];
            Vector256<double> c4 = _coefficients[row + 4 * Rows + r], c5 = _coefficients[row + 5 * Rows + r];
            Vector256<double> b = (c + x * (c1 + x * (c2 + x * (c3 + x * (c4 + x * c5))))) * powers;
            Vector256<double> first = (c1 + x * (2 * c2 + x * (3 * c3 + x * (4 * c4 + x * (5 * c5))))) * powers;
            Vector256<double> second = (2 * c2 + x * (6 * c3 + x * (12 * c4 + x * (20 * c5)))) * powers;
            Vector256<double> k = Order[r];
            sum = k * b;
            sumK += sum;
            sumKk += (k - Vector256<double>.One) * sum;
            slope += first;
            slopeK += k * first;
            bend += second;
        }

        // τ ∂/∂τ is −T ∂/∂T.
        double perSpacing = t_K / Spacing_K, at = -perSpacing * Vector256.Sum(slope);
        return new FluidState(
            _r_J_kgK, t_K, rho_kg_m3, double.NaN, Vector256.Sum(sumK), Vector256.Sum(sumKk), at, perSpacing * perSpacing * Vector256.Sum(bend) - 2 * at,
            -perSpacing * Vector256.Sum(slopeK));
    }

    private static Vector256<double>[] OrdersByRow()
    {
        Vector256<double>[] orders = new Vector256<double>[Rows];
        for (int r = 0; r < Rows; r++) orders[r] = Vector256.Create(0.0, 1, 2, 3) + Vector256.Create(4.0 * r);
        return orders;
    }

    // Coefficients of the powers of density in δ^D exp(−δ^L): of the exponential e, (k + 1) e[k + 1] = −L e[k + 1 − L].
    private static double[] OfDensity(PowerTerm term)
    {
        double[] e = new double[Orders];
        e[0] = 1;
        for (int k = 1; k < Orders; k++) e[k] = term.L > 0 && k >= term.L ? -term.L * e[k - term.L] / k : 0;
        return Shifted(e, term.D);
    }

    // The same in δ^D exp(−Eta (δ − Eps)²): (k + 1) e[k + 1] = 2 Eta Eps e[k] − 2 Eta e[k − 1].
    private static double[] OfDensity(GaussTerm term)
    {
        double[] e = new double[Orders];
        e[0] = Math.Exp(-term.Eta * term.Eps * term.Eps);
        for (int k = 1; k < Orders; k++) e[k] = 2 * term.Eta * (term.Eps * e[k - 1] - (k > 1 ? e[k - 2] : 0)) / k;
        return Shifted(e, term.D);
    }

    private static double[] Shifted(double[] e, int by)
    {
        double[] shifted = new double[Orders];
        for (int k = by; k < Orders; k++) shifted[k] = e[k - by];
        return shifted;
    }

    // Value and first two derivatives of each coefficient by temperature, in spacings.
    private void SetNode(
        double t_K, IdealTerm ideal, EinsteinTerm[] einstein, PowerTerm[] power, GaussTerm[] gauss, double[][] densities, double[,] node)
    {
        Array.Clear(node);
        double tau = _tc_K / t_K, log = Math.Log(tau);
        double value = ideal.LogTau * log + ideal.A1 + ideal.A2 * tau, first = ideal.LogTau + ideal.A2 * tau, second = -ideal.LogTau;
        foreach (ref readonly EinsteinTerm k in einstein.AsSpan())
        {
            double ut = k.U * tau, e = Math.Exp(-ut), odds = e / (1 - e);
            value += k.V * Math.Log(1 - e);
            first += k.V * ut * odds;
            second -= k.V * ut * ut * odds * (1 + odds);
        }

        Add(1, value, first, second, 0);
        for (int i = 0; i < densities.Length; i++)
        {
            GaussTerm g = i < power.Length ? new GaussTerm(power[i].N, power[i].T, 0, 0, 0, 0, 0) : gauss[i - power.Length];
            double fromGamma = tau - g.Gamma, term = g.N * Math.Exp(g.T * log - g.Beta * fromGamma * fromGamma), t = g.T - 2 * g.Beta * tau * fromGamma;
            for (int k = 1; k < Orders; k++) Add(densities[i][k], term, term * t, term * (t * t - g.T - 2 * g.Beta * tau * tau), k);
        }

        // Derivatives by τ come multiplied by their powers of τ.
        void Add(double times, double value, double byTau, double byTau2, int order)
        {
            double perSpacing = Spacing_K / t_K;
            node[0, order] += times * value;
            node[1, order] -= times * byTau * perSpacing;
            node[2, order] += times * (byTau2 + 2 * byTau) * perSpacing * perSpacing;
        }
    }

    // The polynomial of fifth degree with value, slope and bend of both its nodes.
    private void SetInterval(int interval, int order, double[,] from, double[,] to)
    {
        double slope = from[1, order], half = 0.5 * from[2, order];
        double rest = to[0, order] - from[0, order] - slope - half, restSlope = to[1, order] - slope - 2 * half, restBend = to[2, order] - 2 * half;
        ReadOnlySpan<double> c =
        [
            from[0, order], slope, half, 10 * rest - 4 * restSlope + 0.5 * restBend, -15 * rest + 7 * restSlope - restBend,
            6 * rest - 3 * restSlope + 0.5 * restBend,
        ];
        int lanes = Vector256<double>.Count;
        for (int p = 0; p <= Degree; p++)
        {
            ref Vector256<double> lane = ref _coefficients[(interval * (Degree + 1) + p) * Rows + order / lanes];
            lane = lane.WithElement(order % lanes, c[p]);
        }
    }
}
