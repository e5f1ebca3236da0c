using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Scenarios.Sections;

namespace ColdSim.Files.Scenarios;

/// <summary>Every section and key of the scenario file, in the order of docs/scenario.md.</summary>
internal static class ScenarioKeys
{
    /// <summary>What the report is called.</summary>
    public static TextKey Title { get; } = new("title", KeyDefault.Of("\"Untitled\""), "what the report is called")
    {
        Such = "Three cold nights",
        FixedForOptions = true,
    };

    /// <summary>The top level.</summary>
    public static ScenarioSection Root { get; } = new(
        "", TableForm.One, "a scenario", [Title],
        PlaceSection.Declared, WeatherSection.Declared, RunSection.Declared, GasSection.Declared, CylinderSection.Declared, EnclosureSection.Declared, ArrangementSection.Declared,
        RegulatorSection.Declared, FurnaceSection.Declared, ThermostatSection.Declared, PeopleSection.Declared, CoachSection.Declared,
        HeaterSection.Declared, DrawSection.Declared, BatterySection.Declared, SolarSection.Declared, LoadSection.Declared, ConverterSection.Declared,
        GeneratorSection.Declared, RefrigeratorSection.Declared, WaterHeaterSection.Declared, OnDemandHeaterSection.Declared, CookerSection.Declared,
        CatalyticHeaterSection.Declared, WetBaySection.Declared, PipeSection.Declared, TankSection.Declared, VerdictSection.Declared, FitSection.Declared,
        ChanceSection.Declared, StopsSection.Declared, RefillsSection.Declared, OptionReader.Declared);

    /// <summary>All sections with their whole names, each before those below it; the top level has none. Made when asked: a run does not ask.</summary>
    public static IReadOnlyList<(string Name, ScenarioSection Section)> All => [.. Below("", Root)];

    /// <summary>What an option may not change: whole names of keys and sections; those in lists, which an option means by a number, left out.</summary>
    public static IReadOnlyList<string> FixedForOptions => [.. Fixed("", Root)];

    private static IEnumerable<(string, ScenarioSection)> Below(string name, ScenarioSection section)
        => section.Below.SelectMany(b => Below(Join(name, b.Name), b)).Prepend((name, section));

    private static IEnumerable<string> Fixed(string name, ScenarioSection section) => section switch
    {
        { FixedForOptions: true } => [name],
        { Form: TableForm.Many } => [],
        _ => section.Keys.Where(k => k.FixedForOptions).Select(k => Join(name, k.Name)).Concat(section.Below.SelectMany(b => Fixed(Join(name, b.Name), b))),
    };

    private static string Join(string name, string below) => name.Length == 0 ? below : $"{name}.{below}";
}
