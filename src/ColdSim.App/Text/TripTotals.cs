using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>What a trip comes to in gas, money, electricity and walks.</summary>
internal static class TripTotals
{
    public static IReadOnlyList<string> Lines(TripReport report, UnitStyle units)
    {
        RunSummary summary = report.Run.Summary;
        List<string> lines = [.. Wrap.Lines(Gas(report, summary, units), rest: "  ")];
        if (Money(report) is { } money)
            lines.AddRange(Wrap.Lines(money, rest: "  "));
        lines.AddRange(Wrap.Lines(
            $"Electricity: the blankets take {UnitStyle.Number(summary.BlanketEnergy.WattHours, 0)} Wh. "
            + $"Walks to change cylinders: {UnitStyle.Number(summary.CylinderChanges, 0)}.", rest: "  "));
        lines.Add(RunText.Ledger(report.Run.Ledger));
        return lines;
    }

    private static string Gas(TripReport report, RunSummary summary, UnitStyle units)
    {
        string behind = report.LeftBehind.Kilograms > 0 ? $", {units.Mass(report.LeftBehind.Kilograms)} left in cylinders given in exchange" : "";
        return $"Gas: {units.Mass(summary.LeftAtStart.Kilograms)} at the start, {units.Mass(report.Bought.Kilograms)} bought{behind}, "
            + $"{units.Mass(summary.GasUsed.Kilograms)} used, {units.Mass(summary.LeftAtEnd.Kilograms)} left.";
    }

    /// <summary>A sum of money.</summary>
    public static string Sum(double value, string currency)
        => $"{(value < -0.005 ? "-" : "")}{currency}{(currency.Length > 1 ? " " : "")}{UnitStyle.Number(Math.Abs(value), 2)}";

    private static string? Money(TripReport report)
    {
        TripMoney money = report.Money;
        string currency = report.Run.Scenario.Prices.Currency;
        string Sum(double value) => TripTotals.Sum(value, currency);
        return money switch
        {
            { Paid: { } paid, FromStock: { } stock } when stock < 0 =>
                $"Money: {Sum(paid)} paid at the refills, of which {Sum(-stock)} is still in the cylinders: {Sum(paid + stock)} in all.",
            { Paid: { } paid, FromStock: { } stock } => $"Money: {Sum(paid)} paid at the refills, {Sum(stock)} of gas bought before: {Sum(paid + stock)} in all.",
            { Paid: { } paid } => $"Money: {Sum(paid)} paid at the refills.",
            { FromStock: { } stock } => $"Money: {Sum(stock)} of gas bought before.",
            _ => null,
        };
    }
}
