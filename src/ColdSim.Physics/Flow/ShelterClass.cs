namespace ColdSim.Physics.Flow;

/// <summary>How the near surroundings break the wind; the numbers are those of the ASHRAE Handbook of Fundamentals.</summary>
public enum ShelterClass
{
    /// <summary>Class 1: nothing in the wind's way, such as a frozen lake or a desert.</summary>
    None = 1,

    /// <summary>Class 2: standing alone in ordinary country.</summary>
    Isolated = 2,

    /// <summary>Class 3: other buildings, rigs or trees across the road.</summary>
    AcrossTheRoad = 3,

    /// <summary>Class 4: things all round, more than their own height away.</summary>
    Surrounded = 4,

    /// <summary>Class 5: things right beside, closer than their own height.</summary>
    Adjacent = 5,
}
