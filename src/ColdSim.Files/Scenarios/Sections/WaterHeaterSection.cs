using ColdSim.Files.Quantities;
using ColdSim.Model.Appliances;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[water_heater]]</c>: a tank of hot water over a burner.</summary>
internal static class WaterHeaterSection
{
    private const double Gallon_m3 = 3.785411784e-3;
    private const double Water_gal = 6;
    private const double Input_Btu_h = 8800;
    private const double Btu_h = 0.29307107017222;

    private static readonly QuantityKey Volume = new("volume", Dimension.Volume, "1 L", "300 L");
    private static readonly QuantityKey Input = new("input", Dimension.Power, "300 W", "30 kW");
    private static readonly QuantityKey Efficiency = new("efficiency", Dimension.Ratio, "0.3", "1");
    private static readonly QuantityKey SetPoint = new("set_point", Dimension.Temperature, "30 °C", "85 °C");
    private static readonly QuantityKey Differential = new("differential", Dimension.TemperatureDifference, "1 K", "30 K");
    private static readonly QuantityKey StandingLoss = new("standing_loss", Dimension.Conductance, "0.1 W/K", "30 W/K");
    private static readonly QuantityKey LossInside = new("loss_inside", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey Cold = new("cold_water", Dimension.Temperature, "0 °C", "30 °C");
    private static readonly QuantityKey Start = new("temperature", Dimension.Temperature, "0 °C", "85 °C");
    private static readonly QuantityKey Electric = new("electric", Dimension.Power, "0 W", "5 kW");

    public static StorageWaterHeater Read(SectionReader section, int number, OwnNames names)
    {
        StorageWaterHeater usual = new()
        {
            Name = names.Of(section, "water heater", number),
            Input_W = Input_Btu_h * Btu_h,
            Water_kg = Water_gal * Gallon_m3 * Water.Density_kg_m3,
        };
        StorageWaterHeater read = usual with
        {
            Input_W = section.Get(Input, usual.Input_W),
            Water_kg = section.Get(Volume, Water_gal * Gallon_m3) * Water.Density_kg_m3,
            Efficiency_frac = section.Get(Efficiency, usual.Efficiency_frac),
            SetPoint_K = section.Get(SetPoint, usual.SetPoint_K),
            Differential_K = section.Get(Differential, usual.Differential_K),
            StandingLoss_W_K = section.Get(StandingLoss, usual.StandingLoss_W_K),
            LossInside_frac = section.Get(LossInside, usual.LossInside_frac),
            Draws = section.Draws("draws") ?? usual.Draws,
            Cold_K = section.Get(Cold, usual.Cold_K),
            Initial_K = section.Get(Start),
            Hours = section.Spans("hours") ?? usual.Hours,
            ElectricInput_W = section.Get(Electric, usual.ElectricInput_W),
            NeedsPower = section.Flag("needs_power") ?? true,
        };
        ApplianceKeys.Assume(section, read.Name, "volume", $"{Water_gal} gal");
        ApplianceKeys.Assume(section, read.Name, "input", $"{Input_Btu_h:#,0} BTU/h");
        ApplianceKeys.Assume(section, read.Name, "efficiency", $"{usual.Efficiency_frac}");
        ApplianceKeys.Assume(section, read.Name, "set_point", $"{usual.SetPoint_K - Water.Freezing_K:0.#} °C");
        ApplianceKeys.Assume(section, read.Name, "standing_loss", $"{usual.StandingLoss_W_K} W/K");
        if (!section.Has("draws"))
            section.Reading.Assume($"{read.Name}: draws not given, no hot water is drawn");
        else
            ApplianceKeys.Assume(section, read.Name, "cold_water", $"{usual.Cold_K - Water.Freezing_K:0.#} °C");
        return ApplianceKeys.Over(section, read);
    }
}
