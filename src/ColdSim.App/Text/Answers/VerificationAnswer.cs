using System.Globalization;
using ColdSim.Files.Weather;
using ColdSim.Planning.Verification;

namespace ColdSim.App.Text.Answers;

/// <summary>Forecasts beside observations at a glance.</summary>
internal static class VerificationAnswer
{
    private const double Little_K = 0.25;

    /// <summary>The answer.</summary>
    public static Answer Of(ForecastVerificationReport report, UnitStyle units)
    {
        ForecastVerification verified = report.Verification;
        LeadErrors first = verified.Leads[0];
        string count = verified.Forecasts.Count == 1 ? "1 FORECAST" : string.Create(CultureInfo.InvariantCulture, $"{verified.Forecasts.Count} FORECASTS");
        string verdict = $"{count}: {Bias(first.Bias_K, units)} {Ahead(first.Day)}, give or take {units.Difference(first.Spread_K)}";
        bool fitted = verified.Fitted is not null;
        IReadOnlyList<string> lines = fitted ? VerificationText.Leads(verified.Leads, units) : VerificationText.Forecasts(verified.Forecasts, units);
        return new()
        {
            Brief = OneLine.Of(verdict),
            Verdict = verdict + ".",
            Consequences =
            [
                $"The errors are forecast less observed, by {Path.GetFileName(report.Observed)}: above zero the forecast was too warm.",
                fitted ? "" : string.Create(
                    CultureInfo.InvariantCulture, $"Sizes of errors for --members take at least {ForecastVerification.LeastIssues} issue times; these are only shown."),
            ],
            ToDo = fitted ? "For --members, under [chance] of the scenario (the bias is counted in):" : "",
            Actions = fitted ? [string.Join(", ", report.Chance)] : [],
            Table = new([lines[0]], [.. lines.Skip(1).Select((line, i) => new AnswerRow(line, fitted ? -i : i))], hidden => $"{hidden.Count} more with --full."),
            AboutGuesses = report.Notes.Count == 0 ? "" : "Assumed or left out:",
            Guesses = [.. units.InOwn(report.Notes)],
            Caution = CautionLine.Estimate,
        };
    }

    private static string Bias(double bias_K, UnitStyle units)
        => Math.Abs(bias_K) < Little_K ? "right on average" : $"{units.Difference(Math.Abs(bias_K))} too {(bias_K > 0 ? "warm" : "cold")}";

    private static string Ahead(int day) => day == 1 ? "in the first 24 h" : string.Create(CultureInfo.InvariantCulture, $"on day {day} ahead");
}
