using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Supply;

/// <summary>A two-stage regulator by its plate: two spring-loaded orifices in series. SI units, pressures gauge.</summary>
/// <remarks>
/// At the rated flow and rated inlet both orifices are wide open; the second-stage outlet is then one droop below set point,
/// the intermediate pressure one droop below its own.
/// </remarks>
public sealed record RegulatorSpecification
{
    /// <summary>Rated flow as gross heat. [W]</summary>
    public double RatedFlow_W { get; init; } = 160_000 * BtuPerHour_W;

    /// <summary>Inlet gauge pressure at which the rated flow is stated. [Pa gauge]</summary>
    public double RatedInlet_Pa { get; init; } = 30 * Psi_Pa;

    /// <summary>Delivery set point, held at about half the rated flow. [Pa gauge]</summary>
    public double SetPoint_Pa { get; init; } = 11 * InchOfWater_Pa;

    /// <summary>Rise from set point to lock-up, and fall from set point to wide open. [Pa]</summary>
    public double Droop_Pa { get; init; } = 1.1 * InchOfWater_Pa;

    /// <summary>Intermediate set point between the stages. [Pa gauge]</summary>
    public double Intermediate_Pa { get; init; } = 10 * Psi_Pa;

    /// <summary>Rise from the intermediate set point to lock-up, and fall from it to wide open. [Pa]</summary>
    public double IntermediateDroop_Pa { get; init; } = 1.5 * Psi_Pa;
}
