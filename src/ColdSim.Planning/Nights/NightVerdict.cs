namespace ColdSim.Planning.Nights;

/// <summary>How a night went.</summary>
public enum Verdict
{
    /// <summary>Every appliance got the gas that it demanded.</summary>
    Holds,

    /// <summary>Demand outran supply with liquid still in the cylinder.</summary>
    RunsShort,

    /// <summary>The battery was flat before gas was short, and the appliances that need voltage stopped.</summary>
    RunsFlat,

    /// <summary>The cylinder ran out.</summary>
    RunsDry,
}

/// <summary>What ran out first in a night.</summary>
public enum FirstOut
{
    /// <summary>Neither gas nor battery ran out.</summary>
    Nothing,

    /// <summary>The cylinder could not meet the demand, with liquid still in it.</summary>
    GasSupply,

    /// <summary>The gas itself: no liquid was left.</summary>
    Gas,

    /// <summary>The battery: voltage was gone.</summary>
    Battery,
}

/// <summary>How a night went, and what ran out first in it.</summary>
internal static class NightJudgement
{
    // A shortage that begins no longer than this before the last gas is gone is the end of the gas, and not a shortage of supply.
    private const double SameTime_s = 60;

    public static (Verdict Verdict, FirstOut First) Of(NightTally t, NightCriteria criteria)
    {
        bool dry = IsDry(t), isShort = IsShort(t, criteria), flat = IsFlat(t, criteria);
        double short_s = double.IsNaN(t.FirstShort_s) ? t.From_s : t.FirstShort_s;
        (FirstOut gas, double gasOut_s) = dry && !(short_s < t.Dry_s - SameTime_s) ? (FirstOut.Gas, t.Dry_s)
            : dry || isShort ? (FirstOut.GasSupply, short_s)
            : (FirstOut.Nothing, double.PositiveInfinity);
        if (flat && t.Flat_s <= gasOut_s) return (Verdict.RunsFlat, FirstOut.Battery);
        return (dry ? Verdict.RunsDry : isShort ? Verdict.RunsShort : Verdict.Holds, gas);
    }

    /// <summary>Whether a night that is not over may still hold: nothing that fails one goes away.</summary>
    public static bool MayHold(NightTally t, NightCriteria criteria) => !IsDry(t) && !IsShort(t, criteria) && !IsFlat(t, criteria);

    private static bool IsDry(NightTally t) => !double.IsNaN(t.Dry_s);

    private static bool IsShort(NightTally t, NightCriteria criteria)
        => t.Short_s > criteria.ShortAllowance.Seconds || t.BelowSetPoint_K > criteria.BelowSetPoint.Kelvins;

    private static bool IsFlat(NightTally t, NightCriteria criteria) => t.VoltageGone_s > criteria.ShortAllowance.Seconds;
}
