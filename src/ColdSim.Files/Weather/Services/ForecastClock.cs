namespace ColdSim.Files.Weather.Services;

/// <summary>The clock on which a forecast is shown, and why it is that one.</summary>
/// <param name="Offset">Its offset from UTC; null for the service's own.</param>
/// <param name="Words">Why, in a sentence.</param>
internal sealed record ForecastClock(TimeSpan? Offset, string Words)
{
    // Legal clocks are up to about this far from the sun's; farther off, this computer is set for another place.
    private const double FarthestFromSun_h = 2.5;

    /// <summary>The clock asked for, else the service's, else this computer's where it fits the place, else the sun's to a whole hour.</summary>
    public static ForecastClock Of(IForecastService service, ForecastQuestion question, TimeProvider clock)
    {
        if (question.Offset is { } asked)
            return new(asked, $"times are by the clock asked for, UTC{InstantText.OfOffset(asked)}");
        if (!service.IsInUtc)
            return new(null, $"times are by {service.Title}'s clock for the place");
        double sun_h = question.Longitude_deg / 15;
        TimeSpan here = clock.GetLocalNow().Offset;
        bool fits = Math.Abs(here.TotalHours - sun_h) <= FarthestFromSun_h;
        TimeSpan offset = fits ? here : TimeSpan.FromHours(Math.Round(sun_h));
        return new(
            offset,
            $"{service.Title} gives times in UTC; they are put on {(fits ? "this computer's clock" : "the clock of the longitude")}, "
            + $"UTC{InstantText.OfOffset(offset)}; --offset gives another");
    }
}
