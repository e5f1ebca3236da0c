using ColdSim.Model.Engine;
using ColdSim.Planning.Forecasts;

namespace ColdSim.Planning.Ensemble;

/// <summary>How inside air and propane left spread at one instant of the run. SI units.</summary>
/// <param name="Time_s">Since the run's start. [s]</param>
/// <param name="Inside_K">Inside air; null without a coach. [K]</param>
/// <param name="Left_kg">Propane left. [kg]</param>
public sealed record FanPoint(double Time_s, Spread<double>? Inside_K, Spread<double> Left_kg);

/// <summary>Histograms of the members, hour by hour; memory does not grow with their number, and their order does not matter.</summary>
internal sealed class FanCounter
{
    private const double Hour_s = 3600;

    // A winter is shown by no more points than a screen has.
    private const int MostPoints = 400;
    private const int LeftBins = 1000;
    private const double InsideLow_K = 223.15;
    private const double InsideBin_K = 0.05;
    private const int InsideBins = 2000;

    private readonly double _leftBin_kg;
    private readonly int[] _inside;
    private readonly int[] _left;

    public FanCounter(double duration_s, double most_kg)
    {
        Spacing_s = Hour_s * Math.Max(1, Math.Ceiling(duration_s / Hour_s / MostPoints));
        Points = (int)Math.Floor(duration_s / Spacing_s + 1e-9) + 1;
        _leftBin_kg = most_kg / LeftBins;
        _inside = new int[Points * InsideBins];
        _left = new int[Points * LeftBins];
    }

    /// <summary>Between points. [s]</summary>
    public double Spacing_s { get; }

    /// <summary>Number of points.</summary>
    public int Points { get; }

    /// <summary>Takes in a member that is done; may be called from several threads at once.</summary>
    public void Add(FanWatch member)
    {
        for (int i = 0; i < member.Count; i++)
        {
            Interlocked.Increment(ref _left[i * LeftBins + Bin(member.Left_kg[i] / _leftBin_kg, LeftBins)]);
            if (!double.IsNaN(member.Inside_K[i]))
                Interlocked.Increment(ref _inside[i * InsideBins + Bin((member.Inside_K[i] - InsideLow_K) / InsideBin_K, InsideBins)]);
        }
    }

    /// <summary>The fan; each value is the middle of its bin.</summary>
    public IReadOnlyList<FanPoint> Read()
    {
        List<FanPoint> fan = new(Points);
        for (int i = 0; i < Points; i++)
        {
            if (Spread(_left.AsSpan(i * LeftBins, LeftBins), 0, _leftBin_kg) is { } left)
                fan.Add(new FanPoint(i * Spacing_s, Spread(_inside.AsSpan(i * InsideBins, InsideBins), InsideLow_K, InsideBin_K), left));
        }

        return fan;
    }

    private static int Bin(double place, int bins) => Math.Clamp((int)Math.Floor(place), 0, bins - 1);

    private static Spread<double>? Spread(ReadOnlySpan<int> counts, double low, double width)
    {
        long all = 0;
        foreach (int count in counts) all += count;
        if (all == 0) return null;
        return new Spread<double>(At(counts, all, 0.1), At(counts, all, 0.5), At(counts, all, 0.9));

        double At(ReadOnlySpan<int> of, long total, double part)
        {
            long wanted = Math.Max(1, (long)Math.Ceiling(part * total - 1e-9)), seen = 0;
            int bin = 0;
            while ((seen += of[bin]) < wanted) bin++;
            return low + (bin + 0.5) * width;
        }
    }
}

/// <summary>Samples a run at every point of a fan; reused for the next run.</summary>
internal sealed class FanWatch(FanCounter fan) : IRunObserver
{
    /// <inheritdoc/>
    public bool ReadsDelivery => false;

    public double[] Inside_K { get; } = new double[fan.Points];

    public double[] Left_kg { get; } = new double[fan.Points];

    /// <summary>Points noted so far.</summary>
    public int Count { get; private set; }

    public void Begin() => Count = 0;

    public void Stepped(StepRecord record)
    {
        while (Count < fan.Points && Count * fan.Spacing_s <= record.To.Time_s)
        {
            double x = Math.Max(0, (Count * fan.Spacing_s - record.From.Time_s) / (record.To.Time_s - record.From.Time_s));
            Inside_K[Count] = record.From.Inside_K + x * (record.To.Inside_K - record.From.Inside_K);
            Left_kg[Count] = record.From.Propane_kg + x * (record.To.Propane_kg - record.From.Propane_kg);
            Count++;
        }
    }

    public void Happened(in SimulationEvent happened, in Snapshot moment)
    {
    }
}
