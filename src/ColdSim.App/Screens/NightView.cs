using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens;

/// <summary>What lies on the screen.</summary>
internal enum OpenPage
{
    Curves,
    Help,
    Events,
}

/// <summary>Everything the screen shows is a function of this.</summary>
/// <param name="Report">The run.</param>
/// <param name="Units">The units a person reads.</param>
/// <param name="AllMarks">The marked events of the run.</param>
/// <param name="Strips">The strips in these units.</param>
/// <param name="Night">Index of the night.</param>
/// <param name="Minute">The time cursor, as a sample of the run.</param>
/// <param name="Page">What lies on the screen.</param>
/// <param name="Row">The first row of the help, or the chosen row of the event list.</param>
/// <param name="Notice">An answer to the last key, gone with the next.</param>
internal sealed record NightView(
    RunReport Report,
    UnitStyle Units,
    IReadOnlyList<EventMark> AllMarks,
    IReadOnlyList<Strip> Strips,
    int Night,
    int Minute,
    OpenPage Page = OpenPage.Curves,
    int Row = 0,
    string Notice = "")
{
    public NightReport Told => Report.Nights[Night];

    public IReadOnlyList<EventMark> Marks => [.. AllMarks.Where(m => m.Night == Night)];

    public NightSpan Span => NightSpan.Of(Report, Night);

    public DateTimeOffset Time => TimeAt(Minute);

    public DateTimeOffset TimeAt(int minute) => Report.Scenario.Start.AddMinutes(minute);

    public NightView In(UnitStyle units) => this with { Units = units, Strips = NightStrips.Of(Report, units) };

    /// <summary>Opens on the first night, where it first ran short or else where it was coldest outside.</summary>
    public static NightView Open(RunReport report, UnitStyle units)
    {
        NightSpan span = NightSpan.Of(report, 0);
        int minute = report.Nights[0].FirstShort is DateTimeOffset first
            ? NightSpan.MinuteAt(report, first)
            : Enumerable.Range(span.From, span.Length).MinBy(m => report.Series.Outside_K[m]);
        return new(report, units, EventMark.AllOf(report), NightStrips.Of(report, units), 0, span.Clamp(minute));
    }
}
