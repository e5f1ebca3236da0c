namespace ColdSim.Files;

/// <summary>The years in which a date may lie: wide enough for anybody, and far enough from the calendar's ends that nothing runs over them.</summary>
internal static class CalendarYears
{
    public const int First = 1000, Last = 8999;

    public const string Years = "years from 1000 to 8999";

    public const string Accepted = "accepted: " + Years;
}
