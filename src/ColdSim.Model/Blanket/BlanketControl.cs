namespace ColdSim.Model.Blanket;

/// <summary>A blanket's thermostat and its power by the clock.</summary>
internal sealed class BlanketControl(BlanketSpecification blanket, bool hookup)
{
    private readonly bool _supplied = blanket.Power_W > 0 && (blanket.Supply == BlanketSupply.Battery || hookup);
    private bool _inHours;
    private bool _calls;

    /// <summary>Whether it is supplied by the battery.</summary>
    public bool OnBattery => blanket.Supply == BlanketSupply.Battery;

    /// <summary>Whether what it runs on has voltage.</summary>
    public bool HasVoltage { get; set; } = true;

    /// <summary>Power that it would draw with voltage. [W]</summary>
    public double Wanted_W => _inHours && (_calls || blanket.StuckOn) ? blanket.Power_W : 0;

    /// <summary>Whether it is heating.</summary>
    public bool On => HasVoltage && _inHours && (_calls || blanket.StuckOn);

    /// <summary>Heat it makes now. [W]</summary>
    public double Power_W => On ? blanket.Power_W : 0;

    /// <summary>Applies the time of day.</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public void SetClock(double clock_s) => _inHours = _supplied && ClockWindow.AnyContains(blanket.Hours, clock_s);

    /// <summary>Event function of the wall temperature; above 0 the thermostat switches. [K]</summary>
    public double EventValue_K(double wall_K) => !_inHours || !HasVoltage || blanket.StuckOn ? -1 : _calls ? wall_K - blanket.Off_K : blanket.On_K - wall_K;

    /// <summary>Updates the thermostat.</summary>
    /// <returns>Whether it switched.</returns>
    public bool Update(double wall_K)
    {
        if (EventValue_K(wall_K) < 0) return false;
        _calls = !_calls;
        return true;
    }
}
