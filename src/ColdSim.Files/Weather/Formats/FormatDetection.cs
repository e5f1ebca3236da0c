namespace ColdSim.Files.Weather.Formats;

/// <summary>Detects a layout from a file's first lines, never from its name.</summary>
internal static class FormatDetection
{
    /// <summary>The layout; null for JSON of an unknown kind.</summary>
    /// <param name="bytes">The first bytes.</param>
    /// <param name="head">The first lines.</param>
    public static WeatherFormat? Detect(ReadOnlySpan<byte> bytes, IReadOnlyList<string> head)
    {
        string[] lines = [.. head.Take(12).Select(Plain)];
        string first = lines.FirstOrDefault(l => l.Length > 0) ?? "";
        string second = lines.ElementAtOrDefault(1) ?? "";
        if (first.StartsWith("location,", StringComparison.Ordinal))
            return WeatherFormat.Epw;
        if (first is ['{' or '[', ..])
            return Json(bytes);
        if (second.StartsWith("date (mm/dd/yyyy),time (hh:mm)", StringComparison.Ordinal))
            return WeatherFormat.Tmy3;
        if (first.Contains("hourlydrybulbtemp", StringComparison.Ordinal))
            return WeatherFormat.Lcd;
        if (Array.Exists(lines, l => l.StartsWith("climate identifier,", StringComparison.Ordinal)) || (first.Contains("climate id", StringComparison.Ordinal) && first.Contains("date/time", StringComparison.Ordinal)))
            return WeatherFormat.EnvironmentCanada;
        if (lines.Length > 2 && lines[2].StartsWith("year,month,day,hour", StringComparison.Ordinal) && first.Contains("time zone", StringComparison.Ordinal))
            return WeatherFormat.Nsrdb;
        if (first.StartsWith("latitude (decimal degrees)", StringComparison.Ordinal))
            return WeatherFormat.Pvgis;
        if (first.StartsWith("station,", StringComparison.Ordinal) && first.Contains(",tmp", StringComparison.Ordinal) && first.Contains(",wnd", StringComparison.Ordinal))
            return WeatherFormat.GlobalHourly;
        if (first.Contains('|', StringComparison.Ordinal) && first.StartsWith("station", StringComparison.Ordinal))
            return WeatherFormat.Ghcnh;
        if (first.Contains("utc_offset_seconds", StringComparison.Ordinal) || first.Contains("temperature_2m", StringComparison.Ordinal))
            return WeatherFormat.OpenMeteo;
        return IsMeteostat(first) ? WeatherFormat.Meteostat : WeatherFormat.Csv;
    }

    /// <summary>What a file is if it is not a weather file at all, else null.</summary>
    public static string? OtherKindOfFile(byte[] head, IReadOnlyList<string> lines)
    {
        if (head is [(byte)'P', (byte)'K', 3, 4, ..])
            return "a zip archive or a spreadsheet's own file";
        if (head is [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..])
            return "a PDF";
        string first = lines.FirstOrDefault(l => l.Trim().Length > 0)?.Trim() ?? "";
        return first.StartsWith("<!doctype", StringComparison.OrdinalIgnoreCase) || first.StartsWith("<html", StringComparison.OrdinalIgnoreCase) ? "a web page" : null;
    }

    // By names that only this answer has, and has near its beginning; the last two are of an Open-Meteo answer that refuses.
    private static WeatherFormat? Json(ReadOnlySpan<byte> head)
    {
        if (head.IndexOf("\"utc_offset_seconds\""u8) >= 0 || head.IndexOf("\"hourly_units\""u8) >= 0)
            return WeatherFormat.OpenMeteoJson;
        if (head.IndexOf("\"timeseries\""u8) >= 0)
            return WeatherFormat.MetNorway;
        if (head.IndexOf("\"periods\""u8) >= 0)
            return WeatherFormat.NwsForecast;
        return head.IndexOf("\"reason\""u8) >= 0 && head.IndexOf("\"error\""u8) >= 0 ? WeatherFormat.OpenMeteoJson : null;
    }

    private static bool IsMeteostat(string first)
    {
        string[] fields = first.Split(',');
        string[] own = ["temp", "dwpt", "rhum", "wspd", "coco", "pres", "wdir"];
        if (fields.Contains("temp") && fields.Count(own.Contains) >= 3)
            return true;
        return fields.Length == 13 && fields[0].Length == 10 && DateOnly.TryParseExact(fields[0], "yyyy-MM-dd", out _) && int.TryParse(fields[1], out int hour) && hour is >= 0 and <= 24;
    }

    // A spreadsheet may have quoted every field and changed the separator.
    private static string Plain(string line)
        => line.TrimStart('\uFEFF').Replace("\"", "", StringComparison.Ordinal).Replace(';', ',').Replace('\t', ',').Trim().ToLowerInvariant();
}
