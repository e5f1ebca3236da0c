using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[load]]</c>: what draws from the battery at a known current or power.</summary>
internal static class LoadSection
{
    private static readonly QuantityKey ByCurrent = new("draws", Dimension.Current, "0.001 A", "500 A");
    private static readonly QuantityKey ByPower = new("draws", Dimension.Power, "0.01 W", "6 kW");

    public static ElectricLoad Read(SectionReader section, int number, OwnNames names)
    {
        ElectricLoad load = new()
        {
            Name = names.Counted(section, "load", number),
            Power_W = Draws(section),
            Hours = section.Spans("hours") ?? [],
        };
        section.Finish();
        return load;
    }

    private static double Draws(SectionReader section)
    {
        if (!section.Has("draws"))
            section.Lacks("draws", "accepted: current such as \"0.8 A\", or power such as \"10 W\"");
        bool byPower = section.Value("draws") is TomlText text && SiText.Read(text.Value, Dimension.Power, out _) is null;
        return (byPower ? section.Get(ByPower) : section.Get(ByCurrent) * NominalVoltage.Bus_V) ?? double.NaN;
    }
}
