namespace ColdSim.Model.Electrical;

/// <summary>Power flows of the 12 V bus at an instant. SI units.</summary>
/// <param name="Load_W">To everything that draws. [W]</param>
/// <param name="Solar_W">From the panels, what is used of it. [W]</param>
/// <param name="Converter_W">From shore power or generator through the converter. [W]</param>
/// <param name="Taken_W">Into the battery, at its terminals. [W]</param>
/// <param name="Given_W">Out of the battery, at its terminals. [W]</param>
internal readonly record struct BusFlow(double Load_W, double Solar_W, double Converter_W, double Taken_W, double Given_W)
{
    /// <summary>Flows by the order of sources: panels first, then the converter, then the battery.</summary>
    /// <param name="load_W">Power of all loads. [W]</param>
    /// <param name="solar_W">Power available from the panels. [W]</param>
    /// <param name="converter_W">Power available from the converter. [W]</param>
    /// <param name="acceptance_W">Charge acceptance of the battery. [W]</param>
    public static BusFlow Of(double load_W, double solar_W, double converter_W, double acceptance_W)
    {
        double wanted_W = load_W + acceptance_W;
        double fromSolar_W = Math.Min(solar_W, wanted_W);
        double fromConverter_W = Math.Min(converter_W, wanted_W - fromSolar_W);
        double left_W = fromSolar_W + fromConverter_W - load_W;
        return new BusFlow(load_W, fromSolar_W, fromConverter_W, Math.Max(0, left_W), Math.Max(0, -left_W));
    }
}
