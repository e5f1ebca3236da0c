using ColdSim.Model.Weather;

namespace ColdSim.App.Commands;

/// <summary>How a chance is to be found.</summary>
/// <param name="Members">How many members.</param>
/// <param name="Seed">What their random numbers start from.</param>
/// <param name="Record">The record whose years are the members instead; or null.</param>
internal sealed record ChanceWish(int Members, int Seed, IReadOnlyList<WeatherRow>? Record);
