using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Explain;

/// <summary>What somebody could have done before dark.</summary>
public enum RemedyKind
{
    /// <summary>A blanket on every cylinder; its power. [W]</summary>
    Blanket,

    /// <summary>Every cylinder at least so full at the start; part of the legal filling.</summary>
    Fill,

    /// <summary>Propane alone in place of a mixed gas, the same mass of it, up to the legal filling.</summary>
    PurePropane,

    /// <summary>Another standard size in every place; its place among <see cref="Remedies.SizesFor"/> counted from 1.</summary>
    Size,

    /// <summary>A second cylinder of the same kind, both open.</summary>
    SecondOpen,

    /// <summary>A second cylinder of the same kind on an automatic changeover.</summary>
    SecondChangeover,

    /// <summary>The night's set point. [K]</summary>
    NightSetPoint,

    /// <summary>The largest other appliance shut.</summary>
    ApplianceOff,

    /// <summary>The regulator's rated flow. [W]</summary>
    Regulator,

    /// <summary>The bank's rated charge. [J]</summary>
    Battery,

    /// <summary>The panels swept of snow.</summary>
    PanelsClear,

    /// <summary>Panels beside those there are, clear of snow; their rated power. [W]</summary>
    MorePanels,

    /// <summary>A named load of the 12 V side shut off.</summary>
    LoadOff,

    /// <summary>A place with a hookup.</summary>
    ShorePower,

    /// <summary>A generator on the same cylinders; its rated power. [W]</summary>
    Generator,
}

/// <summary>One remedy, found by running.</summary>
/// <param name="Kind">The kind of remedy.</param>
/// <param name="Value">The least change that holds, SI; null where nothing within reach holds. 1 for what is done or not done.</param>
/// <param name="Tolerance">A step of this less does not hold.</param>
/// <param name="Reach">The furthest value tried.</param>
public sealed record Remedy(RemedyKind Kind, double? Value, double Tolerance, double Reach)
{
    /// <summary>The scenario with the least change that holds; null where none does.</summary>
    public Scenario? Scenario { get; init; }

    /// <summary>Name of the size, of the appliance or of the load, or null.</summary>
    public string? Name { get; init; }

    /// <summary>Of a remedy that does not hold: what fails with the furthest value tried; holds where that was not found.</summary>
    public Verdict FailsBy { get; init; }

    /// <summary>When that begins; null where it was not found.</summary>
    public DateTimeOffset? FailsAt { get; init; }

    /// <summary>How badly the nights go then.</summary>
    public Harm Harm { get; init; } = Harm.None;

    /// <summary>Whether the scenario's whole run holds with it, not only to the night explained.</summary>
    public bool HoldsAllNights { get; init; }

    /// <summary>Whether an upright cylinder with it is too large to be carried.</summary>
    public bool IsOnGround { get; init; }

    /// <summary>Propane in all cylinders at the start with it. [kg]</summary>
    public double Contents_kg { get; init; }

    /// <summary>Electricity that blankets take to the end of the night explained. [J]</summary>
    public double Electricity_J { get; init; }
}

/// <summary>A remedy before it is tried: its range and what a value makes of the scenario.</summary>
/// <param name="Kind">The kind of remedy.</param>
/// <param name="From">As it is.</param>
/// <param name="To">The end of reach.</param>
/// <param name="Tolerance">The step in which the least value is sought.</param>
/// <param name="Build">The scenario with a value.</param>
internal sealed record RemedyRange(RemedyKind Kind, double From, double To, double Tolerance, Func<Scenario, double, Scenario> Build)
{
    /// <summary>What a value is called, or null.</summary>
    public Func<double, string>? Name { get; init; }
}
