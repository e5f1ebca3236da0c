using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model.Appliances;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[water_heater]]</c>: a tank of hot water over a burner.</summary>
internal static class WaterHeaterSection
{
    private const double MostDrawn_m3_s = 30e-3 / 60;
    private const string AcceptedDraw = "accepted: a span and a flow up to 30 L/min, such as \"07:00-07:10 4 L/min\"";

    private static readonly StorageWaterHeater Usual = new() { Name = "", Input_W = 0, Water_kg = 0 };

    public static readonly TextKey Name = OwnNames.Key("water heater", ApplianceKeys.AnotherName);

    private static readonly QuantityKey Volume = new(
        "volume", Dimension.Volume, "1 L", "300 L", KeyDefault.Quantity("6 gal"), "water in its tank; 6 and 10 gal are common")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Input = new(
        "input", Dimension.Power, "300 W", "30 kW", KeyDefault.Quantity("8,800 BTU/h"), "of the burner; 8,800 to 12,000 BTU/h are common")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Efficiency = new(
        "efficiency", Dimension.Ratio, "0.3", "1", KeyDefault.Of(Usual.Efficiency_frac, ""), "heat to the water per heat of gas")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey SetPoint = new(
        "set_point", Dimension.Temperature, "30 °C", "85 °C", KeyDefault.Of(Usual.SetPoint_K, "°C"), "that its thermostat keeps")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Differential = new(
        "differential", Dimension.TemperatureDifference, "1 K", "30 K", KeyDefault.Of(Usual.Differential_K, "K"), "whole band between on and off");

    private static readonly QuantityKey StandingLoss = new(
        "standing_loss", Dimension.Conductance, "0.1 W/K", "30 W/K", KeyDefault.Of(Usual.StandingLoss_W_K, "W/K"),
        "from the tank; 150 to 400 BTU/h when hot are common")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey LossInside = new(
        "loss_inside", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.LossInside_frac, ""),
        "part of it that warms the coach; the rest leaves through the outside door");

    private static readonly SpansKey Draws = new(
        "draws", KeyDefault.None, "hot water drawn: `\"07:00-07:10 4 L/min\"`, `\"19:00-19:05 1.5 gal/min\"`")
    {
        HasFlow = true,
        Accepts = "flow up to 30 L/min",
        Assumed = "{who}: draws not given, no hot water is drawn",
    };

    private static readonly QuantityKey Cold = new(
        "cold_water", Dimension.Temperature, "0 °C", "30 °C", KeyDefault.Of(Usual.Cold_K, "°C"), "that comes in for it")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Start = new(
        "temperature", Dimension.Temperature, "0 °C", "85 °C", KeyDefault.Of("the set point"), "of the tank at the start");

    private static readonly QuantityKey Electric = new(
        "electric", Dimension.Power, "0 W", "5 kW", KeyDefault.Of(Usual.ElectricInput_W, "W"), "of its element, used instead of gas on a hookup");

    public static readonly ScenarioSection Declared = new(
        "water_heater", TableForm.Many, "a tank of hot water over a burner",
        [
            Name, Volume, Input, Efficiency, SetPoint, Differential, StandingLoss, LossInside, Draws, Cold, Start, ApplianceKeys.Hours, Electric,
            ApplianceKeys.NeedsPower, .. ApplianceKeys.Plate,
        ]);

    public static StorageWaterHeater Read(SectionReader section, int number, OwnNames names)
    {
        StorageWaterHeater read = new()
        {
            Name = names.Of(section, Name, "water heater", number),
            Input_W = section.GetOrDefault(Input),
            Water_kg = section.GetOrDefault(Volume) * Water.Density_kg_m3,
            Efficiency_frac = section.GetOrDefault(Efficiency),
            SetPoint_K = section.GetOrDefault(SetPoint),
            Differential_K = section.GetOrDefault(Differential),
            StandingLoss_W_K = section.GetOrDefault(StandingLoss),
            LossInside_frac = section.GetOrDefault(LossInside),
            Draws = ReadDraws(section),
            Cold_K = section.GetOrDefault(Cold),
            Initial_K = section.Get(Start),
            Hours = section.Get(ApplianceKeys.Hours) ?? Usual.Hours,
            ElectricInput_W = section.GetOrDefault(Electric),
            NeedsPower = section.GetOrDefault(ApplianceKeys.NeedsPower),
        };
        section.Assume(Volume, read.Name);
        section.Assume(Input, read.Name);
        section.Assume(Efficiency, read.Name);
        section.Assume(SetPoint, read.Name);
        section.Assume(StandingLoss, read.Name);
        section.Assume(Draws, read.Name);
        if (section.Has(Draws))
            section.Assume(Cold, read.Name);
        return ApplianceKeys.Over(section, read);
    }

    private static IReadOnlyList<WaterDraw> ReadDraws(SectionReader section) => section.Value(Draws) switch
    {
        null => Usual.Draws,
        TomlList list => [.. list.Items.Select(i => ReadDraw(section, i)).OfType<WaterDraw>()],
        { } one => ReadDraw(section, one) is { } draw ? [draw] : [],
    };

    private static WaterDraw? ReadDraw(SectionReader section, TomlValue value)
    {
        if (value is not TomlText text)
        {
            section.Reading.Report(value.Place, $"'{Draws.Name}' is {value.Kind}", AcceptedDraw);
            return null;
        }
        string[] parts = text.Value.Trim().Split(' ', 2);
        if (ClockText.Window(parts[0]) is { } window && parts.Length == 2)
        {
            if (SiText.Read(parts[1], Dimension.VolumeFlow, out double flow_m3_s) is { } fault)
            {
                section.Reading.Report(value.Place, $"'{Draws.Name}': {fault.What}", fault.Accepted, fault.Nearest);
                return null;
            }
            if (flow_m3_s is > 0 and <= MostDrawn_m3_s)
                return new WaterDraw(window, flow_m3_s * Water.Density_kg_m3);
        }
        section.Reading.Report(value.Place, $"'{Draws.Name}' is \"{Quote.Of(text.Value)}\"", AcceptedDraw);
        return null;
    }
}
