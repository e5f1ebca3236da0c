using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>The three curves of a run that options are laid over each other by; the rest of the run is let go.</summary>
/// <param name="Order">Which option: 0 for the base.</param>
/// <param name="Inside_K">Inside air. [K]</param>
/// <param name="Liquid_K">Liquid of the cylinder in use. [K]</param>
/// <param name="Left_kg">Propane in all cylinders. [kg]</param>
internal sealed record OptionCurves(int Order, double[] Inside_K, double[] Liquid_K, double[] Left_kg)
{
    public static OptionCurves Of(int order, RunReport report)
    {
        RunSeries s = report.Series;
        return new(order, Run(s.Inside_K, s.Count), Run(s.Liquid_K, s.Count), Run(s.Propane_kg, s.Count));
    }

    /// <summary>The curves with room for a longer run.</summary>
    public OptionCurves Of(int samples)
        => samples <= Left_kg.Length ? this : new(Order, Longer(Inside_K, samples), Longer(Liquid_K, samples), Longer(Left_kg, samples));

    // Beyond an early end there is nothing, not zero.
    private static double[] Run(double[] samples, int count)
    {
        double[] run = [.. samples];
        run.AsSpan(Math.Min(count, run.Length)..).Fill(double.NaN);
        return run;
    }

    private static double[] Longer(double[] samples, int count)
    {
        double[] longer = new double[count];
        Array.Fill(longer, double.NaN);
        samples.CopyTo(longer, 0);
        return longer;
    }
}
