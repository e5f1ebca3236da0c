using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Engine;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Capacity;

/// <summary>Cylinders that feed one constant draw and nothing else: the rig, the weather, the state it starts from, and what ends the draw. SI units.</summary>
internal sealed record DrawConditions
{
    /// <summary>The rig; of it cylinders, arrangement, regulator, gas and people count, its burners and its coach do not.</summary>
    public required Rig Rig { get; init; }

    /// <summary>The weather.</summary>
    public required WeatherSeries Weather { get; init; }

    /// <summary>When the draw begins.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>State when it begins; null for cylinders as full as their specifications say and as cold as the air.</summary>
    public RigState? From { get; init; }

    /// <summary>Delivery pressure that the draw has to have. [Pa gauge]</summary>
    public double Delivery_Pa { get; init; } = UsualDelivery_Pa;

    /// <summary>A liquid this cold ends the draw too; 0 for the regulator's need alone. [K]</summary>
    public double ColdestLiquid_K { get; init; }

    /// <summary>What an appliance needs for its full flow, unless stated: 10.5 inches of water. [Pa gauge]</summary>
    public const double UsualDelivery_Pa = 10.5 * ConversionFactors.InchOfWater_Pa;

    private static readonly string DrawName = "constant draw";

    /// <summary>The rig with nothing at the regulator but a constant draw.</summary>
    /// <param name="draw_W">The draw, as gross heat. [W]</param>
    internal Rig With(double draw_W) => Rig with
    {
        Coach = null,
        Thermostat = null,
        Furnace = null,
        Heaters = [],
        Water = [],
        Power = null,
        Appliances = [new ConstantDraw { Name = DrawName, Input_W = draw_W, FullPressure_Pa = Delivery_Pa, MinimumPressure_Pa = 0.5 * Delivery_Pa }],
    };
}
