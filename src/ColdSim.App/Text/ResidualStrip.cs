namespace ColdSim.App.Text;

/// <summary>A difference in standard errors as a mark on a short strip, a column each.</summary>
internal static class ResidualStrip
{
    /// <summary>The heading over the strips.</summary>
    public const string Heading = "-6 -3 0 +3 +6";

    /// <summary>Standard errors at both ends.</summary>
    private const int Most = 6;

    /// <summary>The strip; empty where there is no difference.</summary>
    /// <param name="times">The difference in its standard errors.</param>
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
