namespace ColdSim.Planning.Sensitivity;

/// <summary>An input that is not known for certain.</summary>
public enum Uncertainty
{
    /// <summary>The forecast's temperature: its error, mean of the run.</summary>
    Temperature,

    /// <summary>The forecast's wind: the logarithm of its factor, mean of the run.</summary>
    Wind,

    /// <summary>The factor on the coach's conductances.</summary>
    HeatLoss,

    /// <summary>The factor on the leakage area.</summary>
    Infiltration,

    /// <summary>What is in the cylinders, all together.</summary>
    Contents,

    /// <summary>The set points.</summary>
    SetPoint,

    /// <summary>The openings of the door.</summary>
    DoorOpenings,
}
