using System.Runtime.Intrinsics;

namespace ColdSim.Physics.Fluids;

/// <summary>The terms of a Helmholtz equation side by side, so that four are summed at a time.</summary>
/// <remarks>
/// Every term of the residual part is N exp(D ln δ + T ln τ − x − Eta (δ − Eps)² − Beta (τ − Gamma)²) with x = δ^L, and its derivatives are
/// that times polynomials: d = D − L x − 2 Eta δ (δ − Eps) for the first by δ, t = T − 2 Beta τ (τ − Gamma) by τ.
/// </remarks>
internal sealed class HelmholtzTerms
{
    private readonly Vector256<double>[] _n, _t, _d, _x1, _x2, _x3, _eta, _eps, _beta, _gamma, _v, _u;

    public HelmholtzTerms(EinsteinTerm[] einstein, PowerTerm[] power, GaussTerm[] gauss)
    {
        int count = power.Length + gauss.Length;
        _n = Lanes(count, i => i < power.Length ? power[i].N : gauss[i - power.Length].N);
        _t = Lanes(count, i => i < power.Length ? power[i].T : gauss[i - power.Length].T);
        _d = Lanes(count, i => i < power.Length ? power[i].D : gauss[i - power.Length].D);
        _x1 = Lanes(power.Length, i => power[i].L == 1 ? 1 : 0, count);
        _x2 = Lanes(power.Length, i => power[i].L == 2 ? 1 : 0, count);
        _x3 = Lanes(power.Length, i => power[i].L == 3 ? 1 : 0, count);
        _eta = Lanes(count, i => i < power.Length ? 0 : gauss[i - power.Length].Eta);
        _eps = Lanes(count, i => i < power.Length ? 0 : gauss[i - power.Length].Eps);
        _beta = Lanes(count, i => i < power.Length ? 0 : gauss[i - power.Length].Beta);
        _gamma = Lanes(count, i => i < power.Length ? 0 : gauss[i - power.Length].Gamma);

        // A missing vibration has no part, and a frequency that divides nothing by nothing.
        _v = Lanes(einstein.Length, i => einstein[i].V);
        _u = Lanes(einstein.Length, i => einstein[i].U, otherwise: 1);
    }

    /// <summary>Derivatives of the residual part, each multiplied by its powers of δ and τ.</summary>
    public void Sum(double tau, double delta, out double ad, out double add, out double at, out double att, out double adt)
    {
        Vector256<double> two = Vector256.Create(2.0), deltas = Vector256.Create(delta), taus = Vector256.Create(tau);
        Vector256<double> logDelta = Vector256.Create(Math.Log(delta)), logTau = Vector256.Create(Math.Log(tau));
        Vector256<double> square = deltas * deltas, cube = square * deltas;
        Vector256<double> sumD = default, sumDd = default, sumT = default, sumTt = default, sumDt = default;
        for (int i = 0; i < _n.Length; i++)
        {
            Vector256<double> x1 = _x1[i] * deltas, x2 = _x2[i] * square, x3 = _x3[i] * cube;
            Vector256<double> fromEps = deltas - _eps[i], fromGamma = taus - _gamma[i], etaDelta = _eta[i] * deltas, betaTau = _beta[i] * taus;
            Vector256<double> exponent = _d[i] * logDelta + _t[i] * logTau - (x1 + x2 + x3) - _eta[i] * fromEps * fromEps - _beta[i] * fromGamma * fromGamma;
            Vector256<double> term = _n[i] * Vector256.Exp(exponent);
            Vector256<double> lx = x1 + two * x2 + 3 * x3, llx = x1 + 4 * x2 + 9 * x3;
            Vector256<double> d = _d[i] - lx - two * etaDelta * fromEps, t = _t[i] - two * betaTau * fromGamma;
            sumD += term * d;
            sumDd += term * (d * d - d - llx - two * etaDelta * (deltas + fromEps));
            sumT += term * t;
            sumTt += term * (t * t - t - two * betaTau * (taus + fromGamma));
            sumDt += term * d * t;
        }

        (ad, add, at, att, adt) = (Vector256.Sum(sumD), Vector256.Sum(sumDd), Vector256.Sum(sumT), Vector256.Sum(sumTt), Vector256.Sum(sumDt));
    }

    /// <summary>Adds the vibrations of the ideal part to its derivatives by τ.</summary>
    public void SumVibrations(double tau, ref double idealT, ref double idealTt)
    {
        Vector256<double> taus = Vector256.Create(tau), sumT = default, sumTt = default;
        for (int i = 0; i < _v.Length; i++)
        {
            Vector256<double> ut = _u[i] * taus, e = Vector256.Exp(-ut), odds = e / (Vector256<double>.One - e);
            sumT += _v[i] * ut * odds;
            sumTt += _v[i] * ut * ut * odds * (Vector256<double>.One + odds);
        }

        idealT += Vector256.Sum(sumT);
        idealTt -= Vector256.Sum(sumTt);
    }

    private static Vector256<double>[] Lanes(int count, Func<int, double> of, int length = 0, double otherwise = 0)
    {
        int lanes = Vector256<double>.Count;
        Vector256<double>[] rows = new Vector256<double>[(Math.Max(count, length) + lanes - 1) / lanes];
        for (int i = 0; i < rows.Length * lanes; i++) rows[i / lanes] = rows[i / lanes].WithElement(i % lanes, i < count ? of(i) : otherwise);
        return rows;
    }
}
