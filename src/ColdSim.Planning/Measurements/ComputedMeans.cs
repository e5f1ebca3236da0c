using ColdSim.Model;
using ColdSim.Model.Electrical;
using ColdSim.Model.Engine;

namespace ColdSim.Planning.Measurements;

/// <summary>Gathers what one run, or several runs one after the other, have where something was measured.</summary>
/// <param name="measurements">What was measured.</param>
/// <param name="rig">The rig that is run.</param>
internal sealed class ComputedMeans(IReadOnlyList<Measurement> measurements, Rig rig)
{
    private readonly Sum[] _sums = new Sum[measurements.Count];

    /// <summary>Adds the curves of a run.</summary>
    /// <param name="series">Its curves.</param>
    /// <param name="start">The clock at its first sample.</param>
    public void Add(RunSeries series, DateTimeOffset start)
    {
        ArgumentNullException.ThrowIfNull(series);
        for (int i = 0; i < measurements.Count; i++)
        {
            if (Curve(measurements[i], series) is not { } curve)
                continue;
            double at_min = (measurements[i].Time - start).TotalSeconds / RunSeries.Spacing_s, half_min = ComputedValue.HalfWindow.TotalMinutes;
            int from = Math.Max(0, (int)Math.Ceiling(at_min - half_min)), to = Math.Min(series.Count - 1, (int)Math.Floor(at_min + half_min));
            for (int k = from; k <= to; k++)
                _sums[i].Add(Read(measurements[i].Quantity, curve[k]), series.SetPoint_K[k]);
            _sums[i].Covers |= at_min >= 0 && at_min <= series.Count - 1;
        }
    }

    /// <summary>What was gathered for one of them; null where no run reached its time, or the run has no such value.</summary>
    /// <param name="place">Its place in the list.</param>
    public ComputedValue? At(int place) => _sums[place].Value;

    private double[]? Curve(Measurement measured, RunSeries series) => measured.Quantity switch
    {
        MeasuredQuantity.Pressure => series.Cylinders[measured.Cylinder!.Value].Pressure_Pa,
        MeasuredQuantity.Liquid or MeasuredQuantity.Wall => series.Cylinders[measured.Cylinder!.Value].Liquid_K,
        MeasuredQuantity.Inside => rig.Coach is null ? null : series.Inside_K,
        _ => series.Power?.Charge_frac,
    };

    private static double Read(MeasuredQuantity quantity, double sample) => quantity == MeasuredQuantity.Voltage ? LeadAcidRestVoltage.AtCharge_V(sample) : sample;

    private struct Sum
    {
        private int _count;
        private double _first, _sum, _squares, _setPoint_K;

        public bool Covers { get; set; }

        public readonly ComputedValue? Value
        {
            get
            {
                if (!Covers || _count == 0 || !double.IsFinite(_sum))
                    return null;
                double mean = _sum / _count;
                return new(_first + mean, Math.Sqrt(Math.Max(0, _squares / _count - mean * mean)), _setPoint_K / _count);
            }
        }

        // From the first sample on, so that squares of hundreds of kelvins do not swallow tenths.
        public void Add(double value, double setPoint_K)
        {
            if (_count == 0)
                _first = value;
            _count++;
            double off = value - _first;
            (_sum, _squares, _setPoint_K) = (_sum + off, _squares + off * off, _setPoint_K + setPoint_K);
        }
    }
}
