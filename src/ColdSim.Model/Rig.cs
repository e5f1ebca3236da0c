using ColdSim.Model.Appliances;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Electrical;
using ColdSim.Model.Furnace;
using ColdSim.Model.Gas;
using ColdSim.Model.Heaters;
using ColdSim.Model.Nodes;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;

namespace ColdSim.Model;

/// <summary>The whole system: cylinders, regulator, appliances, coach and site.</summary>
/// <remarks>The coach and the furnace may be left out; a furnace needs a coach and a thermostat.</remarks>
public sealed record Rig
{
    /// <summary>Most cylinders that a rig may have.</summary>
    public const int MostCylinders = 4;

    /// <summary>The site.</summary>
    public SiteSpecification Site { get; init; } = new();

    /// <summary>The gas.</summary>
    public GasSpecification Gas { get; init; } = new();

    /// <summary>The cylinders, in the order in which they are used; one to <see cref="MostCylinders"/>.</summary>
    public required IReadOnlyList<CylinderSpecification> Cylinders { get; init; }

    /// <summary>The cover or locker round them; null where they are in the open.</summary>
    public EnclosureSpecification? Enclosure { get; init; }

    /// <summary>What to call each cylinder, in their order.</summary>
    public IReadOnlyList<string> CylinderNames() => [.. Enumerable.Range(0, Cylinders.Count).Select(NameOf)];

    /// <summary>What to call a cylinder: its own name, its size, or its size and number where others have the same.</summary>
    /// <param name="place">Its place, from 0.</param>
    public string NameOf(int place)
    {
        CylinderSpecification cylinder = Cylinders[place];
        if (cylinder.Label is { } label) return label;
        int alike = 0, number = 0;
        for (int i = 0; i < Cylinders.Count; i++)
        {
            if (Cylinders[i].Label is not null || Cylinders[i].Name != cylinder.Name) continue;
            alike++;
            if (i <= place) number++;
        }

        return alike == 1 ? cylinder.Name : FormattableString.Invariant($"{cylinder.Name} no. {number}");
    }

    /// <summary>Arrangement of the cylinders at the regulator.</summary>
    public CylinderArrangement Arrangement { get; init; } = new OneAtATime();

    /// <summary>The regulator.</summary>
    public RegulatorSpecification Regulator { get; init; } = new();

    /// <summary>Least pressure before the regulator, from its plate or by its type. [Pa gauge]</summary>
    public double MinimumInlet_Pa => Regulator.MinimumInletOf_Pa(Arrangement is AutomaticChangeover);

    /// <summary>The coach, or null.</summary>
    public CoachSpecification? Coach { get; init; }

    /// <summary>The thermostat; needed with a furnace.</summary>
    public ThermostatSpecification? Thermostat { get; init; }

    /// <summary>The furnace, or null.</summary>
    public FurnaceSpecification? Furnace { get; init; }

    /// <summary>What the furnace's fan draws while it runs; 0 without a furnace. [W]</summary>
    public double FurnaceFan_W
        => Furnace is null ? 0 : (Furnace.FanCurrent_A ?? FurnaceSpecification.UsualFanCurrent_A(Furnace.Input_W)) * NominalVoltage.Bus_V;

    /// <summary>Burners beside the furnace.</summary>
    public IReadOnlyList<GasAppliance> Appliances { get; init; } = [];

    /// <summary>The 12 V side; null where power is assumed to be available.</summary>
    public PowerSpecification? Power { get; init; }

    /// <summary>Heat from neither.</summary>
    public IReadOnlyList<OtherHeater> Heaters { get; init; } = [];

    /// <summary>Wet bays, and the pipes and tanks in them; a bay comes before what lies in it.</summary>
    public IReadOnlyList<ThermalNode> Water { get; init; } = [];

    /// <summary>How many places for what takes gas: the furnace's, also where there is none, the appliances', and a generator's.</summary>
    public int GasPlaces => 1 + Appliances.Count + (Power?.Generator is null ? 0 : 1);

    /// <summary>Every node beside coach and cylinders: the appliances' in their order, then the water.</summary>
    public IReadOnlyList<ThermalNode> Nodes() => [.. Appliances.Select(a => a.Node).OfType<ThermalNode>(), .. Water];

    /// <summary>Name of the gas consumer at a place, for messages.</summary>
    /// <param name="gasPlace">0 for the furnace, then the appliances in their order, then a generator.</param>
    public string GasConsumerOf(int gasPlace) => gasPlace == 0 ? "furnace" : gasPlace > Appliances.Count ? "generator" : Appliances[gasPlace - 1].Name;

    /// <summary>Delivery pressure below which what takes gas at a place loses its flame. [Pa gauge]</summary>
    /// <param name="gasPlace">0 for the furnace, then the appliances in their order.</param>
    public double MinimumPressureOf_Pa(int gasPlace)
        => gasPlace > Appliances.Count ? Power!.Generator!.MinimumPressure_Pa
            : gasPlace > 0 ? Appliances[gasPlace - 1].MinimumPressure_Pa : Furnace?.DropOutPressure_Pa ?? double.NegativeInfinity;

    /// <summary>Who is up when.</summary>
    public Occupancy Occupancy { get; init; } = new();
}
