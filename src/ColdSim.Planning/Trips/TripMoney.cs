namespace ColdSim.Planning.Trips;

/// <summary>What a run costs, in the person's own money.</summary>
/// <param name="Paid">At the refills; null where none has a price.</param>
/// <param name="FromStock">
/// Worth of the gas that the cylinders hold less at the end than at the start, at the price of the gas already bought; below zero where
/// they hold more; null where that has no price.
/// </param>
public sealed record TripMoney(double? Paid, double? FromStock)
{
    /// <summary>Both together; null where nothing has a price.</summary>
    public double? Cost => Paid is null && FromStock is null ? null : (Paid ?? 0) + (FromStock ?? 0);

    /// <summary>The money of a run.</summary>
    public static TripMoney Of(RunWithRefills run)
    {
        ArgumentNullException.ThrowIfNull(run);
        double?[] paid = [.. run.Refills.Select(r => r.Paid).Where(p => p is not null)];
        double lost_kg = run.Report.Summary.LeftAtStart.Kilograms - run.Report.Summary.LeftAtEnd.Kilograms;
        return new TripMoney(paid.Length == 0 ? null : paid.Sum(), run.Report.Scenario.Prices.Gas?.Of(lost_kg));
    }
}
