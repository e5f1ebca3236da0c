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
                PutGathered();
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

    // The means of what was gathered since the sample before.
    private void PutGathered()
    {
        int i = _series.Count;
        double perSecond = 1 / _filled_s;
        PutMeans(i, _asked_J * perSecond, _given_J * perSecond, _heat_J * perSecond, _blanket_J * perSecond, _lit_s * perSecond);
        for (int g = 0; g < _gas_J.Length; g++)
        {
            _gas_W[g][i] = _gas_J[g] * perSecond;
            _gas_J[g] = 0;
        }

        PutPowerMeans(i, _drawn_J * perSecond, _solar_J * perSecond, _shore_J * perSecond, _generator_J * perSecond);
        (_asked_J, _given_J, _heat_J, _blanket_J, _lit_s, _filled_s) = (0, 0, 0, 0, 0, 0);
        (_drawn_J, _solar_J, _shore_J, _generator_J) = (0, 0, 0, 0);
    }

    // Nothing changes from the sample before to this one: the means are the step's.
    private void PutMeansOf(StepRecord record)
    {
        int i = _series.Count;
        PutMeans(i, record.Asked_W, record.Given_W, record.HeatIntoCylinder_W, record.Blanket_W, record.BurnerLit ? 1 : 0);
        for (int g = 0; g < _gas_W.Length; g++) _gas_W[g][i] = record.Gas_W[g];
        if (record.Power is { } use) PutPowerMeans(i, LoadOf_W(use), use.Solar_W, use.Shore_W, use.Generator_W);
    }

    private void PutMeans(int i, double asked_W, double given_W, double heat_W, double blanket_W, double burner_frac)
    {
        _series.Asked_W[i] = asked_W;
        _series.Given_W[i] = given_W;
        _series.HeatIntoCylinder_W[i] = heat_W;
        _series.Blanket_W[i] = blanket_W;
        _series.Burner_frac[i] = burner_frac;
    }

    private void PutPowerMeans(int i, double drawn_W, double solar_W, double shore_W, double generator_W)
    {
        if (_series.Power is not { } power) return;
        power.Drawn_W[i] = drawn_W;
        power.Solar_W[i] = solar_W;
        power.Shore_W[i] = shore_W;
        power.Generator_W[i] = generator_W;
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
}
