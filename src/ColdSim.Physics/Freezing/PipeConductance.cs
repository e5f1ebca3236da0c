namespace ColdSim.Physics.Freezing;

/// <summary>Heat through the insulation and the outside film of a pipe.</summary>
internal static class PipeConductance
{
    /// <summary>Per length: 2π / (ln(r₂/r₁)/k + 1/(h r₂)). [W/(m·K)]</summary>
    /// <param name="outside_m">Outside diameter of the pipe. [m]</param>
    /// <param name="insulation_m">Thickness of the insulation; 0 for none. [m]</param>
    /// <param name="conductivity_W_mK">Of the insulation. [W/(m·K)]</param>
    /// <param name="film_W_m2K">Outside it. [W/(m²·K)]</param>
    public static double PerLength_W_mK(double outside_m, double insulation_m, double conductivity_W_mK, double film_W_m2K)
    {
        double r1 = 0.5 * outside_m, r2 = r1 + insulation_m;
        double layer = insulation_m > 0 ? Math.Log(r2 / r1) / conductivity_W_mK : 0;
        return 2 * Math.PI / (layer + 1 / (film_W_m2K * r2));
    }
}
