using ColdSim.App.Text.Markup;

namespace ColdSim.App.Text.Pictures;

/// <summary>The row of letters below the strips, and a line through the strips at the gravest of them.</summary>
internal static class MarkRow
{
    // Narrower than this, in parts of the width, two letters would touch on a phone.
    private const double Apart = 0.03;

    private const int Grave = 8;

    public static void Draw(MarkupWriter to, PictureFrame frame, IReadOnlyList<PictureMark> marks, double minutes, int top, int foot, int row)
    {
        List<PictureMark> shown = [];
        foreach (PictureMark mark in marks.OrderByDescending(m => m.Rank).ThenBy(m => m.Minute))
        {
            if (shown.All(s => Math.Abs(s.Minute - mark.Minute) / minutes >= Apart))
                shown.Add(mark);
        }

        foreach (PictureMark mark in shown.OrderBy(m => m.Minute))
        {
            string x = frame.Along(mark.Minute / minutes);
            if (mark.Rank >= Grave)
                to.Start("line", "grave").With("x1", x).With("x2", x).With("y1", top).With("y2", foot).Empty();
            to.Start("text", mark.Rank >= Grave ? "mark grave" : "mark").With("x", x).With("y", row);
            to.Element("title", mark.Words).Text(mark.Letter.ToString()).End();
        }

        to.Start("text", "scale").With("x", 0).With("dx", -5).With("y", row).Text("events").End().Line();
    }
}
