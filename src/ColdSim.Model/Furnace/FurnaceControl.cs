namespace ColdSim.Model.Furnace;

/// <summary>Phase of the ignition sequence.</summary>
internal enum FurnacePhase
{
    /// <summary>Nothing.</summary>
    Idle,

    /// <summary>Fan before ignition.</summary>
    PrePurge,

    /// <summary>Valve open, spark, no flame yet.</summary>
    Trial,

    /// <summary>Burning.</summary>
    Lit,

    /// <summary>Fan between tries.</summary>
    RetryPurge,

    /// <summary>Fan after the flame.</summary>
    PostPurge,

    /// <summary>Locked out.</summary>
    Lockout,
}

/// <summary>Change of the ignition board at an update.</summary>
public enum FurnaceChange
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Went on to another phase without an event.</summary>
    Moved,

    /// <summary>Lit.</summary>
    Lit,

    /// <summary>Went out, satisfied.</summary>
    Out,

    /// <summary>A try failed.</summary>
    IgnitionFailed,

    /// <summary>The flame was lost.</summary>
    FlameLost,

    /// <summary>Locked out.</summary>
    LockedOut,

    /// <summary>Tries again by itself.</summary>
    Retries,

    /// <summary>Was reset by hand.</summary>
    Reset,
}

/// <summary>Reset by hand of a furnace after a lockout.</summary>
internal interface ILockoutReset
{
    /// <summary>The time of the reset; infinite where it is never reset. [s]</summary>
    /// <param name="lockedAt_s">Time of the lockout. [s]</param>
    double At_s(double lockedAt_s);
}

/// <summary>The ignition board: purge, tries, flame, lockout.</summary>
/// <remarks>
/// Tries count from the start of a call for heat; a lost flame is followed by another try. A flame that has burnt for ten minutes
/// restarts the count. A locked-out furnace tries again by itself after the lockout time, or earlier when it is reset
/// by hand; when the thermostat stops calling, the lockout is cleared.
/// </remarks>
internal sealed class FurnaceControl
{
    private const double FlameProved_s = 600;

    private readonly FurnaceSpecification _specification;
    private int _tries;
    private double _litAt_s;
    private bool _resetByHand;
    private bool _locksOut;

    /// <summary>A furnace at rest.</summary>
    /// <param name="specification">Its ignition board.</param>
    public FurnaceControl(FurnaceSpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        _specification = specification;
    }

    /// <summary>Present phase.</summary>
    public FurnacePhase Phase { get; private set; }

