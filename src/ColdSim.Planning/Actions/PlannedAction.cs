using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Actions;

/// <summary>One thing that is changed.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="Amount">How much, in the SI unit of its kind; 1 for what is done or not done.</param>
/// <param name="Less">The next smaller change, which does not hold; null where there is none.</param>
public sealed record ActionChange(ActionKind Kind, double Amount, double? Less)
{
    /// <summary>As it is now; null where that means nothing.</summary>
    public double? Now { get; init; }

    /// <summary>Name of the size, the cylinder, the appliance or the load; null without one.</summary>
    public string? Name { get; init; }

    /// <summary>Whether it is the largest change within reach.</summary>
    public bool IsFurthest { get; init; }
}

/// <summary>An action, or two together, with how the whole run goes with it.</summary>
public sealed record PlannedAction
{
    /// <summary>What is changed: one thing, or two of a pair.</summary>
    public required IReadOnlyList<ActionChange> Changes { get; init; }

    /// <summary>The scenario with it.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>Whether every night holds. The amounts are then the least with which they do, else the furthest that was tried.</summary>
    public required bool Holds { get; init; }

    /// <summary>What fails the first night that does not hold; holds where all do, and where a cylinder ends the run.</summary>
    public Verdict FailsBy { get; init; }

    /// <summary>When that begins; null where nothing fails.</summary>
    public DateTimeOffset? FailsAt { get; init; }

    /// <summary>Whether a cylinder ends the run, too full or too hot.</summary>
    public bool StoppedByCylinder { get; init; }

    /// <summary>How badly the nights go.</summary>
    public Harm Harm { get; init; } = Harm.None;

    /// <summary>Gas left at the end of the run. [kg]</summary>
    public double LeftAtEnd_kg { get; init; }

    /// <summary>The lowest inside air; infinite without a coach. [K]</summary>
    public double InsideLow_K { get; init; } = double.PositiveInfinity;

    /// <summary>Electricity that blankets take over the run. [J]</summary>
    public double Blanket_J { get; init; }

    /// <summary>Whether blankets take more than a battery that is not declared is assumed to give, and there is no hookup.</summary>
    public bool NeedsShorePower { get; init; }

    /// <summary>Whether an upright cylinder with it is too large to be carried.</summary>
    public bool IsOnGround { get; init; }

    /// <summary>Whether it needs only what is on board.</summary>
    public bool IsOnBoard => Changes.All(c => c.Kind.IsOnBoard());
}
