using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Model.Gas;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;

namespace ColdSim.Model;

/// <summary>Everything that stands there: the cylinder outside, the coach and what burns inside it.</summary>
/// <remarks>The coach and the furnace may be left out; a furnace needs a coach and a thermostat.</remarks>
public sealed record Rig
{
    /// <summary>Where it stands.</summary>
    public SiteSpecification Site { get; init; } = new();

    /// <summary>The gas.</summary>
    public GasSpecification Gas { get; init; } = new();

    /// <summary>The cylinder.</summary>
    public required CylinderSpecification Cylinder { get; init; }

    /// <summary>The regulator.</summary>
    public RegulatorSpecification Regulator { get; init; } = new();

    /// <summary>The coach, or null.</summary>
    public CoachSpecification? Coach { get; init; }

    /// <summary>The thermostat; needed with a furnace.</summary>
    public ThermostatSpecification? Thermostat { get; init; }

    /// <summary>The furnace, or null.</summary>
    public FurnaceSpecification? Furnace { get; init; }

    /// <summary>Draws at a known rate.</summary>
    public IReadOnlyList<ConstantDraw> Draws { get; init; } = [];

    /// <summary>Who is up when.</summary>
    public Occupancy Occupancy { get; init; } = new();
}
