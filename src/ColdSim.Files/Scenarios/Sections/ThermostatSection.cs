using ColdSim.Files.Quantities;
using ColdSim.Model.Thermostat;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[thermostat]</c>: the set points and how it switches.</summary>
internal static class ThermostatSection
{
    private static readonly QuantityKey Day = new("day", Dimension.Temperature, "0 °C", "35 °C");
    private static readonly QuantityKey Night = new("night", Dimension.Temperature, "0 °C", "35 °C");
    private static readonly QuantityKey Differential = new("differential", Dimension.TemperatureDifference, "0.1 K", "10 K");
    private static readonly QuantityKey SensorLag = new("sensor_lag", Dimension.Duration, "0 s", "2 h");
    private static readonly QuantityKey MinimumRun = new("minimum_run", Dimension.Duration, "0 s", "1 h");
    private static readonly QuantityKey MinimumOff = new("minimum_off", Dimension.Duration, "0 s", "1 h");

    public static ThermostatSpecification? Read(SectionReader section)
    {
        ThermostatSpecification defaults = new();
        double? day = section.Get(Day);
        double? night = section.Get(Night);
        ThermostatSpecification thermostat = new()
        {
            DaySetPoint_K = day ?? defaults.DaySetPoint_K,
            NightSetPoint_K = night ?? day ?? defaults.NightSetPoint_K,
            NightHours = section.Span("night_hours") ?? defaults.NightHours,
            Differential_K = section.Get(Differential, defaults.Differential_K),
            SensorLag_s = section.Get(SensorLag, defaults.SensorLag_s),
            MinimumRun_s = section.Get(MinimumRun, defaults.MinimumRun_s),
            MinimumOff_s = section.Get(MinimumOff, defaults.MinimumOff_s),
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (!section.Has("day"))
            section.Reading.Assume($"thermostat: day not given, taken as {defaults.DaySetPoint_K - 273.15:0.#} °C");
        if (!section.Has("night"))
            section.Reading.Assume($"thermostat: night not given, taken as {thermostat.NightSetPoint_K - 273.15:0.#} °C");
        if (!section.Has("night_hours"))
            section.Reading.Assume($"thermostat: night_hours not given, taken as 22:00-06:30");
        return thermostat;
    }
}
