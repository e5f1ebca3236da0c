using ColdSim.Physics.Propane;

namespace ColdSim.Planning;

/// <summary>What gas costs: by mass, or a sum for an exchange whatever is in it. In the person's own money.</summary>
/// <param name="Amount">Money, per kilogram or in all.</param>
/// <param name="Each">Whether it is a sum for the exchange.</param>
public readonly record struct Price(double Amount, bool Each)
{
    // Gallons are sold at the volume that they have at 60 °F.
    private const double Sold_K = 288.70555555555557;

    /// <summary>A price by mass.</summary>
    /// <param name="money">Money.</param>
    /// <param name="mass_kg">For so much. [kg]</param>
    public static Price PerMass(double money, double mass_kg) => new(money / mass_kg, false);

    /// <summary>A price by volume of liquid at 60 °F.</summary>
    /// <param name="money">Money.</param>
    /// <param name="volume_m3">For so much. [m³]</param>
    public static Price PerVolume(double money, double volume_m3) => new(money / (volume_m3 * PropaneSaturation.LiquidDensity_kg_m3(Sold_K)), false);

    /// <summary>A price for an exchange.</summary>
    public static Price PerExchange(double money) => new(money, true);

    /// <summary>What an amount costs.</summary>
    /// <param name="mass_kg">The gas. [kg]</param>
    public double Of(double mass_kg) => Each ? Amount : Amount * mass_kg;
}

/// <summary>What is known of money.</summary>
public sealed record Prices
{
    /// <summary>Of the gas that is in the cylinders at the start; null where nothing is said.</summary>
    public Price? Gas { get; init; }

    /// <summary>What is written before a sum.</summary>
    public string Currency { get; init; } = "$";
}
