namespace ColdSim.Planning.Harms;

/// <summary>Counts kelvin-hours below the thermostat's band, and leaves out the dip before a burner lights.</summary>
/// <remarks>
/// A dip counts from its beginning once heat or gas fails in it, or once it has lasted for <see cref="NightCriteria.WithoutPause"/>. One that
/// ends before is the thermostat's own swing.
/// </remarks>
internal sealed class ColdSpell
{
    private double _lasts_s;
    private double _held;
    private bool _counts;

    /// <summary>Adds a step.</summary>
    /// <param name="below_K">Inside below the band at its end. [K]</param>
    /// <param name="step_s">Its length. [s]</param>
    /// <param name="settled">Whether the set point has not risen lately.</param>
    /// <param name="fails">Whether heat or gas fails in it.</param>
    /// <returns>What is now known to count. [K s]</returns>
    public double Added(double below_K, double step_s, bool settled, bool fails)
    {
        if (!(below_K > 0))
        {
            End();
            return 0;
        }

        _lasts_s += step_s;
        if (settled) _held += below_K * step_s;
        _counts |= fails || _lasts_s > NightCriteria.WithoutPause.Seconds;
        if (!_counts) return 0;
        double counts = _held;
        _held = 0;
        return counts;
    }

    /// <summary>Ends the dip.</summary>
    public void End() => (_lasts_s, _held, _counts) = (0, 0, false);
}
