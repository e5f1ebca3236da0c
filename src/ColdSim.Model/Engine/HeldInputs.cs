using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;

namespace ColdSim.Model.Engine;

/// <summary>Inputs of one step: heat transfer to the surroundings, heaters, burners. They are held, but for what the coach feels of the weather at once, which goes on evenly.</summary>
/// <param name="cylinders">How many cylinders.</param>
/// <param name="appliances">How many appliances beside the furnace.</param>
/// <param name="nodes">How many nodes.</param>
internal sealed class HeldInputs(int cylinders, int appliances, int nodes)
{
    private CoachCoupling _coach;

    /// <summary>Heat coupling of each cylinder to its surroundings.</summary>
    public HeatCoupling[] Cylinders { get; } = new HeatCoupling[cylinders];

    /// <summary>The same with the whole shell, of a cylinder without liquid: heat goes over from the one to the other as its vapour leaves saturation.</summary>
    public HeatCoupling[] WholeShells { get; } = new HeatCoupling[cylinders];

    /// <summary>Vapour missing to saturation at which the whole shell counts, of a cylinder without liquid. [kg]</summary>
    public double[] Unsaturated_kg { get; } = new double[cylinders];

    /// <summary>Which cylinders have liquid.</summary>
    public bool[] HasLiquid { get; } = new bool[cylinders];

    /// <summary>Heat that each one's blanket makes. [W]</summary>
    public double[] Blanket_W { get; } = new double[cylinders];

    /// <summary>Power that each appliance takes from a hookup instead of gas. [W]</summary>
    public double[] Electric_W { get; } = new double[appliances];

    /// <summary>Heat that water drawn takes from each node per kelvin above the water that comes in for it. [W/K]</summary>
    public double[] Drain_W_K { get; } = new double[nodes];

    /// <summary>Heat coupling of the coach to its surroundings; by reference, because every stage of every step reads it.</summary>
    public ref CoachCoupling Coach => ref _coach;

    /// <summary>How fast outside air warms. [K/s]</summary>
    public double OutsideDrift_K_s { get; set; }

    /// <summary>How fast sun and wind change what the coach meets.</summary>
    public CoachDrift CoachDrift { get; set; }

    /// <summary>How long before now the weather was as <see cref="Coach"/> and <see cref="Outside_K"/> have it; negative where it will be. [s]</summary>
    public double SinceMiddle_s { get; set; }

    /// <summary>Heat of the other heaters. [W]</summary>
    public double OtherHeat_W { get; set; }

    /// <summary>Power of the furnace's fan, which becomes heat in the air that it moves. [W]</summary>
    public double FanHeat_W { get; set; }

    /// <summary>How long from now the fan runs; infinite where it does not stop by the clock, or stops where the step is landed on. [s]</summary>
    public double FanRuns_s { get; set; } = double.PositiveInfinity;

    /// <summary>Water vapour in outside air. [kg/m³]</summary>
    public double OutsideVapour_kg_m3 { get; set; }

    /// <summary>Outside air, in the middle of the time for which the inputs are held. [K]</summary>
    public double Outside_K { get; set; }

    /// <summary>Air pressure. [Pa]</summary>
    public double AirPressure_Pa { get; set; }

    /// <summary>Whether the furnace burns what it takes.</summary>
    public bool FurnaceLit { get; set; }

    /// <summary>Power of all blankets that are on. [W]</summary>
    public double BlanketPower_W()
    {
        double sum_W = 0;
        foreach (double power_W in Blanket_W) sum_W += power_W;
        return sum_W;
    }
}
