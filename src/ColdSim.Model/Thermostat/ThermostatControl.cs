namespace ColdSim.Model.Thermostat;

/// <summary>A thermostat as a comparator with hysteresis: calls below the dead band, is satisfied above it, and keeps its shortest times.</summary>
internal sealed class ThermostatControl
{
    private readonly ThermostatSpecification _specification;
    private double _mayChangeFrom_s;

    /// <summary>A thermostat that is not calling.</summary>
    /// <param name="specification">Set points, differential and shortest times.</param>
    /// <exception cref="ArgumentOutOfRangeException">A differential that is not above zero would chatter.</exception>
    public ThermostatControl(ThermostatSpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(specification.Differential_K);
        _specification = specification;
    }

    /// <summary>Whether it calls for heat.</summary>
    public bool Calls { get; private set; }

    /// <summary>The set point in force. [K]</summary>
    public double SetPoint_K { get; private set; }

    /// <summary>The time before which it may not switch. [s]</summary>
    public double MayChangeFrom_s => _mayChangeFrom_s;

    /// <summary>Applies the set point of a time of day.</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public void SetClock(double clock_s) => SetPoint_K = _specification.SetPoint_K(clock_s);

    /// <summary>Event function: the sensor's distance past the switching temperature; at or above 0 the switch is due. [K]</summary>
    /// <param name="sensor_K">Temperature of the sensor. [K]</param>
    public double EventValue_K(double sensor_K)
        => Calls
            ? sensor_K - (SetPoint_K + 0.5 * _specification.Differential_K)
            : SetPoint_K - 0.5 * _specification.Differential_K - sensor_K;

    /// <summary>Switches if it is due and its shortest time is over.</summary>
    /// <param name="sensor_K">Temperature of the sensor. [K]</param>
    /// <param name="time_s">Now. [s]</param>
    /// <returns>Whether it switched.</returns>
    public bool Update(double sensor_K, double time_s)
    {
        if (EventValue_K(sensor_K) < 0 || time_s < _mayChangeFrom_s) return false;
        Calls = !Calls;
        _mayChangeFrom_s = time_s + (Calls ? _specification.MinimumRun_s : _specification.MinimumOff_s);
        return true;
    }
}
