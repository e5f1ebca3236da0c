using System.Globalization;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The keys that say until when a cylinder may be filled.</summary>
internal static class StampedDate
{
    private const int Fewest = 1;
    private const int Most = 20;

    /// <summary>The last day on which it may be filled; null where nothing is said.</summary>
    public static DateOnly? LastDay(SectionReader section, string called)
    {
        DateOnly? by = section.Date("requalify_by");
        DateOnly? stamped = section.Date("stamped");
        int? years = section.Whole("requalify_years", Fewest, Most);
        if (section.Has("requalify_by") && section.Has("stamped"))
        {
            section.Report("stamped", "'requalify_by' already says until when it may be filled", "accepted: requalify_by, or stamped with requalify_years");
            return null;
        }
        if (section.Has("requalify_years") && !section.Has("stamped"))
            section.Report("requalify_years", "'requalify_years' without 'stamped'", "accepted: stamped, the day from which they count");
        if (stamped is not { } from)
            return by;
        if (years is null && !section.Has("requalify_years"))
        {
            string until = Requalification.LastDay(from, Requalification.Usual_years).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            section.Reading.Assume($"{called}: requalify_years not given, taken as {Requalification.Usual_years} from {from:yyyy-MM-dd}, so until {until}");
        }
        return Requalification.LastDay(from, years ?? Requalification.Usual_years);
    }
}
