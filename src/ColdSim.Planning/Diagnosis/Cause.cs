namespace ColdSim.Planning.Diagnosis;

/// <summary>Why a furnace gives no heat, or too little.</summary>
public enum Cause
{
    /// <summary>The liquid is too cold to boil as fast as the furnace burns.</summary>
    TooCold,

    /// <summary>No liquid is left.</summary>
    Empty,

    /// <summary>The propane of a mixture has gone first; butane is left, which hardly boils in the cold.</summary>
    ButaneLeft,

    /// <summary>More liquid than the legal filling: liquid reaches the regulator.</summary>
    Overfilled,

    /// <summary>The excess-flow device of the valve or the hose has tripped.</summary>
    ExcessFlow,

    /// <summary>Water of the gas has frozen in the regulator.</summary>
    RegulatorIce,

    /// <summary>The regulator passes less than all burners together take.</summary>
    RegulatorTooSmall,

    /// <summary>Air in the line after a change of cylinder.</summary>
    AirInLine,

    /// <summary>Too little voltage at the board.</summary>
    LowVoltage,

    /// <summary>The sail switch does not close, or the return or the ducts are blocked.</summary>
    Airflow,

    /// <summary>The furnace's intake or vent is blocked.</summary>
    BlockedVent,

    /// <summary>It waits in a lockout after failed tries.</summary>
    Lockout,

    /// <summary>Thin air: a burner set for low ground gives less.</summary>
    Altitude,

    /// <summary>None of these.</summary>
    Other,
}
