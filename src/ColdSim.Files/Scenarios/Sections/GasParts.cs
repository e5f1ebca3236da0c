using ColdSim.Files.Quantities;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[gas.by_mass]</c> or <c>[gas.by_liquid_volume]</c>: what a gas is made of.</summary>
internal static class GasParts
{
    // What printed analyses miss by rounding.
    private const double Rounding = 0.005;

    private static readonly QuantityKey Propane = new("propane", Dimension.Ratio, "0 %", "100 %");
    private static readonly QuantityKey NormalButane = new("n_butane", Dimension.Ratio, "0 %", "100 %");
    private static readonly QuantityKey Isobutane = new("isobutane", Dimension.Ratio, "0 %", "100 %");

    /// <summary>The parts, made to add up to one; null where nothing is said or it is faulty.</summary>
    public static GasMasses? Read(SectionReader section)
    {
        int faults = section.Reading.Problems.Count;
        GasMasses parts = new(section.Get(Propane, 0), section.Get(NormalButane, 0), section.Get(Isobutane, 0));
        section.Finish();
        if (!section.Present || section.Reading.Problems.Count > faults)
            return null;
        if (Math.Abs(parts.Sum - 1) <= Rounding)
            return parts.Parts();
        section.Reading.Report(
            section.Place, FormattableString.Invariant($"{section.Title} adds up to {100 * parts.Sum:0.##} %"), "accepted: parts that add up to 100 %");
        return null;
    }
}
