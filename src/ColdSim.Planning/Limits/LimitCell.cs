using ColdSim.Model.Engine;

namespace ColdSim.Planning.Limits;

/// <summary>What stands in a cell.</summary>
public enum LimitKind
{
    /// <summary>A low at which the night holds while it does not one step colder.</summary>
    Found,

    /// <summary>The coldest night of the axis holds.</summary>
    HoldsAtColdest,

    /// <summary>The warmest night of the axis does not hold.</summary>
    NotAtWarmest,
}

/// <summary>The coldest standard night through which one set-up at one fill is fed.</summary>
public sealed record LimitCell
{
    /// <summary>Part of the legal filling.</summary>
    public required double Fill_frac { get; init; }

    /// <summary>What it says.</summary>
    public required LimitKind Kind { get; init; }

    /// <summary>Steps from the axis's warmest to the limit; -1 where not even that holds.</summary>
    public required int Step { get; init; }

    /// <summary>The night's low; NaN where no night holds. [K]</summary>
    public required double Low_K { get; init; }

    /// <summary>Propane in all cylinders at dusk. [kg]</summary>
    public required double Contents_kg { get; init; }

    /// <summary>Gas used in the night of the limit; NaN where none holds. [kg]</summary>
    public double Used_kg { get; init; } = double.NaN;

    /// <summary>Electricity of the blankets in that night; NaN where none holds. [J]</summary>
    public double Blanket_J { get; init; } = double.NaN;

    /// <summary>Lowest inside air in that night; NaN where none holds. [K]</summary>
    public double InsideLow_K { get; init; } = double.NaN;

    /// <summary>Whether inside falls in that night though every appliance gets its gas: the furnace is too small, not the cylinder.</summary>
    public bool FurnaceTooSmall { get; init; }

    /// <summary>Whether at most a twentieth of the legal filling is left when gas falls short one step colder: more gas is wanted.</summary>
    public bool Emptied { get; init; }

    /// <summary>How well energy and mass close in the night of the limit; null where none holds.</summary>
    public LedgerBalance? Ledger { get; init; }
}

/// <summary>A set-up with its limit at every fill.</summary>
/// <param name="SetUp">The set-up.</param>
/// <param name="Cells">Its cells, in the order of the fills.</param>
public sealed record LimitColumn(SetUp SetUp, IReadOnlyList<LimitCell> Cells);
