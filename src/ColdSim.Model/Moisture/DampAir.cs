using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Moisture;

/// <summary>The balance of water vapour in the coach's air, and whether it settles on the coldest surface.</summary>
/// <remarks>
/// dm/dt = sources + unvented flames − V̇(ρ − ρ_out) − h_m A (ρ − ρ_sat(T_s)) while that is positive, with the surface at
/// T_s = T − U R_si (T − T_out). Heat of condensing is left out: under 1 % of a coach's loss. docs/model.md, "Damp".
/// </remarks>
internal sealed class DampAir
{
    /// <summary>Water made by burning propane. [kg/kg]</summary>
    public const double WaterPerPropane = 1.634;

    // Of still air on a cold pane, ISO 6946's own inside film less radiation.
    private const double Convection_W_m2K = 2.5;

    private readonly MoistureSpecification _damp;
    private readonly double _surface_frac;

    // So far the tangent of a saturated density may be from the place where it was drawn.
    private const double NearTangent_K = 3;

    private double _tangentAt_K = double.NaN, _tangent_Pa, _tangent_Pa_K;

    public DampAir(MoistureSpecification damp)
    {
        ArgumentNullException.ThrowIfNull(damp);
        _damp = damp;
        _surface_frac = Math.Min(1, damp.ColdestU_W_m2K * damp.InsideFilm_m2K_W);
    }

    /// <summary>Vapour at the start. [kg]</summary>
    public double Initial_kg(double air_K) => _damp.Volume_m3 * _damp.InitialHumidity_frac * Saturated_kg_m3(air_K);

    /// <summary>The coldest surface. [K]</summary>
    public double Surface_K(double air_K, double outside_K) => air_K - _surface_frac * (air_K - outside_K);

    /// <summary>Vapour in the air against what the coldest surface leaves it; from 1 on it settles.</summary>
    public double Saturation_frac(double vapour_kg, double air_K, double outside_K)
        => vapour_kg / (_damp.Volume_m3 * Saturated_kg_m3(Surface_K(air_K, outside_K)));

    /// <summary>Rate of change of the vapour. [kg/s]</summary>
    /// <param name="vapour_kg">Vapour in the coach. [kg]</param>
    /// <param name="air_K">Inside air. [K]</param>
    /// <param name="outside_K">Outside air. [K]</param>
    /// <param name="outside_kg_m3">Vapour in outside air. [kg/m³]</param>
    /// <param name="exchange_m3_s">Air that comes in and goes out. [m³/s]</param>
    /// <param name="unvented_kg_s">Gas burnt without a flue. [kg/s]</param>
    /// <param name="pressure_Pa">Air pressure. [Pa]</param>
    public double Growth_kg_s(
        double vapour_kg, double air_K, double outside_K, double outside_kg_m3, double exchange_m3_s, double unvented_kg_s, double pressure_Pa)
    {
        double inside_kg_m3 = vapour_kg / _damp.Volume_m3;
        double surface_K = Surface_K(air_K, outside_K), over_kg_m3 = IsClearlyDry(inside_kg_m3, surface_K) ? 0 : inside_kg_m3 - Saturated_kg_m3(surface_K);
        double settles_kg_s = over_kg_m3 <= 0 ? 0
            : over_kg_m3 * _damp.ColdestArea_m2 * Frost.MassTransferCoefficient_m_s(Convection_W_m2K, DryAir.Density_kg_m3(air_K, pressure_Pa));
        return _damp.Sources_kg_s + unvented_kg_s * WaterPerPropane - exchange_m3_s * (inside_kg_m3 - outside_kg_m3) - settles_kg_s;
    }

    /// <summary>Its shortest time constant: damp leaves with the air and settles. [s]</summary>
    /// <param name="exchange_m3_s">Air that comes in and goes out. [m³/s]</param>
    /// <param name="outside_K">Outside air. [K]</param>
    /// <param name="pressure_Pa">Air pressure. [Pa]</param>
    public double TimeConstant_s(double exchange_m3_s, double outside_K, double pressure_Pa)
        => _damp.Volume_m3 / (exchange_m3_s
            + _damp.ColdestArea_m2 * Frost.MassTransferCoefficient_m_s(Convection_W_m2K, DryAir.Density_kg_m3(outside_K, pressure_Pa)));

    // Saturation pressure bends upward, so that it lies above every tangent: where the air holds less than that says, no exponential is needed.
    private bool IsClearlyDry(double inside_kg_m3, double surface_K)
    {
        bool ice = surface_K < ZeroCelsius_K;
        if (!(Math.Abs(surface_K - _tangentAt_K) < NearTangent_K) || ice != _tangentAt_K < ZeroCelsius_K)
        {
            _tangentAt_K = surface_K;
            _tangent_Pa = ice ? MagnusFormula.OverIce_Pa(surface_K) : MagnusFormula.OverWater_Pa(surface_K);
            _tangent_Pa_K = _tangent_Pa * (ice ? MagnusFormula.OverIceSlope_1_K(surface_K) : MagnusFormula.OverWaterSlope_1_K(surface_K));
        }

        return inside_kg_m3 * (Humidity.VapourGasConstant_J_kgK * surface_K) < _tangent_Pa + _tangent_Pa_K * (surface_K - _tangentAt_K);
    }

    private static double Saturated_kg_m3(double t_K)
        => Humidity.VapourDensity_kg_m3(t_K < ZeroCelsius_K ? MagnusFormula.OverIce_Pa(t_K) : MagnusFormula.OverWater_Pa(t_K), t_K);
}
