using System.Globalization;

namespace ColdSim.Files.Weather.Services;

/// <summary>What is asked of a service.</summary>
internal sealed record ForecastQuestion
{
    /// <summary>North positive. [°]</summary>
    public required double Latitude_deg { get; init; }

    /// <summary>East positive. [°]</summary>
    public required double Longitude_deg { get; init; }

    /// <summary>How many days ahead, from now.</summary>
    public required int Days { get; init; }

    /// <summary>How many days before today.</summary>
    public int PastDays { get; init; }

    /// <summary>The address to ask instead of the service's own; null for its own.</summary>
    public Uri? Address { get; init; }

    /// <summary>The clock to show; null takes the service's, or one that fits the position.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>The latitude as it is sent.</summary>
    public string Latitude => Sent(Latitude_deg);

    /// <summary>The longitude as it is sent.</summary>
    public string Longitude => Sent(Longitude_deg);

    /// <summary>The position as it is sent, such as "46.2, -94.1".</summary>
    public string Position => $"{Latitude}, {Longitude}";

    // Two of the services refuse or redirect a position with more than four decimals, or with zeros at its end; four are eleven metres.
    private static string Sent(double degrees)
        => Math.Round(degrees, 4) is var rounded && rounded == 0 ? "0" : rounded.ToString("0.####", CultureInfo.InvariantCulture);
}
