namespace ColdSim.Planning.Harms;

/// <summary>Counts over one night what harms the people and the water, and when each cause began. SI units, times since the run's start.</summary>
internal sealed class HarmTally
{
    /// <summary>When the night begins. [s]</summary>
    public double From_s { get; init; }

    /// <summary>Undersupply of gas. [s]</summary>
    public double Short_s { get; set; }

    /// <summary>The part of it without a flame and without gas to light one. [s]</summary>
    public double NoFlame_s { get; set; }

    /// <summary>The part of it with a flame that got too little. [s]</summary>
    public double WeakFlame_s { get; set; }

    /// <summary>The part of it in which the furnace waited in a lockout although it would have lit. [s]</summary>
    public double LockedOut_s { get; set; }

    /// <summary>The first of it; NaN where there was none. [s]</summary>
    public double FirstShort_s { get; set; } = double.NaN;

    /// <summary>What was left then, per legal filling of all cylinders.</summary>
    public double LeftAtFirstShort_frac { get; set; } = double.NaN;

    /// <summary>The deepest fall below the set point for lack of gas. [K]</summary>
    public double BelowSetPoint_K { get; set; }

    /// <summary>When an appliance was first short with no liquid left; NaN where none was. [s]</summary>
    public double Dry_s { get; set; } = double.NaN;

    /// <summary>Time without voltage while something needed it. [s]</summary>
    public double VoltageGone_s { get; set; }

    /// <summary>The first of it; NaN where there was none. [s]</summary>
    public double Flat_s { get; set; } = double.NaN;

    /// <summary>Time without heat while the thermostat called. [s]</summary>
    public double NoHeat_s { get; set; }

    /// <summary>The part of it in which the furnace had stopped for another reason than gas or voltage. [s]</summary>
    public double Stopped_s { get; set; }

    /// <summary>The first of that part; NaN where there was none. [s]</summary>
    public double FirstStopped_s { get; set; } = double.NaN;

    /// <summary>When the furnace first showed that it is too small; NaN where it did not. [s]</summary>
    public double TooSmall_s { get; set; } = double.NaN;

    /// <summary>Inside below the set point beyond the thermostat's swing, summed over time. [K s]</summary>
    public double ColdKelvinSeconds { get; set; }

    /// <summary>Time with frozen water, or with inside below freezing. [s]</summary>
    public double Freezing_s { get; set; }

    /// <summary>When the water of a declared pipe or tank was first freezing; NaN where it was not. [s]</summary>
    public double WaterFreezes_s { get; set; } = double.NaN;

    /// <summary>The lowest temperature of inside and of the declared water. [K]</summary>
    public double Lowest_K { get; set; } = double.PositiveInfinity;

    /// <summary>The harm of the night.</summary>
    public Harm Harm => new(Freezing_s / 3600, Lowest_K, NoHeat_s / 3600, ColdKelvinSeconds / 3600, Short_s / 60);

    /// <summary>When the first lack of gas or voltage began that fails the night; infinite where neither does. [s]</summary>
    /// <param name="criteria">What holding means.</param>
    public double SupplyFails_s(NightCriteria criteria) => Supply(criteria).At_s;

    /// <summary>How the night went, and when the cause that names it began.</summary>
    /// <param name="criteria">What holding means.</param>
    /// <returns>The verdict, and the time of its cause; NaN where the night holds. [s]</returns>
    public (Verdict Verdict, double At_s) Judge(NightCriteria criteria)
    {
        (Verdict verdict, double at_s) = Supply(criteria);
        if (Stopped_s > criteria.ShortAllowance.Seconds && FirstStopped_s < at_s) (verdict, at_s) = (Verdict.FurnaceStopped, FirstStopped_s);
        if (TooSmall_s < at_s) (verdict, at_s) = (Verdict.FurnaceTooSmall, TooSmall_s);
        if (WaterFreezes_s < at_s) (verdict, at_s) = (Verdict.WaterFreezes, WaterFreezes_s);
        return (verdict, verdict == Verdict.Holds ? double.NaN : at_s);
    }

    private (Verdict Verdict, double At_s) Supply(NightCriteria criteria)
    {
        double allowed_s = criteria.ShortAllowance.Seconds;
        double short_s = double.IsNaN(FirstShort_s) ? From_s : FirstShort_s;
        bool gone = !double.IsNaN(Dry_s), isShort = Short_s > allowed_s || BelowSetPoint_K > criteria.BelowSetPoint.Kelvins;

        // A shortage that begins with the last of the gas is the end of the gas, and not a shortage of supply.
        bool atTheEnd = gone && (!(short_s < Dry_s - NightCriteria.SameTime_s) || LeftAtFirstShort_frac <= NightCriteria.LastOfGas.DecimalFractions);
        (Verdict verdict, double at_s) = atTheEnd ? (Verdict.GasGone, Math.Min(short_s, Dry_s))
            : gone || isShort ? (Verdict.GasShort, short_s)
            : (Verdict.Holds, double.PositiveInfinity);
        return VoltageGone_s > allowed_s && Flat_s <= at_s ? (Verdict.BatteryFlat, Flat_s) : (verdict, at_s);
    }
}
