using ColdSim.Model;
using ColdSim.Planning.Gauges;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace ColdSim.Planning.Logs;

/// <summary>One reading of the log, ready to be turned into a mass.</summary>
public sealed record LogReading
{
    /// <summary>Its line in the log, 1 for the header.</summary>
    public required int Line { get; init; }

    /// <summary>Place of the cylinder that was read, from 0.</summary>
    public int Cylinder { get; init; }

    /// <summary>When it was read.</summary>
    public required DateTimeOffset Time { get; init; }

    /// <summary>What was read and how.</summary>
    public required GaugeReading Reading { get; init; }

    /// <summary>Whether the cylinder was filled or changed since the reading before.</summary>
    public bool Filled { get; init; }

    /// <summary>Whether the log does not say that it was filled, and the readings after it do.</summary>
    public bool FillingNoticed { get; init; }

    /// <summary>Whether the person confirmed it although it looked wrong.</summary>
    public bool Checked { get; init; }

    /// <summary>What the person wrote beside it.</summary>
    public string Note { get; init; } = "";

    /// <summary>The contents that it means.</summary>
    /// <param name="rig">The rig whose cylinder was read.</param>
    /// <exception cref="ImpossibleReadingException">The reading fits no contents of this cylinder.</exception>
    public ContentsEstimate Contents(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Reading.Estimate(GaugedCylinder.Of(rig.Cylinders[Cylinder]));
    }
}

/// <summary>One reading of the log with what it means.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Contents">What it says is in the cylinder.</param>
/// <param name="Used">Gas used since the reading before of the same cylinder; null for the first and after a filling. Negative where it reads more than before.</param>
/// <param name="UsedUncertainty">Its standard uncertainty: an error common to both readings cancels.</param>
public sealed record LogRow(LogReading Reading, ContentsEstimate Contents, Mass? Used, Mass? UsedUncertainty);

/// <summary>The readings of a log in order of time, as masses with their common covariance.</summary>
/// <remarks>
/// Over days, other errors are common to readings than within one session: the tare, what hangs on the cylinder, its capacity and its diameter stay the
/// same; the liquid's temperature and the ice are another day's. A difference of two weighings is free of the tare.
/// </remarks>
public sealed class UseLog
{
    private static readonly string[] Lasting = ["tare", "accessories", "water capacity", "outside diameter"];

    private UseLog(IReadOnlyList<LogRow> rows) => Rows = rows;

    /// <summary>A log without readings.</summary>
    internal static UseLog Empty { get; } = new([]);

    /// <summary>The readings in order of time.</summary>
    public IReadOnlyList<LogRow> Rows { get; }

    /// <summary>Turns readings into masses and uses.</summary>
    /// <param name="readings">In any order.</param>
    /// <param name="cylinder">The cylinder that was read.</param>
    /// <exception cref="ImpossibleReadingException">A reading fits no contents of this cylinder.</exception>
    public static UseLog Of(IEnumerable<LogReading> readings, GaugedCylinder cylinder) => Of(readings, [cylinder]);

    /// <summary>Turns readings of several cylinders into masses and uses.</summary>
    /// <param name="readings">In any order.</param>
    /// <param name="cylinders">The cylinders, each in its place.</param>
    /// <exception cref="ImpossibleReadingException">A reading fits no contents of its cylinder.</exception>
    public static UseLog Of(IEnumerable<LogReading> readings, IReadOnlyList<GaugedCylinder> cylinders)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(cylinders);
        List<LogRow> rows = [];
        foreach (LogReading reading in readings.OrderBy(r => r.Time).ThenBy(r => r.Line))
        {
            ContentsEstimate now = reading.Reading.Estimate(cylinders[reading.Cylinder]);
            ContentsEstimate? before = reading.Filled ? null : rows.LastOrDefault(r => r.Reading.Cylinder == reading.Cylinder)?.Contents;
            rows.Add(before is null
                ? new(reading, now, null, null)
                : new(reading, now, before.Mass - now.Mass, Mass.FromKilograms(UsedUncertainty_kg(before, now))));
        }

        return new UseLog(rows);
    }

    /// <summary>Turns readings of a rig's cylinders into masses and uses.</summary>
    /// <param name="readings">In any order.</param>
    /// <param name="rig">The rig.</param>
    /// <exception cref="ImpossibleReadingException">A reading fits no contents of its cylinder.</exception>
    public static UseLog Of(IEnumerable<LogReading> readings, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Of(readings, [.. rig.Cylinders.Select(GaugedCylinder.Of)]);
    }

    /// <summary>The latest reading of a cylinder; null where there is none.</summary>
    /// <param name="cylinder">Its place, from 0.</param>
    public LogRow? LatestOf(int cylinder) => Rows.LastOrDefault(r => r.Reading.Cylinder == cylinder);

    /// <summary>Covariance of the masses' reading errors. [kg²]</summary>
    internal Matrix<double> Covariance() => Matrix<double>.Build.Dense(
        Rows.Count, Rows.Count, (i, j) => i == j ? Variance(Rows[i].Contents)
            : Rows[i].Reading.Cylinder == Rows[j].Reading.Cylinder ? Common(Rows[i].Contents, Rows[j].Contents) : 0);

    /// <summary>Standard uncertainty of the difference of two readings of one cylinder: an error common to both cancels. [kg]</summary>
    internal static double UsedUncertainty_kg(ContentsEstimate before, ContentsEstimate now)
        => Math.Sqrt(Math.Max(0, Variance(before) + Variance(now) - 2 * Common(before, now)));

    private static double Variance(ContentsEstimate e) => e.Uncertainty_kg * e.Uncertainty_kg;

    private static double Common(ContentsEstimate a, ContentsEstimate b)
    {
        double sum = 0;
        foreach (ErrorShare one in a.Shares)
        {
            if (!Lasting.Contains(one.Input.Name, StringComparer.Ordinal))
                continue;
            foreach (ErrorShare other in b.Shares)
            {
                if (other.Input.Name == one.Input.Name)
                    sum += one.Change_kg * other.Change_kg;
            }
        }

        return sum;
    }
}
