namespace ColdSim.Planning.Diagnosis;

/// <summary>What is seen or heard and has one of a few states.</summary>
public enum Sign
{
    /// <summary>How the stove burns.</summary>
    Stove,

    /// <summary>How the furnace's fan runs.</summary>
    Fan,

    /// <summary>How far the furnace gets.</summary>
    Furnace,

    /// <summary>Voltage at the board while the fan runs.</summary>
    Volts,

    /// <summary>Ice on the regulator.</summary>
    Regulator,

    /// <summary>Whether the valve was opened fast.</summary>
    OpenedFast,

    /// <summary>Whether the cylinder was swapped.</summary>
    Swapped,

    /// <summary>Whether it was filled within a day or two.</summary>
    Filled,

    /// <summary>Snow or ice at the furnace's vents.</summary>
    Vents,

    /// <summary>The return and the ducts.</summary>
    Return,

    /// <summary>Whether it fails by itself or beside other burners only.</summary>
    Load,

    /// <summary>Whether it goes better in the warmth of the day.</summary>
    ByDay,

    /// <summary>Whether it helped to shut everything, wait, and open slowly.</summary>
    Reopened,

    /// <summary>Whether it helped to switch the furnace off and on.</summary>
    Reset,

    /// <summary>What gas it is.</summary>
    Gas,

    /// <summary>Height above sea level.</summary>
    Elevation,
}

/// <summary>What is read of a cylinder and judged by the model.</summary>
public enum Reading
{
    /// <summary>What is left, weighed or by a gauge.</summary>
    Left,

    /// <summary>Gauge pressure at the cylinder.</summary>
    Pressure,

    /// <summary>The wall below the liquid's line, against the air.</summary>
    Wall,

    /// <summary>The line of frost, and its height.</summary>
    FrostLine,
}
