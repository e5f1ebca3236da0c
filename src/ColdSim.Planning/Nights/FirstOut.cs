namespace ColdSim.Planning.Nights;

/// <summary>What ran out first in a night.</summary>
public enum FirstOut
{
    /// <summary>Nothing did.</summary>
    Nothing,

    /// <summary>The cylinder could not give what was asked, with liquid still in it.</summary>
    GasSupply,

    /// <summary>The gas itself: no liquid was left.</summary>
    Gas,

    /// <summary>The battery: voltage was gone.</summary>
    Battery,
}
