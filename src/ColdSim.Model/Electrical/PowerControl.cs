namespace ColdSim.Model.Electrical;

/// <summary>Low-voltage disconnect with hysteresis: voltage goes when the battery is flat and comes back when it has recovered or other sources carry the load.</summary>
public sealed class PowerControl
{
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

    /// <summary>Sets the initial state.</summary>
    /// <param name="live">Whether there was voltage.</param>
    public void Begin(bool live) => Live = live;

    /// <summary>Event function of the usable charge; above 0 voltage goes or comes back. [J]</summary>
    /// <param name="usable_J">What the battery can still give. [J]</param>
    /// <param name="lacking_W">What draws less what feeds without the battery; while gone, what would draw. [W]</param>
    public double EventValue_J(double usable_J, double lacking_W)
        => Live ? (lacking_W > 0 ? -usable_J : -1) : (lacking_W <= 0 ? 1 : usable_J - _reconnect_J);

    /// <summary>Updates whether there is voltage.</summary>
    /// <param name="usable_J">What the battery can still give. [J]</param>
    /// <param name="lacking_W">As in <see cref="EventValue_J"/>. [W]</param>
    /// <returns>Whether voltage went or came back.</returns>
    public bool Update(double usable_J, double lacking_W)
    {
        if (!(EventValue_J(usable_J, lacking_W) >= 0)) return false;
        Live = !Live;
        return true;
    }
}
