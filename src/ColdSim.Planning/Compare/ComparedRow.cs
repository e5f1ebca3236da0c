using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Planning.Compare;

/// <summary>How one option went.</summary>
public sealed record ComparedRow
{
    /// <summary>What was run.</summary>
    public required ComparedOption Option { get; init; }

    /// <summary>0 for the base, then as in the file.</summary>
    public required int Order { get; init; }

    /// <summary>The whole run.</summary>
    public required RunSummary Summary { get; init; }

    /// <summary>How well energy and mass close.</summary>
    public required LedgerBalance Ledger { get; init; }

    /// <summary>Why the run ended.</summary>
    public required RunEnd End { get; init; }

    /// <summary>What it costs, refills and gas used from what was there; null where nothing has a price.</summary>
    public double? Cost { get; init; }

    /// <summary>
    /// Of a mixed gas, the liquid in all cylinders that would stay unburnt at the last night's coldest air; null for propane alone and where the
    /// regulator never passes what all appliances ask together.
    /// </summary>
    public Mass? LeftBehind { get; init; }

    /// <summary>1 for the best; options that the rule cannot tell apart have the same.</summary>
    public int Rank { get; init; }

    /// <summary>Whether the cylinder itself ended the run, too full of liquid or too hot.</summary>
    public bool StoppedByCylinder => End is RunEnd.LiquidFull or RunEnd.ReliefPressure;

    /// <summary>Whether all nights hold.</summary>
    public bool Holds => Summary.Verdict == Verdict.Holds && !StoppedByCylinder;
}
