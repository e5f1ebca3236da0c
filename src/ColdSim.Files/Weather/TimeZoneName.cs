namespace ColdSim.Files.Weather;

/// <summary>Time zones by their names in the time zone database, such as America/Denver.</summary>
internal static class TimeZoneName
{
    public const string Accepted = "accepted: a name of the time zone database, such as \"America/Denver\" or \"Europe/Oslo\"";

    /// <summary>The zone; null where there is none of that name on this machine.</summary>
    public static TimeZoneInfo? Find(string name)
    {
        // A name is looked up as a file, so nothing else may be in it.
        if (name.Length is 0 or > 60 || name[0] == '/' || !name.All(c => char.IsAsciiLetterOrDigit(c) || c is '/' or '_' or '-' or '+'))
            return null;
        try
        {
            return TimeZoneInfo.FindSystemTimeZoneById(name);
        }
        catch (Exception e) when (e is TimeZoneNotFoundException or InvalidTimeZoneException or IOException or UnauthorizedAccessException or System.Security.SecurityException)
        {
            return null;
        }
    }
}
