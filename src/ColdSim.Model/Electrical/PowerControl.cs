namespace ColdSim.Model.Electrical;

/// <summary>Low-voltage disconnect with hysteresis: voltage goes when the battery is flat and comes back when it has recovered or other sources carry the load.</summary>
/// <remarks>Its relay stays open for a minute at least (assumption), as such relays do: one without hysteresis would else open and close without end.</remarks>
internal sealed class PowerControl
{
    private const double ShortestOff_s = 60;

    private readonly double _reconnect_J;

    /// <summary>A 12 V side with voltage.</summary>
    /// <param name="battery">The battery bank.</param>
    public PowerControl(BatterySpecification battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        _reconnect_J = battery.Reconnect_frac * battery.Rated_J;
    }

    /// <summary>Whether there is voltage.</summary>
    public bool Live { get; private set; } = true;

    /// <summary>When the relay may close again after it opened. [s]</summary>
    public double MayCloseFrom_s { get; private set; } = double.NegativeInfinity;

    /// <summary>Sets the initial state.</summary>
    /// <param name="live">Whether there was voltage.</param>
    public void Begin(bool live) => Live = live;

    /// <summary>Event function of the usable charge; above 0 voltage goes or comes back. [J]</summary>
    /// <param name="usable_J">What the battery can still give. [J]</param>
    /// <param name="lacking_W">What draws less what feeds without the battery; while gone, what would draw. [W]</param>
    /// <param name="time_s">Start of the step, or now. [s]</param>
    public double EventValue_J(double usable_J, double lacking_W, double time_s)
        => Live ? (lacking_W > 0 ? -usable_J : -1)
            : time_s < MayCloseFrom_s ? -1
            : lacking_W <= 0 ? 1 : usable_J - _reconnect_J;

    /// <summary>Updates whether there is voltage.</summary>
    /// <param name="usable_J">What the battery can still give. [J]</param>
    /// <param name="lacking_W">As in <see cref="EventValue_J"/>. [W]</param>
    /// <param name="time_s">Now. [s]</param>
    /// <returns>Whether voltage went or came back.</returns>
    public bool Update(double usable_J, double lacking_W, double time_s)
    {
        if (!(EventValue_J(usable_J, lacking_W, time_s) >= 0)) return false;
        Live = !Live;
        if (!Live) MayCloseFrom_s = time_s + ShortestOff_s;
        return true;
    }
}
