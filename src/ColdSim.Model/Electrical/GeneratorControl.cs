namespace ColdSim.Model.Electrical;

/// <summary>Starts a generator when the battery is low and stops it when it is well charged, its hours end, or gas fails.</summary>
/// <remarks>Its starter is on the same battery: without voltage it does not start. After it was starved it is tried again in ten minutes,
/// and by the charge it runs or rests for a minute at least, as automatic starters do (assumptions).</remarks>
internal sealed class GeneratorControl
{
    private const double RetryAfter_s = 600;
    private const double ShortestTime_s = 60;

    private readonly GeneratorSpecification _generator;
    private bool _inHours;
    private bool _starved;

    /// <summary>A generator at rest.</summary>
    /// <param name="generator">The generator.</param>
    public GeneratorControl(GeneratorSpecification generator)
    {
        ArgumentNullException.ThrowIfNull(generator);
        _generator = generator;
    }

    /// <summary>Whether it is running.</summary>
    public bool Runs { get; private set; }

    /// <summary>Whether it waits for gas because pressure was too low.</summary>
    public bool WantsGas => _starved && _inHours;

    /// <summary>When it is tried again after it was starved; infinite otherwise. [s]</summary>
    public double RetryAt_s { get; private set; } = double.PositiveInfinity;

    /// <summary>The time before which the charge neither starts nor stops it. [s]</summary>
    public double MaySwitchFrom_s { get; private set; } = double.NegativeInfinity;

    /// <summary>Applies the time of day.</summary>
    /// <param name="clock_s">Seconds after local midnight. [s]</param>
    public void SetClock(double clock_s) => _inHours = ClockWindow.AnyContains(_generator.Hours, clock_s);

    /// <summary>Event function of the usable charge; above 0 the generator starts or stops.</summary>
    /// <param name="usable_frac">Usable charge left, per that of a full bank.</param>
    /// <param name="mayStart">Whether it may start: there is voltage for it, and no shore power.</param>
    /// <param name="time_s">Start of the step, or now. [s]</param>
    public double EventValue_frac(double usable_frac, bool mayStart, double time_s)
        => time_s < MaySwitchFrom_s ? -1
            : Runs ? usable_frac - _generator.StopAbove_frac
            : _inHours && mayStart && !_starved ? _generator.StartBelow_frac - usable_frac : -1;

    /// <summary>Starts or stops it.</summary>
    /// <param name="usable_frac">Usable charge left, per that of a full bank.</param>
    /// <param name="mayStart">Whether it may start: there is voltage for it, and no shore power.</param>
    /// <param name="delivery_Pa">Delivery pressure. [Pa gauge]</param>
    /// <param name="time_s">Now. [s]</param>
    /// <returns>Whether it started or stopped.</returns>
    public bool Update(double usable_frac, bool mayStart, double delivery_Pa, double time_s)
    {
        if (_starved && (time_s >= RetryAt_s || !_inHours)) (_starved, RetryAt_s) = (false, double.PositiveInfinity);
        if (Runs && delivery_Pa < _generator.MinimumPressure_Pa)
        {
            (Runs, _starved, RetryAt_s) = (false, true, time_s + RetryAfter_s);
            return true;
        }

        double past_frac = EventValue_frac(usable_frac, mayStart, time_s);
        if (Runs ? _inHours && past_frac < 0 : !(past_frac >= 0)) return false;
        (Runs, MaySwitchFrom_s) = (!Runs, time_s + ShortestTime_s);
        return true;
    }
}
