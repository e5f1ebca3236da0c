using System.Globalization;
using ColdSim.Planning.Verification;

namespace ColdSim.Files.Weather;

/// <summary>The answer of <c>coldsim weather FOLDER --against OBSERVED</c>: forecasts beside what was observed.</summary>
public sealed record ForecastVerificationReport
{
    /// <summary>The folder of the forecasts as it was named.</summary>
    public required string Folder { get; init; }

    /// <summary>The file of the observations as it was named.</summary>
    public required string Observed { get; init; }

    /// <summary>How far off the forecasts were.</summary>
    public required ForecastVerification Verification { get; init; }

    /// <summary>What was left out or assumed.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The errors as <c>[chance]</c> of a scenario has them, a line each; empty where there are too few forecasts.</summary>
    public IReadOnlyList<string> Chance => Verification.Fitted is not { } fitted ? [] :
    [
        Line($"temperature_error = \"{fitted.Temperature_K:0.0#} K\""),
        Line($"temperature_growth = \"{fitted.TemperatureGrowth_K:0.0#} K\""),
        Line($"correlation_time = \"{fitted.CorrelationTime_h:0.#} h\""),
        .. fitted.WindLog is { } wind ? new[] { Line($"wind_error = {wind:0.0#}") } : [],
    ];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
