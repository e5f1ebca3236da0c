using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>How the times of an unknown table are written, by trying.</summary>
/// <param name="Format">The format; null for ISO 8601.</param>
/// <param name="HasOffset">Whether they have an offset of their own.</param>
/// <param name="IsGuess">Whether months and days might be the other way round.</param>
internal sealed record TimeShape(string? Format, bool HasOffset, bool IsGuess = false)
{
    private static readonly string[] Formats =
    [
        "dd.MM.yyyy HH:mm", "dd.MM.yyyy HH:mm:ss", "d.M.yyyy H:mm", "M/d/yyyy H:mm", "M/d/yyyy H:mm:ss", "M/d/yyyy h:mm tt", "M/d/yyyy h:mm:ss tt", "d/M/yyyy H:mm", "d/M/yyyy H:mm:ss",
        "yyyy/M/d H:mm", "yyyy/M/d H:mm:ss", "yyyy-M-d H:mm", "yyyy-M-d H:mm:ss", "yyyy-MM-dd HH:mm:ss.fff", "yyyy-MM-dd'T'HH:mm:ss.fff", "yyyyMMdd HHmm", "yyyyMMddHHmm", "yyyyMMdd':'HHmm", "yyyyMMdd HH:mm",
        "yyyyMMddHH", "yyyy-MM-dd H", "M/d/yy H:mm", "M/d/yy h:mm tt", "d.M.yy H:mm", "dd-MMM-yyyy HH:mm", "d MMM yyyy H:mm",
    ];

    /// <summary>The shape that all of some times have; null where none is known.</summary>
    public static TimeShape? Of(IReadOnlyList<string> times)
    {
        if (times.Count == 0)
            return null;
        InstantText.Outcome[] iso = [.. times.Select(t => InstantText.TryRead(t, null, out _)).Distinct()];
        if (!iso.Contains(InstantText.Outcome.Unreadable))
            return new(null, iso is [InstantText.Outcome.Read]);
        if (times.All(t => t.Length is >= 9 and <= 11 && long.TryParse(t, NumberStyles.None, CultureInfo.InvariantCulture, out long seconds) && seconds < 5_000_000_000))
            return new("unix", true);
        string[] fit = [.. Formats.Where(f => times.All(t => Fits(t, f)))];
        return fit.Length == 0 ? null : new(fit[0], false, fit[0].StartsWith("M/d/yyyy", StringComparison.Ordinal) && fit.Any(f => f.StartsWith("d/M/yyyy", StringComparison.Ordinal)));
    }

    private static bool Fits(string text, string format)
        => DateTime.TryParseExact(text.Replace("24:00", "00:00", StringComparison.Ordinal), format, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out _);
}
