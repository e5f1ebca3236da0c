using ColdSim.Files.Quantities;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[cooker]]</c>: burners of a stove, or an oven, lit at meals.</summary>
internal static class CookerSection
{
    private const double Stove_Btu_h = 7000;
    private const double Oven_Btu_h = 6500;
    private const double Btu_h = 0.29307107017222;

    private static readonly QuantityKey Input = new("input", Dimension.Power, "200 W", "10 kW");

    /// <summary>Reads them all; stoves and ovens are counted apart.</summary>
    public static IReadOnlyList<Cooker> ReadAll(IReadOnlyList<SectionReader> sections, OwnNames names)
    {
        Dictionary<bool, int> counted = new() { [false] = 0, [true] = 0 };
        return [.. sections.Select(s => Read(s, counted, names))];
    }

    private static Cooker Read(SectionReader section, Dictionary<bool, int> counted, OwnNames names)
    {
        bool oven = section.Choice("kind", ("stove", false), ("oven", true)) ?? false;
        string kind = oven ? "oven" : "stove";
        double each_Btu_h = oven ? Oven_Btu_h : Stove_Btu_h;
        int burners = section.Whole("burners", 1, 6) ?? 1;
        Cooker read = new()
        {
            Name = names.Of(section, kind, ++counted[oven]),
            Input_W = burners * section.Get(Input, each_Btu_h * Btu_h),
            Hours = ApplianceKeys.Needed(section, "meals", "accepted: spans in which it is lit, such as [\"07:00-07:30\", \"18:00-18:45\"]"),
        };
        if (!section.Has("kind"))
            section.Lacks("kind", "accepted: \"stove\", \"oven\"");
        ApplianceKeys.Assume(section, read.Name, "input", $"{each_Btu_h:#,0} BTU/h a burner");
        if (!oven)
            ApplianceKeys.Assume(section, read.Name, "burners", $"1");
        return ApplianceKeys.Over(section, read);
    }
}
