using ColdSim.Planning.Explain;

namespace ColdSim.App.Text;

/// <summary>An explanation as text: the limit first, then the chain, what would have held, and what looks alike.</summary>
internal static class ExplainText
{
    private const string AboutRemedies =
        "Each found by running everything again, alone: it holds with the least value, and a step of \"within\" short of it does not. On board "
        + "at most two cylinders of at most 105 lb of water each (24 CFR 3280.704, a rule for manufactured homes; local code decides); a larger "
        + "one stands on the ground. Only equipment listed for its purpose, and a blanket listed for that cylinder. A battery is taken to give 600 Wh a "
        + "night (common practice, no source).";

    private const string AboutElectrical =
        "Each found by running everything again, alone: it holds with the least value, and a step of \"within\" short of it does not. Further panels lie like "
        + "those there are, or flat, and a generator burns the gas of the same cylinders. Batteries are fused and vented as their maker says.";

    public static IReadOnlyList<TextSection> Sections(Explanation explanation, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections =
        [
            new(explanation.Report.Scenario.Title, Wrap.Lines(ExplainSentence.Of(explanation, units), rest: "  ")),
            new("How it came to that", ChainLines.Of(explanation.Chain, units)),
        ];
        if (explanation.Limit is { } limit)
        {
            sections.Add(new($"Each limit eased by {UnitStyle.Number(limit.Part_frac * 100, 0)} %, alone, to see which binds", SensitivityTable.Lines(limit)));
            sections.Add(new($"What would have held to the end of night {explanation.Night}",
                [.. RemedyTable.Lines(explanation, units), "", .. Wrap.Lines(AboutRemedies)]));
            sections.Add(new("What looks the same from inside", RunText.Points(LookAlikes.All.Select(Alike))));
        }

        else if (explanation.Flat is not null)
        {
            sections.Add(new($"What would have held to the end of night {explanation.Night}",
                [.. RemedyTable.Lines(explanation, units), "", .. Wrap.Lines(AboutElectrical)]));
        }

        if (explanation.Report.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(explanation.Report.Scenario.Assumptions)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points(cautions)));
        return sections;
    }

    private static string Alike(LookAlike look) => $"{look.Trouble}: {look.Signs} ({look.Source}).";
}
