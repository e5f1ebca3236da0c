using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens;

/// <summary>The minutes of a run that belong to one night: <see cref="From"/> does, <see cref="To"/> does not.</summary>
internal readonly record struct NightSpan(int From, int To)
{
    public int Length => To - From;

    public static NightSpan Of(RunReport report, int night)
    {
        NightReport told = report.Nights[night];
        int count = Math.Max(1, report.Series.Count);
        int from = Math.Clamp(MinuteAt(report, told.From), 0, count - 1);
        return new(from, Math.Clamp(MinuteAt(report, told.To), from + 1, count));
    }

    /// <summary>The sample that first shows what happened at an instant.</summary>
    public static int MinuteAt(RunReport report, DateTimeOffset time)
        => (int)Math.Ceiling((time - report.Scenario.Start).TotalMinutes - 1e-9);

    public int Clamp(int minute) => Math.Clamp(minute, From, To - 1);

    /// <summary>The column of a plot this many columns wide.</summary>
    public int Column(int minute, int columns) => (int)((long)(minute - From) * columns / Length);

    /// <summary>The middle minute of a column.</summary>
    public int MinuteOf(int column, int columns) => Clamp(From + (int)((column + 0.5) * Length / columns));
}
