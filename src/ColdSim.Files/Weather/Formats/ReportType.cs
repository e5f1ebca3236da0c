namespace ColdSim.Files.Weather.Formats;

/// <summary>The kinds of reports in records of a station.</summary>
internal static class ReportType
{
    /// <summary>The lower the better for an hour: FM-15 is the routine report, FM-12 the synoptic, FM-16 a special; null for sums of days and months.</summary>
    public static int? Rank(string kind) => kind switch
    {
        "FM-15" or "SAO" or "SA" or "" => 0,
        "FM-12" or "SY-MT" or "SAOSP" => 1,
        "FM-16" or "SP" => 2,
        "SOD" or "SOM" => null,
        _ => 3,
    };
}
