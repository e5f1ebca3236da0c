using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;

namespace ColdSim.Planning.Harms;

/// <summary>What a shortage of gas is to the people while it lasts.</summary>
internal enum ShortageKind
{
    /// <summary>No flame, and no gas to light one.</summary>
    NoFlame,

    /// <summary>A flame that gets less gas than it needs.</summary>
    WeakFlame,

    /// <summary>The furnace waits in a lockout although there is gas again to light it, in the part of the step that the record says; in the rest there is no flame.</summary>
    LockedOut,
}

/// <summary>Reads the kind off a step with a shortage. The furnace decides while it calls for gas, the other appliances otherwise.</summary>
internal static class ShortageKinds
{
    public static ShortageKind Of(StepRecord record)
    {
        if (record.BurnerLit) return ShortageKind.WeakFlame;
        if (record.IsShort[0])
            return record.Furnace == FurnacePhase.Lockout && record.WouldLight_frac > 0 ? ShortageKind.LockedOut : ShortageKind.NoFlame;
        for (int i = 1; i < record.Gas_W.Length; i++)
        {
            if (record.IsShort[i] && record.Gas_W[i] > 0) return ShortageKind.WeakFlame;
        }

        return ShortageKind.NoFlame;
    }
}
