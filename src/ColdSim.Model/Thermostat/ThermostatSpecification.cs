namespace ColdSim.Model.Thermostat;

/// <summary>An on/off thermostat with a day and a night set point. SI units.</summary>
public sealed record ThermostatSpecification
{
    /// <summary>Set point by day. [K]</summary>
    public double DaySetPoint_K { get; init; } = 293.15;

    /// <summary>Set point by night. [K]</summary>
    public double NightSetPoint_K { get; init; } = 290.15;

    /// <summary>Hours in which the night set point holds.</summary>
    public ClockWindow NightHours { get; init; } = new(22 * 3600, 6.5 * 3600);

    /// <summary>The set point in force at a time of day. [K]</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public double SetPoint_K(double clock_s) => NightHours.Contains(clock_s) ? NightSetPoint_K : DaySetPoint_K;

    /// <summary>Differential: the whole dead band between on and off. [K]</summary>
    public double Differential_K { get; init; } = 1.0;

    /// <summary>Time constant of the sensor behind the air; 0 means none. [s]</summary>
    public double SensorLag_s { get; init; } = 180;

    /// <summary>Shortest call for heat. [s]</summary>
    public double MinimumRun_s { get; init; } = 120;

    /// <summary>Shortest pause between calls. [s]</summary>
    public double MinimumOff_s { get; init; } = 120;
}
