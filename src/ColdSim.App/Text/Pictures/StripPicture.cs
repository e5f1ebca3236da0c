using ColdSim.App.Text.Markup;

namespace ColdSim.App.Text.Pictures;

/// <summary>How a curve is drawn, so that curves differ without colour.</summary>
internal enum PictureStroke
{
    Line,

    Dashes,

    Dots,
}

/// <summary>A curve of a strip.</summary>
/// <param name="Name">Its name in the legend.</param>
/// <param name="Points">Minutes from the picture's first, and values in the person's unit; one that is not finite breaks the curve.</param>
/// <param name="Stroke">How it is drawn.</param>
internal sealed record PictureCurve(string Name, IReadOnlyList<PicturePoint> Points, PictureStroke Stroke)
{
    /// <summary>Whether it is read on the right axis.</summary>
    public bool OnRight { get; init; }

    /// <summary>Decimals of a value that is read off.</summary>
    public int Decimals { get; init; }
}

/// <summary>A hatched area between two edges.</summary>
/// <param name="Name">Its name in the legend.</param>
/// <param name="Upper">Its upper edge.</param>
/// <param name="Lower">Its lower edge at the same minutes.</param>
/// <param name="IsHarm">Whether it shows what is missing.</param>
internal sealed record PictureArea(string Name, IReadOnlyList<PicturePoint> Upper, IReadOnlyList<PicturePoint> Lower, bool IsHarm);

/// <summary>A level line with its words.</summary>
internal sealed record PictureLevel(double Value, string Words);

/// <summary>Measured values as marks: circles on the left axis, squares on the right one.</summary>
/// <param name="Name">Their name in the legend.</param>
/// <param name="Points">Minutes from the picture's first, and values in the person's unit.</param>
/// <param name="OnRight">Whether they are read on the right axis.</param>
internal sealed record PictureReadings(string Name, IReadOnlyList<PicturePoint> Points, bool OnRight);

/// <summary>A stretch of time that is marked by a bar at the foot of a strip.</summary>
internal readonly record struct PictureSpan(double From, double To);

/// <summary>One strip: curves on a left axis and perhaps a right one.</summary>
/// <param name="Name">What it shows, such as "Air".</param>
/// <param name="Axis">The left axis.</param>
/// <param name="Curves">Its curves.</param>
internal sealed record PictureStrip(string Name, ValueAxis Axis, IReadOnlyList<PictureCurve> Curves)
{
    /// <summary>The right axis; null where there is none.</summary>
    public ValueAxis? RightAxis { get; init; }

    public IReadOnlyList<PictureArea> Areas { get; init; } = [];

    public IReadOnlyList<PictureLevel> Levels { get; init; } = [];

    /// <summary>What was measured, over the curves.</summary>
    public IReadOnlyList<PictureReadings> Readings { get; init; } = [];

    /// <summary>Bars at its foot.</summary>
    public IReadOnlyList<PictureSpan> Spans { get; init; } = [];

    /// <summary>What the bars mean.</summary>
    public string SpanName { get; init; } = "";
}

/// <summary>Something that happened, marked by a letter below the strips.</summary>
/// <param name="Minute">When.</param>
/// <param name="Letter">Its letter.</param>
/// <param name="Words">What it was.</param>
/// <param name="Rank">The higher stays where two fall on one place.</param>
internal sealed record PictureMark(double Minute, char Letter, string Words, int Rank);

/// <summary>A strip chart: strips above each other over one time axis, and the events below them.</summary>
/// <param name="Name">Its file's name.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Description">The same in sentences.</param>
/// <param name="Start">The clock at minute 0.</param>
/// <param name="Minutes">How long it is.</param>
/// <param name="Strips">From top to bottom.</param>
internal sealed record StripPicture(
    string Name, string Title, string Description, DateTimeOffset Start, double Minutes, IReadOnlyList<PictureStrip> Strips) : IPicture
{
    /// <summary>From one strip's top to the next. [px]</summary>
    public const int Pitch = 124;

    /// <summary>Below the strips: the clock, and the events where there are any. [px]</summary>
    private const int Clock = 26, Events = 18;

    /// <summary>What happened.</summary>
    public IReadOnlyList<PictureMark> Marks { get; init; } = [];

    /// <summary>How many points a curve may have.</summary>
    public int MostPoints { get; init; } = 400;

    public int Height => Strips.Count * Pitch + Clock + (Marks.Count > 0 ? Events : 0);

    public void Draw(MarkupWriter to, PictureFrame frame)
    {
        int foot = Strips.Count * Pitch - StripDrawing.BelowPlot;
        TimeTicks ticks = new(Start, Minutes);
        ticks.Draw(to, frame, Strips.Select((_, i) => i * Pitch + StripDrawing.AbovePlot), foot + 16);
        for (int i = 0; i < Strips.Count; i++)
            StripDrawing.Draw(to, frame, Strips[i], i * Pitch, Minutes, MostPoints);
        if (Marks.Count > 0)
            MarkRow.Draw(to, frame, Marks, Minutes, StripDrawing.AbovePlot, foot, foot + 16 + Events);
    }
}
