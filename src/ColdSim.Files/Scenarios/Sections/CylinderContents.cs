using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The key <c>left</c>: what is in the cylinder, as a part of its legal filling or as a mass.</summary>
internal static class CylinderContents
{
    private static readonly QuantityKey Part = new("left", Dimension.Ratio, "0 %", "130 %");
    private static readonly QuantityKey Mass = new("left", Dimension.Mass, "0 kg", "2,500 kg");

    /// <summary>Propane at the start; NaN where it cannot be known. [kg]</summary>
    public static double Read(SectionReader section, double legalFill_kg, string called)
    {
        switch (section.Value("left"))
        {
            case null:
                if (section.Present && !section.Has("left"))
                    section.Reading.Assume($"{called}: left not given, taken as full, {legalFill_kg:0.##} kg");
                return legalFill_kg;
            case TomlText text when text.Value.Trim().Equals("full", StringComparison.OrdinalIgnoreCase):
                return legalFill_kg;
            case TomlText text when IsMass(text.Value):
                return section.Get(Mass) ?? double.NaN;
            default:
                return (section.Get(Part) ?? double.NaN) * legalFill_kg;
        }
    }

    private static bool IsMass(string text)
        => NumberText.TryRead(text.Trim(), out _, out string unit, out _) && SpellingTable.Find(Dimension.Mass, unit) is not null;
}
