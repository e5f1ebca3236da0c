namespace ColdSim.Model.Engine;

/// <summary>Samples a run's curves at one-minute spacing.</summary>
internal sealed class SeriesRecorder : IRunObserver
{
    private readonly RunSeries _series;
    private readonly double[] _gas_J;
    private readonly double[][] _gas_W, _node_K;
    private readonly CylinderSeries[] _cylinders;
    private double _asked_J, _given_J, _heat_J, _blanket_J, _lit_s, _filled_s;
    private double _drawn_J, _solar_J, _shore_J, _generator_J;

    /// <summary>A recorder into a series.</summary>
    /// <param name="series">Room for the run.</param>
    public SeriesRecorder(RunSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        _series = series;
        (_gas_W, _node_K, _cylinders) = ([.. series.Gas_W], [.. series.Node_K], [.. series.Cylinders]);
        _gas_J = new double[_gas_W.Length];
    }

    /// <inheritdoc/>
    public void Stepped(StepRecord record)
    {
        if (_series.Count == 0)
        {
            PutLevels(record, 0);
            _series.Count++;
        }

        double from_s = record.From.Time_s, perStep = 1 / (record.To.Time_s - from_s);
        while (_series.Count < _series.Outside_K.Length)
        {
            double sample_s = _series.Time_s(_series.Count);
            if (sample_s > record.To.Time_s)
            {
                Gather(record, record.To.Time_s - from_s);
                return;
            }

            PutLevels(record, (sample_s - record.From.Time_s) * perStep);
            if (_filled_s > 0)
            {
                Gather(record, sample_s - from_s);
                PutMeans();
            }
            else
            {
                PutMeansOf(record);
            }

            from_s = sample_s;
            _series.Count++;
        }
    }

    /// <inheritdoc/>
    public void Happened(in SimulationEvent happened, in Snapshot snapshot)
    {
    }

    private void Gather(StepRecord record, double part_s)
    {
        _asked_J += record.Asked_W * part_s;
        _given_J += record.Given_W * part_s;
        _heat_J += record.HeatIntoCylinder_W * part_s;
        _blanket_J += record.Blanket_W * part_s;
        for (int i = 0; i < _gas_J.Length; i++) _gas_J[i] += record.Gas_W[i] * part_s;
        if (record.Power is { } use) GatherPower(use, part_s);
        if (record.BurnerLit) _lit_s += part_s;
        _filled_s += part_s;
    }

    // Levels at a part of the step; what is no level, such as the set point, as it is after it.
    private void PutLevels(StepRecord record, double x)
    {
        int i = _series.Count;
        ref readonly Snapshot a = ref record.From, b = ref record.To;
        _series.Outside_K[i] = a.Outside_K + x * (b.Outside_K - a.Outside_K);
        _series.Wind_m_s[i] = a.Wind_m_s + x * (b.Wind_m_s - a.Wind_m_s);
        _series.Inside_K[i] = record.Inside_K(x);
        _series.Liquid_K[i] = a.Liquid_K + x * (b.Liquid_K - a.Liquid_K);
        _series.CylinderPressure_Pa[i] = a.CylinderPressure_Pa + x * (b.CylinderPressure_Pa - a.CylinderPressure_Pa);
        _series.DeliveryPressure_Pa[i] = a.DeliveryPressure_Pa + x * (b.DeliveryPressure_Pa - a.DeliveryPressure_Pa);
        _series.Propane_kg[i] = a.Propane_kg + x * (b.Propane_kg - a.Propane_kg);
        _series.SetPoint_K[i] = x > 0 ? b.SetPoint_K : a.SetPoint_K;
        _series.InUse[i] = (byte)b.InUse;
        for (int n = 0; n < _node_K.Length; n++) _node_K[n][i] = record.NodeBefore_K[n] + x * (record.Node_K[n] - record.NodeBefore_K[n]);
        if (record.Power is { } use && _series.Power is { } power)
            power.Charge_frac[i] = use.ChargeBefore_frac + x * (use.Charge_frac - use.ChargeBefore_frac);
        for (int c = 0; c < _cylinders.Length; c++)
        {
            CylinderSeries cylinder = _cylinders[c];
            ref readonly CylinderReading before = ref a.Cylinder(c), after = ref b.Cylinder(c);
            cylinder.Propane_kg[i] = before.Propane_kg + x * (after.Propane_kg - before.Propane_kg);
            cylinder.Liquid_K[i] = before.Liquid_K + x * (after.Liquid_K - before.Liquid_K);
            cylinder.Hottest_K[i] = before.Hottest_K + x * (after.Hottest_K - before.Hottest_K);
            cylinder.Pressure_Pa[i] = before.Pressure_Pa + x * (after.Pressure_Pa - before.Pressure_Pa);
            cylinder.FrostMass_kg_m2[i] = after.FrostMass_kg_m2;
            cylinder.FrostThickness_m[i] = after.FrostThickness_m;
            if (cylinder.NormalButane_kg.Length == 0) continue;
            cylinder.NormalButane_kg[i] = before.NormalButane_kg + x * (after.NormalButane_kg - before.NormalButane_kg);
            cylinder.Isobutane_kg[i] = before.Isobutane_kg + x * (after.Isobutane_kg - before.Isobutane_kg);
        }
    }

