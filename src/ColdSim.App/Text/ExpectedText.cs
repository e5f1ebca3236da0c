using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text;

/// <summary>What goes below the answer of what instruments should show: the other cylinders, and what all rests on.</summary>
internal static class ExpectedText
{
    /// <summary>The sections.</summary>
    public static IReadOnlyList<TextSection> Sections(ExpectedReadings expected, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections = [];
        foreach (ExpectedCylinder other in expected.Cylinders.Where(c => c.Place != expected.Chosen.Place))
        {
            IReadOnlyList<string> title = [.. Wrap.Lines($"{ExpectedTable.Title(other, expected, units)}:")];
            sections.Add(new(other.Name, [.. title, .. ExpectedTable.Lines(other, expected, units)]));
        }

        sections.Add(new("How these are made", RunText.Points(Basis(expected, units), units)));
        sections.Add(new("Assumed", RunText.Points(expected.Run.Scenario.Assumptions, units)));
        sections.Add(new("Cautions", RunText.Points(cautions, units)));
        return sections;
    }

    /// <summary>How these readings are made, in points.</summary>
    /// <param name="expected">The readings.</param>
    /// <param name="units">The units to print.</param>
    public static IReadOnlyList<string> Basis(ExpectedReadings expected, UnitStyle units) =>
    [
        "liquid, vapour and wet wall at one temperature; the level counts from the lowest point inside, "
            + "lines on the wall from the lowest point outside",
        "the echo sensor sits at the lowest point and always assumes "
            + $"{units.WholeTemperature(expected.Assumed_K)} (--assumed-temperature)",
        FormattableString.Invariant($"full, for an echo, is the level with {100 * EchoReading.Full_frac:0} % of the volume as liquid")
            + " (common practice, no source)",
        "warmed: the same gas and its wall as warm as the outside air at that time; frost stays on where the air freezes",
    ];
}
