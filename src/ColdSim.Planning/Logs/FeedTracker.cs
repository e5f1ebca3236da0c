using ColdSim.Model;
using ColdSim.Model.Arrangement;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Logs;

/// <summary>Finds which of several cylinders fed between the readings of a log: the most likely sequence, with the contents that it leaves.</summary>
/// <remarks>
/// A Kalman filter for each sequence, over what each cylinder holds and a factor on the use that the simulator computes. From one instant of
/// reading to the next the cylinder in use gives everything; or it runs dry and another takes over; or they are changed at any time between,
/// and then only their sum is known. Sequences are weighed by the likelihood of the readings and by how common such a change is; the best
/// <see cref="Kept"/> go on. Where sequences that together have over <see cref="Doubt"/> of the weight disagree, only the sum is used.
/// How common a change is, and how wrong a single reading may be, is our choice, no source.
/// </remarks>
internal sealed class FeedTracker
{
    /// <summary>Sequences that go on from instant to instant.</summary>
    public const int Kept = 64;

    /// <summary>Weight of other sequences from which on it is not known who fed.</summary>
    public const double Doubt = 0.05;

    /// <summary>Standard deviation of each one's part of the use where all feed at once, as a fraction of the use.</summary>
    public const double Share_frac = 0.15;

    /// <summary>The same where two gave gas one after the other.</summary>
    public const double Divided_frac = 0.5;

    private const double ChangedBeforeEmpty_frac = 0.05;
    private const double WrongReading_frac = 0.01;
    private const double WrongBy_kg = 5;
    private const double Empty_kg = 0.3;
    private const double Bottom_frac = 0.25;
    private const double UnknownStart_frac = 0.3;
    private const double FirstInUse_frac = 0.6;
    private const double Least_kg = 0.05;

    // Readings of one walk round the rig: nobody changes a cylinder between them.
    private static readonly TimeSpan OneWalk = TimeSpan.FromMinutes(30);

    private readonly Rig _rig;
    private readonly UseLog _log;
    private readonly IReadOnlyList<DateTimeOffset> _instants;
    private readonly double[] _use_kg;
    private readonly bool _together;
    private readonly int _n;

    private FeedTracker(Rig rig, UseLog log, IReadOnlyList<double> use_kg)
    {
        (_rig, _log, _use_kg, _n) = (rig, log, [.. use_kg], rig.Cylinders.Count);
        _instants = FeedHistory.InstantsOf(log);
        _together = rig.Arrangement is OpenTogether;
    }

    private sealed record Sequence(Sequence? Before, FeedGap? Gap, int InUse, Vector<double> Mean, Matrix<double> Covariance, double LogWeight);

