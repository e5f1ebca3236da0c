namespace ColdSim.Model.Electrical;

/// <summary>A load's switch by the clock.</summary>
/// <param name="load">What it is.</param>
internal sealed class LoadControl(ElectricLoad load)
{
    /// <summary>Whether it is switched on.</summary>
    public bool On { get; private set; }

    /// <summary>What it draws while there is voltage. [W]</summary>
    public double Power_W => On ? load.Power_W : 0;

    /// <summary>Takes the clock.</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public void SetClock(double clock_s)
    {
        On = load.Hours.Count == 0;
        for (int i = 0; i < load.Hours.Count && !On; i++) On = load.Hours[i].Contains(clock_s);
    }
}
