using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;

namespace ColdSim.Model.Arrangement;

/// <summary>All cylinders open on one pressure: each gives what keeps its own pressure with the others'.</summary>
/// <remarks>
/// A cylinder's pressure changes by dp/dt = a − b ṁ, with a = p_T Q/C from the heat that comes in and b = p_T L/C + p_m from the
/// vapour that leaves (L the draw heat, C the heat capacity with the shell, p_T and p_m the slopes of pressure with temperature and
/// mass; p_m = 0 while there is liquid). One common dp/dt and Σ ṁ = flow fix every ṁ: the warmer-placed cylinder gives more, and a
/// negative ṁ is vapour that condenses; for it L holds what the vapour that comes in is richer than the cylinder's own. Pressures that differ at the
/// start equalise with the stated time constant. All of it goes on without a jump of the heat and pressure that decide whether the last liquid goes,
/// or a cylinder would lose and regain it without end. docs/model.md, "Several cylinders", derives it.
/// </remarks>
internal sealed class TogetherManifold(CylinderBody[] bodies, double meetingTime_s) : IManifold
{
    // Pressures that still equalise, or a cylinder with vapour alone, have the shortest time constant of all.
    private const double MeetingStep_frac = 0.5;
    private const double Differ_frac = 1e-4;
    private const double EmptyingStep_frac = 0.2;

    // Vapour that comes in is a mixture of what the others give, which depends on it a little: it settles in two or three passes.
    private const int MostPasses = 8;
    private const double Settled_frac = 1e-12;

    private readonly double[] _weight_kg_Pa = new double[bodies.Length];

    /// <inheritdoc/>
    public int InUse(CylinderStates cylinders)
    {
        for (int i = 0; i < cylinders.Count; i++)
        {
            if (cylinders.Contents[i].HasLiquid) return i;
        }

        return 0;
    }

    /// <inheritdoc/>
    public FeedPressures Feed(CylinderStates cylinders)
    {
        double sum_kg_Pa = 0, pressure_kg = 0, gas = 0;
        for (int i = 0; i < cylinders.Count; i++)
        {
            double meeting_kg_Pa = MeetingWeight_kg_Pa(cylinders, i);
            sum_kg_Pa += meeting_kg_Pa;
            pressure_kg += meeting_kg_Pa * cylinders.Contents[i].Pressure_Pa;
            gas += meeting_kg_Pa * cylinders.Temperature_K[i];
        }

        return new FeedPressures(pressure_kg / sum_kg_Pa, 0, gas / sum_kg_Pa);
    }

    /// <inheritdoc/>
    public void Share(in SupplyPoint point, CylinderStates cylinders)
    {
        double common_Pa = Feed(cylinders).Service_Pa;
        for (int i = 0; i < cylinders.Count; i++) _weight_kg_Pa[i] = Weight_kg_Pa(cylinders.Contents[i], cylinders.Temperature_K[i], cylinders.Capacity_J_K[i], 0);
        for (int pass = 0; pass < MostPasses; pass++)
        {
            Divide(point.Flow_kg_s, common_Pa, cylinders);
            cylinders.Mix();
            if (!WeighInflows(cylinders)) return;
        }
    }

    /// <inheritdoc/>
    public double LongestStep_s(CylinderStates cylinders)
    {
        double pressure_Pa = Feed(cylinders).Service_Pa;
        bool differ = false;
        double emptying_s = double.PositiveInfinity;
        for (int i = 0; i < cylinders.Count; i++)
        {
            if (cylinders.IsGivingVapourAlone(i))
                emptying_s = Math.Min(emptying_s, bodies[i].Specification.Volume_m3 / (cylinders.Contents[i].VapourVolume_m3_kg * cylinders.Out_kg_s[i]));
            differ |= !cylinders.Contents[i].HasLiquid || Math.Abs(cylinders.Contents[i].Pressure_Pa - pressure_Pa) > Differ_frac * pressure_Pa;
        }

        return Math.Min(differ ? meetingTime_s * MeetingStep_frac : double.PositiveInfinity, EmptyingStep_frac * emptying_s);
    }

