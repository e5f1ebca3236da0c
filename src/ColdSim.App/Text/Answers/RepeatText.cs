using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text.Answers;

/// <summary>Which of several readings to repeat, and why, in a sentence.</summary>
internal static class RepeatText
{
    // 95 % of a normal distribution, as the verdict has it.
    private const double Twice = 2;

    /// <summary>Such as "read line again before you trust the figure: it is 4.2 times the uncertainty below all the others together."</summary>
    /// <param name="report">Two readings or more.</param>
    /// <param name="next">Which to repeat.</param>
    /// <param name="units">The units to print.</param>
    public static string Of(GaugeReport report, Repetition next, UnitStyle units)
    {
        string name = report.Estimates[next.Reading].Reading;
        return next.Reason switch
        {
            RepeatReason.Outlier => $"read {name} again before you trust the figure: {Off(report, next)}",
            RepeatReason.Narrows => $"read {name} again to know more: one more narrows "
                + $"± {Range(report.Uncertainty!.Mass.Kilograms, units)} to ± {Range(next.Repeated_kg[next.Reading], units)}, more than any other reading.",
            RepeatReason.SharedError when next.Shared is { } shared => $"read none of them again: it gains little, because most of "
                + $"the error comes from the {shared.Name}, which they share. {GaugeAnswer.Measure(shared)}",
            _ => "read none of them again: it gains little.",
        };
    }

    private static string Off(GaugeReport report, Repetition next)
    {
        double off = next.FromOthers[next.Reading];
        string times = $"{UnitStyle.Number(Math.Abs(off), 1)} times the uncertainty {(off < 0 ? "below" : "above")}";
        return report.Estimates.Count == 2
            ? $"it is {times} {report.Estimates[1 - next.Reading].Reading}, and the less certain of the two."
            : $"it is {times} all the others together.";
    }

    private static string Range(double kg, UnitStyle units) => $"{UnitStyle.Number(units.MassIn(Twice * kg), 2)} {units.MassUnit}";
}
