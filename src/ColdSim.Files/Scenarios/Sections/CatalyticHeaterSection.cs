using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[catalytic_heater]]</c>: a heater without a flue, by the clock, on its own thermostat, or both.</summary>
internal static class CatalyticHeaterSection
{
    public static readonly TextKey Name = OwnNames.Key("catalytic heater", ApplianceKeys.AnotherName);

    private static readonly QuantityKey Input = new(
        "input", Dimension.Power, "200 W", "10 kW", KeyDefault.Quantity("3,000 BTU/h"), "of its burner; 1,600 to 8,000 BTU/h are common")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly SpansKey Hours = new("hours", KeyDefault.Of("always"), "when it may burn; needed without `set_point`");

    private static readonly QuantityKey SetPoint = new(
        "set_point", Dimension.Temperature, "0 °C", "30 °C", KeyDefault.Of("none: it burns by the clock"), "of its own thermostat on the coach's air");

    private static readonly QuantityKey Differential = new(
        "differential", Dimension.TemperatureDifference, "0.5 K", "10 K", KeyDefault.Quantity("2 K"), "whole band between on and off")
    {
        GoesWith = [SetPoint.Name],
        Assumed = ScenarioKey.NotGiven,
    };

    public static readonly ScenarioSection Declared = new(
        "catalytic_heater", TableForm.Many, "a heater without a flue, by the clock, on its own thermostat, or both",
        [Name, Input, Hours, SetPoint, Differential, .. ApplianceKeys.Plate]);

    public static CatalyticHeater Read(SectionReader section, int number, OwnNames names)
    {
        double? setPoint_K = section.Get(SetPoint);
        double half_K = 0.5 * section.GetOrDefault(Differential);
        CatalyticHeater read = new()
        {
            Name = names.Of(section, Name, "catalytic heater", number),
            Input_W = section.GetOrDefault(Input),
            Hours = section.Get(Hours) ?? [],
            OwnThermostat = setPoint_K is { } t_K ? new SwitchBand(t_K - half_K, t_K + half_K) : null,
        };
        if (!section.Has(Hours) && !section.Has(SetPoint))
            section.Reading.Missing(section.Place, $"{section.Title} lacks 'hours' or 'set_point'", "accepted: hours such as [\"18:00-22:00\"], a set_point such as \"16 °C\", or both");
        if (section.Has(Differential) && !section.Has(SetPoint))
            section.Report(Differential, "'differential' has no effect without 'set_point'");
        section.Assume(Input, read.Name);
        if (section.Has(SetPoint))
            section.Assume(Differential, read.Name);
        return ApplianceKeys.Over(section, read);
    }
}
