namespace ColdSim.Planning.Logs;

/// <summary>A time between readings in which one of several cylinders was in use, as far as the log shows it.</summary>
/// <param name="From">The reading from which on.</param>
/// <param name="To">The reading up to which.</param>
/// <param name="Cylinder">Place of the one in use, from 0; null where all were open together.</param>
/// <param name="Other">Place of another one that took over in this time, or may have given part; null where there is none.</param>
public sealed record FeedSpan(DateTimeOffset From, DateTimeOffset To, int? Cylinder, int? Other)
{
    /// <summary>A history as spans, equal neighbours as one.</summary>
    /// <param name="feeds">The history; null for one cylinder.</param>
    internal static IReadOnlyList<FeedSpan> Of(FeedHistory? feeds)
    {
        List<FeedSpan> spans = [];
        foreach (FeedGap gap in feeds?.Gaps ?? [])
        {
            FeedSpan span = new(gap.From, gap.To, feeds!.Together ? null : gap.First, gap.Other);
            if (spans.Count > 0 && spans[^1].Cylinder == span.Cylinder && spans[^1].Other is null && span.Other is null)
                spans[^1] = spans[^1] with { To = span.To };
            else
                spans.Add(span);
        }

        return spans;
    }
}
