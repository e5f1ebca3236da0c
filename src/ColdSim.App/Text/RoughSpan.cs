using UnitsNet;

namespace ColdSim.App.Text;

/// <summary>A span as finely as it is known ahead: minutes for what is near, five minutes for hours, whole hours for most of a day.</summary>
internal static class RoughSpan
{
    private const double Near_min = 30, Hours_min = 10 * 60, Days_min = 48 * 60;

    /// <summary>Such as "5 min", "2 h 30 min", "19 h" or "3 days".</summary>
    public static string Of(Duration span)
    {
        double minutes = span.Minutes;
        return minutes < Near_min ? ClockText.Span(span)
            : minutes < Hours_min ? ClockText.Span(Duration.FromMinutes(5 * Math.Round(minutes / 5)))
            : minutes < Days_min ? $"{UnitStyle.Number(minutes / 60, 0)} h"
            : $"{UnitStyle.Number(minutes / 60 / 24, 0)} days";
    }
}
