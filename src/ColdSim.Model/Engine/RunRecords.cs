namespace ColdSim.Model.Engine;

/// <summary>How things stand at an instant of a run. SI units, pressures gauge.</summary>
/// <param name="Time_s">Seconds since the run's start. [s]</param>
/// <param name="Outside_K">Outside air. [K]</param>
/// <param name="Wind_m_s">Wind at mast height. [m/s]</param>
/// <param name="Inside_K">Inside air; NaN without a coach. [K]</param>
/// <param name="SetPoint_K">Set point; NaN without a thermostat. [K]</param>
/// <param name="Liquid_K">Liquid and shell. [K]</param>
/// <param name="CylinderPressure_Pa">Cylinder. [Pa gauge]</param>
/// <param name="DeliveryPressure_Pa">At the appliances. [Pa gauge]</param>
/// <param name="Propane_kg">Propane left. [kg]</param>
/// <param name="FrostMass_kg_m2">Frost on the wall. [kg/m²]</param>
/// <param name="FrostThickness_m">Its depth. [m]</param>
public readonly record struct Moment(
    double Time_s,
    double Outside_K,
    double Wind_m_s,
    double Inside_K,
    double SetPoint_K,
    double Liquid_K,
    double CylinderPressure_Pa,
    double DeliveryPressure_Pa,
    double Propane_kg,
    double FrostMass_kg_m2,
    double FrostThickness_m);

/// <summary>One accepted step of a run: how it stood before and after, and what went on between.</summary>
/// <param name="From">Before.</param>
/// <param name="To">After.</param>
/// <param name="Asked_W">Gas asked for, as gross heat. [W]</param>
/// <param name="Given_W">Gas given, as gross heat, mean of the step. [W]</param>
/// <param name="HeatIntoCylinder_W">Heat from outside into liquid and shell, mean of the step. [W]</param>
/// <param name="BurnerLit">Whether the furnace burnt.</param>
/// <param name="Undersupplied">Whether an appliance asked and did not get.</param>
public readonly record struct StepRecord(
    Moment From, Moment To, double Asked_W, double Given_W, double HeatIntoCylinder_W, bool BurnerLit, bool Undersupplied);

/// <summary>Somebody who watches a run, step by step and event by event.</summary>
public interface IRunObserver
{
    /// <summary>A step was accepted.</summary>
    void Stepped(in StepRecord record);

    /// <summary>Something happened.</summary>
    /// <param name="happened">What and when.</param>
    /// <param name="moment">How things stood.</param>
    void Happened(in SimulationEvent happened, in Moment moment);
}

/// <summary>How a run is to be made.</summary>
public sealed record SimulationSettings
{
    /// <summary>The first instant; its offset is the clock of the run.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>How long. [s]</summary>
    public required double Duration_s { get; init; }

    /// <summary>Longest step. [s]</summary>
    public required double Step_s { get; init; }

    /// <summary>Part of the asked gas below which an appliance is undersupplied.</summary>
    public required double Undersupplied_frac { get; init; }
}

/// <summary>How a run ended.</summary>
/// <param name="End">Why.</param>
/// <param name="Ended_s">When, since its start. [s]</param>
/// <param name="Ledger">How well it closes.</param>
public readonly record struct SimulationResult(RunEnd End, double Ended_s, LedgerBalance Ledger);
