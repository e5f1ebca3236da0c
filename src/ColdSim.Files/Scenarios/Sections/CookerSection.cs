using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[cooker]]</c>: burners of a stove, or an oven, lit at meals.</summary>
internal static class CookerSection
{
    private const string Stove = "7,000 BTU/h", Oven = "6,500 BTU/h";

    private static readonly ChoiceKey<bool> IsOven = new("kind", KeyDefault.Needed, "which", ("stove", false), ("oven", true));

    public static readonly TextKey Name = new("name", KeyDefault.Of("\"stove\" or \"oven\""), "what it is called")
    {
        Accepts = ApplianceKeys.AnotherName,
        Such = "left burner",
    };

    private static readonly QuantityKey Input = new(
        "input", Dimension.Power, "200 W", "10 kW", KeyDefault.Of($"{Stove} for a stove's burner, {Oven} for an oven"),
        "of one burner; 5,200 to 9,000 and 6,000 to 7,500 BTU/h are common")
    { Assumed = ScenarioKey.NotGiven + " a burner" };

    private static readonly WholeKey Burners = new("burners", 1, 6, KeyDefault.Of(1), "how many are lit at a meal") { Assumed = ScenarioKey.NotGiven };

    private static readonly SpansKey Meals = new("meals", KeyDefault.Needed, "when it is lit");

    public static readonly ScenarioSection Declared = new(
        "cooker", TableForm.Many, "burners of a stove, or an oven, lit at meals", [IsOven, Name, Input, Burners, Meals, .. ApplianceKeys.Plate]);

    /// <summary>Reads them all; stoves and ovens are counted apart.</summary>
    public static IReadOnlyList<Cooker> ReadAll(IReadOnlyList<SectionReader> sections, OwnNames names)
    {
        Dictionary<bool, int> counted = new() { [false] = 0, [true] = 0 };
        return [.. sections.Select(s => Read(s, counted, names))];
    }

    private static Cooker Read(SectionReader section, Dictionary<bool, int> counted, OwnNames names)
    {
        bool oven = section.Get(IsOven) ?? false;
        string each = oven ? Oven : Stove;
        int burners = section.GetOrDefault(Burners);
        Cooker read = new()
        {
            Name = names.Of(section, Name, IsOven.WordOf(oven), ++counted[oven]),
            Input_W = burners * section.Get(Input, Input.Ranges[0].Si(each)),
            Hours = section.Require(Meals, "accepted: spans in which it is lit, such as [\"07:00-07:30\", \"18:00-18:45\"]"),
        };
        if (!section.Has(IsOven))
            section.Lacks(IsOven, "accepted: " + IsOven.Accepted);
        section.Assume(Input, read.Name, $"{each}");
        if (!oven)
            section.Assume(Burners, read.Name);
        return ApplianceKeys.Over(section, read);
    }
}
