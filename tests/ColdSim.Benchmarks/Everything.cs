using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Coach;
using ColdSim.Model.Electrical;
using ColdSim.Model.Heaters;
using ColdSim.Model.Moisture;
using ColdSim.Model.Nodes;
using ColdSim.Planning;

namespace ColdSim.Benchmarks;

/// <summary>The same fourteen nights with everything a rig can have, all of it invented.</summary>
internal static class Everything
{
    private const double Btu_h = 0.29307107017222;

    private static readonly ClockWindow Morning = new(7 * 3600, 7.3 * 3600), Evening = new(18.5 * 3600, 19.2 * 3600);

    public static Scenario Scenario { get; } = FourteenNights.Scenario with
    {
        Title = "Fourteen nights with everything",
        Rig = Build(FourteenNights.Scenario.Rig),
    };

    private static Rig Build(Rig rig) => rig with
    {
        Cylinders =
        [
            rig.Cylinders[0] with { Blanket = new BlanketSpecification { Power_W = 50, Supply = BlanketSupply.Battery, Hours = [new ClockWindow(2 * 3600, 6 * 3600)] } },
            rig.Cylinders[0] with { Label = "second" },
        ],
        Arrangement = new AutomaticChangeover(),
        Coach = rig.Coach! with
        {
            Ventilation_m3_s = 0.004,
            Covers_W_K = 6,
            CoverHours = [new ClockWindow(20 * 3600, 7 * 3600)],
            Moisture = new MoistureSpecification { Volume_m3 = 35, Sources_kg_s = 0.1 / 3600 },
        },
        Appliances =
        [
            new AbsorptionRefrigerator { Name = "refrigerator", Input_W = 1500 * Btu_h },
            new StorageWaterHeater { Name = "water heater", Input_W = 10_000 * Btu_h, Water_kg = 23, Draws = [new WaterDraw(Morning, 0.04), new WaterDraw(Evening, 0.03)] },
            new OnDemandWaterHeater { Name = "shower", Input_W = 30_000 * Btu_h, Flow_kg_s = 0.05, Hours = [new ClockWindow(7.5 * 3600, 7.6 * 3600)] },
            new Cooker { Name = "stove", Input_W = 7000 * Btu_h, Hours = [Morning, Evening] },
            new Cooker { Name = "oven", Input_W = 7100 * Btu_h, Hours = [Evening] },
            new CatalyticHeater { Name = "catalytic heater", Input_W = 1600 * Btu_h, Hours = [new ClockWindow(19 * 3600, 21 * 3600)] },
        ],
        Heaters = [new OtherHeater { Name = "diesel", Output_W = 1000, Supply = HeaterSupply.OwnFuel, Hours = [new ClockWindow(5 * 3600, 6 * 3600)] }],
        Water =
        [
            new ThermalNode { Name = "wet bay", Capacity_J_K = 60e3, Inside_W_K = 6, Outside_W_K = 4, Duct_frac = 0.06 },
            new ThermalNode { Name = "line", Capacity_J_K = 1600, Water_kg = 0.38, Bay = 0, Bay_W_K = 1.2, IceLength_m = 3 },
            new ThermalNode { Name = "fresh water", Capacity_J_K = 320e3, Water_kg = 76, Bay = 0, Bay_W_K = 1.5 },
        ],
        Power = new PowerSpecification
        {
            Battery = BatterySpecification.Of(BatteryChemistry.LithiumIronPhosphate, 200 * NominalVoltage.AmpereHour_J),
            Panels = [new SolarPanelSpecification { Rated_W = 300, Tilt_rad = Math.PI / 3 }],
            Loads = [new ElectricLoad { Name = "boards", Power_W = 8 }, new ElectricLoad { Name = "lights", Power_W = 20, Hours = [Evening] }],
            Converter = new ConverterSpecification(),
            Generator = new GeneratorSpecification { Rated_W = 2500, Hours = [new ClockWindow(10 * 3600, 20 * 3600)] },
        },
    };
}
