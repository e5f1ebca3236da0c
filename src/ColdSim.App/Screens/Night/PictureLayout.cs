namespace ColdSim.App.Screens.Night;

/// <summary>How the rows of a night's picture are shared: strips, the burner, words for events, the clock.</summary>
internal sealed record PictureLayout
{
    private const int RowsForBurner = 22;
    private const int RowsForThreeLanes = 26;
    private const int RowsForTwoLanes = 9;

    /// <summary>How the strips of gas, inside, what is cold and gas left share the room, and which of them go first when there is too little.</summary>
    private static readonly int[] Weights = [5, 4, 3, 2];
    private static readonly int[] Least = [2, 2, 2, 2];
    private static readonly int[] FirstToGo = [3, 2, 1, 0];

    /// <summary>Rows of each strip; 0 where it is left out.</summary>
    public required IReadOnlyList<int> StripRows { get; init; }

    public required bool ShowsBurner { get; init; }

    /// <summary>Rows for the words of events.</summary>
    public required int Lanes { get; init; }

    public int BurnerRow => StripRows.Sum();

    public int EventRow => BurnerRow + (ShowsBurner ? 1 : 0);

    public int ClockRow => EventRow + Lanes;

    /// <param name="rows">All rows of the picture.</param>
    public static PictureLayout For(int rows)
    {
        bool burner = rows >= RowsForBurner;
        int lanes = rows >= RowsForThreeLanes ? 3 : rows >= RowsForTwoLanes ? 2 : 1;
        return new() { ShowsBurner = burner, Lanes = lanes, StripRows = Share(rows - lanes - (burner ? 1 : 0) - 1) };
    }

    /// <summary>As many rows as its labels need at least, or none; the rest by weight.</summary>
    private static int[] Share(int room)
    {
        int[] rows = [.. Least];
        foreach (int gone in FirstToGo.TakeWhile(_ => rows.Sum() > room))
            rows[gone] = 0;
        if (rows.Sum() == 0)
            return rows;
        while (rows.Sum() < room)
        {
            int next = Enumerable.Range(0, rows.Length).Where(i => rows[i] > 0).MinBy(i => (double)rows[i] / Weights[i]);
            rows[next]++;
        }

        return rows;
    }
}
