using System.Globalization;
using ColdSim.Planning.Ensemble;

namespace ColdSim.App.Text;

/// <summary>What was taken for the errors, and from where.</summary>
internal static class ErrorWords
{
    public static IEnumerable<string> Of(ChanceReport report, UnitStyle units)
    {
        if (report.Seed is null)
            return ["chance: the record's air is taken as the place's own, unshifted; rig, contents and habits as the scenario says"];
        ErrorSizes e = report.Scenario.Errors;
        return
        [
            Line($"temperature forecast: off by {units.Difference(e.Temperature.Value)} a day ahead", e.Temperature),
            Line($"that grows by {units.Difference(e.TemperatureGrowth.Value)} for every day further ahead, to at most {units.Difference(ErrorSizes.LargestTemperature_K)}", e.TemperatureGrowth),
            Line($"such an error is forgotten to 1/e in {Number(e.CorrelationTime.Value / 3600)} h", e.CorrelationTime),
            Line($"tails of Student's t with {Number(e.Tail.Value)} degrees of freedom", e.Tail),
            Line($"wind forecast: its logarithm off by {Number(e.Wind.Value)}", e.Wind),
            Line($"coach: logarithm of the heat loss off by {Number(e.HeatLoss.Value)}", e.HeatLoss),
            Line($"coach: logarithm of the leakage area off by {Number(e.Infiltration.Value)}", e.Infiltration),
            Line($"contents of each cylinder: off by {units.Mass(e.Reading.Value)}, never over the legal filling", e.Reading),
            Line($"set points: off by {units.Difference(e.SetPoint.Value)}", e.SetPoint),
            Line($"door: up to {Number(e.DoorOpenings.Value)} openings a day beyond the heat loss, each for half the air of 30 m³", e.DoorOpenings),
        ];
    }

    private static string Line(string what, ErrorSize size) => $"{what}; {size.Source}";

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
