namespace ColdSim.Planning;

/// <summary>The reading of a log that a run starts from.</summary>
/// <param name="Line">Its line in the log.</param>
/// <param name="Read">When it was made, by the run's clock.</param>
/// <param name="Left_kg">What is in all cylinders when the run starts. [kg]</param>
/// <param name="Simulated">Whether the time from the reading to a later start was simulated.</param>
/// <param name="OnTheRoad">Whether it was made on the road, so that the run starts with the next stop.</param>
public sealed record LogStart(int Line, DateTimeOffset Read, double Left_kg, bool Simulated, bool OnTheRoad);
