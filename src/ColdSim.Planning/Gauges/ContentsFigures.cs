using ColdSim.Model.Gas;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>A mass of propane, or its standard uncertainty, in everything that people count it in.</summary>
public sealed record ContentsFigures
{
    private const double SixtyFahrenheit_K = (60 + ConversionFactors.ZeroFahrenheit_R) / 1.8;

    public required Mass Mass { get; init; }

    /// <summary>The same as liquid at 60 °F, as the trade counts it.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Part of the legal fill.</summary>
    public required Ratio OfLegalFill { get; init; }

    /// <summary>Gross heat.</summary>
    public required Energy Energy { get; init; }

    /// <summary>How long the furnace burns on it without pause; null where none is named.</summary>
    public required Duration? AtFullFire { get; init; }

    /// <summary>Every figure is in proportion to the mass, so one function serves value and uncertainty.</summary>
    internal static ContentsFigures Of(double mass_kg, GaugedCylinder cylinder, double? furnace_W)
    {
        double heat_J = mass_kg * new GasSpecification().HeatingValue_J_kg;
        return new()
        {
            Mass = Mass.FromKilograms(mass_kg),
            Volume = Volume.FromCubicMeters(mass_kg / PropaneSaturation.LiquidDensity_kg_m3(SixtyFahrenheit_K)),
            OfLegalFill = Ratio.FromDecimalFractions(mass_kg / cylinder.LegalFill_kg),
            Energy = Energy.FromJoules(heat_J),
            AtFullFire = furnace_W is double w ? Duration.FromSeconds(heat_J / w) : null,
        };
    }
}