    // Every pressure changes by the same part of itself, and towards the common one. Pressures that are equal stay so, and one that is far below the others
    // is not drawn below nothing as they fall.
    private void Divide(double flow_kg_s, double common_Pa, CylinderStates cylinders)
    {
        double sum_kg = 0, free_kg_s = 0;
        for (int i = 0; i < cylinders.Count; i++)
        {
            double meeting_Pa_s = (common_Pa - cylinders.Contents[i].Pressure_Pa) / meetingTime_s;
            cylinders.Out_kg_s[i] = _weight_kg_Pa[i] * (Rise_Pa_s(cylinders, i) - meeting_Pa_s);
            sum_kg += _weight_kg_Pa[i] * cylinders.Contents[i].Pressure_Pa;
            free_kg_s += cylinders.Out_kg_s[i];
        }

        double common_1_s = (free_kg_s - flow_kg_s) / sum_kg;
        for (int i = 0; i < cylinders.Count; i++) cylinders.Out_kg_s[i] -= _weight_kg_Pa[i] * cylinders.Contents[i].Pressure_Pa * common_1_s;
    }

    // What comes in brings the enthalpy of those that give. Returns whether that changed how the flow divides.
    private bool WeighInflows(CylinderStates cylinders)
    {
        bool changed = false;
        for (int i = 0; i < cylinders.Count; i++)
        {
            ref readonly CylinderContents contents = ref cylinders.Contents[i];
            double richer_J_kg = cylinders.Out_kg_s[i] < 0 ? cylinders.ManifoldEnthalpy_J_kg - contents.VapourEnthalpy_J_kg : 0;
            double weight_kg_Pa = Weight_kg_Pa(contents, cylinders.Temperature_K[i], cylinders.Capacity_J_K[i], richer_J_kg);
            changed |= Math.Abs(weight_kg_Pa - _weight_kg_Pa[i]) > Settled_frac * weight_kg_Pa;
            _weight_kg_Pa[i] = weight_kg_Pa;
        }

        return changed;
    }

    // How much a cylinder counts in the common pressure. One without liquid counts little; it goes over to that as the whole shell does.
    private double MeetingWeight_kg_Pa(CylinderStates cylinders, int i)
    {
        ref readonly CylinderContents contents = ref cylinders.Contents[i];
        double t_K = cylinders.Temperature_K[i];
        double weight_kg_Pa = Weight_kg_Pa(contents, t_K, cylinders.Capacity_J_K[i], 0);
        if (contents.PressureByMass_Pa_kg == 0) return weight_kg_Pa;
        double dry_frac = HeatCoupling.WholeShell_frac(bodies[i], contents);
        if (dry_frac >= 1) return weight_kg_Pa;
        double volume_m3 = bodies[i].Specification.Volume_m3;
        CylinderContents.In(withLiquid: true, volume_m3 / contents.VapourVolume_m3_kg, volume_m3, t_K, out CylinderContents wet);
        double wet_kg_Pa = Weight_kg_Pa(wet, t_K, wet.HeatCapacity_J_K + bodies[i].ShellHeat_J_K, 0);
        return wet_kg_Pa + dry_frac * (weight_kg_Pa - wet_kg_Pa);
    }

    // 1/b: vapour that leaves for each pascal that the pressure falls.
    private static double Weight_kg_Pa(in CylinderContents contents, double t_K, double capacity_J_K, double richer_J_kg)
        => 1 / (PressureSlope_Pa_K(contents, t_K) * (contents.DrawHeat_J_kg + richer_J_kg) / capacity_J_K + contents.PressureByMass_Pa_kg);

    // Rate at which its heat gain would raise the pressure of a shut cylinder.
    private static double Rise_Pa_s(CylinderStates cylinders, int i)
        => PressureSlope_Pa_K(cylinders.Contents[i], cylinders.Temperature_K[i]) * cylinders.Heat_W[i] / cylinders.Capacity_J_K[i];

    // Clapeyron with liquid, (∂p/∂T) of the gas without: both are L ρ″/T in terms of the draw heat.
    private static double PressureSlope_Pa_K(in CylinderContents contents, double t_K)
        => contents.DrawHeat_J_kg / (contents.VapourVolume_m3_kg * t_K);
}
