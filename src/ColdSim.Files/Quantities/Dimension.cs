namespace ColdSim.Files.Quantities;

/// <summary>What a number measures.</summary>
public enum Dimension
{
    /// <summary>kg.</summary>
    Mass,

    /// <summary>A point on a temperature scale, K.</summary>
    Temperature,

    /// <summary>A difference of temperatures, K.</summary>
    TemperatureDifference,

    /// <summary>W.</summary>
    Power,

    /// <summary>J.</summary>
    Energy,

    /// <summary>Pa; gauge or absolute is said by the key.</summary>
    Pressure,

    /// <summary>m.</summary>
    Length,

    /// <summary>m².</summary>
    Area,

    /// <summary>m³.</summary>
    Volume,

    /// <summary>m/s.</summary>
    Speed,

    /// <summary>s.</summary>
    Duration,

    /// <summary>1.</summary>
    Ratio,

    /// <summary>kg/s.</summary>
    MassFlow,

    /// <summary>m³/s.</summary>
    VolumeFlow,

    /// <summary>W/K.</summary>
    Conductance,

    /// <summary>J/K.</summary>
    HeatCapacity,

    /// <summary>W/(m²·K).</summary>
    HeatTransferCoefficient,

    /// <summary>W/(m·K).</summary>
    Conductivity,

    /// <summary>J/(kg·K).</summary>
    SpecificHeat,

    /// <summary>J/kg.</summary>
    HeatingValue,

    /// <summary>W/m².</summary>
    Irradiance,

    /// <summary>m²·K/W, an R-value.</summary>
    ThermalInsulance,

    /// <summary>A.</summary>
    Current,

    /// <summary>C.</summary>
    Charge,

    /// <summary>V.</summary>
    Voltage,

    /// <summary>rad.</summary>
    Angle,
}

/// <summary>The names of the dimensions in messages.</summary>
internal static class DimensionNames
{
    /// <summary>Such as "mass", as in "a unit of mass".</summary>
    public static string Name(this Dimension dimension) => dimension switch
    {
        Dimension.TemperatureDifference => "temperature difference",
        Dimension.MassFlow => "mass flow",
        Dimension.VolumeFlow => "volume flow",
        Dimension.HeatCapacity => "heat capacity",
        Dimension.HeatTransferCoefficient => "heat transfer coefficient",
        Dimension.Conductance => "heat conductance",
        Dimension.Conductivity => "thermal conductivity",
        Dimension.SpecificHeat => "specific heat",
        Dimension.HeatingValue => "heating value",
        Dimension.ThermalInsulance => "thermal insulance (R-value)",
        _ => dimension.ToString().ToLowerInvariant(),
    };
}