    /// <summary>The most likely history.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="log">Its log, with at least one row.</param>
    /// <param name="use_kg">What the simulator uses between the instants of <see cref="FeedHistory.InstantsOf"/>. [kg]</param>
    /// <param name="scale_frac">Standard uncertainty of all of it together, as a fraction.</param>
    public static FeedHistory Of(Rig rig, UseLog log, IReadOnlyList<double> use_kg, double scale_frac)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(use_kg);
        return new FeedTracker(rig, log, use_kg).Found(scale_frac);
    }

    private FeedHistory Found(double scale_frac)
    {
        List<Sequence> sequences = [.. Starts(scale_frac).Select(s => Read(s, 0))];
        for (int g = 0; g < _use_kg.Length; g++)
        {
            sequences = [.. sequences.SelectMany(s => After(s, g)).Select(s => Read(s, g + 1)).OrderByDescending(s => s.LogWeight).Take(Kept)];
        }

        double best = sequences[0].LogWeight;
        double[] weights = [.. sequences.Select(s => Math.Exp(s.LogWeight - best))];
        double all = weights.Sum();
        double[] inUse_frac = new double[_n];
        for (int i = 0; i < weights.Length; i++)
            inUse_frac[sequences[i].InUse] += weights[i] / all;
        Sequence[] path = Path(sequences[0]);

        // At the end all sequences count, each by its weight.
        Vector<double> mean = Vector<double>.Build.Dense(_n + 1, i => sequences.Select((s, k) => s.Mean[i] * weights[k] / all).Sum());
        return new()
        {
            Instants = _instants,
            Gaps = Doubted([.. path.Skip(1).Select(s => s.Gap!)], [.. sequences.Select(Path)], [.. weights.Select(w => w / all)]),
            Held_kg = [.. path.SkipLast(1).Select(s => Held_kg(s.Mean)), Held_kg(mean)],
            Uncertainty_kg = [.. Enumerable.Range(0, _n).Select(i => Math.Sqrt(sequences.Select((s, k) => Spread(s, i, mean[i]) * weights[k] / all).Sum()))],
            InUse_frac = inUse_frac,
            Together = _together,
            Use_kg = _use_kg,
        };
    }

    private static double Spread(Sequence sequence, int i, double mean_kg)
        => Math.Max(0, sequence.Covariance[i, i]) + Math.Pow(sequence.Mean[i] - mean_kg, 2);

    private static Sequence[] Path(Sequence last)
    {
        List<Sequence> path = [];
        for (Sequence? s = last; s is not null; s = s.Before)
            path.Add(s);
        path.Reverse();
        return [.. path];
    }

    // Where other sequences of some weight have another cylinder in use, only the sum of both is known.
    private static FeedGap[] Doubted(FeedGap[] gaps, Sequence[][] paths, double[] weights)
    {
        for (int g = 0; g < gaps.Length; g++)
        {
            Dictionary<int, double> others = [];
            for (int p = 0; p < paths.Length; p++)
            {
                FeedGap gap = paths[p][g + 1].Gap!;
                if (gap.First != gaps[g].First)
                    others[gap.First] = others.GetValueOrDefault(gap.First) + weights[p];
                if (gap.Other is { } second && second != gaps[g].First)
                    others[second] = others.GetValueOrDefault(second) + weights[p];
            }

            if (gaps[g].Other is null && others.Count > 0 && others.MaxBy(o => o.Value) is { Value: > Doubt } other)
                gaps[g] = gaps[g] with { Other = other.Key };
        }

        return gaps;
    }

    private double[] Held_kg(Vector<double> mean)
        => [.. Enumerable.Range(0, _n).Select(i => Math.Clamp(mean[i], Least_kg, Math.Max(Least_kg, _rig.Cylinders[i].LegalFill_kg * 1.1)))];

    private IEnumerable<Sequence> Starts(double scale_frac)
    {
        Vector<double> mean = Vector<double>.Build.Dense(_n + 1, 1);
        Matrix<double> covariance = Matrix<double>.Build.Dense(_n + 1, _n + 1);
        covariance[_n, _n] = scale_frac * scale_frac;
        for (int i = 0; i < _n; i++)
        {
            LogRow? first = _log.Rows.FirstOrDefault(r => r.Reading.Cylinder == i);
            mean[i] = first is null || first.Reading.Filled ? _rig.Cylinders[i].Contents_kg : first.Contents.Mass_kg;
            covariance[i, i] = Math.Pow(UnknownStart_frac * _rig.Cylinders[i].LegalFill_kg, 2);
        }

        for (int i = 0; i < (_together ? 1 : _n); i++)
            yield return new(null, null, i, mean, covariance, Math.Log(i == 0 ? FirstInUse_frac : (1 - FirstInUse_frac) / (_n - 1)));
    }

    private IEnumerable<Sequence> After(Sequence before, int g)
    {
        (DateTimeOffset from, DateTimeOffset to) = (_instants[g], _instants[g + 1]);
        int a = before.InUse;
        if (_together)
        {
            yield return Shared(before, g);
            yield break;
        }

        yield return Gave(before, g, new(from, to, a, a, null, false), 1, 0, 0);
        if (to - from < OneWalk)
            yield break;
        for (int b = 0; b < _n; b++)
        {
            if (b == a)
                continue;
            yield return Dried(before, g, a, b);
            yield return Gave(before, g, new(from, to, a, b, b, false), 0.5, 1 / 12.0, Math.Log(ChangedBeforeEmpty_frac));

            // The reserve side of a changeover helps in the cold, and the service side stays the one in use.
            if (_rig.Arrangement is AutomaticChangeover)
                yield return Gave(before, g, new(from, to, a, a, b, false), 0.7, 1 / 12.0, Math.Log(ChangedBeforeEmpty_frac));
        }
    }

    // The cylinder in use gives a part of the use, another one the rest; the variance of the part is in squares of the use.
    private Sequence Gave(Sequence before, int g, FeedGap gap, double part, double partVariance, double logWeight)
    {
        Vector<double> parts = Vector<double>.Build.Dense(_n);
        parts[gap.First] = part;
        if (gap.Other is { } other)
            parts[other] = 1 - part;
        return Moved(before, g, gap, parts, partVariance, logWeight);
    }

    private Sequence Shared(Sequence before, int g)
    {
        // The wall that touches liquid grows with the contents and does not begin at nothing.
        double Wall(int i) => before.Mean[i] < Empty_kg ? Least_kg : before.Mean[i] + Bottom_frac * _rig.Cylinders[i].LegalFill_kg;
        double sum_kg = Enumerable.Range(0, _n).Sum(Wall);
        Vector<double> parts = Vector<double>.Build.Dense(_n, i => Wall(i) / sum_kg);
        FeedGap gap = new(_instants[g], _instants[g + 1], 0, 0, null, false);
        return Moved(before, g, gap, parts, Share_frac * Share_frac, 0);
    }

    private Sequence Moved(Sequence before, int g, FeedGap gap, Vector<double> parts, double partVariance, double logWeight)
    {
        double use_kg = _use_kg[g];
        Matrix<double> f = Matrix<double>.Build.DenseIdentity(_n + 1);
        for (int i = 0; i < _n; i++)
            f[i, _n] = -use_kg * parts[i];
        Vector<double> mean = f * before.Mean;
        Matrix<double> covariance = f * before.Covariance * f.Transpose();
        double day = DayVariance(g);
        for (int i = 0; i < _n; i++)
        {
            for (int j = 0; j < _n; j++)
                covariance[i, j] += parts[i] * parts[j] * day;
        }

        if (_together)
            Separate(covariance, [.. Enumerable.Range(0, _n)], partVariance * use_kg * use_kg);
        else if (gap.Other is { } other)
            Separate(covariance, [gap.First, other], partVariance * use_kg * use_kg);
        for (int i = 0; i < _n; i++)
        {
            if (parts[i] > 0 && !IsNextFilled(i, g))
                logWeight += Normal.CDF(0, 1, mean[i] / Math.Sqrt(covariance[i, i] + Empty_kg * Empty_kg)) is var has && has > 1e-12 ? Math.Log(has) : -27;
        }

        return new(before, gap, gap.Last, mean, covariance, before.LogWeight + logWeight);
    }

    // The first one gives what it has, the second the rest.
    private Sequence Dried(Sequence before, int g, int a, int b)
    {
        double use_kg = _use_kg[g];
        Matrix<double> f = Matrix<double>.Build.DenseIdentity(_n + 1);
        f[a, a] = 0;
        f[b, a] = 1;
        f[b, _n] = -use_kg;
        Vector<double> mean = f * before.Mean;
        (mean[a], mean[b]) = (Empty_kg, mean[b] - Empty_kg);
        Matrix<double> covariance = f * before.Covariance * f.Transpose();
        Separate(covariance, [a, b], Empty_kg * Empty_kg);
        covariance[b, b] += DayVariance(g);
        double rest_kg = use_kg * before.Mean[_n] - before.Mean[a] + Empty_kg;
        double variance = before.Covariance[a, a] + use_kg * use_kg * before.Covariance[_n, _n] + Empty_kg * Empty_kg;
        double has = Normal.CDF(0, 1, rest_kg / Math.Sqrt(variance));
        return new(before, new(_instants[g], _instants[g + 1], a, b, b, true), b, mean, covariance, before.LogWeight + (has > 1e-12 ? Math.Log(has) : -27));
    }

    private static void Separate(Matrix<double> covariance, int[] places, double variance)
    {
        foreach (int i in places)
        {
            foreach (int j in places)
                covariance[i, j] += i == j ? variance * (places.Length - 1) : -variance;
        }
    }

    private double DayVariance(int g)
    {
        double days = Math.Max((_instants[g + 1] - _instants[g]).TotalDays, 1.0 / 1440);
        return _use_kg[g] * _use_kg[g] * (LogPrediction.Day_frac * LogPrediction.Day_frac / days + LogPrediction.Lasting_frac * LogPrediction.Lasting_frac);
    }

    // What a cylinder holds between its last reading before a filling and its first after it may be old or new.
    private bool IsNextFilled(int cylinder, int g)
        => _log.Rows.FirstOrDefault(r => r.Reading.Cylinder == cylinder && r.Reading.Time >= _instants[g + 1]) is { Reading.Filled: true };

    private Sequence Read(Sequence sequence, int k)
    {
        (Vector<double> mean, Matrix<double> covariance, double logWeight) = (sequence.Mean.Clone(), sequence.Covariance.Clone(), sequence.LogWeight);
        foreach (LogRow row in _log.Rows.Where(r => r.Reading.Time == _instants[k]))
        {
            int c = row.Reading.Cylinder;
            double variance = row.Contents.Uncertainty_kg * row.Contents.Uncertainty_kg;
            if (row.Reading.Filled)
            {
                covariance.ClearRow(c);
                covariance.ClearColumn(c);
                (mean[c], covariance[c, c]) = (row.Contents.Mass_kg, variance);
                continue;
            }

            double off_kg = row.Contents.Mass_kg - mean[c], expected = covariance[c, c] + variance;
            double right = LogDensity(off_kg, expected), wrong = Math.Log(WrongReading_frac) + LogDensity(off_kg, expected + WrongBy_kg * WrongBy_kg);
            logWeight += Math.Max(right, wrong);
            if (wrong > right)
                continue;
            Vector<double> gain = covariance.Column(c) / expected;
            mean += gain * off_kg;
            covariance -= gain.OuterProduct(covariance.Row(c));
        }

        return sequence with { Mean = mean, Covariance = covariance, LogWeight = logWeight };
    }

    private static double LogDensity(double off_kg, double variance) => -0.5 * (off_kg * off_kg / variance + Math.Log(Math.Tau * variance));
}
