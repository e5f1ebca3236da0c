namespace ColdSim.Model.Electrical;

/// <summary>What a battery is made of.</summary>
public enum BatteryChemistry
{
    /// <summary>Lead-acid with liquid electrolyte.</summary>
    Flooded,

    /// <summary>Lead-acid with the electrolyte held in glass mat.</summary>
    Agm,

    /// <summary>Lead-acid with the electrolyte set to a gel.</summary>
    Gel,

    /// <summary>Lithium iron phosphate.</summary>
    LithiumIronPhosphate,
}
