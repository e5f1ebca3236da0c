using System.Globalization;
using ColdSim.Files.Weather;
using ColdSim.Planning.Verification;

namespace ColdSim.App.Text;

/// <summary>Forecasts beside observations as tables and full text.</summary>
internal static class VerificationText
{
    private static readonly CultureInfo Words = CultureInfo.InvariantCulture;

    /// <summary>What goes below the answer.</summary>
    public static IReadOnlyList<TextSection> Sections(ForecastVerificationReport report, UnitStyle units)
    {
        List<TextSection> sections = [new("Each forecast", Forecasts(report.Verification.Forecasts, units)), new("By days ahead", Leads(report.Verification.Leads, units))];
        if (report.Chance.Count > 0)
            sections.Add(new("For --members, in the scenario", ["[chance]", .. report.Chance]));
        if (report.Notes.Count > 0)
            sections.Add(new("Notes", RunText.Points(report.Notes, units)));
        return sections;
    }

    /// <summary>A row a day ahead, under a heading.</summary>
    public static IReadOnlyList<string> Leads(IReadOnlyList<LeadErrors> leads, UnitStyle units) => TextTable.Lines(
        [new(["Day ahead"], Left: true), new(["forecasts"]), new(["hours"]), new(["bias"]), new(["spread"]), new(["correlation after 6 h"])],
        [
            .. leads.Select(l => (IReadOnlyList<string>)
            [
                l.Day.ToString(Words), l.Forecasts.ToString(Words), l.Hours.ToString("#,0", Words), Signed(l.Bias_K, units), units.Difference(l.Spread_K),
                l.SixHours is { } r ? UnitStyle.Number(r, 2) : "-",
            ]),
        ],
        gap: 3);

    /// <summary>A row a forecast, under a heading.</summary>
    public static IReadOnlyList<string> Forecasts(IReadOnlyList<VerifiedForecast> forecasts, UnitStyle units) => TextTable.Lines(
        [new(["Issued"], Left: true), new(["hours"]), new(["bias"]), new(["off by"]), new(["furthest off"]), new(["at"], Left: true)],
        [
            .. forecasts.Select(f => (IReadOnlyList<string>)
            [
                ClockText.NumberedDateClock(f.Forecast.Issued), f.Hours.ToString(Words), Signed(f.Bias_K, units), units.Difference(f.Rms_K), Signed(f.Largest_K, units),
                ClockText.WeekdayDateClock(f.LargestAt),
            ]),
        ],
        gap: 2);

    private static string Signed(double kelvin, UnitStyle units)
    {
        string text = units.Difference(kelvin);
        return text.StartsWith('-') || text.StartsWith("0.0", StringComparison.Ordinal) ? text : "+" + text;
    }
}
