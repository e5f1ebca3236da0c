namespace ColdSim.Planning.Measurements;

/// <summary>What the compared values of one kind come to.</summary>
internal enum MeasuredFinding
{
    /// <summary>The mean difference is within two of its standard errors.</summary>
    Agrees,

    /// <summary>More is measured than computed.</summary>
    Higher,

    /// <summary>Less is measured than computed.</summary>
    Lower,
}

/// <summary>How the air inside was kept while it was measured.</summary>
internal enum InsideState
{
    /// <summary>The value is not the air's.</summary>
    None,

    /// <summary>The furnace held it at its set point: a difference speaks of set point and thermometer.</summary>
    Held,

    /// <summary>It was below its set point, or there is no thermostat: a difference speaks of the coach's loss.</summary>
    Free,
}

/// <summary>The compared values of one quantity, and of the air inside in one state of the furnace.</summary>
/// <param name="Quantity">The quantity.</param>
/// <param name="Inside">How the air was kept.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Mean">Mean of measured less computed. [K, Pa or V]</param>
/// <param name="Scatter">Standard deviation of single differences about it; 0 of one.</param>
/// <param name="StandardError">Standard error of the mean.</param>
internal sealed record MeasuredGroup(MeasuredQuantity Quantity, InsideState Inside, int Count, double Mean, double Scatter, double StandardError)
{
    /// <summary>Beyond so many standard errors a mean difference is one.</summary>
    public const double Clear = 2;

    /// <summary>What it speaks of.</summary>
    public MeasuredCause Cause => MeasuredRow.CauseOf(Quantity);

    /// <summary>What it says.</summary>
    public MeasuredFinding Finding => Math.Abs(Mean) <= Clear * StandardError ? MeasuredFinding.Agrees : Mean > 0 ? MeasuredFinding.Higher : MeasuredFinding.Lower;

    /// <summary>The groups of compared values, in the order of causes.</summary>
    /// <param name="rows">The values.</param>
    public static IReadOnlyList<MeasuredGroup> Of(IEnumerable<MeasuredRow> rows) =>
    [
        .. rows.Where(r => r.Computed is not null)
            .GroupBy(r => (r.Measurement.Quantity, Inside: StateOf(r)))
            .OrderBy(g => MeasuredRow.CauseOf(g.Key.Quantity)).ThenBy(g => g.Key.Quantity).ThenBy(g => g.Key.Inside)
            .Select(g => Of(g.Key.Quantity, g.Key.Inside, [.. g])),
    ];

    private static InsideState StateOf(MeasuredRow row) => row.Measurement.Quantity != MeasuredQuantity.Inside ? InsideState.None
        : row.Computed!.Value.IsHeld ? InsideState.Held : InsideState.Free;

    // One thermometer or gauge errs the same way every time, so a value's own error does not shrink with their number; what scatters does.
    private static MeasuredGroup Of(MeasuredQuantity quantity, InsideState inside, IReadOnlyList<MeasuredRow> rows)
    {
        double mean = rows.Average(r => r.Difference!.Value);
        double scatter = rows.Count == 1 ? 0 : Math.Sqrt(rows.Sum(r => Math.Pow(r.Difference!.Value - mean, 2)) / (rows.Count - 1));
        double own = rows.Average(r => r.StandardError!.Value * r.StandardError.Value);
        return new(quantity, inside, rows.Count, mean, scatter, Math.Sqrt(own + scatter * scatter / rows.Count));
    }
}
