using System.Runtime.CompilerServices;
using ColdSim.Model.Numerics;

namespace ColdSim.Model.Supply;

/// <summary>What is known of one demand: the least pressure before the regulator that feeds it in full, and where its pressures between the stages were last.</summary>
internal sealed class KnownDemand
{
    // A pressure found stays valid while gas and air stay this near those it was found for.
    private const double DriftOfGas_K = 10;
    private const double DriftOfAir_Pa = 500;

    private double _demand_kg_s = double.NaN, _delivery_Pa;
    private double _inlet_Pa, _gas_K = double.NaN, _air_Pa;

    /// <summary>Pressure between the stages where the demand is not met in full: from one stage of a step to the next it changes by parts of a thousand.</summary>
    public FollowedRoot Intermediate { get; } = new();

    /// <summary>Pressure behind the first stages where it is.</summary>
    public FollowedRoot FirstOutlet { get; } = new();

    /// <summary>Whether it is of a demand.</summary>
    /// <param name="demand_kg_s">Gas that the open appliances take at full delivery pressure. [kg/s]</param>
    /// <param name="delivery_Pa">That pressure. [Pa gauge]</param>
    public bool IsFor(double demand_kg_s, double delivery_Pa) => _demand_kg_s == demand_kg_s && _delivery_Pa == delivery_Pa;

    /// <summary>Begins with another demand, of which nothing is known.</summary>
    /// <param name="demand_kg_s">Gas that the open appliances take at full delivery pressure. [kg/s]</param>
    /// <param name="delivery_Pa">That pressure. [Pa gauge]</param>
    public void Begin(double demand_kg_s, double delivery_Pa)
    {
        (_demand_kg_s, _delivery_Pa, _gas_K) = (demand_kg_s, delivery_Pa, double.NaN);
        Intermediate.Forget();
        FirstOutlet.Forget();
    }

    /// <summary>The least pressure before the regulator that feeds the demand in full, with the reserve side of a changeover still shut. [Pa absolute]</summary>
    /// <param name="regulator">The regulator.</param>
    /// <param name="gas_K">Gas temperature. [K]</param>
    /// <param name="air_Pa">Air pressure. [Pa]</param>
    /// <remarks>
    /// For the warmest gas and thinnest air that it is kept for: both pass least, and near the regulator's own limit a little less of them needs very much more
    /// inlet pressure.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double SufficientInlet_Pa(TwoStageRegulator regulator, double gas_K, double air_Pa)
    {
        if (Math.Abs(gas_K - _gas_K) <= DriftOfGas_K && Math.Abs(air_Pa - _air_Pa) <= DriftOfAir_Pa) return _inlet_Pa;
        (_gas_K, _air_Pa) = (gas_K, air_Pa);
        return _inlet_Pa = regulator.SufficientAlone_Pa(_demand_kg_s, _delivery_Pa, air_Pa - DriftOfAir_Pa, gas_K + DriftOfGas_K);
    }
}
