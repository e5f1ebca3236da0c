namespace ColdSim.Model.Heaters;

/// <summary>An other heater's switch, by the clock and its own thermostat.</summary>
internal sealed class HeaterControl
{
    private readonly OtherHeater _heater;
    private readonly bool _supplied;
    private bool _inHours;
    private bool _calls;

    /// <summary>A heater that is off.</summary>
    /// <param name="heater">The heater.</param>
    /// <param name="hookup">Whether there is shore power.</param>
    public HeaterControl(OtherHeater heater, bool hookup)
    {
        ArgumentNullException.ThrowIfNull(heater);
        _heater = heater;
        _supplied = heater.Supply == HeaterSupply.OwnFuel || hookup;
        _calls = heater.Thermostat is null;
    }

    /// <summary>Heat that it would give now. [W]</summary>
    public double Wanted_W => _inHours && _calls ? _heater.Output_W : 0;

    /// <summary>Whether it runs on shore power.</summary>
    public bool IsElectric => _heater.Supply == HeaterSupply.ShorePower;

    /// <summary>Applies the time of day.</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public void SetClock(double clock_s) => _inHours = _supplied && ClockWindow.AnyContains(_heater.Hours, clock_s);

    /// <summary>Event function of its thermostat; above 0 it switches. [K]</summary>
    public double EventValue_K(double air_K) => _heater.Thermostat is { } band ? band.EventValue_K(_calls, air_K) : -1;

    /// <summary>Updates its thermostat.</summary>
    /// <returns>Whether it switched.</returns>
    public bool Sense(double air_K)
    {
        if (_heater.Thermostat is null || !(EventValue_K(air_K) >= 0)) return false;
        _calls = !_calls;
        return true;
    }
}
