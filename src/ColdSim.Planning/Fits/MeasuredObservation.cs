using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Fits;

/// <summary>A thermometer or gauge at a cylinder, as one line of the log gives it. [K, or Pa over the air's]</summary>
/// <remarks>
/// It tells how much heat reaches the liquid. Air inside is no observation of a fit: at its set point it tells of the thermostat, and how fast it
/// falls tells of loss over heat capacity, which nobody knows within a factor of two.
/// </remarks>
/// <param name="Measurement">The line.</param>
internal sealed record MeasuredObservation(Measurement Measurement) : FitObservation
{
    // What a parameter must move a temperature by, between the two sides of its step, to be told from the ripple of burner cycles.
    private const double Clear_K = 0.3;

    /// <inheritdoc/>
    public override DateTimeOffset Time => Measurement.Time;

    /// <inheritdoc/>
    public override double Measured => Measurement.Value;

    /// <summary>Place of the cylinder in the scenario, from 0.</summary>
    public int Cylinder => Measurement.Cylinder ?? 0;

    /// <summary>How far one kelvin of the liquid moves it: one, or the slope of the saturation line. [1 or Pa/K]</summary>
    public double PerKelvin { get; } = Measurement.Quantity == MeasuredQuantity.Pressure ? Slope_Pa_K(Measurement.Value) : 1;

    /// <inheritdoc/>
    public override double? Clear => Clear_K * PerKelvin;

    /// <inheritdoc/>
    public override double In(in FitMoment moment)
        => Measurement.Quantity == MeasuredQuantity.Pressure ? moment.Cylinder(Cylinder).Pressure_Pa : moment.Cylinder(Cylinder).Liquid_K;

    /// <summary>The values of a scenario's log that a fit uses.</summary>
    /// <param name="measurements">What was measured beside contents.</param>
    public static IEnumerable<MeasuredObservation> Of(IEnumerable<Measurement> measurements)
        => measurements.Where(m => Measurement.IsOfCylinder(m.Quantity)).OrderBy(m => m.Time).ThenBy(m => m.Line).Select(m => new MeasuredObservation(m));

    // At sea level's air; the slope differs by a few per cent higher up, and only errors are scaled by it.
    private static double Slope_Pa_K(double gauge_Pa)
    {
        double t_K = PropaneSaturation.Temperature_K(gauge_Pa + ConversionFactors.StandardAtmosphere_Pa);
        return PropaneSaturation.Pressure_Pa(t_K + 0.5) - PropaneSaturation.Pressure_Pa(t_K - 0.5);
    }
}

/// <summary>Errors of what was measured at the cylinder about the simulator with the right parameters.</summary>
/// <remarks>
/// The sum of: what the model gets wrong of the liquid every time (films, sky, frost) and each time anew; the instrument's own error, which is
/// the same every time it is read; and for pressures what the gas is made of. Between two cylinders of a rig half of all that is the same: films
/// and gauges may be each one's own, sky and thermometer are not. The sizes are our choice, no source.
/// </remarks>
/// <param name="observations">The observations.</param>
/// <param name="first">Place of the first of them among all.</param>
internal sealed class MeasuredErrors(IReadOnlyList<MeasuredObservation> observations, int first) : IFitErrors
{
    /// <summary>What the model gets wrong of the liquid every time. [K]</summary>
    public const double Lasting_K = 1.5;

    /// <summary>What it gets wrong each time anew. [K]</summary>
    public const double Each_K = 1;

    private const double Grade_frac = 0.03;
    private const double OtherCylinder_frac = 0.5;

    /// <inheritdoc/>
    public void AddTo(Matrix<double> covariance, FitPrediction predicted)
    {
        for (int i = 0; i < observations.Count; i++)
        {
            for (int j = 0; j < observations.Count; j++)
            {
                double common_frac = observations[i].Cylinder == observations[j].Cylinder ? 1 : OtherCylinder_frac;
                covariance[first + i, first + j] += common_frac * Shared(observations[i], observations[j]);
            }

            covariance[first + i, first + i] += Math.Pow(Each_K * observations[i].PerKelvin, 2);
        }
    }

    private static double Shared(MeasuredObservation one, MeasuredObservation other)
    {
        double model = Lasting_K * one.PerKelvin * Lasting_K * other.PerKelvin;
        if (one.Measurement.Quantity != other.Measurement.Quantity)
            return model;
        double instrument = one.Measurement.StandardError * other.Measurement.StandardError;
        return model + instrument + (one.Measurement.Quantity == MeasuredQuantity.Pressure ? Grade_frac * one.Measured * Grade_frac * other.Measured : 0);
    }
}
