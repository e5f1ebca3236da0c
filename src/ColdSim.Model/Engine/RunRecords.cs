using System.Diagnostics.CodeAnalysis;

namespace ColdSim.Model.Engine;

/// <summary>How things stand at an instant of a run. SI units, pressures gauge.</summary>
/// <param name="Time_s">Seconds since the run's start. [s]</param>
/// <param name="Outside_K">Outside air. [K]</param>
/// <param name="Wind_m_s">Wind at mast height. [m/s]</param>
/// <param name="Inside_K">Inside air; NaN without a coach. [K]</param>
/// <param name="SetPoint_K">Set point; NaN without a thermostat. [K]</param>
/// <param name="CylinderPressure_Pa">Before the regulator, on the service side where there are two. [Pa gauge]</param>
/// <param name="DeliveryPressure_Pa">At the appliances. [Pa gauge]</param>
/// <param name="Propane_kg">Propane left in all cylinders. [kg]</param>
/// <param name="InUse">Place of the cylinder in use: the open one, the service side, or the first with liquid of those open together.</param>
/// <param name="Cylinders">Each cylinder.</param>
public record struct Snapshot(
    double Time_s,
    double Outside_K,
    double Wind_m_s,
    double Inside_K,
    double SetPoint_K,
    double CylinderPressure_Pa,
    double DeliveryPressure_Pa,
    double Propane_kg,
    int InUse,
    CylinderReadings Cylinders)
{
    private CylinderReadings _cylinders = Cylinders;

    /// <summary>Each cylinder.</summary>
    public CylinderReadings Cylinders
    {
        readonly get => _cylinders;
        set => _cylinders = value;
    }

    /// <summary>Liquid and shell of the cylinder in use. [K]</summary>
    public readonly double Liquid_K => _cylinders[InUse].Liquid_K;

    /// <summary>One cylinder, where it stands: nothing is copied.</summary>
    /// <param name="i">Its place.</param>
    [UnscopedRef]
    public readonly ref readonly CylinderReading Cylinder(int i) => ref _cylinders[i];

    /// <summary>Writes one cylinder where it stands.</summary>
    /// <param name="i">Its place.</param>
    /// <param name="reading">How it stands.</param>
    internal void Set(int i, in CylinderReading reading) => _cylinders[i] = reading;
}

/// <summary>Somebody who watches a run, step by step and event by event.</summary>
public interface IRunObserver
{
    /// <summary>A step was accepted.</summary>
    /// <param name="record">What it was; filled anew by the next one, so copy what is kept.</param>
    void Stepped(StepRecord record);

    /// <summary>Something happened.</summary>
    /// <param name="happened">What and when.</param>
    /// <param name="snapshot">How things stood.</param>
    void Happened(in SimulationEvent happened, in Snapshot snapshot);
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

    /// <summary>How cylinders and coach stand at the start; null takes it from their specifications.</summary>
    public RigState? From { get; init; }
}

/// <summary>How a run ended.</summary>
/// <param name="End">Why.</param>
/// <param name="Ended_s">When, since its start. [s]</param>
/// <param name="Ledger">How well it closes.</param>
public readonly record struct SimulationResult(RunEnd End, double Ended_s, LedgerBalance Ledger);
