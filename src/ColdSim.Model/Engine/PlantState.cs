namespace ColdSim.Model.Engine;

/// <summary>The continuous state of rig and coach. SI units.</summary>
/// <param name="Propane_kg">Propane in the cylinder. [kg]</param>
/// <param name="Cylinder_K">Liquid and shell. [K]</param>
/// <param name="Air_K">Inside air; NaN without a coach. [K]</param>
/// <param name="Furnishings_K">Furnishings; equal to the air without a slow node. [K]</param>
/// <param name="Sensor_K">The thermostat's sensor; NaN without a thermostat. [K]</param>
internal readonly record struct PlantState(
    double Propane_kg, double Cylinder_K, double Air_K, double Furnishings_K, double Sensor_K);

/// <summary>What flows, as rates [W, kg/s] at an instant or as amounts [J, kg] over a step.</summary>
internal readonly record struct Fluxes(
    double Drawn_kg,
    double CylinderHeat_J,
    double VapourEnthalpy_J,
    double Burnt_kg,
    double Unburnt_kg,
    double Useful_J,
    double Flue_J,
    double Gains_J,
    double Loss_J,
    double Ground_J);

/// <summary>One flux by name.</summary>
internal enum FluxKind
{
    /// <summary>None of them.</summary>
    None,

    /// <summary>Vapour drawn from the cylinder.</summary>
    Drawn,

    /// <summary>Heat into the cylinder.</summary>
    CylinderHeat,

    /// <summary>Enthalpy leaving with the vapour.</summary>
    VapourEnthalpy,

    /// <summary>Gas burnt.</summary>
    Burnt,

    /// <summary>Burners' heat into the coach.</summary>
    Useful,

    /// <summary>Burners' heat up the flue.</summary>
    Flue,

    /// <summary>Sun, people and things.</summary>
    Gains,

    /// <summary>Heat to outside air.</summary>
    Loss,

    /// <summary>Heat to the ground.</summary>
    Ground,
}
