using System.Globalization;
using ColdSim.Files;
using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>A titled part of what is printed.</summary>
internal sealed record TextSection(string Title, IReadOnlyList<string> Lines);

/// <summary>A whole run as text: the answer first, then the nights, the events and what it rests on.</summary>
internal static class RunText
{
    public static IReadOnlyList<TextSection> Sections(RunReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections =
        [
            .. NextHour.Of(report) is { } hour ? [NextHourText.Section(hour, units)] : Array.Empty<TextSection>(),
            new(report.Scenario.Title, [.. Wrap.Lines(Setting(report, units)), "", .. Stops(report, units), .. Sentences(report, units), .. Follows(report, units)]),
            new("Night by night", Nights(report, units)),
            .. HasEachCylinder(report.Scenario.Rig) ? [new TextSection("Each cylinder", EachCylinder(report, units))] : Array.Empty<TextSection>(),
            .. RigSections.Of(report, units),
            new("Events", EventList.Lines(report, units)),
            new("Ledger", [Ledger(report.Ledger)]),
        ];
        if (report.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", Points(report.Scenario.Assumptions, units)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", Points([.. Cautions.Of(report), .. cautions], units)));
        return sections;
    }

    public static void Write(TextWriter to, IEnumerable<TextSection> sections, bool bold)
    {
        bool first = true;
        foreach (TextSection section in sections)
        {
            if (!first)
                to.WriteLine();
            first = false;
            string title = VisibleText.Of(section.Title);
            to.WriteLine(bold ? $"\e[1m{title}\e[0m" : title);
            foreach (string line in section.Lines)
                to.WriteLine(VisibleText.Of(line));
        }
    }

    /// <summary>Texts as points of a list.</summary>
    /// <param name="texts">The texts.</param>
    /// <param name="units">The reader's units, for texts that name quantities in fixed ones; null where they do not.</param>
    public static IReadOnlyList<string> Points(IEnumerable<string> texts, UnitStyle? units = null)
        => [.. (units?.InOwn(texts) ?? texts).SelectMany(t => Wrap.Lines(t, first: "- ", rest: "  "))];

    /// <summary>How well the ledger closes, in one line.</summary>
    public static string Ledger(LedgerBalance ledger)
        => $"Energy closes to {Part(ledger.WorstEnergy_frac)}, mass to {Part(Math.Abs(ledger.Mass_frac))} of throughput.";

    public static string Part(double part) => part == 0 ? "0" : part.ToString("0e0", CultureInfo.InvariantCulture);

    private static IReadOnlyList<string> Nights(RunReport report, UnitStyle units)
        => new FigureTable(ReportTable.Nights, units) { Context = FigureContext.Of(report.Scenario) }.Lines(NightFigures.All, report.Nights);

    // One cylinder without a blanket has nothing to add to the table of the nights.
    internal static bool HasEachCylinder(Rig rig) => rig.Cylinders.Count > 1 || rig.Cylinders.Any(c => c.Blanket is not null);

    private static IReadOnlyList<string> EachCylinder(RunReport report, UnitStyle units)
    {
        FigureTable table = new(ReportTable.EachCylinder, units) { Context = FigureContext.Of(report.Scenario), NameLines = name => name.Split(' ', 2) };
        return [.. table.Lines(NightFigures.All, report.Nights), .. Wrap.Lines($"Left at {table.Context.Dawn}, or at the end of what was run.")];
    }

    private static IEnumerable<string> Stops(RunReport report, UnitStyle units)
        => report.CoolDown is { } stop ? Wrap.Lines(FreezeSentence.After(stop, units), rest: "  ") : [];

    private static IEnumerable<string> Follows(RunReport report, UnitStyle units)
        => AfterFailure.Of(report) is { } failure ? ["", .. Wrap.Lines(FreezeSentence.From(failure, units), rest: "  ")] : [];

    /// <summary>What was run, a sentence.</summary>
    public static string Setting(RunReport report, UnitStyle units)
    {
        Scenario scenario = report.Scenario;
        string nights = report.Nights.Count == 1 ? "1 night" : $"{report.Nights.Count} nights";
        return $"{nights} from {ClockText.Start(scenario.Start)}; {CylinderWords.All(scenario.Rig)} with "
            + $"{units.Mass(report.Summary.LeftAtStart.Kilograms)} of {scenario.Rig.Gas.Name}.";
    }

    private static IEnumerable<string> Sentences(RunReport report, UnitStyle units)
    {
        IEnumerable<string> sentences = report.Nights.Select(n => NightSentence.Of(n, report, units));
        if (NightSentence.Hot(report, units) is { } hot)
            sentences = sentences.Prepend(hot);
        if (NightSentence.WhyItEnds(report) is { } end)
            sentences = sentences.Append(end);
        return sentences.SelectMany(s => Wrap.Lines(s, rest: "  "));
    }
}
