using System.Globalization;
using ColdSim.Planning;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Purchases;

namespace ColdSim.App.Text;

/// <summary>Set-ups that can be bought, as text.</summary>
internal static class PurchaseText
{
    private const int MostNights = 1200;

    /// <summary>Why nothing can be compared for a scenario, as what follows its name; null where it can be.</summary>
    public static string? Refusal(Scenario scenario)
        => scenario.Rig.Furnace is null || scenario.Rig.Coach is null
            ? "has no [furnace] or no [coach]; what is compared is what a furnace burns"
            : scenario.Trip is not null ? "has stops or refills; 'buy' stays in one place and fills up when it has to. Take them out of a "
                + "copy of the file"
            : (scenario.Weather.Last - scenario.Start).TotalDays is > MostNights and var days
                ? string.Create(CultureInfo.InvariantCulture,
                    $"has weather of {days:0} days; give a record of at most {MostNights}, such as one winter")
            : null;

    /// <summary>What follows the answer with <c>--full</c>.</summary>
    public static IReadOnlyList<TextSection> Sections(PurchaseReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections = [new("How to read the table", RunText.Points(Legend(report, units), units))];
        if (report.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(report.Scenario.Assumptions, units)));
        sections.Add(new("Cautions", RunText.Points(cautions, units)));
        return sections;
    }

    /// <summary>The set-ups as a table.</summary>
    public static IReadOnlyList<string> Table(PurchaseReport report, UnitStyle units)
        => new FigureTable(ReportTable.Purchases, units).Lines(PurchaseFigures.Rows, report.Rows);

    /// <summary>The record in a few words, such as "98 nights from 1 December, coldest -22 °F".</summary>
    public static string Record(PurchaseReport report, UnitStyle units)
    {
        string first = report.Season.Nights[0].Evening.ToString("d MMMM", CultureInfo.InvariantCulture);
        return string.Create(CultureInfo.InvariantCulture,
            $"{report.Season.Nights.Count} nights from {first}, coldest {units.WholeTemperature(report.Season.Low_K(0))}");
    }

    /// <summary>How the table is read.</summary>
    public static IReadOnlyList<string> Legend(PurchaseReport report, UnitStyle units)
    {
        string lows = string.Join(", ", report.Lows_K.Select(units.WholeTemperature));
        return
        [
            "full, 1/2, 1/4: the coldest standard night that it is fed through, so full at dusk; where rows end at one low, the furnace "
                + "may be too small there, not the gas. auto: an automatic changeover; by hand: somebody changes.",
            $"days a filling: at lows of {lows}, which nine, five and one in ten nights of the record are colder than; 0 where it is not "
                + "fed.",
            "short: nights of the record for which not even full cylinders are enough. fills: ways to the filler. swaps: from an empty "
                + "cylinder to the next.",
            "The record is run once on a store that never fails; then each set-up is filled up before a night that it would not last, 5 % "
                + "kept in reserve.",
            "Electricity for blankets is assumed to be there, on shore power. Money is for gas alone, not for what is bought.",
        ];
    }
}
