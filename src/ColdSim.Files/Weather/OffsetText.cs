namespace ColdSim.Files.Weather;

/// <summary>An offset from UTC as text.</summary>
internal static class OffsetText
{
    /// <summary>Such as "-07:00" or "+00:00".</summary>
    public static string Of(TimeSpan offset) => (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString("hh\\:mm", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>An offset written as hours, such as -6.0 or 5.75; null where it is none.</summary>
    public static TimeSpan? FromHours(double hours) => Math.Abs(hours) <= 14 ? TimeSpan.FromMinutes(Math.Round(hours * 60)) : null;
}
