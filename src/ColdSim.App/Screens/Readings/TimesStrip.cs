namespace ColdSim.App.Screens.Readings;

/// <summary>A difference in standard errors as a mark on a short strip, a column each.</summary>
internal static class TimesStrip
{
    private const int Most = 6;

    /// <summary>Stands over the strips.</summary>
    public const string Heading = "-6 -3 0 +3 +6";

    public static string Of(double? times)
    {
        if (times is not { } value || double.IsNaN(value))
            return "";
        char[] strip = "·············".ToCharArray();
        strip[Most] = '┊';
        int at = (int)Math.Round(Math.Clamp(value, -Most, Most));
        strip[Most + at] = value > Most + 0.5 ? '>' : value < -Most - 0.5 ? '<' : 'o';
        return new string(strip);
    }
}
