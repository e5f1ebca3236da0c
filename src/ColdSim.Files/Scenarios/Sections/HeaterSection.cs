using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;
using ColdSim.Model.Heaters;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[heater]]</c>: heat that comes from neither the furnace nor a gas appliance.</summary>
internal static class HeaterSection
{
    private static readonly TextKey Name = OwnNames.Key("heater", "each another");

    private static readonly ChoiceKey<HeaterSupply> RunsOn = new(
        "runs_on", KeyDefault.Needed, "shore power, only where there is a hookup and within its breaker; or a fuel of its own behind a flue",
        ("shore", HeaterSupply.ShorePower), ("diesel", HeaterSupply.OwnFuel), ("wood", HeaterSupply.OwnFuel));

    private static readonly QuantityKey Output = new(
        "output", Dimension.Power, "50 W", "30 kW", KeyDefault.Needed, "heat into the coach while it is on");

    private static readonly SpansKey Hours = new("hours", KeyDefault.Of("always"), "when it may be on");

    private static readonly QuantityKey SetPoint = new(
        "set_point", Dimension.Temperature, "0 °C", "35 °C", KeyDefault.Of("none: on for all its hours"), "its own thermostat on the coach's air");

    private static readonly QuantityKey Differential = new(
        "differential", Dimension.TemperatureDifference, "0.5 K", "10 K", KeyDefault.Quantity("2 K"), "between that thermostat's on and off")
    {
        GoesWith = [SetPoint.Name],
        Assumed = ScenarioKey.NotGiven,
    };

    public static readonly ScenarioSection Declared = new(
        "heater", TableForm.Many, "heat that comes from neither the furnace nor a gas appliance", [Name, RunsOn, Output, Hours, SetPoint, Differential]);

    /// <summary>Reads them all.</summary>
    public static IReadOnlyList<OtherHeater> ReadAll(IReadOnlyList<SectionReader> sections)
    {
        OwnNames names = new(sections.Select(s => (s, Name)), "heater");
        return [.. sections.Select((s, i) => Read(s, i + 1, names))];
    }

    private static OtherHeater Read(SectionReader section, int number, OwnNames names)
    {
        if (!section.Has(RunsOn))
            section.Lacks(RunsOn, "accepted: \"shore\", \"diesel\" or \"wood\"");
        HeaterSupply supply = section.Get(RunsOn) ?? HeaterSupply.OwnFuel;
        double? setPoint_K = section.Get(SetPoint);
        double half_K = 0.5 * section.GetOrDefault(Differential);
        OtherHeater heater = new()
        {
            Name = names.Of(section, Name, "heater", number),
            Output_W = section.Require(Output),
            Supply = supply,
            Hours = section.Get(Hours) ?? [],
            Thermostat = setPoint_K is { } t_K ? new SwitchBand(t_K - half_K, t_K + half_K) : null,
        };
        if (section.Has(Differential) && !section.Has(SetPoint))
            section.Report(Differential, "'differential' has no effect without 'set_point'");
        if (section.Has(SetPoint))
            section.Assume(Differential, heater.Name);
        section.Finish();
        return heater;
    }
}
