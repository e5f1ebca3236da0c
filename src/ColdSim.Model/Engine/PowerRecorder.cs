namespace ColdSim.Model.Engine;

/// <summary>Writes the 12 V side's curves for a <see cref="SeriesRecorder"/>.</summary>
internal sealed class PowerRecorder(PowerSeries series)
{
    private double _drawn_J, _solar_J, _shore_J, _generator_J;

    /// <summary>Takes in a part of a step.</summary>
    /// <param name="use">The step's means.</param>
    /// <param name="part_s">How long the part is. [s]</param>
    public void Gather(PowerUse use, double part_s)
    {
        double load_W = 0;
        foreach (double each_W in use.Load_W) load_W += each_W;
        _drawn_J += load_W * part_s;
        _solar_J += use.Solar_W * part_s;
        _shore_J += use.Shore_W * part_s;
        _generator_J += use.Generator_W * part_s;
    }

    /// <summary>Writes the level at a part of a step.</summary>
    /// <param name="use">The step.</param>
    /// <param name="x">The part.</param>
    /// <param name="i">The sample.</param>
    public void PutLevel(PowerUse use, double x, int i) => series.Charge_frac[i] = use.ChargeBefore_frac + x * (use.Charge_frac - use.ChargeBefore_frac);

    /// <summary>Writes the means of what was gathered since the sample before.</summary>
    /// <param name="i">The sample.</param>
    /// <param name="perSecond_1_s">One over the time since. [1/s]</param>
    public void PutMeans(int i, double perSecond_1_s)
    {
        series.Drawn_W[i] = _drawn_J * perSecond_1_s;
        series.Solar_W[i] = _solar_J * perSecond_1_s;
        series.Shore_W[i] = _shore_J * perSecond_1_s;
        series.Generator_W[i] = _generator_J * perSecond_1_s;
        (_drawn_J, _solar_J, _shore_J, _generator_J) = (0, 0, 0, 0);
    }
}
