namespace ColdSim.Model.Supply;

/// <summary>The least pressure before the regulator that feeds a demand in full, kept while gas and air stay near those it was found for.</summary>
/// <param name="Asked_kg_s">The demand. [kg/s]</param>
/// <param name="Delivery_Pa">Delivery pressure that it needs. [Pa gauge]</param>
/// <param name="Inlet_Pa">The least pressure. [Pa absolute]</param>
/// <param name="Gas_K">Gas temperature it was found for. [K]</param>
/// <param name="Air_Pa">Air pressure it was found for. [Pa]</param>
internal readonly record struct LeastSufficient(double Asked_kg_s, double Delivery_Pa, double Inlet_Pa, double Gas_K, double Air_Pa)
{
    /// <summary>How far the gas may drift. [K]</summary>
    public const double DriftOfGas_K = 10;

    /// <summary>How far the air's pressure may drift. [Pa]</summary>
    public const double DriftOfAir_Pa = 500;

    /// <summary>None; stands for nothing.</summary>
    public static LeastSufficient NotFound { get; } = new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);

    /// <summary>Whether it is of a demand.</summary>
    public bool IsOf(double asked_kg_s, double delivery_Pa) => Asked_kg_s == asked_kg_s && Delivery_Pa == delivery_Pa;

    /// <summary>Whether it still stands for a gas and an air.</summary>
    public bool StandsFor(double gas_K, double air_Pa)
        => Math.Abs(gas_K - Gas_K) <= DriftOfGas_K && Math.Abs(air_Pa - Air_Pa) <= DriftOfAir_Pa;
}
