using ColdSim.Files.Quantities;
using ColdSim.Model.Appliances;
using ColdSim.Model.Heaters;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[heater]]</c>: heat that comes from neither the furnace nor a gas appliance.</summary>
internal static class HeaterSection
{
    private const double Differential_K = 2;

    private static readonly QuantityKey Output = new("output", Dimension.Power, "50 W", "30 kW");
    private static readonly QuantityKey SetPoint = new("set_point", Dimension.Temperature, "0 °C", "35 °C");
    private static readonly QuantityKey Differential = new("differential", Dimension.TemperatureDifference, "0.5 K", "10 K");

    /// <summary>Reads them all.</summary>
    public static IReadOnlyList<OtherHeater> ReadAll(IReadOnlyList<SectionReader> sections)
    {
        OwnNames names = new(sections, "heater");
        return [.. sections.Select((s, i) => Read(s, i + 1, names))];
    }

    private static OtherHeater Read(SectionReader section, int number, OwnNames names)
    {
        const string Accepted = "accepted: \"shore\", \"diesel\" or \"wood\"";
        if (!section.Has("runs_on"))
            section.Lacks("runs_on", Accepted);
        HeaterSupply supply = section.Choice(
            "runs_on", ("shore", HeaterSupply.ShorePower), ("diesel", HeaterSupply.OwnFuel), ("wood", HeaterSupply.OwnFuel)) ?? HeaterSupply.OwnFuel;
        double? setPoint_K = section.Get(SetPoint);
        double half_K = 0.5 * section.Get(Differential, Differential_K);
        string name = names.Of(section, "heater", number);
        OtherHeater heater = new()
        {
            Name = name,
            Output_W = section.Require(Output),
            Supply = supply,
            Hours = section.Spans("hours") ?? [],
            Thermostat = setPoint_K is { } t_K ? new SwitchBand(t_K - half_K, t_K + half_K) : null,
        };
        if (section.Has("differential") && !section.Has("set_point"))
            section.Report("differential", "'differential' has no effect without 'set_point'");
        if (section.Has("set_point"))
            ApplianceKeys.Assume(section, name, "differential", $"{Differential_K} K");
        section.Finish();
        return heater;
    }
}
