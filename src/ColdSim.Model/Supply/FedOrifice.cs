using ColdSim.Physics.Flow;

namespace ColdSim.Model.Supply;

/// <summary>A stage of a regulator at one inlet pressure, for many outlet pressures: what depends on the inlet alone is worked out once.</summary>
internal readonly struct FedOrifice
{
    private readonly double _lockUp_Pa, _perBand, _wideOpen_kg_s, _perInlet;

    /// <summary>A stage without loss before it.</summary>
    /// <param name="lockUp_Pa">Outlet pressure at which it shuts. [Pa absolute]</param>
    /// <param name="band_Pa">From there down to wide open. [Pa]</param>
    /// <param name="area_m2">Open at this inlet. [m²]</param>
    /// <param name="inlet_Pa">Before it. [Pa absolute]</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    public FedOrifice(double lockUp_Pa, double band_Pa, double area_m2, double inlet_Pa, double gas_K)
        => (_lockUp_Pa, _perBand, _wideOpen_kg_s, _perInlet) = (lockUp_Pa, 1 / band_Pa, area_m2 * Orifice.Scale_kg_m2s(inlet_Pa, gas_K), 1 / inlet_Pa);

    /// <summary>Flow into an outlet pressure. [kg/s]</summary>
    /// <param name="outlet_Pa">Behind it. [Pa absolute]</param>
    public double Flow_kg_s(double outlet_Pa)
    {
        double opening = (_lockUp_Pa - outlet_Pa) * _perBand;
        return opening <= 0 ? 0 : Math.Min(1, opening) * _wideOpen_kg_s * Orifice.FlowFunction(outlet_Pa * _perInlet);
    }
}
