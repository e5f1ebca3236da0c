using ColdSim.Files.Quantities;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[catalytic_heater]]</c>: a heater without a flue, by the clock, on its own thermostat, or both.</summary>
internal static class CatalyticHeaterSection
{
    private const double Input_Btu_h = 3000;
    private const double Differential_K = 2;
    private const double Btu_h = 0.29307107017222;

    private static readonly QuantityKey Input = new("input", Dimension.Power, "200 W", "10 kW");
    private static readonly QuantityKey SetPoint = new("set_point", Dimension.Temperature, "0 °C", "30 °C");
    private static readonly QuantityKey Differential = new("differential", Dimension.TemperatureDifference, "0.5 K", "10 K");

    public static CatalyticHeater Read(SectionReader section, int number, OwnNames names)
    {
        double? setPoint_K = section.Get(SetPoint);
        double half_K = 0.5 * section.Get(Differential, Differential_K);
        CatalyticHeater read = new()
        {
            Name = names.Of(section, "catalytic heater", number),
            Input_W = section.Get(Input, Input_Btu_h * Btu_h),
            Hours = section.Spans("hours") ?? [],
            OwnThermostat = setPoint_K is { } t_K ? new SwitchBand(t_K - half_K, t_K + half_K) : null,
        };
        if (!section.Has("hours") && !section.Has("set_point"))
            section.Reading.Missing(section.Place, $"{section.Title} lacks 'hours' or 'set_point'", "accepted: hours such as [\"18:00-22:00\"], a set_point such as \"16 °C\", or both");
        if (section.Has("differential") && !section.Has("set_point"))
            section.Report("differential", "'differential' has no effect without 'set_point'");
        ApplianceKeys.Assume(section, read.Name, "input", $"{Input_Btu_h:#,0} BTU/h");
        if (section.Has("set_point"))
            ApplianceKeys.Assume(section, read.Name, "differential", $"{Differential_K} K");
        return ApplianceKeys.Over(section, read);
    }
}
