namespace ColdSim.Planning;

/// <summary>The reading of a log that a run starts from.</summary>
/// <param name="Line">Its line in the log.</param>
/// <param name="Read">When it was made, by the run's clock.</param>
/// <param name="Left_kg">What is in all cylinders when the run starts. [kg]</param>
/// <param name="Simulated">Whether the time from the reading to a later start was simulated.</param>
/// <param name="OnTheRoad">Whether it was made on the road, so that the run starts with the next stop.</param>
public sealed record LogStart(int Line, DateTimeOffset Read, double Left_kg, bool Simulated, bool OnTheRoad)
{
    /// <summary>What each of several cylinders holds when the run starts; empty for one.</summary>
    public IReadOnlyList<StartedCylinder> Cylinders { get; init; } = [];

    /// <summary>Name of the cylinder that is in use by the readings; null where all feed together, for one, and where the readings do not say it.</summary>
    public string? InUse { get; init; }

    /// <summary>Probability that this one is in use; 0 without one.</summary>
    public double InUse_frac { get; init; }
}

/// <summary>How it is known what a cylinder holds when a run starts.</summary>
public enum StartedBy
{
    /// <summary>It was read with the latest reading of all.</summary>
    Read,

    /// <summary>Worked out from the readings, with what the simulator uses between them.</summary>
    WorkedOut,

    /// <summary>Assumed to hold what its last reading said.</summary>
    Earlier,

    /// <summary>As the scenario says.</summary>
    Scenario,
}

/// <summary>One of several cylinders when a run starts from a log.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Left_kg">What it holds. [kg]</param>
/// <param name="Uncertainty_kg">Standard uncertainty of that; 0 where it is as the scenario says. [kg]</param>
/// <param name="By">How that is known.</param>
/// <param name="Read">When it was last read, by the run's clock; null where it never was.</param>
public sealed record StartedCylinder(string Name, double Left_kg, double Uncertainty_kg, StartedBy By, DateTimeOffset? Read);
