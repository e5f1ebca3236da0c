using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Figures;

namespace ColdSim.App.Text;

/// <summary>A diagnosis as text, everything of it.</summary>
internal static class DiagnosisText
{
    // Evidence beyond this adds little.
    private const int MostCauses = 6;

    /// <summary>What follows the answer with <c>--full</c>.</summary>
    public static IReadOnlyList<TextSection> Sections(DiagnosisReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        if (!report.HasAnswer)
            return [new("Cautions", RunText.Points(cautions, units))];
        List<TextSection> sections = [new("For and against", ForAndAgainst(report, units))];
        if (report.Expected.Count > 0)
        {
            sections.Add(new("What should be seen now",
                [.. new FigureTable(ReportTable.DiagnosisStates, units) { Gap = 2 }.Lines(DiagnosisFigures.StateFigures,
                report.Expected)]));
        }

        if (report.Tests.Count > 0)
            sections.Add(new("Tests, the best for its trouble first", RunText.Points([.. report.Tests.Select(Test)], units)));
        sections.Add(new("Never", RunText.Points([.. report.Causes.Take(MostCauses)
            .Select(c => CauseWords.Never(c.Cause)["Never: ".Length..]).Distinct()], units)));
        if (report.Question.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(report.Question.Assumptions, units)));
        sections.Add(new("Cautions", RunText.Points(cautions, units)));
        return sections;
    }

    /// <summary>The causes as a table.</summary>
    public static IReadOnlyList<string> Table(DiagnosisReport report, UnitStyle units)
        => new FigureTable(ReportTable.Diagnosis, units) { Gap = 2 }.Lines(DiagnosisFigures.CauseFigures, report.Causes);

    /// <summary>What the model says should be seen if the cylinder is sound, and if the likeliest fault of it is at work; null without the
    /// air's temperature.</summary>
    public static string? Expected(DiagnosisReport report, UnitStyle units)
    {
        if (report.Expected.Count == 0)
            return null;
        CylinderFault fault = CylinderLikelihood.FaultOf(report.Causes[0].Cause);
        CylinderState sound = report.Expected.First(s => s.Fault == CylinderFault.None),
            seen = report.Expected.First(s => s.Fault == fault);
        string air = $"In air of {units.WholeTemperature(report.Question.Readings.Air_K!.Value)}";
        string need = Need(report.Model, units);
        return fault switch
        {
            CylinderFault.None => $"{air} a sound cylinder shows about {Shown(sound, units)}; {need}.",
            CylinderFault.Empty => $"{air} an empty one has no liquid, its wall is as warm as the air, and its pressure is mostly below "
                + $"{Whole(report.Model.Sure_Pa, units)} {units.PressureUnit}.",
            _ => $"{air} it should then show about {Shown(seen, units)}; {need}.",
        };
    }

    /// <summary>The pressure that feeds the furnace, by the model and by the regulator's plate.</summary>
    public static string Need(CylinderExpectation model, UnitStyle units)
        => $"the furnace needs {Whole(model.Least_Pa, units)} to {Whole(model.Sure_Pa, units)} {units.PressureUnit}";

    private static string Shown(CylinderState state, UnitStyle units)
        => $"{Whole(Math.Max(0, state.Pressure_Pa), units)} {units.PressureUnit} and a wall of {units.WholeTemperature(state.Liquid_K)} "
            + $"({UnitStyle.Number(100 * state.Fill_frac, 0)} % left)";

    // No finer than anybody reads a gauge.
    private static string Whole(double p_Pa, UnitStyle units)
        => UnitStyle.Number(units.IsUs ? units.PressureIn(p_Pa) : Math.Round(units.PressureIn(p_Pa) / 50) * 50, 0);

    private static string Test(NextTest test)
        => FormattableString.Invariant($"{DiagnosisWords.ToDoWithOption(test)} {test.Information_bit:0.00} bit.");

    private static List<string> ForAndAgainst(DiagnosisReport report, UnitStyle units)
    {
        List<string> lines = [];
        foreach (RankedCause cause in report.Causes.Take(MostCauses))
        {
            lines.AddRange(Wrap.Lines($"{DiagnosisFigures.Causes[cause.Cause].Text}, {DiagnosisFigures.OddsOf(cause)}, "
                + $"{CauseWords.Likelihood(cause.Probability_frac)}."));
            Add("for", cause.Evidence.Where(e => e.IsFor));
            Add("against", cause.Evidence.Where(e => e.IsAgainst));
        }

        return lines;

        void Add(string side, IEnumerable<Evidence> evidence)
        {
            string[] parts = [.. evidence.Select(Weighed)];
            if (parts.Length > 0)
                lines.AddRange(Wrap.Lines($"{side}: {string.Join("; ", parts)}", first: "  ", rest: "    "));
        }

        string Weighed(Evidence e)
            => FormattableString.Invariant($"{DiagnosisWords.Of(e, report.Question, units)} (×{e.Weight:0.##})");
    }
}
