namespace ColdSim.Validation.ClosedForms;

/// <summary>How near each kind of case must be to its closed form.</summary>
internal static class KindLimits
{
    /// <summary>Of a draw: part of the whole fall, for heat capacity and latent heat that are constant in the closed form. [K/K]</summary>
    public const double Draw_K_K = 0.005;

    /// <summary>Of a cooling coach, whose closed form is exact. [K]</summary>
    public const double Cooling_K = 0.002;

    /// <summary>Of the furnace's duty: the thermostat's band is a tenth of a kelvin to each side of the set point.</summary>
    public const double Duty_frac = 0.001;

    /// <summary>Of a week's energy, from curves of a sample a minute.</summary>
    public const double Week_frac = 0.0005;
}
