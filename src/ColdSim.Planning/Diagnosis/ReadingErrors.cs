using ColdSim.Physics.Units;

namespace ColdSim.Planning.Diagnosis;

/// <summary>How far readings and the model may be off: standard uncertainties, and the probabilities that follow. Assumed.</summary>
internal static class ReadingErrors
{
    /// <summary>Of the liquid's temperature as the model has it. [K]</summary>
    public const double Liquid_K = 4;

    /// <summary>Of the temperature below which the furnace fails. [K]</summary>
    public const double Need_K = 5;

    /// <summary>Of what is left, as a part of the legal filling.</summary>
    public const double Left_frac = 0.04;

    private const double Gauge_Pa = 2 * ConversionFactors.Psi_Pa;
    private const double Thermometer_K = 3;
    private const double Feel_K = 3;
    private const double Line_m = 1.5 * ConversionFactors.Inch_m;
    private const double StaleLine_frac = 0.15;
    private const double MostPressure_Pa = 150 * ConversionFactors.Psi_Pa;
    private const double TemperatureSpan_K = 80;
    private const double LeftSpan_frac = 1.3;
    private static readonly double[] FeelEdges_K = [3, 10];

    /// <summary>Density of what is left being read, by the fill. [1]</summary>
    public static double OfLeft(double read_frac, double fill_frac) => Misread(Normal(read_frac, fill_frac, Left_frac), 1 / LeftSpan_frac);

    /// <summary>Density of a pressure. [1/Pa]</summary>
    public static double OfPressure(double read_Pa, CylinderState state, double needed_Pa, double air_Pa, double full_Pa)
    {
        if (state.Fault == CylinderFault.Empty)
        {
            // The furnace burns the last vapour down until it fails.
            bool low = read_Pa <= needed_Pa;
            double density = read_Pa < 0 || read_Pa > full_Pa ? 0 : low ? 0.8 / needed_Pa : 0.2 / Math.Max(1, full_Pa - needed_Pa);
            return Misread(density, 1 / MostPressure_Pa);
        }

        // The pressure of a liquid changes by about 3.5 % of the absolute pressure with each kelvin.
        double error_Pa = Math.Sqrt(Gauge_Pa * Gauge_Pa + Math.Pow(0.035 * (state.Pressure_Pa + air_Pa) * Liquid_K, 2));
        return Misread(Normal(read_Pa, state.Pressure_Pa, error_Pa), 1 / MostPressure_Pa);
    }

    /// <summary>Density of a wall's temperature. [1/K]</summary>
    public static double OfWall(double read_K, CylinderState state) => Misread(
        Normal(read_K, state.Liquid_K, Math.Sqrt(Thermometer_K * Thermometer_K + Liquid_K * Liquid_K)), 1 / TemperatureSpan_K);

    /// <summary>Probability that a wall feels so.</summary>
    public static double OfFeel(WallFeel feel, CylinderState state, double air_K)
    {
        double colder_K = air_K - state.Liquid_K, same = Above(FeelEdges_K[0] - colder_K), much = 1 - Above(FeelEdges_K[1] - colder_K);
        double part = feel switch { WallFeel.Same => same, WallFeel.MuchColder => much, _ => Math.Max(0, 1 - same - much) };
        return Misread(part, 1.0 / 3);
    }

    /// <summary>Probability of no line, or density of a line at a height. [1, or 1/m]</summary>
    public static double OfFrostLine(double height_m, CylinderState state, double air_K, double body_m)
    {
        double visible = state.Level_m <= 0 ? 0 : 0.05 + 0.85 * (1 - Above(3 - (air_K - state.Liquid_K)));
        double stale = StaleLine_frac * (1 - visible);
        if (height_m <= 0) return Misread(1 - visible - stale, 0.5);
        return Misread(visible * Normal(height_m, state.Level_m, Line_m) + stale / body_m, 0.5 / body_m);
    }

    /// <summary>Probability that a normal deviate of the feeling hand is below a value.</summary>
    private static double Above(double value_K) => Cumulative(value_K / Feel_K);

    /// <summary>The cumulative normal distribution, by the logistic that is within 0.01 of it.</summary>
    public static double Cumulative(double z) => 1 / (1 + Math.Exp(-1.702 * z));

    private static double Misread(double right, double anything)
        => (1 - LikelihoodTable.Misread_frac) * right + LikelihoodTable.Misread_frac * anything;

    private static double Normal(double x, double mean, double error)
    {
        double z = (x - mean) / error;
        return Math.Exp(-0.5 * z * z) / (error * Math.Sqrt(Math.Tau));
    }
}
