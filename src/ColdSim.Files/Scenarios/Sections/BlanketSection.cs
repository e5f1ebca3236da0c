using ColdSim.Files.Quantities;
using ColdSim.Model.Blanket;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[cylinder.blanket]</c>: an electric blanket around a cylinder.</summary>
internal static class BlanketSection
{
    private static readonly QuantityKey Power = new("power", Dimension.Power, "0 W", "2 kW");
    private static readonly QuantityKey On = new("on", Dimension.Temperature, "-20 °C", "40 °C");
    private static readonly QuantityKey Off = new("off", Dimension.Temperature, "-20 °C", "45 °C");
    private static readonly QuantityKey Coverage = new("coverage", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey Insulation = new("insulation", Dimension.ThermalInsulance, "0 m²K/W", "10 m²K/W");

    public static BlanketSpecification? Read(SectionReader section, string called)
    {
        BlanketSpecification defaults = new() { Power_W = 0 };
        bool hasPower = section.Has(Power.Name);
        BlanketSpecification blanket = new()
        {
            Power_W = section.Get(Power, 0),
            On_K = section.Get(On, defaults.On_K),
            Off_K = section.Get(Off, defaults.Off_K),
            Coverage_frac = section.Get(Coverage, defaults.Coverage_frac),
            Insulation_m2K_W = section.Get(Insulation, defaults.Insulation_m2K_W),
            Supply = section.Choice("supply", ("12 V", BlanketSupply.Battery), ("shore", BlanketSupply.ShorePower)) ?? defaults.Supply,
            Hours = section.Spans("hours") ?? defaults.Hours,
            StuckOn = section.Flag("stuck_on") ?? defaults.StuckOn,
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (!hasPower)
            section.Lacks("power", Power.Accepted);
        if (blanket.Off_K <= blanket.On_K)
            section.Report(section.Has("off") ? "off" : "on", "the blanket's thermostat switches off at or below where it switches on", "accepted: off above on");
        Assume(section, called, defaults);
        if (blanket.StuckOn)
            section.Reading.Warn($"{called}: the blanket's thermostat is taken as stuck on; it heats whenever it has power");
        return blanket;
    }

    private static void Assume(SectionReader section, string called, BlanketSpecification defaults)
    {
        if (!section.Has("on") && !section.Has("off"))
            section.Reading.Assume($"{called}: blanket thermostat not given, taken as on at {defaults.On_K - 273.15:0.#} °C and off at {defaults.Off_K - 273.15:0.#} °C");
        if (!section.Has("coverage"))
            section.Reading.Assume($"{called}: blanket coverage not given, taken as {defaults.Coverage_frac:0.##} of the wall");
        if (!section.Has("insulation"))
            section.Reading.Assume($"{called}: blanket insulation not given, taken as {defaults.Insulation_m2K_W:0.##} m²K/W");
        if (!section.Has("supply"))
            section.Reading.Assume($"{called}: blanket supply not given, taken as the 12 V battery");
    }
}
