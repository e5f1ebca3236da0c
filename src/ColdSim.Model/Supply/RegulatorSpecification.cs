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

    /// <summary>Least inlet pressure on the plate; null takes that of its type. [Pa gauge]</summary>
    public double? MinimumInlet_Pa { get; init; }

    /// <summary>Whether it shuts below the least inlet; else the spring law goes on, which no plate promises.</summary>
    public bool ShutsBelowMinimum { get; init; }

    /// <summary>Pressure lost in the pigtail between a cylinder and the regulator at the rated flow and inlet. [Pa]</summary>
    public double PigtailLoss_Pa { get; init; }

    /// <summary>Pressure lost in hose and pipe between the regulator and the appliances at the rated flow. [Pa]</summary>
    public double HoseLoss_Pa { get; init; }

    /// <summary>The least inlet of a two-stage regulator where no plate is known; common practice, no source. [Pa gauge]</summary>
    public const double UsualMinimumInlet_Pa = 5 * Psi_Pa;

    /// <summary>The same of an automatic changeover, whose two sides are set apart; common practice, no source. [Pa gauge]</summary>
    public const double UsualChangeoverMinimumInlet_Pa = 10 * Psi_Pa;

    /// <summary>The least inlet, from the plate or by the type. [Pa gauge]</summary>
    /// <param name="changeover">Whether it is an automatic changeover.</param>
    public double MinimumInletOf_Pa(bool changeover) => MinimumInlet_Pa ?? (changeover ? UsualChangeoverMinimumInlet_Pa : UsualMinimumInlet_Pa);
}
