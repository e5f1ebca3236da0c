namespace ColdSim.Physics.Flow;

/// <summary>Roughness of the country for half a kilometre or more upwind, as in the ASHRAE Handbook of Fundamentals.</summary>
public enum Terrain
{
    /// <summary>Category 4: open water or ice for 5 km, or flat shore.</summary>
    OpenWater,

    /// <summary>Category 3: open country with scattered low obstacles; where weather stations stand.</summary>
    Open,

    /// <summary>Category 2: woods, suburbs, many obstacles the size of houses.</summary>
    Wooded,

    /// <summary>Category 1: a large town's centre.</summary>
    City,
}
