using ColdSim.Planning.Logs;

namespace ColdSim.Planning.Fits;

/// <summary>The rows of a log of several cylinders, beside the gaps between its instants of reading.</summary>
internal sealed class FeedRows
{
    private readonly int[] _instant;
    private readonly int[] _start;
    private readonly UseLog _log;
    private readonly FeedHistory _feeds;

    public FeedRows(UseLog log, FeedHistory feeds)
    {
        (_log, _feeds) = (log, feeds);
        Dictionary<DateTimeOffset, int> places = [];
        for (int k = 0; k < feeds.Instants.Count; k++)
            places[feeds.Instants[k]] = k;
        _instant = [.. log.Rows.Select(r => places[r.Reading.Time])];
        _start = new int[log.Rows.Count];
        int[] starts = [.. feeds.InUse_frac.Select(_ => -1)];
        for (int i = 0; i < _start.Length; i++)
        {
            int c = log.Rows[i].Reading.Cylinder;
            if (starts[c] < 0 || log.Rows[i].Reading.Filled)
                starts[c] = _instant[i];
            _start[i] = starts[c];
        }

        Offsets =
        [
            .. Enumerable.Range(0, _start.Length).GroupBy(i => (log.Rows[i].Reading.Cylinder, _start[i], UnknownBefore(i))).Select(g => (IReadOnlyList<int>)[.. g]),
        ];
    }

    /// <summary>Rows with an offset of their own: a cylinder's between fillings and between gaps in which two gave gas.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Offsets { get; }

    /// <summary>The first gap since the cylinder's first reading after a filling.</summary>
    /// <param name="row">The row.</param>
    public int FirstGap(int row) => _start[row];

    /// <summary>The gap after the row.</summary>
    /// <param name="row">The row.</param>
    public int EndGap(int row) => _instant[row];

    /// <summary>How a gap's unknown division shows in two rows together, in squares of it: 1 where both are of one of the two cylinders, −1 where not.</summary>
    /// <param name="row">A row.</param>
    /// <param name="other">Another row, or the same.</param>
    /// <param name="gap">The gap, which both span.</param>
    public double Division(int row, int other, int gap)
    {
        (int c, int d, int n) = (_log.Rows[row].Reading.Cylinder, _log.Rows[other].Reading.Cylinder, _feeds.InUse_frac.Count);
        return _feeds.Together ? ((c == d ? 1 : 0) - 1.0 / n) * n / (n - 1) : Side(c, gap) * Side(d, gap);
    }

    private int Side(int cylinder, int gap)
        => _feeds.Gaps[gap].Other is not { } other ? 0 : cylinder == _feeds.Gaps[gap].First ? 1 : cylinder == other ? -1 : 0;

    // Division of cylinders open together is known roughly, so their offsets last.
    private int UnknownBefore(int row) => _feeds.Together ? 0
        : Enumerable.Range(_start[row], _instant[row] - _start[row]).Count(g => Side(_log.Rows[row].Reading.Cylinder, g) != 0);
}