    private void PutMeans()
    {
        int i = _series.Count;
        double perSecond = 1 / _filled_s;
        _series.Asked_W[i] = _asked_J * perSecond;
        _series.Given_W[i] = _given_J * perSecond;
        _series.HeatIntoCylinder_W[i] = _heat_J * perSecond;
        _series.Blanket_W[i] = _blanket_J * perSecond;
        _series.Burner_frac[i] = _lit_s * perSecond;
        for (int g = 0; g < _gas_J.Length; g++)
        {
            _gas_W[g][i] = _gas_J[g] * perSecond;
            _gas_J[g] = 0;
        }

        if (_series.Power is { } power) PutPowerMeans(power, i, perSecond);
        (_asked_J, _given_J, _heat_J, _blanket_J, _lit_s, _filled_s) = (0, 0, 0, 0, 0, 0);
    }

    // Nothing changes from the sample before to this one: the means are the step's.
    private void PutMeansOf(StepRecord record)
    {
        int i = _series.Count;
        _series.Asked_W[i] = record.Asked_W;
        _series.Given_W[i] = record.Given_W;
        _series.HeatIntoCylinder_W[i] = record.HeatIntoCylinder_W;
        _series.Blanket_W[i] = record.Blanket_W;
        _series.Burner_frac[i] = record.BurnerLit ? 1 : 0;
        for (int g = 0; g < _gas_W.Length; g++) _gas_W[g][i] = record.Gas_W[g];
        if (record.Power is not { } use || _series.Power is not { } power) return;
        power.Drawn_W[i] = LoadOf_W(use);
        power.Solar_W[i] = use.Solar_W;
        power.Shore_W[i] = use.Shore_W;
        power.Generator_W[i] = use.Generator_W;
    }

    private static double LoadOf_W(PowerUse use)
    {
        double load_W = 0;
        foreach (double each_W in use.Load_W) load_W += each_W;
        return load_W;
    }

    private void GatherPower(PowerUse use, double part_s)
    {
        _drawn_J += LoadOf_W(use) * part_s;
        _solar_J += use.Solar_W * part_s;
        _shore_J += use.Shore_W * part_s;
        _generator_J += use.Generator_W * part_s;
    }

    private void PutPowerMeans(PowerSeries power, int i, double perSecond_1_s)
    {
        power.Drawn_W[i] = _drawn_J * perSecond_1_s;
        power.Solar_W[i] = _solar_J * perSecond_1_s;
        power.Shore_W[i] = _shore_J * perSecond_1_s;
        power.Generator_W[i] = _generator_J * perSecond_1_s;
        (_drawn_J, _solar_J, _shore_J, _generator_J) = (0, 0, 0, 0);
    }
}
