using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[load]]</c>: what draws from the battery at a known current or power.</summary>
internal static class LoadSection
{
    public static readonly TextKey Name = OwnNames.Key("load 1", "each another");

    private static readonly QuantityKey Draws = new(
        "draws", [new(Dimension.Current, "0.001 A", "500 A"), new(Dimension.Power, "0.01 W", "6 kW")], KeyDefault.Needed,
        "at 12 V, averaged over its own switching");

    private static readonly SpansKey Hours = new("hours", KeyDefault.Of("always"), "when it is on");

    public static readonly ScenarioSection Declared = new(
        "load", TableForm.Many, "what draws from the battery at a known current or power", [Name, Draws, Hours]);

    public static ElectricLoad Read(SectionReader section, int number, OwnNames names)
    {
        ElectricLoad load = new()
        {
            Name = names.Counted(section, Name, "load", number),
            Power_W = ReadDraws(section),
            Hours = section.Get(Hours) ?? [],
        };
        section.Finish();
        return load;
    }

    private static double ReadDraws(SectionReader section)
    {
        if (!section.Has(Draws))
            section.Lacks(Draws, "accepted: current such as \"0.8 A\", or power such as \"10 W\"");
        double? draws = section.Get(Draws, out QuantityRange range);
        return draws * (range.Dimension == Dimension.Power ? 1 : NominalVoltage.Bus_V) ?? double.NaN;
    }
}
