using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>What a pressure says about a cylinder.</summary>
public enum PressureVerdict
{
    /// <summary>Nothing about the amount left.</summary>
    CannotTell,

    /// <summary>Clearly below what liquid would keep up: only vapour is left.</summary>
    LiquidGone,

    /// <summary>Clearly above what the grade explains: lighter gas, or air.</summary>
    LighterGasOrAir,
}

/// <summary>A gauge pressure at the cylinder, judged against an independent liquid temperature at rest.</summary>
/// <remarks>
/// While there is liquid the pressure follows its temperature and says nothing about how much there is. The grade's spread: at most
/// 2.5 % of butane and heavier in the fill, twice that in what a draw leaves behind, pulls the pressure down by at most 5 %; up to
/// 3 mol % of ethane pushes it up by Raoult's law, 1 to 3 % of it by 8 to 23 % of the gauge pressure at 0 °F.
/// </remarks>
public sealed record PressureReading
{
    /// <summary>The most ethane that the grade may bring, as mole fraction of the liquid.</summary>
    internal const double Ethane_frac = 0.03;

    /// <summary>The most by which heavier gas lowers the pressure.</summary>
    internal const double Heavier_frac = 0.05;

    // Ethane: 1.42 MPa at -20 °C and boiling at 184.57 K (from memory), a straight line of ln p over 1/T; within 1 % from -40 to 20 °C.
    private const double EthaneSlope_K = 1798.6;
    private const double EthaneAt_K = 253.15;
    private const double EthaneAt_Pa = 1.42e6;

    // The span of two standard uncertainties within which nothing is clear.
    private const double Clear = 2;

    /// <summary>Gauge pressure. [Pa]</summary>
    public required double Gauge_Pa { get; init; }

    /// <summary>Its standard uncertainty: 2 psi unless given. [Pa]</summary>
    public double GaugeError_Pa { get; init; } = 2 * ConversionFactors.Psi_Pa;

    /// <summary>Pressure of the air. [Pa]</summary>
    public required double Air_Pa { get; init; }

    /// <summary>Liquid temperature from something other than the pressure; null where it is unknown. [K]</summary>
    public double? Temperature_K { get; init; }

    /// <summary>Its standard uncertainty. [K]</summary>
    public double TemperatureError_K { get; init; }

    /// <summary>Whether the cylinder has been closed long enough to have that temperature throughout.</summary>
    public bool Rested { get; init; }

    /// <summary>Pressure of liquid with a part of ethane by Raoult's law. [Pa]</summary>
    /// <param name="t_K">Temperature. [K]</param>
    /// <param name="ethane_frac">Mole fraction of ethane in the liquid.</param>
    public static double WithEthane_Pa(double t_K, double ethane_frac)
    {
        double ethane_Pa = EthaneAt_Pa * Math.Exp(EthaneSlope_K * (1 / EthaneAt_K - 1 / t_K));
        double propane_Pa = PropaneSaturation.Pressure_Pa(t_K);
        return propane_Pa + ethane_frac * (ethane_Pa - propane_Pa);
    }

    /// <summary>Judges the reading.</summary>
    /// <param name="cylinder">The cylinder that was read.</param>
    public PressureFinding Judge(GaugedCylinder cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        double p_Pa = Gauge_Pa + Air_Pa;
        PressureFinding finding = new()
        {
            Reading = Pressure.FromPascals(Gauge_Pa),
            LiquidTemperature = Boiling(p_Pa),
            LiquidTemperatureWithEthane = Boiling(p_Pa, Ethane_frac),
        };
        if (Temperature_K is not double t_K)
            return finding;
        double low_K = LevelInputs.Clamp_K(t_K - Clear * TemperatureError_K), high_K = LevelInputs.Clamp_K(t_K + Clear * TemperatureError_K);
        double least_Pa = (1 - Heavier_frac) * PropaneSaturation.Pressure_Pa(low_K);
        double most_Pa = WithEthane_Pa(high_K, Ethane_frac);
        finding = finding with
        {
            ExpectedLow = Pressure.FromPascals(least_Pa - Air_Pa),
            ExpectedHigh = Pressure.FromPascals(most_Pa - Air_Pa),
        };
        if (!Rested)
            return finding;
        if (p_Pa + Clear * GaugeError_Pa < least_Pa)
            return finding with { Verdict = PressureVerdict.LiquidGone, Vapour = Vapour(cylinder, t_K) };
        return p_Pa - Clear * GaugeError_Pa > most_Pa ? finding with { Verdict = PressureVerdict.LighterGasOrAir } : finding;
    }

