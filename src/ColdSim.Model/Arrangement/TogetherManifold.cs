using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;

namespace ColdSim.Model.Arrangement;

/// <summary>All cylinders open on one pressure: each gives what keeps its own pressure with the others'.</summary>
/// <remarks>
/// A cylinder's pressure changes by dp/dt = a − b ṁ, with a = p_T Q/C from the heat that comes in and b = p_T L/C + p_m from the
/// vapour that leaves (L the draw heat, C the heat capacity with the shell, p_T and p_m the slopes of pressure with temperature and
/// mass; p_m = 0 while there is liquid). One common dp/dt and Σ ṁ = flow fix every ṁ: the warmer-placed cylinder gives more, and a
/// negative ṁ is vapour that condenses. Pressures that differ at the start equalise with the stated time constant. docs/model.md,
/// "Several cylinders", derives it.
/// </remarks>
internal sealed class TogetherManifold(int count, double meetingTime_s) : IManifold
{
    // Pressures that still equalise, or a cylinder with vapour alone, have the shortest time constant of all.
    private const double MeetingStep_frac = 0.05;
    private const double Differ_frac = 1e-4;

    private readonly double[] _weight_kg_Pa = new double[count];

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
            ref readonly CylinderContents contents = ref cylinders.Contents[i];
            double slope_Pa_K = PressureSlope_Pa_K(contents, cylinders.Temperature_K[i]);
            double fall_Pa_kg = slope_Pa_K * contents.DrawHeat_J_kg / cylinders.Capacity_J_K[i] + contents.PressureByMass_Pa_kg;
            double weight_kg_Pa = 1 / fall_Pa_kg;
            _weight_kg_Pa[i] = weight_kg_Pa;
            sum_kg_Pa += weight_kg_Pa;
            pressure_kg += weight_kg_Pa * contents.Pressure_Pa;
            gas += weight_kg_Pa * cylinders.Temperature_K[i];
        }

        return new FeedPressures(pressure_kg / sum_kg_Pa, 0, gas / sum_kg_Pa);
    }

    /// <inheritdoc/>
    public void Share(in SupplyPoint point, CylinderStates cylinders)
    {
        FeedPressures feed = Feed(cylinders);
        double sum_kg_Pa = 0, heated_kg_s = 0;
        for (int i = 0; i < cylinders.Count; i++)
        {
            sum_kg_Pa += _weight_kg_Pa[i];
            heated_kg_s += _weight_kg_Pa[i] * Rise_Pa_s(cylinders, i);
        }

        double common_Pa_s = (heated_kg_s - point.Flow_kg_s) / sum_kg_Pa;
        for (int i = 0; i < cylinders.Count; i++)
        {
            double meeting_Pa_s = (feed.Service_Pa - cylinders.Contents[i].Pressure_Pa) / meetingTime_s;
            cylinders.Out_kg_s[i] = _weight_kg_Pa[i] * (Rise_Pa_s(cylinders, i) - common_Pa_s - meeting_Pa_s);
        }
    }

    /// <inheritdoc/>
    public double LongestStep_s(CylinderStates cylinders)
    {
        double pressure_Pa = Feed(cylinders).Service_Pa;
        bool differ = false, liquid = false;
        for (int i = 0; i < cylinders.Count; i++)
        {
            liquid |= cylinders.Contents[i].HasLiquid;
            differ |= !cylinders.Contents[i].HasLiquid || Math.Abs(cylinders.Contents[i].Pressure_Pa - pressure_Pa) > Differ_frac * pressure_Pa;
        }

        return !liquid ? CylinderStates.VapourStep_s : differ ? meetingTime_s * MeetingStep_frac : double.PositiveInfinity;
    }

    // Rate at which its heat gain would raise the pressure of a shut cylinder.
    private static double Rise_Pa_s(CylinderStates cylinders, int i)
        => PressureSlope_Pa_K(cylinders.Contents[i], cylinders.Temperature_K[i]) * cylinders.Heat_W[i] / cylinders.Capacity_J_K[i];

    // Clapeyron with liquid, (∂p/∂T) of the gas without: both are L ρ″/T in terms of the draw heat.
    private static double PressureSlope_Pa_K(in CylinderContents contents, double t_K)
        => contents.DrawHeat_J_kg / (contents.VapourVolume_m3_kg * t_K);
}