    /// <summary>When the phase ends by the clock; infinite where it does not. [s]</summary>
    public double PhaseEnds_s { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether the gas valve is open.</summary>
    public bool ValveOpen => Phase is FurnacePhase.Trial or FurnacePhase.Lit;

    /// <summary>Whether the burner is lit.</summary>
    public bool IsLit => Phase == FurnacePhase.Lit;

    /// <summary>Whether the fan still runs at a time at which the phase has not been moved on yet.</summary>
    /// <param name="time_s">Now. [s]</param>
    public bool FanRunsAt(double time_s) => FanRuns && !(Phase == FurnacePhase.PostPurge && time_s >= PhaseEnds_s);

    /// <summary>Whether the fan runs.</summary>
    public bool FanRuns => Phase is not (FurnacePhase.Idle or FurnacePhase.Lockout);

    /// <summary>Whether it waits for gas because pressure was too low.</summary>
    public bool WantsGas { get; private set; }

    /// <summary>Makes one transition of the ignition board, if one is due.</summary>
    /// <param name="calls">Whether the thermostat calls.</param>
    /// <param name="delivery_Pa">Delivery pressure with the valve in its present position. [Pa gauge]</param>
    /// <param name="time_s">Now. [s]</param>
    /// <param name="reset">Who would reset a lockout that begins now.</param>
    /// <returns>The change; call again until there is none.</returns>
    public FurnaceChange Update(bool calls, double delivery_Pa, double time_s, ILockoutReset reset)
    {
        ArgumentNullException.ThrowIfNull(reset);
        if (_locksOut)
        {
            _locksOut = false;
            return FurnaceChange.LockedOut;
        }

        bool due = time_s >= PhaseEnds_s;
        switch (Phase)
        {
            case FurnacePhase.Idle when calls:
            case FurnacePhase.PostPurge when calls:
                _tries = 0;
                return Go(FurnacePhase.PrePurge, time_s + _specification.PrePurge_s);

            case FurnacePhase.PostPurge when due:
                return Go(FurnacePhase.Idle);

            case FurnacePhase.PrePurge or FurnacePhase.RetryPurge or FurnacePhase.Trial when !calls:
                WantsGas = false;
                return Go(FurnacePhase.PostPurge, time_s + _specification.PostPurge_s);

            case FurnacePhase.PrePurge or FurnacePhase.RetryPurge when due:
                _tries++;
                return Go(FurnacePhase.Trial, time_s + _specification.TrialForIgnition_s);

            case FurnacePhase.Trial when delivery_Pa >= _specification.IgnitionPressure_Pa:
                WantsGas = false;
                _litAt_s = time_s;
                return Go(FurnacePhase.Lit, FurnaceChange.Lit);

            case FurnacePhase.Trial when due:
                return Fail(FurnaceChange.IgnitionFailed, time_s, reset);

            case FurnacePhase.Trial:
                WantsGas = true;
                return FurnaceChange.None;

            case FurnacePhase.Lit when !calls:
                Go(FurnacePhase.PostPurge, time_s + _specification.PostPurge_s);
                return FurnaceChange.Out;

            case FurnacePhase.Lit when delivery_Pa < _specification.DropOutPressure_Pa:
                if (HasProved(time_s)) _tries = 0;
                return Fail(FurnaceChange.FlameLost, time_s, reset);

            case FurnacePhase.Lockout when !calls:
                WantsGas = false;
                return Go(FurnacePhase.Idle);

            case FurnacePhase.Lockout when due:
                _tries = 0;
                bool byHand = _resetByHand;
                Go(FurnacePhase.PrePurge, time_s + _specification.PrePurge_s);
                return byHand ? FurnaceChange.Reset : FurnaceChange.Retries;

            default:
                return FurnaceChange.None;
        }
    }

    /// <summary>Whether the flame burns, or burnt when it was last lit, long enough to prove that there is gas.</summary>
    /// <param name="time_s">Now. [s]</param>
    public bool HasProved(double time_s) => time_s - _litAt_s >= FlameProved_s;

    /// <summary>Somebody resets a lockout by hand at a time, if the board does not try again before.</summary>
    /// <param name="time_s">When. [s]</param>
    public void ResetAt(double time_s)
    {
        if (Phase == FurnacePhase.Lockout && time_s < PhaseEnds_s) (PhaseEnds_s, _resetByHand) = (time_s, true);
    }

    /// <summary>Voltage is gone: the valve shuts, the fan stops and nothing is tried until the next update.</summary>
    public void Cut()
    {
        WantsGas = false;
        _locksOut = false;
        Go(FurnacePhase.Idle);
    }

    private FurnaceChange Fail(FurnaceChange how, double time_s, ILockoutReset reset)
    {
        WantsGas = true;
        if (_tries < _specification.Tries)
        {
            Go(FurnacePhase.RetryPurge, time_s + _specification.RetryPurge_s);
            return how;
        }

        double byItself_s = time_s + _specification.Lockout_s, resetAt_s = reset.At_s(time_s);
        _resetByHand = resetAt_s < byItself_s;
        Go(FurnacePhase.Lockout, Math.Min(byItself_s, resetAt_s));

        // The last try failed like the ones before it, and that is a change of its own; the lockout is the next.
        _locksOut = true;
        return how;
    }

    private FurnaceChange Go(FurnacePhase phase, double until_s = double.PositiveInfinity)
    {
        (Phase, PhaseEnds_s) = (phase, until_s);
        return FurnaceChange.Moved;
    }

    private FurnaceChange Go(FurnacePhase phase, FurnaceChange change)
    {
        Go(phase);
        return change;
    }
}
