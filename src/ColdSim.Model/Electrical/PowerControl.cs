namespace ColdSim.Model.Electrical;

/// <summary>Whether there is voltage: gone when the battery is flat, back when it has recovered or something else carries the load.</summary>
public sealed class PowerControl
{
    private readonly double _reconnect_J;

    /// <summary>A 12 V side with voltage.</summary>
    /// <param name="battery">The bank.</param>
    public PowerControl(BatterySpecification battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        _reconnect_J = battery.Reconnect_frac * battery.Rated_J;
    }

    /// <summary>Whether there is voltage.</summary>
    public bool Live { get; private set; } = true;

    /// <summary>Takes up where an earlier run ended.</summary>
    /// <param name="live">Whether there was voltage.</param>
    public void Begin(bool live) => Live = live;

    /// <summary>How far the battery is past the point at which voltage goes or comes back; above 0 it does. [J]</summary>
    /// <param name="usable_J">What the battery can still give. [J]</param>
    /// <param name="lacking_W">What draws less what feeds without the battery; while gone, what would draw. [W]</param>
    public double EventValue_J(double usable_J, double lacking_W)
        => Live ? (lacking_W > 0 ? -usable_J : -1) : (lacking_W <= 0 ? 1 : usable_J - _reconnect_J);

    /// <summary>Takes in how it stands.</summary>
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
