namespace ColdSim.Physics.Flow;

/// <summary>How a site shelters from wind, in the five classes of the ASHRAE basic infiltration model.</summary>
public enum ShelterClass
{
    /// <summary>Class 1: nothing around, such as an open lake or desert.</summary>
    None = 1,

    /// <summary>Class 2: isolated in the country, ordinary open ground.</summary>
    Isolated = 2,

    /// <summary>Class 3: trees or other rigs across the way.</summary>
    Scattered = 3,

    /// <summary>Class 4: trees or rigs all round at some distance.</summary>
    Surrounded = 4,

    /// <summary>Class 5: walls, trees or rigs immediately beside.</summary>
    Adjacent = 5,
}
