namespace ColdSim.Model.Supply;

/// <summary>A constant draw's valve: open in its hours, out when its flame is lost, tried again every minute.</summary>
public sealed class DrawControl
{
    private const double RetryAfter_s = 60;

    private readonly ConstantDraw _draw;
    private bool _inHours;
    private bool _out;

    /// <summary>A draw, shut.</summary>
    /// <param name="draw">What it is.</param>
    public DrawControl(ConstantDraw draw)
    {
        ArgumentNullException.ThrowIfNull(draw);
        _draw = draw;
    }

    /// <summary>Whether it has the voltage it needs.</summary>
    public bool HasVoltage { get; set; } = true;

    /// <summary>Whether gas flows.</summary>
    public bool ValveOpen => HasVoltage && _inHours && !_out;

    /// <summary>Whether it wants gas and has none because pressure was too low.</summary>
    public bool WantsGas => HasVoltage && _inHours && _out;

    /// <summary>When it is tried again; infinite while nothing is wrong. [s]</summary>
    public double RetryAt_s { get; private set; } = double.PositiveInfinity;

    /// <summary>Opens or shuts by the clock.</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public void SetClock(double clock_s)
    {
        _inHours = _draw.Hours.Count == 0;
        for (int i = 0; i < _draw.Hours.Count && !_inHours; i++) _inHours = _draw.Hours[i].Contains(clock_s);
        if (_inHours) return;
        _out = false;
        RetryAt_s = double.PositiveInfinity;
    }

    /// <summary>Loses or regains the flame.</summary>
    /// <param name="delivery_Pa">Delivery pressure with the valve as it stands. [Pa gauge]</param>
    /// <param name="time_s">Now. [s]</param>
    /// <returns>Whether the valve moved.</returns>
    public bool Update(double delivery_Pa, double time_s)
    {
        if (ValveOpen && delivery_Pa < _draw.MinimumPressure_Pa)
        {
            _out = true;
            RetryAt_s = time_s + RetryAfter_s;
            return true;
        }

        if (WantsGas && time_s >= RetryAt_s)
        {
            _out = false;
            RetryAt_s = double.PositiveInfinity;
            return true;
        }

        return false;
    }
}
