namespace ColdSim.Model.Engine;

/// <summary>Writes a run's curves at one-minute spacing.</summary>
public sealed class SeriesRecorder : IRunObserver
{
    private readonly RunSeries _series;
    private double _asked_J, _given_J, _heat_J, _lit_s, _filled_s;

    /// <summary>A recorder into a series.</summary>
    /// <param name="series">Room for the run.</param>
    public SeriesRecorder(RunSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        _series = series;
    }

    /// <inheritdoc/>
    public void Stepped(in StepRecord record)
    {
        if (_series.Count == 0) Put(record.From, 0, 0, 0, 0);
        double from_s = record.From.Time_s;
        while (_series.Count < _series.Outside_K.Length)
        {
            double sample_s = _series.Count * RunSeries.Spacing_s;
            if (sample_s > record.To.Time_s)
            {
                Gather(record, record.To.Time_s - from_s);
                return;
            }

            Gather(record, sample_s - from_s);
            from_s = sample_s;
            double x = (sample_s - record.From.Time_s) / (record.To.Time_s - record.From.Time_s);
            Put(Between(record, x), _asked_J / _filled_s, _given_J / _filled_s, _heat_J / _filled_s, _lit_s / _filled_s);
            (_asked_J, _given_J, _heat_J, _lit_s, _filled_s) = (0, 0, 0, 0, 0);
        }
    }

    /// <inheritdoc/>
    public void Happened(in SimulationEvent happened, in Moment moment)
    {
    }

    private void Gather(in StepRecord record, double part_s)
    {
        _asked_J += record.Asked_W * part_s;
        _given_J += record.Given_W * part_s;
        _heat_J += record.HeatIntoCylinder_W * part_s;
        if (record.BurnerLit) _lit_s += part_s;
        _filled_s += part_s;
    }

    private static Moment Between(in StepRecord record, double x)
    {
        Moment a = record.From;
        Moment b = record.To;
        return b with
        {
            Outside_K = a.Outside_K + x * (b.Outside_K - a.Outside_K),
            Wind_m_s = a.Wind_m_s + x * (b.Wind_m_s - a.Wind_m_s),
            Inside_K = a.Inside_K + x * (b.Inside_K - a.Inside_K),
            Liquid_K = a.Liquid_K + x * (b.Liquid_K - a.Liquid_K),
            CylinderPressure_Pa = a.CylinderPressure_Pa + x * (b.CylinderPressure_Pa - a.CylinderPressure_Pa),
            DeliveryPressure_Pa = a.DeliveryPressure_Pa + x * (b.DeliveryPressure_Pa - a.DeliveryPressure_Pa),
            Propane_kg = a.Propane_kg + x * (b.Propane_kg - a.Propane_kg),
        };
    }

    private void Put(in Moment m, double asked_W, double given_W, double heat_W, double lit_frac)
    {
        int i = _series.Count++;
        _series.Outside_K[i] = m.Outside_K;
        _series.Wind_m_s[i] = m.Wind_m_s;
        _series.Inside_K[i] = m.Inside_K;
        _series.SetPoint_K[i] = m.SetPoint_K;
        _series.Liquid_K[i] = m.Liquid_K;
        _series.CylinderPressure_Pa[i] = m.CylinderPressure_Pa;
        _series.DeliveryPressure_Pa[i] = m.DeliveryPressure_Pa;
        _series.Propane_kg[i] = m.Propane_kg;
        _series.FrostMass_kg_m2[i] = m.FrostMass_kg_m2;
        _series.FrostThickness_m[i] = m.FrostThickness_m;
        _series.Asked_W[i] = asked_W;
        _series.Given_W[i] = given_W;
        _series.HeatIntoCylinder_W[i] = heat_W;
        _series.Burner_frac[i] = lit_frac;
    }
}
