namespace ColdSim.Physics.Fluids;

/// <summary>Properties of one phase of a fluid at a temperature and a density, from derivatives of the Helmholtz energy.</summary>
/// <remarks>The relations are those of any Helmholtz equation, such as table 3 of Lemmon, McLinden and Wagner (2009).</remarks>
internal readonly struct FluidState
{
    private readonly double _r, _alpha, _ad, _add, _at, _att, _adt;

    internal FluidState(
        double r_J_kgK, double t_K, double rho_kg_m3, double alpha, double ad, double add, double at, double att, double adt)
    {
        Temperature_K = t_K;
        Density_kg_m3 = rho_kg_m3;
        (_r, _alpha, _ad, _add, _at, _att, _adt) = (r_J_kgK, alpha, ad, add, at, att, adt);
    }

    private double RT => _r * Temperature_K;

    /// <summary>Temperature. [K]</summary>
    public double Temperature_K { get; }

    /// <summary>Density. [kg/m³]</summary>
    public double Density_kg_m3 { get; }

    /// <summary>Pressure. [Pa]</summary>
    public double Pressure_Pa => Density_kg_m3 * RT * (1 + _ad);

    /// <summary>Specific internal energy. [J/kg]</summary>
    public double InternalEnergy_J_kg => RT * _at;

    /// <summary>Specific enthalpy. [J/kg]</summary>
    public double Enthalpy_J_kg => RT * (1 + _at + _ad);

    /// <summary>Specific entropy. [J/(kg·K)]</summary>
    public double Entropy_J_kgK => _r * (_at - _alpha);

    /// <summary>Specific Gibbs energy. [J/kg]</summary>
    public double Gibbs_J_kg => RT * (1 + _alpha + _ad);

    /// <summary>Heat capacity at constant volume. [J/(kg·K)]</summary>
    public double Cv_J_kgK => -_r * _att;

    /// <summary>Heat capacity at constant pressure. [J/(kg·K)]</summary>
    public double Cp_J_kgK
    {
        get
        {
            double b = 1 + _ad - _adt;
            return Cv_J_kgK + _r * b * b / (1 + 2 * _ad + _add);
        }
    }

    /// <summary>Speed of sound. [m/s]</summary>
    public double SpeedOfSound_m_s
    {
        get
        {
            double b = 1 + _ad - _adt;
            return Math.Sqrt(RT * (1 + 2 * _ad + _add - b * b / _att));
        }
    }

    /// <summary>∂p/∂ρ at constant temperature. [Pa·m³/kg]</summary>
    public double PressureByDensity => RT * (1 + 2 * _ad + _add);

    /// <summary>∂p/∂T at constant density. [Pa/K]</summary>
    public double PressureByTemperature_Pa_K => _r * Density_kg_m3 * (1 + _ad - _adt);

    /// <summary>∂u/∂ρ at constant temperature, [p − T (∂p/∂T)] / ρ². [J·m³/kg²]</summary>
    public double InternalEnergyByDensity
        => (Pressure_Pa - Temperature_K * PressureByTemperature_Pa_K) / (Density_kg_m3 * Density_kg_m3);
}
