using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Nodes;
using ColdSim.Physics.Freezing;
using static ColdSim.Tests.Model.Rigs;

namespace ColdSim.Tests.Model.Appliances;

/// <summary>A rig with every kind of burner and with water inside, outside and in a bay.</summary>
internal static class Everything
{
    private const double Hour_s = 3600;

    public static Rig Rig => Heated(20_000) with
    {
        Cylinders = [Bottle("40 lb", 0.7)],
        Appliances =
        [
            Draw(600, 0.2), Refrigerator, Heater(Draws),
            new OnDemandWaterHeater { Name = "shower", Input_W = 12_000, Flow_kg_s = 0.06, Hours = [At(17, 17.2)] },
            new Cooker { Name = "stove", Input_W = 4000, Hours = [At(7, 7.5), At(18, 18.75)] },
            new CatalyticHeater { Name = "panel", Input_W = 900, OwnThermostat = new SwitchBand(292.15, 294.15), Hours = [At(17, 23)] },
        ],
        Water = [Bay(0.08), Pipe(0, 3), Pipe(-1, 2) with { Name = "outside" }, Tank(100, 8)],
    };

    public static AbsorptionRefrigerator Refrigerator => new() { Name = "refrigerator", Input_W = 1500 * Btu_h };

    public static WaterDraw[] Draws => [new(At(7, 7.1), 0.09), new(At(19, 19.1), 0.07)];

    public static StorageWaterHeater Heater(params WaterDraw[] draws)
        => new() { Name = "water heater", Input_W = 8800 * Btu_h, Water_kg = 22.7, Draws = draws };

    /// <summary>A bay of its own temperature.</summary>
    /// <param name="duct_frac">Part of the furnace's heat.</param>
    public static ThermalNode Bay(double duct_frac)
        => new() { Name = "belly", Capacity_J_K = 20e3, Inside_W_K = 4, Outside_W_K = 9, Duct_frac = duct_frac };

    /// <summary>A bare pipe of half an inch of water.</summary>
    /// <param name="bay">Its bay; -1 for outside.</param>
    /// <param name="length_m">How long. [m]</param>
    /// <param name="film_W_m2K">Outside it. [W/(m²·K)]</param>
    /// <param name="diameter_m">Of the water and, as it has no wall, of the pipe. [m]</param>
    public static ThermalNode Pipe(int bay, double length_m, double film_W_m2K = 10, double diameter_m = 0.0127)
    {
        double water_kg = 0.25 * Math.PI * diameter_m * diameter_m * length_m * Water.Density_kg_m3;
        double conductance_W_K = length_m * PipeConductance.PerLength_W_mK(diameter_m, 0, 0.035, film_W_m2K);
        return new()
        {
            Name = "pipe",
            Capacity_J_K = water_kg * Water.SpecificHeat_J_kgK,
            Water_kg = water_kg,
            IceLength_m = length_m,
            Outside_W_K = bay < 0 ? conductance_W_K : 0,
            Bay = bay,
            Bay_W_K = bay < 0 ? 0 : conductance_W_K,
        };
    }

    /// <summary>A tank outside.</summary>
    public static ThermalNode Tank(double water_kg, double conductance_W_K) => new()
    {
        Name = "tank",
        Capacity_J_K = water_kg * Water.SpecificHeat_J_kgK,
        Water_kg = water_kg,
        Outside_W_K = conductance_W_K,
    };

    /// <summary>A span of the clock. [h]</summary>
    public static ClockWindow At(double from, double to) => new(from * Hour_s, to * Hour_s);
}
