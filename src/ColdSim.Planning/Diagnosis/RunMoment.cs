using ColdSim.Model;
using ColdSim.Model.Engine;

namespace ColdSim.Planning.Diagnosis;

/// <summary>What a run says of a minute and of the hours before it, as a diagnosis asks for it. SI units.</summary>
/// <param name="Minute">Sample of the run.</param>
/// <param name="Air_K">Outside air. [K]</param>
/// <param name="Lit_frac">Part of the last hours with the furnace lit; null without a furnace, and where too little of the run lies
/// before.</param>
/// <param name="Left_frac">What is left in the first cylinder, as a part of its legal filling.</param>
internal sealed record RunMoment(int Minute, double Air_K, double? Lit_frac, double Left_frac)
{
    // Less than an hour says little of a night's use.
    private const int LeastMinutes = 60;

    /// <summary>The run at a minute.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="series">The run's curves.</param>
    /// <param name="minute">Sample of the run; the nearest there is where it lies outside.</param>
    public static RunMoment At(Rig rig, RunSeries series, int minute)
    {
        int at = Math.Clamp(minute, 0, Math.Max(0, series.Count - 1));
        int from = Math.Max(0, at - (int)(DiagnosisRig.Use_s / RunSeries.Spacing_s));
        double? lit_frac = rig.Furnace is null || at - from < LeastMinutes ? null : series.Burner_frac[from..at].Average();
        return new(at, series.Outside_K[at], lit_frac, series.Cylinders[0].Propane_kg[at] / rig.Cylinders[0].LegalFill_kg);
    }

    /// <summary>The run at its coldest minute, the first of several.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="series">The run's curves.</param>
    public static RunMoment Coldest(Rig rig, RunSeries series)
    {
        int coldest = 0;
        for (int i = 1; i < series.Count; i++)
        {
            if (series.Outside_K[i] < series.Outside_K[coldest]) coldest = i;
        }

        return At(rig, series, coldest);
    }
}
