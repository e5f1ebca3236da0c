using System.Globalization;
using ColdSim.Planning;
using ColdSim.Planning.Logs;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>Daily use so far, in gas and money, beside what the weather would have predicted.</summary>
internal static class DailyUseText
{
    public static TextSection Section(LogPrediction log, Scenario scenario, UnitStyle units)
        => new("Day by day so far", [.. Table(log, scenario, units), .. Wrap.Lines(Note(log, scenario, units))]);

    public static IReadOnlyList<string> Table(LogPrediction log, Scenario scenario, UnitStyle units)
    {
        bool money = MoneyOf(Mass.Zero, scenario) is not null;
        string[] Cells(string day, double hours, Mass used, string error, Mass predicted) =>
        [
            day, UnitStyle.Number(hours, 1), Number(used, units), error, Number(predicted, units),
            predicted.Kilograms < 0.01 ? "-" : UnitStyle.Number(100 * (used / predicted), 0), .. money ? [MoneyOf(used, scenario)!] : Array.Empty<string>(),
        ];
        return TextTable.Lines(
            [
                new(["day"], Left: true), new(["hours", "read"]), new(["used", units.MassUnit]), new(["±"]), new(["weather", "says", units.MassUnit]), new(["used", "of that", "%"]),
                .. money ? [new TextColumn(["costs", scenario.Prices.Currency])] : Array.Empty<TextColumn>(),
            ],
            [
                .. log.Days.Select(d => Cells(d.Day.ToString("ddd dd MMM", CultureInfo.InvariantCulture), d.Covered.Hours, d.Used, Number(d.UsedUncertainty, units), d.Predicted)),
                Cells("in all", log.Days.Sum(d => d.Covered.Hours), log.Used, "", log.Predicted),
            ],
            gap: 2);
    }

    /// <summary>Money for gas; null where the scenario has no price by mass.</summary>
    private static string? MoneyOf(Mass used, Scenario scenario)
        => scenario.Prices.Gas is { Each: false } price ? UnitStyle.Number(price.Of(used.Kilograms), 2) : null;

    private static string Note(LogPrediction log, Scenario scenario, UnitStyle units)
    {
        double hours = log.Days.Sum(d => d.Covered.Hours);
        string day = hours < 1 ? "" : $"{units.Mass(log.Used.Kilograms * 24 / hours)} in 24 hours where {units.Mass(log.Predicted.Kilograms * 24 / hours)} was to be expected, {LogText.Parameters(scenario)}; ";
        string price = scenario.Prices.Gas is { Each: false } ? "" : "; no [gas] price, so no money";
        return $"{day}between two readings the use is shared out over the hours as the simulator has it{price}";
    }

    private static string Number(Mass mass, UnitStyle units) => UnitStyle.Number(units.MassIn(mass.Kilograms), 2);
}
