namespace ColdSim.Planning.Harms;

/// <summary>Whether a night holds and, if not, the cause that came first. <see cref="NightCriteria"/> says what each means.</summary>
public enum Verdict
{
    /// <summary>The people are warm and the water is liquid.</summary>
    Holds,

    /// <summary>The cylinders gave less gas than the appliances needed, with liquid still in them.</summary>
    GasShort,

    /// <summary>The cylinders ran out of liquid.</summary>
    GasGone,

    /// <summary>The battery was flat, and what needs its voltage stopped.</summary>
    BatteryFlat,

    /// <summary>The furnace stopped, or locked out, for another reason than gas or voltage.</summary>
    FurnaceStopped,

    /// <summary>The furnace burned without a pause, with all its gas, and inside stayed below the set point.</summary>
    FurnaceTooSmall,

    /// <summary>The water of a declared pipe or tank froze.</summary>
    WaterFreezes,
}
