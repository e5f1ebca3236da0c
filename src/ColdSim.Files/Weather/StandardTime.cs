using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>Words for a file in local standard time that does not say which.</summary>
internal static class StandardTime
{
    /// <summary>What is accepted; by the longitude an offset is named, which is nobody's law: a zone's border may lie hours of the sun away.</summary>
    public static string Accepted(double? longitude_deg)
    {
        TimeSpan near = TimeSpan.FromHours(Math.Round((longitude_deg ?? -105) / 15));
        string hint = longitude_deg is { } known
            ? string.Create(CultureInfo.InvariantCulture, $"; at longitude {known:0.#} often {InstantText.OfOffset(near)} or an hour beside it") : "";
        return $"accepted: --offset \"{InstantText.OfOffset(near)}\", or offset under [weather], the standard time of the station's zone{hint}";
    }
}
