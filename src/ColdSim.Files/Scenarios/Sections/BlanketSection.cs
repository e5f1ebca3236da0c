using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Blanket;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[cylinder.blanket]</c>: an electric blanket around a cylinder.</summary>
internal static class BlanketSection
{
    private static readonly BlanketSpecification Usual = new() { Power_W = 0 };

    private static readonly QuantityKey Power = new("power", Dimension.Power, "0 W", "2 kW", KeyDefault.Needed, "while it is on")
    {
        Usual = new(null, "600 W", UnusualValue.FromMemory),
    };

    private static readonly QuantityKey On = new(
        "on", Dimension.Temperature, "-20 °C", "40 °C", KeyDefault.Of(Usual.On_K, "°C"), "its thermostat switches on here")
    {
        Assumed = "{who}: blanket thermostat not given; assumed on at {value}",
    };

    private static readonly QuantityKey Off = new(
        "off", Dimension.Temperature, "-20 °C", "45 °C", KeyDefault.Of(Usual.Off_K, "°C"), "and off here");

    private static readonly QuantityKey Coverage = new(
        "coverage", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.Coverage_frac, ""), "part of the wall that it covers, the same from bottom to top")
    {
        Assumed = "{who}: blanket coverage not given; assumed {value} of the wall",
    };

    private static readonly QuantityKey Insulation = new(
        "insulation", Dimension.ThermalInsulance, "0 m²K/W", "10 m²K/W", KeyDefault.Of(Usual.Insulation_m2K_W, "m²K/W"), "outside its element")
    {
        Assumed = "{who}: blanket insulation not given; assumed {value}",
    };

    private static readonly ChoiceKey<BlanketSupply> Supply = new(
        "supply", Usual.Supply, "what it runs on; shore power is there where `[place]` has `hookup`",
        ("12 V", BlanketSupply.Battery), ("shore", BlanketSupply.ShorePower))
    {
        Assumed = "{who}: blanket supply not given; assumed the {value} battery",
    };

    private static readonly SpansKey Hours = new("hours", KeyDefault.Of("always"), "when it has power");

    private static readonly FlagKey StuckOn = new("stuck_on", Usual.StuckOn, "a thermostat that has failed: it heats whenever it has power");

    public static readonly ScenarioSection Declared = new(
        "blanket", TableForm.One, "an electric blanket around a cylinder", [Power, On, Off, Coverage, Insulation, Supply, Hours, StuckOn]);

    public static BlanketSpecification? Read(SectionReader section, string called)
    {
        BlanketSpecification blanket = new()
        {
            Power_W = section.Get(Power, 0),
            On_K = section.GetOrDefault(On),
            Off_K = section.GetOrDefault(Off),
            Coverage_frac = section.GetOrDefault(Coverage),
            Insulation_m2K_W = section.GetOrDefault(Insulation),
            Supply = section.GetOrDefault(Supply),
            Hours = section.Get(Hours) ?? Usual.Hours,
            StuckOn = section.GetOrDefault(StuckOn),
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (!section.Has(Power))
            section.Lacks(Power, Power.Accepted);
        if (blanket.Off_K <= blanket.On_K)
            section.Report(section.Has(Off) ? Off : On, "the blanket's thermostat switches off at or below where it switches on", "accepted: off above on");
        if (!section.Has(Off))
            section.Assume(On, called, $"{On.DefaultShown} and off at {Off.DefaultShown}");
        section.Assume(Coverage, called);
        section.Assume(Insulation, called);
        section.Assume(Supply, called);
        if (blanket.StuckOn)
            section.Reading.Warn($"{called}: the blanket's thermostat is stuck on: it heats whenever it has power");
        return blanket;
    }
}
