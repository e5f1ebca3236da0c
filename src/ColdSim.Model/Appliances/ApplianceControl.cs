namespace ColdSim.Model.Appliances;

/// <summary>An appliance's valve: open in its hours while its thermostat calls, out when its flame is lost, tried again every minute.</summary>
internal sealed class ApplianceControl
{
    private const double RetryAfter_s = 60;

    private readonly GasAppliance _appliance;
    private readonly bool _electric;
    private readonly SwitchBand? _band;
    private bool _inHours;
    private bool _calls;
    private bool _out;
    private bool _voltage = true;

    /// <summary>An appliance, shut.</summary>
    /// <param name="appliance">The appliance.</param>
    /// <param name="hookup">Whether there is shore power: one that can then runs on it.</param>
    public ApplianceControl(GasAppliance appliance, bool hookup)
    {
        ArgumentNullException.ThrowIfNull(appliance);
        _appliance = appliance;
        _electric = hookup && appliance.ElectricInput_W > 0;
        _band = appliance.Thermostat;
        _calls = _band is null;
    }

    /// <summary>Whether gas flows.</summary>
    public bool ValveOpen => Wanted && !_electric && !_out;

    /// <summary>Whether it waits for gas because pressure was too low.</summary>
    public bool WantsGas => Wanted && !_electric && _out;

    /// <summary>Power from the hookup. [W]</summary>
    public double Electric_W => Wanted && _electric ? _appliance.ElectricInput_W : 0;

    /// <summary>When it is tried again; infinite while nothing is wrong. [s]</summary>
    public double RetryAt_s { get; private set; } = double.PositiveInfinity;

    private bool Wanted => _inHours && _calls && _voltage && !_appliance.IsOff;

    /// <summary>Opens or shuts by the clock.</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public void SetClock(double clock_s)
    {
        _inHours = ClockWindow.AnyContains(_appliance.Hours, clock_s);
        if (!Wanted) Rest();
    }

    /// <summary>The 12 V are there, or gone: one whose board needs them shuts its valve.</summary>
    /// <param name="live">Whether there is voltage.</param>
    public void SetVoltage(bool live)
    {
        _voltage = live;
        if (!Wanted) Rest();
    }

    /// <summary>Event function of its thermostat; above 0 it switches. [K]</summary>
    /// <param name="sensed_K">Its node, or the coach's air. [K]</param>
    public double EventValue_K(double sensed_K) => _band is { } band ? band.EventValue_K(_calls, sensed_K) : -1;

    /// <summary>Updates its thermostat.</summary>
    /// <param name="sensed_K">Its node, or the coach's air. [K]</param>
    /// <returns>Whether it switched.</returns>
    public bool Sense(double sensed_K)
    {
        if (_band is null || EventValue_K(sensed_K) < 0) return false;
        _calls = !_calls;
        if (!_calls) Rest();
        return true;
    }

    /// <summary>Loses or regains the flame.</summary>
    /// <param name="delivery_Pa">Delivery pressure with the valve in its present position. [Pa gauge]</param>
    /// <param name="time_s">Now. [s]</param>
    /// <param name="feed_Pa">Pressure before the regulator. [Pa gauge]</param>
    /// <returns>Whether the valve moved.</returns>
    public bool Update(double delivery_Pa, double time_s, double feed_Pa = double.PositiveInfinity)
    {
        if (ValveOpen && delivery_Pa < _appliance.MinimumPressure_Pa)
        {
            _out = true;
            RetryAt_s = time_s + RetryAfter_s;
            return true;
        }

        if (WantsGas && time_s >= RetryAt_s)
        {
            if (CannotLight(feed_Pa))
            {
                // The minutes go on from the flame's loss, also over retries that nobody waited for.
                RetryAt_s += RetryAfter_s * (Math.Floor((time_s - RetryAt_s) / RetryAfter_s) + 1);
                return false;
            }

            Rest();
            return true;
        }

        return false;
    }

    /// <summary>Whether a retry fails for certain: no regulator delivers more than it is fed with.</summary>
    /// <param name="feed_Pa">Pressure before the regulator. [Pa gauge]</param>
    public bool CannotLight(double feed_Pa) => feed_Pa < _appliance.MinimumPressure_Pa;

    private void Rest()
    {
        _out = false;
        RetryAt_s = double.PositiveInfinity;
    }
}
