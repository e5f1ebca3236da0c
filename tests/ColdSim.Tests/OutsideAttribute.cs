namespace ColdSim.Tests;

/// <summary>Marks a test that compares what the program computes with what is printed outside this project, and says where.</summary>
/// <remarks>
/// A constant of ours beside a printed one, an identity, and a range that says how far we are off are not marked: none of them could find an error.
/// Every <c>[InlineData]</c> row of a marked theory counts as one outside value, a marked fact as one.
/// <see cref="OutsideValuesTests"/> counts them: none may be derived by us.
/// </remarks>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OutsideAttribute(string source, Field field) : Attribute
{
    /// <summary>Author and year or standard, as listed in docs/sources.md; or "common practice, no source".</summary>
    public string Source { get; } = source;

    public Field Field { get; } = field;

    /// <summary>
    /// The library or program in which the value was read, where that is not the source itself; null where the source or a copy of its text was read.
    /// </summary>
    public string? Through { get; init; }

    /// <summary>True where the value was recalled and not read; such values do not count towards the forty.</summary>
    public bool FromMemory { get; init; }
}

public enum Field
{
    Propane,
    Cylinder,
    HeatTransfer,
    MoistAir,
    SunAndSky,
    Infiltration,
    Furnace,
    Coach,
    Electrical,
}
