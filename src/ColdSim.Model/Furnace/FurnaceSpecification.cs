using ColdSim.Model.Appliances;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Furnace;

/// <summary>A forced-air furnace by its plate and its ignition board. SI units, pressures gauge.</summary>
public sealed record FurnaceSpecification
{
    private static readonly double[] Input_Btu_h = [12_000, 18_000, 25_000, 30_500, 34_500, 41_000];
    private static readonly double[] Middle_A = [1.6, 2.75, 5, 7, 8, 11];

    /// <summary>Input at sea level, on gross heating value, as on the plate. [W]</summary>
    public required double Input_W { get; init; }

    /// <summary>Heat to the coach per gross heat of gas.</summary>
    public double Efficiency_frac { get; init; } = 0.77;

    /// <summary>Part of the heat in its ducts that they lose to outside, as under a floor.</summary>
    public double DuctLoss_frac { get; init; }

    /// <summary>What the fan draws at 12 V; null for what is usual for its input. [A]</summary>
    public double? FanCurrent_A { get; init; }

    /// <summary>Rule by which altitude lowers the input.</summary>
    public AltitudeRule Altitude { get; init; } = AltitudeRule.FixedOrifice;

    /// <summary>Delivery pressure from which the input is full. [Pa gauge]</summary>
    public double FullPressure_Pa { get; init; } = 10.5 * InchOfWater_Pa;

    /// <summary>Delivery pressure below which it does not ignite. [Pa gauge]</summary>
    public double IgnitionPressure_Pa { get; init; } = 8.0 * InchOfWater_Pa;

    /// <summary>Delivery pressure below which a burning flame is lost. [Pa gauge]</summary>
    public double DropOutPressure_Pa { get; init; } = 6.5 * InchOfWater_Pa;

    /// <summary>Fan before the first spark. [s]</summary>
    public double PrePurge_s { get; init; } = 17;

    /// <summary>Longest open valve without a flame. [s]</summary>
    public double TrialForIgnition_s { get; init; } = 7;

    /// <summary>Fan between tries. [s]</summary>
    public double RetryPurge_s { get; init; } = 15;

    /// <summary>Tries before lockout.</summary>
    public int Tries { get; init; } = 3;

    /// <summary>Lockout until the board tries again by itself. [s]</summary>
    public double Lockout_s { get; init; } = 3600;

    /// <summary>Fan after the flame. [s]</summary>
    public double PostPurge_s { get; init; } = 90;

    /// <summary>Current at 12 V that is usual for a furnace of an input. [A]</summary>
    /// <remarks>
    /// By classes of input, from memory of makers' plates: 12,000 BTU/h 1.2 to 2.0 A; 16,000 to 20,000 2 to 3.5; 25,000 4 to 6; 30,000 6 to 8;
    /// 35,000 7 to 9; 40,000 10 to 12. The middle of each, linear between.
    /// </remarks>
    /// <param name="input_W">Input on the plate, as gross heat. [W]</param>
    public static double UsualFanCurrent_A(double input_W)
    {
        double input_Btu_h = input_W / BtuPerHour_W;
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
