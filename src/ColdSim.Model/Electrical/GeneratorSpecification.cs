using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Electrical;

/// <summary>A generator on propane: what it gives, what it burns, when it runs. SI units, pressures gauge.</summary>
/// <remarks>
/// Gas by a Willans line, 1.2 to 1.5 lb an hour at no load and 0.6 to 0.7 more for each kilowatt; 3 to 4 % less power per 1,000 ft
/// (both from memory, for sets of some 2.5 to 4 kW).
/// </remarks>
public sealed record GeneratorSpecification
{
    private const double ThousandFeet_m = 1000 * Foot_m;

    /// <summary>Power at sea level. [W]</summary>
    public required double Rated_W { get; init; }

    /// <summary>Gas at no load, as gross heat. [W]</summary>
    public double IdleInput_W { get; init; } = 8560;

    /// <summary>More gas for each watt of load, as gross heat.</summary>
    public double InputPerLoad { get; init; } = 4.12;

    /// <summary>Part of its power lost for every thousand feet of height.</summary>
    public double LossPerThousandFeet_frac { get; init; } = 0.035;

    /// <summary>Other things it feeds while it runs. [W]</summary>
    public double OtherLoad_W { get; init; }

    /// <summary>Part of the battery's usable charge at which it is started.</summary>
    public double StartBelow_frac { get; init; } = 0.2;

    /// <summary>Part of the battery's usable charge at which it is stopped.</summary>
    public double StopAbove_frac { get; init; } = 0.9;

    /// <summary>Hours in which it may run; empty means always.</summary>
    public IReadOnlyList<ClockWindow> Hours { get; init; } = [];

    /// <summary>Delivery pressure from which it takes its full gas. [Pa gauge]</summary>
    public double FullPressure_Pa { get; init; } = 10.5 * InchOfWater_Pa;

    /// <summary>Delivery pressure below which it stops. [Pa gauge]</summary>
    public double MinimumPressure_Pa { get; init; } = 6.5 * InchOfWater_Pa;

    /// <summary>Power at a height. [W]</summary>
    /// <param name="elevation_m">Height above the sea. [m]</param>
    public double Power_W(double elevation_m) => Rated_W * Math.Clamp(1 - (LossPerThousandFeet_frac * elevation_m / ThousandFeet_m), 0, 1);

    /// <summary>Gas that it burns, as gross heat. [W]</summary>
    /// <param name="load_W">What it feeds. [W]</param>
    public double Input_W(double load_W) => IdleInput_W + (InputPerLoad * load_W);
}
