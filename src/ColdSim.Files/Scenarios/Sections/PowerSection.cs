using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Electrical;
using ColdSim.Model.Gas;
using ColdSim.Model.Site;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The 12 V side: <c>[battery]</c> and, with it, <c>[solar]</c>, <c>[[load]]</c>, <c>[converter]</c> and <c>[generator]</c>.</summary>
internal static class PowerSection
{
    private static readonly ScenarioSection[] NeedBattery =
        [SolarSection.Declared, LoadSection.Declared, ConverterSection.Declared, GeneratorSection.Declared];

    /// <summary>The 12 V side; null where there is no battery, and power is assumed.</summary>
    /// <param name="root">The scenario.</param>
    /// <param name="gas">What a generator burns.</param>
    public static PowerSpecification? Read(SectionReader root, GasSpecification gas)
    {
        SectionReader section = root.Section(BatterySection.Declared);
        BatterySpecification battery = BatterySection.Read(section);
        IReadOnlyList<SolarPanelSpecification> panels = root.IsList(SolarSection.Declared)
            ? [.. root.Sections(SolarSection.Declared).Select(SolarSection.Read)]
            : root.Section(SolarSection.Declared) is { } one && SolarSection.Read(one) is { } panel && one.Present ? [panel] : [];
        IReadOnlyList<SectionReader> written = root.Sections(LoadSection.Declared);
        OwnNames names = new(written.Select(l => (l, LoadSection.Name)), "load");
        IReadOnlyList<ElectricLoad> loads = [.. written.Select((l, i) => LoadSection.Read(l, i + 1, names))];
        ConverterSpecification converter = ConverterSection.Read(root.Section(ConverterSection.Declared));
        GeneratorSpecification? generator = GeneratorSection.Read(root.Section(GeneratorSection.Declared), gas);
        if (section.Present)
            return new PowerSpecification { Battery = battery, Panels = panels, Loads = loads, Converter = converter, Generator = generator };
        foreach (ScenarioSection needs in NeedBattery.Where(root.Has))
            root.Reading.Missing(root.PlaceOf(needs), $"'{needs.Name}' without a battery", "accepted: it together with [battery]");
        return null;
    }

    /// <summary>Lists what is assumed, and warns of what has no effect.</summary>
    public static void Check(Reading reading, PowerSpecification? power, IReadOnlyList<SiteSpecification> sites)
    {
        if (power is null)
            return;
        bool hookup = sites.Any(s => s.Hookup);
        if (hookup || power.Generator is not null)
            reading.Assume($"converter: gives up to {power.Converter.Rated_A:0} A from {(hookup ? "shore power" : "the generator")}");
        if (power.Panels.Count > 0 && sites.Any(s => s.Latitude_deg is null))
            reading.Warn($"[solar] without the place's latitude and longitude: its sun comes from the weather alone, as from all of the sky");
    }
}
