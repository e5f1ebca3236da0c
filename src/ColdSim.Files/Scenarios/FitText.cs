using System.Globalization;
using System.Text;
using ColdSim.Files.Toml;
using ColdSim.Planning;
using ColdSim.Planning.Fits;

namespace ColdSim.Files.Scenarios;

/// <summary>A fit as the table <c>[fit]</c> of a scenario, and the scenario's text with it.</summary>
public static class FitText
{
    // How the lines of comment above the table begin.
    private const string Made = "# By coldsim fit from", Little = "# These readings say little of";

    /// <summary>The table, with a comment that names its data.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="log">The log's name.</param>
    public static string Table(FitReport fit, string log)
    {
        ArgumentNullException.ThrowIfNull(fit);
        StringBuilder text = new();
        int gross = fit.Residuals.Count(r => r.Gross);
        text.Append(CultureInfo.InvariantCulture, $"{Made} {fit.Residuals.Count} readings in {OneLine(log)}, {fit.From:yyyy-MM-dd'T'HH:mmzzz} to {fit.To:yyyy-MM-dd'T'HH:mmzzz}");
        text.Append(gross == 0 ? ".\n" : string.Create(CultureInfo.InvariantCulture, $", {gross} of them grossly off.\n"));
        FitEstimate[] untold = [.. fit.Estimates.Where(e => !e.IsIdentified)];
        if (untold.Length > 0)
            text.Append(CultureInfo.InvariantCulture, $"{Little} {string.Join(", ", untold.Select(e => Key(e.Kind)))}: that is mostly what was assumed before.\n");
        text.Append("[fit]\n");
        for (int i = 0; i < fit.Estimates.Count; i++)
        {
            FitEstimate e = fit.Estimates[i];
            double error = Math.Sqrt(fit.Factors.Covariance[i * (fit.Estimates.Count + 1)]);
            if (e.Kind == FitKind.BaseUse)
                text.Append(CultureInfo.InvariantCulture, $"base_use = \"{e.Value:0} W\"\nbase_use_error = \"{error:0} W\"\n");
            else
                text.Append(CultureInfo.InvariantCulture, $"{Key(e.Kind)} = {e.Value:0.000}\n{Key(e.Kind).Replace("_factor", "", StringComparison.Ordinal)}_error = {error:0.000}\n");
        }

        int n = fit.Estimates.Count;
        if (n > 1)
        {
            IEnumerable<string> pairs = from i in Enumerable.Range(0, n)
                                        from j in Enumerable.Range(i + 1, n - i - 1)
                                        select fit.Correlations[i * n + j].ToString("0.00", CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"correlations = [{string.Join(", ", pairs)}]\n");
        }

        return text.ToString();
    }

    /// <summary>The scenario with this fit in the place of the one it has; all else stays as written.</summary>
    /// <param name="scenario">A scenario that reads without faults.</param>
    /// <param name="table">As <see cref="Table"/> gives it.</param>
    public static string With(string scenario, string table)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return WithoutFit(scenario) + "\n\n" + table;
    }

    /// <summary>Whether two texts are one scenario, but for its fit.</summary>
    public static bool DiffersInFitOnly(string one, string other) => WithoutFit(one) == WithoutFit(other);

    private static string WithoutFit(string scenario) => TableRemoval.WithoutTable(scenario, "fit", line => line.StartsWith(Made, StringComparison.Ordinal) || line.StartsWith(Little, StringComparison.Ordinal)).TrimEnd();

    /// <summary>The key of a parameter.</summary>
    private static string Key(FitKind kind) => FitFigures.Kinds[kind].Key;

    private static string OneLine(string text) => string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
}
