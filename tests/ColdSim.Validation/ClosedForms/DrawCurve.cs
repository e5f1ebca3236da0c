using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;

namespace ColdSim.Validation.ClosedForms;

/// <summary>Liquid temperature while vapour is drawn evenly from a vessel with a fixed conductance to air, as a closed form.</summary>
/// <remarks>
/// With K = G + ṁ L′, T∞ where G (T_air − T∞) = ṁ L(T∞), and a heat capacity that falls in a straight line with the mass, C = C₀ − κ ṁ t, the
/// balance C dT/dt = G (T_air − T) − ṁ L is solved by T = T∞ + (T₀ − T∞)(C/C₀)^(K/κṁ). Heat capacity and L′ are those half-way between
/// T₀ and T∞: what is left is their change over the curve.
/// </remarks>
internal sealed class DrawCurve
{
    private readonly double _start_K, _end_K, _draw_kg_s, _conductance_W_K, _capacity_J_K, _perMass_J_kgK;

    public DrawCurve(CylinderSpecification cylinder, double air_K, double draw_kg_s)
    {
        double heat_W_K = cylinder.Surroundings.FixedConductance_W_K!.Value;
        _start_K = air_K;
        _draw_kg_s = draw_kg_s;
        _end_K = Steady(air_K, heat_W_K, draw_kg_s);
        double middle_K = (_start_K + _end_K) / 2;
        double slope_J_kgK = (DrawHeat(middle_K + 0.5) - DrawHeat(middle_K - 0.5)) / 1;
        _conductance_W_K = heat_W_K + draw_kg_s * slope_J_kgK;
        double Contents(double mass_kg) => new TwoPhaseContents(mass_kg, cylinder.Volume_m3, middle_K).HeatCapacity_J_K;
        _perMass_J_kgK = Contents(cylinder.Contents_kg) - Contents(cylinder.Contents_kg - 1);
        _capacity_J_K = Contents(cylinder.Contents_kg) + cylinder.MetalMass_kg * cylinder.MetalHeat_J_kgK;
    }

    /// <summary>How much colder than at the start the liquid would become in the end. [K]</summary>
    public double Fall_K => _start_K - _end_K;

    /// <summary>Liquid temperature after a time. [K]</summary>
    public double At_K(double seconds)
    {
        double part = 1 - _perMass_J_kgK * _draw_kg_s * seconds / _capacity_J_K;
        return _end_K + (_start_K - _end_K) * Math.Pow(part, _conductance_W_K / (_perMass_J_kgK * _draw_kg_s));
    }

    private static double DrawHeat(double t_K) => SaturationTable.At(t_K).DrawHeat_J_kg;

    private static double Steady(double air_K, double heat_W_K, double draw_kg_s)
    {
        double t_K = air_K;
        for (int i = 0; i < 50; i++) t_K = air_K - draw_kg_s * DrawHeat(t_K) / heat_W_K;
        return t_K;
    }
}
