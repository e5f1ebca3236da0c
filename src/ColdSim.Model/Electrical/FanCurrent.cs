namespace ColdSim.Model.Electrical;

/// <summary>What a furnace's fan draws, by the furnace's input.</summary>
/// <remarks>
/// By classes of input, from memory of makers' plates: 12,000 BTU/h 1.2 to 2.0 A; 16,000 to 20,000 2 to 3.5; 25,000 4 to 6; 30,000 6 to 8;
/// 35,000 7 to 9; 40,000 10 to 12. The middle of each, linear between.
/// </remarks>
public static class FanCurrent
{
    private static readonly double[] Input_Btu_h = [12_000, 18_000, 25_000, 30_500, 34_500, 41_000];
    private static readonly double[] Middle_A = [1.6, 2.75, 5, 7, 8, 11];

    private const double Btu_h_W = 0.29307107017222;

    /// <summary>Current at 12 V. [A]</summary>
    /// <param name="input_W">Input on the plate, as gross heat. [W]</param>
    public static double Usual_A(double input_W)
    {
        double input_Btu_h = input_W / Btu_h_W;
        if (input_Btu_h <= Input_Btu_h[0]) return Middle_A[0];
        for (int i = 1; i < Input_Btu_h.Length; i++)
        {
            if (input_Btu_h > Input_Btu_h[i]) continue;
            double x = (input_Btu_h - Input_Btu_h[i - 1]) / (Input_Btu_h[i] - Input_Btu_h[i - 1]);
            return Middle_A[i - 1] + (x * (Middle_A[i] - Middle_A[i - 1]));
        }

        return Middle_A[^1];
    }
}
