using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Thermostat;
using ColdSim.Physics.Units;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[thermostat]</c>: the set points and how it switches.</summary>
internal static class ThermostatSection
{
    private static readonly ThermostatSpecification Usual = new();

    private static readonly QuantityKey Day = new(
        "day", Dimension.Temperature, "0 °C", "35 °C", KeyDefault.Of(Usual.DaySetPoint_K, "°C"), "set point by day")
    {
        Assumed = ScenarioKey.NotGiven,
        Usual = new("5 °C", "27 °C", UnusualValue.OurChoice) { Hint = " (41 to 81 °F)" },
    };

    private static readonly QuantityKey Night = new(
        "night", Dimension.Temperature, "0 °C", "35 °C", KeyDefault.Of($"`day`, or {NumberShown.Of(Usual.NightSetPoint_K, Dimension.Temperature, "°C")} without it"), "set point by night")
    {
        Assumed = ScenarioKey.NotGiven,
        Usual = new("3 °C", "27 °C", UnusualValue.OurChoice) { Hint = " (37 to 81 °F)" },
    };

    private static readonly SpansKey NightHours = new("night_hours", KeyDefault.Of(ClockText.Written(Usual.NightHours)), "when the night set point holds")
    {
        IsSingle = true,
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Differential = new(
        "differential", Dimension.TemperatureDifference, "0.1 K", "10 K", KeyDefault.Of(Usual.Differential_K, "K"), "whole band between on and off");

    private static readonly QuantityKey SensorLag = new(
        "sensor_lag", Dimension.Duration, "0 s", "2 h", KeyDefault.Of(Usual.SensorLag_s, "min"), "time constant of the sensor");

    private static readonly QuantityKey MinimumRun = new(
        "minimum_run", Dimension.Duration, "0 s", "1 h", KeyDefault.Of(Usual.MinimumRun_s, "min"), "shortest call for heat");

    private static readonly QuantityKey MinimumOff = new(
        "minimum_off", Dimension.Duration, "0 s", "1 h", KeyDefault.Of(Usual.MinimumOff_s, "min"), "shortest pause between calls");

    public static readonly ScenarioSection Declared = new(
        "thermostat", TableForm.One, "the set points and how it switches",
        [Day, Night, NightHours, Differential, SensorLag, MinimumRun, MinimumOff]);

    public static ThermostatSpecification? Read(SectionReader section)
    {
        double? day = section.Get(Day);
        double? night = section.Get(Night);
        ThermostatSpecification thermostat = new()
        {
            DaySetPoint_K = day ?? Usual.DaySetPoint_K,
            NightSetPoint_K = night ?? day ?? Usual.NightSetPoint_K,
            NightHours = section.GetSpan(NightHours) ?? Usual.NightHours,
            Differential_K = section.GetOrDefault(Differential),
            SensorLag_s = section.GetOrDefault(SensorLag),
            MinimumRun_s = section.GetOrDefault(MinimumRun),
            MinimumOff_s = section.GetOrDefault(MinimumOff),
        };
        section.Finish();
        if (!section.Present)
            return null;
        section.Assume(Day, "thermostat");
        section.Assume(Night, "thermostat", $"{thermostat.NightSetPoint_K - ConversionFactors.ZeroCelsius_K:0.#} °C");
        section.Assume(NightHours, "thermostat");
        return thermostat;
    }
}
