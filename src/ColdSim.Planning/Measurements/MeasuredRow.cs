using ColdSim.Model;
using ColdSim.Model.Electrical;

namespace ColdSim.Planning.Measurements;

/// <summary>The part of the rig that a measured value speaks of, and so what may be wrong where it differs.</summary>
internal enum MeasuredCause
{
    /// <summary>The coach: the air inside.</summary>
    Coach,

    /// <summary>A cylinder: pressure, liquid, wall.</summary>
    Cylinder,

    /// <summary>The battery: voltage.</summary>
    Battery,
}

/// <summary>Why a measured value is not compared.</summary>
internal enum NotCompared
{
    /// <summary>It is.</summary>
    No,

    /// <summary>Nothing was run at its time: it lies outside the weather, or before the start and the first reading of contents.</summary>
    NotRun,

    /// <summary>The scenario has no coach.</summary>
    WithoutCoach,

    /// <summary>The scenario has no battery.</summary>
    WithoutBattery,

    /// <summary>A voltage while something was drawn or charged: the model has charge and no voltage curve.</summary>
    NotAtRest,

    /// <summary>A battery for which no published voltage by charge holds: gel, AGM, lithium.</summary>
    Chemistry,
}

/// <summary>A measured value beside what a run has at its time.</summary>
/// <param name="Measurement">What was measured.</param>
/// <param name="Computed">What the run has; null where it is not compared.</param>
/// <param name="Why">Why it is not compared.</param>
/// <param name="Cylinder">Name of the cylinder it was measured at; null where it is none's.</param>
internal sealed record MeasuredRow(Measurement Measurement, ComputedValue? Computed, NotCompared Why, string? Cylinder)
{
    /// <summary>What it speaks of.</summary>
    public MeasuredCause Cause => CauseOf(Measurement.Quantity);

    /// <summary>Measured less computed, in the unit of the measured value; null where it is not compared.</summary>
    public double? Difference => Computed is { } computed ? Measurement.Value - computed.Value : null;

    /// <summary>Standard error of the difference: the measured value's and the run's scatter around its time; null where it is not compared.</summary>
    /// <remarks>Errors of the model are not in it: they are what the difference is to show.</remarks>
    public double? StandardError => Computed is not { } computed ? null
        : Math.Sqrt(Measurement.StandardError * Measurement.StandardError + computed.Scatter * computed.Scatter + TableError * TableError);

    /// <summary>The difference in its standard errors; null where it is not compared.</summary>
    public double? Times => Difference / StandardError;

    private double TableError => Measurement.Quantity == MeasuredQuantity.Voltage ? LeadAcidRestVoltage.Error_V : 0;

    /// <summary>The part of the rig that a quantity speaks of.</summary>
    /// <param name="quantity">The quantity.</param>
    public static MeasuredCause CauseOf(MeasuredQuantity quantity) => quantity switch
    {
        MeasuredQuantity.Inside => MeasuredCause.Coach,
        MeasuredQuantity.Voltage => MeasuredCause.Battery,
        _ => MeasuredCause.Cylinder,
    };

    /// <summary>The row of a value.</summary>
    /// <param name="measured">The value.</param>
    /// <param name="computed">What the run has; null where it was not run.</param>
    /// <param name="rig">The rig, its cylinders in the order that the value counts them in.</param>
    public static MeasuredRow Of(Measurement measured, ComputedValue? computed, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(rig);
        NotCompared why = WhyNot(measured, rig);
        if (why == NotCompared.No && computed is null)
            why = NotCompared.NotRun;
        return new(measured, why == NotCompared.No ? computed : null, why, measured.Cylinder is { } place ? rig.NameOf(place) : null);
    }

    private static NotCompared WhyNot(Measurement measured, Rig rig) => measured.Quantity switch
    {
        MeasuredQuantity.Inside => rig.Coach is null ? NotCompared.WithoutCoach : NotCompared.No,
        MeasuredQuantity.Voltage => rig.Power is not { } power ? NotCompared.WithoutBattery
            : power.Battery.Chemistry != BatteryChemistry.Flooded ? NotCompared.Chemistry
            : measured.Rested ? NotCompared.No : NotCompared.NotAtRest,
        _ => NotCompared.No,
    };
}