    private ContentsEstimate Vapour(GaugedCylinder cylinder, double t_K)
    {
        StatedError[] inputs =
        [
            new("pressure", InputKind.Pressure, Gauge_Pa, GaugeError_Pa, "", Shared: false),
            new("liquid temperature", InputKind.Temperature, t_K, TemperatureError_K, "", Shared: true),
            new("water capacity", InputKind.Ratio, 1, cylinder.CapacityError_frac, "assumption", Shared: true),
        ];
        double air_Pa = Air_Pa;
        return ContentsEstimate.Of(
            "vapour alone", x => cylinder.Volume_m3 * x[2] * VapourDensity_kg_m3(x[0] + air_Pa, LevelInputs.Clamp_K(x[1])), inputs);
    }

    /// <summary>Density of vapour below saturation by the reference equation. [kg/m³]</summary>
    /// <param name="p_Pa">Absolute pressure. [Pa]</param>
    /// <param name="t_K">Temperature. [K]</param>
    public static double VapourDensity_kg_m3(double p_Pa, double t_K)
    {
        double saturated_kg_m3 = PropaneSaturation.VapourDensity_kg_m3(t_K);
        return p_Pa <= 0 ? 0
            : p_Pa >= ReferenceEquation.At(t_K, saturated_kg_m3).Pressure_Pa ? saturated_kg_m3
            : Brent.FindRoot(rho => ReferenceEquation.At(t_K, rho).Pressure_Pa - p_Pa, 1e-9, saturated_kg_m3, 1e-12, 200);
    }

    /// <summary>Temperature at which liquid has a pressure; null outside the saturation table's -80 to 80 °C.</summary>
    /// <param name="p_Pa">Absolute pressure. [Pa]</param>
    /// <param name="ethane_frac">Mole fraction of ethane in the liquid.</param>
    internal static Temperature? Boiling(double p_Pa, double ethane_frac = 0)
    {
        double low = SaturationTable.Lowest_K, high = SaturationTable.Highest_K;
        return p_Pa >= WithEthane_Pa(low, ethane_frac) && p_Pa <= WithEthane_Pa(high, ethane_frac)
            ? Temperature.FromKelvins(Brent.FindRoot(t => WithEthane_Pa(t, ethane_frac) - p_Pa, low, high, 1e-9, 200))
            : null;
    }
}

/// <summary>The finding of a pressure reading.</summary>
public sealed record PressureFinding
{
    public PressureVerdict Verdict { get; init; } = PressureVerdict.CannotTell;

    /// <summary>The gauge pressure.</summary>
    public required Pressure Reading { get; init; }

    /// <summary>Temperature at which pure liquid propane has that pressure; null outside -80 to 80 °C.</summary>
    public Temperature? LiquidTemperature { get; init; }

    /// <summary>The same with 3 % ethane in the liquid.</summary>
    public Temperature? LiquidTemperatureWithEthane { get; init; }

    /// <summary>The least gauge pressure that liquid at the stated temperature may have; null where no temperature is known.</summary>
    public Pressure? ExpectedLow { get; init; }

    /// <summary>The greatest pressure expected.</summary>
    public Pressure? ExpectedHigh { get; init; }

    /// <summary>Vapour left where the liquid is gone.</summary>
    public ContentsEstimate? Vapour { get; init; }
}
