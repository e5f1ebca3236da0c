using ColdSim.Planning;
using ColdSim.Planning.Compare;

namespace ColdSim.App.Text;

/// <summary>A comparison as text: which is best and why, the table, the rule, what it rests on.</summary>
internal static class CompareText
{
    private const string OnTheGround =
        "\"On the ground\": a cylinder of over 105 lb of water is not one to carry. 24 CFR 3280.704, a rule for manufactured homes, "
        + "allows on board at most two, each of at most 105 lb of water; local code decides where a larger one may stand.";

    /// <param name="comparison">What was run.</param>
    /// <param name="units">To print.</param>
    /// <param name="cautions">Under the answer.</param>
    /// <param name="swept">Whether the options are cylinders of several sizes, filled to the same part.</param>
    public static IReadOnlyList<TextSection> Sections(
        Comparison comparison, UnitStyle units, IReadOnlyList<string> cautions, bool swept)
    {
        Scenario scenario = comparison.Base;
        List<string> under = [.. Wrap.Lines($"Ranked: {Ranking.Rule}.")];
        if (swept)
            under.AddRange(Wrap.Lines(Filled(scenario)));
        if (comparison.Rows.Any(r => r.StoppedByCylinder))
            under.AddRange(Wrap.Lines("\"Stops\": its cylinder ends the run early, full of liquid or at its relief pressure, a danger in itself; it comes last."));
        if (comparison.Rows.Any(r => r.Option.IsOnGround))
            under.AddRange(Wrap.Lines(OnTheGround));
        List<TextSection> sections =
        [
            new(scenario.Title, [.. Wrap.Lines(Setting(comparison)), "", .. Wrap.Lines(CompareSentence.Of(comparison, units), rest: "  ")]),
            new("The options side by side", [.. CompareTable.Lines(comparison, units), "", .. TakesTable.Lines(comparison, units), .. under]),
        ];
        if (scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(scenario.Assumptions)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points(cautions)));
        return sections;
    }

    private static string Setting(Comparison comparison)
    {
        int nights = comparison.Rows.Max(r => r.Summary.Nights), options = comparison.Rows.Count - 1;
        return $"The rig as it is and {(options == 1 ? "1 option" : $"{options} options")}, {(nights == 1 ? "1 night" : $"{nights} nights")} from "
            + $"{ClockText.Start(comparison.Base.Start)}.";
    }

    private static string Filled(Scenario scenario)
        => scenario.Rig.Cylinders.Count > 1
            ? "Every cylinder becomes one of the size, as full by part of its legal filling as the one in its place."
            : $"Every size is as full as the cylinder as it is: {UnitStyle.Number(SizeSweep.Fill_frac(scenario.Rig.Cylinders[0]) * 100, 0)} % of its legal filling.";
}
