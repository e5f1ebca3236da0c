using ColdSim.Files.Disk;

namespace ColdSim.Files.Weather;

/// <summary>Writes sizes of a forecast's errors as the table <c>[chance]</c> of a scenario.</summary>
internal static class ErrorSizesToml
{
    private const string First = "# Errors of forecasts, from ";

    /// <summary>How such a file is known.</summary>
    public static OutputKind Kind => new("sizes of forecast errors", text => text.StartsWith(First, StringComparison.Ordinal));

    /// <summary>Writes it.</summary>
    /// <param name="report">With the sizes.</param>
    /// <param name="output">Receives the text; stays open.</param>
    public static void Write(ForecastVerificationReport report, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        output.Write(FormattableString.Invariant($"{First}{report.Verification.Forecasts.Count} issue times against {VisibleText.Of(Path.GetFileName(report.Observed))}.\n"));
        output.Write("# Copy this table into the scenario; coldsim run FILE --members 1000 uses it.\n[chance]\n");
        foreach (string line in report.Chance)
            output.Write(line + "\n");
    }
}
