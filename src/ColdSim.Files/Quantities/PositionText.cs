using System.Globalization;

namespace ColdSim.Files.Quantities;

/// <summary>A position in degrees as people write it: "46.2,-94.1" or "46.2 N, 94.1 W".</summary>
internal static class PositionText
{
    /// <summary>What is accepted.</summary>
    public const string Accepted
        = "latitude and longitude in degrees with a comma between, such as 46.2,-94.1 (north and east are positive)";

    /// <summary>Reads it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="latitude_deg">North positive. [°]</param>
    /// <param name="longitude_deg">East positive. [°]</param>
    /// <returns>What is wrong, in words; null where nothing is.</returns>
    public static string? Read(string text, out double latitude_deg, out double longitude_deg)
    {
        ArgumentNullException.ThrowIfNull(text);
        (latitude_deg, longitude_deg) = (0, 0);
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 4)
            return $"'{Quote.Of(text)}' has decimal commas; write decimals with a point: {parts[0]}.{parts[1]},{parts[2]}.{parts[3]}";
        if (parts.Length != 2 || Degrees(parts[0], 'N', 'S') is not { } latitude || Degrees(parts[1], 'E', 'W') is not { } longitude)
            return $"'{Quote.Of(text)}' is not a position; accepted: {Accepted}";
        if (Math.Abs(latitude) > 90 && Math.Abs(latitude) <= 180 && Math.Abs(longitude) <= 90)
            return $"'{Quote.Of(text)}' has no such latitude; latitude comes first, so perhaps {parts[1]},{parts[0]}";
        if (Math.Abs(latitude) > 90)
            return $"'{Quote.Of(text)}' has no such latitude; accepted: -90 to 90";
        if (Math.Abs(longitude) > 180)
            return $"'{Quote.Of(text)}' has no such longitude; accepted: -180 to 180";
        (latitude_deg, longitude_deg) = (latitude, longitude);
        return null;
    }

    private static double? Degrees(string text, char positive, char negative)
    {
        char last = char.ToUpperInvariant(text[^1]);
        bool lettered = last == positive || last == negative;
        string number = (lettered ? text[..^1] : text).Trim().TrimEnd('°').Trim().Replace('−', '-');
        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(number, plain, CultureInfo.InvariantCulture, out double degrees))
            return null;

        // A letter and a sign would say it twice.
        return lettered && number[0] is '-' or '+' ? null : last == negative ? -degrees : degrees;
    }
}
