using ColdSim.Files;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Logs;
using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>Why a reading of the log cannot be right beside the others, in one wording for the command line and the screen.</summary>
internal static class InconsistencyWords
{
    /// <summary>A reading that a command leaves out, with its place in the log and how to have it used.</summary>
    public static FileProblem LeftOut(InconsistentReading reading, string log, Scenario scenario, UnitStyle units)
        => new(log, reading.Row.Reading.Line, 1, Of(reading, scenario, units), $"correct the line, or add '{LogMethods.Checked}' to its details if it is right");

    /// <summary>What is wrong with a reading, such as "34.4 lb left is 10.0 lb more than at the reading before it, ...".</summary>
    public static string Of(InconsistentReading reading, Scenario scenario, UnitStyle units)
    {
        if (reading.Meant is { } meant)
        {
            return $"the reading of {Day(reading.Row.Reading.Time, scenario)} is far from the weather and the other readings; {Day(meant, scenario)} would be beside them, so the year looks wrong";
        }

        (LogRow earlier, LogRow later) = (reading.Earlier!, reading.Later!);
        bool isLater = ReferenceEquals(reading.Row, later);
        string left = $"{units.Mass(reading.Row.Contents.Mass.Kilograms)} left";
        string other = isLater ? Other(earlier, "before", scenario) : Other(later, "after", scenario);
        if (reading.Kind == Inconsistency.RisesWithoutFilling)
        {
            string by = units.Mass(later.Contents.Mass.Kilograms - earlier.Contents.Mass.Kilograms);
            return $"{left} is {by} {(isLater ? "more" : "less")} than {other}, and no filling is noted between them ('{LogMethods.Filled}')";
        }

        string used = units.Mass(earlier.Contents.Mass.Kilograms - later.Contents.Mass.Kilograms), most = units.Mass(reading.MostUsed.Kilograms);
        string span = ClockText.Span(Duration.FromSeconds((later.Reading.Time - earlier.Reading.Time).TotalSeconds));
        return $"{left} is {used} {(isLater ? "less" : "more")} than {other}; in the {span} between them all burners together take at most {most}. If it is right, look for a leak, or for an appliance that the scenario does not have";
    }

    private static string Other(LogRow row, string where, Scenario scenario)
        => $"at the reading {where} it, line {row.Reading.Line}, {ClockText.DayClock(row.Reading.Time.ToOffset(scenario.Start.Offset))}";

    private static string Day(DateTimeOffset time, Scenario scenario) => ClockText.DayOfYear(time.ToOffset(scenario.Start.Offset));
}
