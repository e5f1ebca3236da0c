using ColdSim.Planning.Ensemble;

namespace ColdSim.App.Commands;

/// <summary>How a chance is to be found.</summary>
/// <param name="Members">How many members.</param>
/// <param name="Seed">What their random numbers start from.</param>
/// <param name="Record">Reads the record whose years are the members instead, for what they need of it; or null.</param>
internal sealed record ChanceWish(int Members, int Seed, Func<RecordDays, CancellationToken, RecordYears>? Record);
