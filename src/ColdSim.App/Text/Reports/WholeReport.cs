using ColdSim.App.Text.Documents;

namespace ColdSim.App.Text.Reports;

/// <summary>A report of a run: the answer, the nights, the options, what else was asked for, and what it all rests on.</summary>
internal static class WholeReport
{
    public static ReportDocument Of(ReportContents contents, UnitStyle units, ReportOrigin origin, Paper paper)
    {
        List<DocumentSection> sections = [AnswerSection.Of(contents, units), NightSections.Table(contents.Run, units)];
        if (contents.Trip is { } trip)
            sections.Add(TripSection.Of(trip, units));
        sections.AddRange(NightSections.Each(contents.Run, units));
        if (contents.Measured is { Rows.Count: > 0 } measured)
            sections.Add(MeasuredSection.Of(measured, contents.Run.Scenario, units));
        if (contents.Options is { } options)
            sections.Add(OptionsSection.Of(options, units));
        if (contents.Limits is { } limits)
            sections.Add(LimitsSection.Of(limits, units));
        if (contents.Chance is { } chance)
            sections.Add(ChanceSection.Of(chance, units));
        if (contents.Purchases is { } purchases)
            sections.Add(PurchasesSection.Of(purchases, units));
        if (contents.Gauges is { } gauges)
            sections.Add(GaugesSection.Of(gauges, units));
        if (contents.NoHeat is { } noHeat)
            sections.Add(NoHeatSection.Of(noHeat, units));
        sections.AddRange(RigTables.Of(contents.Run, units));
        sections.AddRange(GroundSections.Of(contents, units));
        return new(contents.Run.Scenario.Title, sections) { Setting = RunText.Setting(contents.Run, units), Made = origin.Sentence, Paper = paper };
    }
}
