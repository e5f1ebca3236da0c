namespace ColdSim.Planning.Trips;

/// <summary>Where a filling stops.</summary>
public enum FillLimit
{
    /// <summary>Liquid stands at 80 % of the volume, as a stop valve or an outage gauge sees it.</summary>
    Volume,

    /// <summary>A scale shows the legal weight: 42 % of the water capacity unless the plate says otherwise.</summary>
    Weight,
}

/// <summary>What ended a filling.</summary>
public enum FillingEnd
{
    /// <summary>What was asked for is in.</summary>
    Amount,

    /// <summary>Liquid stands at 80 % of the volume.</summary>
    Volume,

    /// <summary>The legal weight is reached.</summary>
    Weight,

    /// <summary>It was at its limit before.</summary>
    Full,
}
