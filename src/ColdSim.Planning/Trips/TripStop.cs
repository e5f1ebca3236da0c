using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Planning.Trips;

/// <summary>A place where the coach stands for a while, with its weather and its hookup.</summary>
public sealed record TripStop
{
    /// <summary>When the coach is there and set up.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>When it leaves.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>Where.</summary>
    public required SiteSpecification Site { get; init; }

    /// <summary>The weather there.</summary>
    public required WeatherSeries Weather { get; init; }

    /// <summary>What it is called.</summary>
    public string Name => Site.Name;
}
