namespace ColdSim.App.Text.Pictures;

/// <summary>Leaves out the points of a curve that a straight line past them shows as well; ends, lowest and highest point stay.</summary>
internal static class Thinning
{
    /// <summary>The points that stay.</summary>
    /// <param name="points">By rising x, all finite.</param>
    /// <param name="tolerance">How far off, in y, a point that is left out may be.</param>
    /// <param name="most">How many points may stay; where that is not enough, the tolerance is doubled until it is.</param>
    public static IReadOnlyList<PicturePoint> Of(IReadOnlyList<PicturePoint> points, double tolerance, int most)
    {
        if (points.Count < 3)
            return points;
        bool[] kept = Kept(points, tolerance);
        for (; kept.Count(k => k) > Math.Max(most, 4); kept = Kept(points, tolerance))
            tolerance *= 2;
        return [.. points.Where((_, i) => kept[i])];
    }

    private static bool[] Kept(IReadOnlyList<PicturePoint> points, double tolerance)
    {
        int low = 0, high = 0;
        for (int i = 1; i < points.Count; i++)
        {
            if (points[i].Y < points[low].Y)
                low = i;
            if (points[i].Y > points[high].Y)
                high = i;
        }

        bool[] kept = new bool[points.Count];
        int[] fixedPoints = [.. new[] { 0, low, high, points.Count - 1 }.Distinct().Order()];
        foreach (int i in fixedPoints)
            kept[i] = true;
        Stack<(int From, int To)> spans = new(fixedPoints.Zip(fixedPoints.Skip(1)));
        while (spans.TryPop(out (int From, int To) span))
        {
            if (Farthest(points, span.From, span.To, tolerance) is not { } at)
                continue;
            kept[at] = true;
            spans.Push((span.From, at));
            spans.Push((at, span.To));
        }

        return kept;
    }

    // The point between two that is farthest from their line; null where none is off by more than the tolerance.
    private static int? Farthest(IReadOnlyList<PicturePoint> points, int from, int to, double tolerance)
    {
        (PicturePoint a, PicturePoint b) = (points[from], points[to]);
        double slope = b.X > a.X ? (b.Y - a.Y) / (b.X - a.X) : 0, most = tolerance;
        int? farthest = null;
        for (int i = from + 1; i < to; i++)
        {
            double off = Math.Abs(points[i].Y - a.Y - slope * (points[i].X - a.X));
            if (off > most)
                (most, farthest) = (off, i);
        }

        return farthest;
    }
}
